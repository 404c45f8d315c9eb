namespace Bakehouse.Domain.Heat;

using System.Collections.Concurrent;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>What a tier waits for.</summary>
/// <param name="What">In words: "firm to stack".</param>
/// <param name="Coat">What covers it; a bare one is one layer.</param>
/// <param name="AtLeast">Minutes that practice asks for.</param>
internal sealed record WaitedFor(string What, CoatState Coat, HeatStart Start, int AtLeast, params IReadOnlyList<HeatGoal> Goals)
{
    /// <summary>How high a layer baked, where it is split later.</summary>
    public Length? Baked { get; init; }

    /// <summary>True if its base is shut.</summary>
    public bool BaseShut { get; init; }

    public HeatBody BodyOf(CakeTier tier, CakeFigures figures) =>
        Coat == CoatState.Bare ? CakeBodies.Layer(tier, figures, Baked) : CakeBodies.Tier(tier, Coat, figures);
}

/// <summary>Waits that were worked out before: the same tier in the same place waits as long again, and every plan asks.</summary>
internal static class KnownWaits
{
    // More than the sizes and places of any shop; then it begins anew.
    private const int Most = 4_096;
    private static readonly ConcurrentDictionary<Asked, HeatRange?> Known = new();

    public static HeatRange? Of(Waits waits, CakeTier tier, HeatPlace place, WaitedFor wait)
    {
        if (Known.Count > Most)
        {
            Known.Clear();
        }

        var coldest = wait.Goals[^1].Celsius;
        var asked = new Asked(
            waits.Figures, waits.CakeTimes, tier.Shape, tier.Height, tier.Layers, string.Join(' ', tier.Special?.LayerHeights ?? []), tier.Sponge, tier.Filling,
            wait.What, wait.Coat, wait.Baked, coldest, place with { Name = "", Humidity = null });
        return Known.GetOrAdd(asked, _ => HeatRanges.Of(
            wait.BodyOf(tier, waits.Figures).With(m => m.IsEaten ? m.Conducting(waits.CakeTimes) : m), wait.Start, place, wait.BaseShut, 0, wait.Goals));
    }

    private sealed record Asked(
        CakeFigures Figures, double CakeTimes, Shape Shape, Length Height, int Layers, string Own, string Sponge, string Filling,
        string What, CoatState Coat, Length? Baked, double Celsius, HeatPlace Place);
}

/// <summary>Runs of one body at both ends of the ranges and between.</summary>
internal static class HeatRanges
{
    private const double Longest = 3 * 1440;

    /// <summary>Minutes until every goal is met; null if one never is, or if low and high are more than 2.5 to 1 apart.</summary>
    public static HeatRange? Of(HeatBody body, HeatStart start, HeatPlace place, bool baseShut, double cover, IReadOnlyList<HeatGoal> goals)
    {
        var warms = place.Celsius > start.Inside;
        double? Minutes(HeatSide side)
        {
            var curve = Conduction.Run(Of(body, side), start, [new Stay(Longest, place.Around(side, warms, baseShut, cover))], null, goals);
            var met = goals.Select(g => IsMet(curve, g, warms) ? 0 : curve.MinutesTo(g.Spot, g.Celsius)).ToList();
            return met.Any(m => m is null) ? null : met.Max();
        }

        return Minutes(HeatSide.Slow) is { } high && Minutes(HeatSide.Typical) is { } typical && Minutes(HeatSide.Fast) is { } low && high <= low * HeatRange.Widest
            ? new HeatRange(low, typical, high)
            : null;
    }

    /// <summary>Conducts 0.9 to 1.12 of what is thought, holds 1.05 to 0.95 of the heat.</summary>
    public static HeatBody Of(HeatBody body, HeatSide side) => side switch
    {
        HeatSide.Fast => body.With(m => m.Conducting(1.12).Holding(0.95)),
        HeatSide.Slow => body.With(m => m.Conducting(0.9).Holding(1.05)),
        _ => body,
    };

    public static Problem TooClose(string size, string what, HeatPlace place, IReadOnlyList<HeatGoal> goals)
    {
        var wanted = goals.Select(g => g.Celsius).OrderBy(c => Math.Abs(c - place.Celsius)).First();
        return new Problem(
            size, Invariant($"{place.Name} at {place.Celsius:0.#} °C"), Invariant($"It is to {what} at {wanted:0.#} °C, too close to the place for an honest time."),
            place.Celsius < wanted ? Invariant($"Set {place.Name} to {wanted - 4:0.#} °C or less, or use a colder place.") : "Use another place.");
    }

    private static bool IsMet(HeatCurve curve, HeatGoal goal, bool warms)
    {
        var first = curve.Celsius[(int)goal.Spot][0];
        return warms ? first >= goal.Celsius : first <= goal.Celsius;
    }
}
