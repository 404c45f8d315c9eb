namespace Bakehouse.Domain.Chains;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;

/// <summary>A tier at a moment, °C.</summary>
/// <param name="Surface">The warmer of top and side.</param>
public readonly record struct ChainPoint(Instant At, double Core, double Mean, double Surface);

/// <summary>What a tier was too warm for when it came, by the model; a figure to look at, nothing is planned anew for it.</summary>
/// <param name="Step">Key of the step.</param>
public sealed record ChainBreach(string Step, Instant At, string Sentence);

/// <summary>
/// Sends a tier through its stays, typical figures: as a bare layer to the fill, then with its crumb coat, then with its last one; each begins as warm as the
/// one before it was on the mean, coats as warm as they go on. Each tier by itself, also when it is stacked.
/// </summary>
internal sealed class TierHeat(TierPlan tier, Shop shop, ColdChain cold)
{
    /// <summary>°C that a tier may be over the mark: the model is not more exact than that (common practice, no source).</summary>
    private const double Allowed = 2;

    /// <summary>Days in a fridge change slowly: steps of a quarter of an hour at most.</summary>
    private static readonly HeatDetail Days = HeatDetail.Usual with { LongestStep = 900 };

    private readonly CakeFigures figures = CakeFigures.Of(shop);
    private readonly List<ChainPoint> points = [];
    private readonly List<ChainBreach> breaches = [];

    public (IReadOnlyList<ChainPoint> Points, IReadOnlyList<ChainBreach> Breaches) Through(IReadOnlyList<ChainStay> stays)
    {
        var fill = Until(stays, "fill", 0);
        var coat = Until(stays, LastCoat, fill);
        // Layers that nobody saw come out of the oven are as warm as cold ones are when their coat goes on.
        var mean = fill == 0 ? Waits.InsideAtCrumb : Run(Body(CoatState.Bare), HeatStart.Even(Waits.TurnedOut), stays.Take(fill));
        mean = Run(Body(CoatState.Crumb), new HeatStart(mean, Waits.FreshCoat), stays.Take(coat).Skip(fill));
        Run(Body(Final), new HeatStart(mean, Waits.FreshCoat), stays.Skip(coat));
        return (points, breaches);
    }

    private string LastCoat => tier.Tier.Special?.Paste is not null ? "cover" : "coat";

    private CoatState Final => tier.Tier.Special?.Paste is not null ? CoatState.Paste : CoatState.Cream;

    private HeatBody Body(CoatState coat) =>
        (coat == CoatState.Bare ? CakeBodies.Layer(tier.Tier, figures, tier.Build.Pans.BakedHeight) : CakeBodies.Tier(tier.Tier, coat, figures))
        .With(m => m.IsEaten ? m.Conducting(cold.CakeTimes) : m);

    /// <summary>Number of stays before the hands of that work; all of them if it is not among them.</summary>
    private static int Until(IReadOnlyList<ChainStay> stays, string operation, int least)
    {
        for (var i = least; i < stays.Count; i++)
        {
            if (stays[i].Kind == StayKind.Hands && Operation(stays[i]) == operation)
            {
                return i;
            }
        }

        return operation == "fill" ? stays.Count : least;
    }

    private double Run(HeatBody body, HeatStart start, IEnumerable<ChainStay> through)
    {
        var stays = through.ToList();
        if (stays.Count == 0)
        {
            return start.Inside;
        }

        var curve = Conduction.Run(body, start, [.. stays.Select(s => s.Place.For(s.Minutes))], detail: Days);
        var began = stays[0].From;
        points.AddRange(curve.Minutes.Select((m, i) => new ChainPoint(
            began + Duration.FromSeconds(m * 60), At(curve, HeatSpot.Core, i), At(curve, HeatSpot.Mean, i), Math.Max(At(curve, HeatSpot.Top, i), At(curve, HeatSpot.Side, i)))));
        foreach (var stay in stays.Where(s => s.Kind == StayKind.Waits))
        {
            Look(curve, (stay.To - began).TotalMinutes, stay);
        }

        return curve.At(curve.Minutes[^1], HeatSpot.Mean);
    }

    private static double At(HeatCurve curve, HeatSpot spot, int row) => curve.Celsius[(int)spot][row];

    /// <summary>At the end of a wait, against what the work after it asks for.</summary>
    private void Look(HeatCurve curve, double minute, ChainStay stay)
    {
        var (core, mean, surface) = (curve.At(minute, HeatSpot.Core), curve.At(minute, HeatSpot.Mean), Math.Max(curve.At(minute, HeatSpot.Top), curve.At(minute, HeatSpot.Side)));
        var said = Operation(stay) switch
        {
            "wrap" => Over(core, Waits.Wrapped, "in the middle when it is wrapped"),
            "fill" => Over(core, Waits.FirmToFill, "in the middle when it is filled"),
            "coat" or "cover" => Over(surface, 10, "at its coat when the next goes on"),
            "stack" => Over(surface, 8, "at its coat when it is stacked") ?? Over(mean, 12, "on the mean when it is stacked"),
            _ => null,
        };
        if (said is not null)
        {
            breaches.Add(new ChainBreach(stay.Step, stay.To, said));
        }
    }

    private static string? Over(double celsius, double most, string where) =>
        celsius > most + Allowed ? FormattableString.Invariant($"{celsius:0} °C {where}: {most:0} or less is right.") : null;

    private static string Operation(ChainStay stay) => StepKey.Parse(stay.Step)?.Operation ?? "";
}
