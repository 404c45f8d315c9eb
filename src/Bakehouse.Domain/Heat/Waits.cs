namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>
/// The waits of a tier that heat decides. Each is a function of tier, place and a start temperature that is stated and cautious, never of a plan.
/// Starts and ends are common practice (no source): the shop's own readings correct the place and the cake.
/// </summary>
/// <param name="Figures">The shop's thicknesses and densities.</param>
/// <param name="CakeTimes">The shop's own factor on how well its cakes conduct; 1 if it has no readings.</param>
public sealed record Waits(CakeFigures Figures, double CakeTimes = 1, bool Inches = true)
{
    /// <summary>°C of a layer when it is turned out: ten minutes after the oven (98 in the middle, 80 outside).</summary>
    public const double TurnedOut = 90;

    /// <summary>°C at which a layer may be wrapped: its core, and its base no longer warm to the hand.</summary>
    public const double Wrapped = 30;

    /// <summary>°C of the core at which a layer cuts clean and does not slide.</summary>
    public const double FirmToFill = 15;

    /// <summary>°C of coats as they go on.</summary>
    public const double FreshCoat = 21;

    /// <summary>°C inside when the crumb coat goes on, cautious: filling and turntable warmed it a little.</summary>
    public const double InsideAtCrumb = 16;

    /// <summary>°C inside when the final coat is done, cautious.</summary>
    public const double InsideAtCoat = 18;

    /// <summary>On the rack until it may be wrapped.</summary>
    public HeatWait Cool(CakeTier tier, HeatPlace place) => Of(
        tier, place, CakeBodies.Layer, HeatStart.Even(TurnedOut), false, 0, "cool", [new(HeatSpot.Core, Wrapped), new(HeatSpot.Base, Wrapped)]);

    /// <summary>Wrapped layers until they may be filled, in a fridge or a freezer.</summary>
    public HeatWait FirmToFillIn(CakeTier tier, HeatPlace place) => Of(
        tier, place, CakeBodies.Layer, HeatStart.Even(Wrapped), false, 0, "firm", [new(HeatSpot.Core, FirmToFill)]);

    /// <summary>The crumb coat until the next coat may go on: top and side at 10 °C.</summary>
    public HeatWait SetCrumb(CakeTier tier, HeatPlace place) => Of(
        tier, place, (t, f) => CakeBodies.Tier(t, CoatState.Crumb, f), new HeatStart(InsideAtCrumb, FreshCoat), false, 0, "set", [new(HeatSpot.Top, 10), new(HeatSpot.Side, 10)]);

    /// <summary>The finished tier until it carries another: coat at 8 °C, mean at 12; two hours at least.</summary>
    public HeatWait FirmToStack(CakeTier tier, HeatPlace place, CoatState coat = CoatState.Cream) => Of(
        tier, place, (t, f) => CakeBodies.Tier(t, coat, f), new HeatStart(InsideAtCoat, FreshCoat), false, 120, "firm to stack", [new(HeatSpot.Top, 8), new(HeatSpot.Side, 8), new(HeatSpot.Mean, 12)]);

    /// <summary>The finished tier until it may travel: its core at 8 °C, which takes the night for most; eight hours at least.</summary>
    public HeatWait FirmToTravel(CakeTier tier, HeatPlace place, CoatState coat = CoatState.Cream) => Of(
        tier, place, (t, f) => CakeBodies.Tier(t, coat, f), new HeatStart(InsideAtCoat, FreshCoat), false, 480, "firm to travel", [new(HeatSpot.Core, 8)]);

    /// <summary>Wrapped layers from the freezer until they cut: the coldest place at 4 °C in a room, just thawed in a fridge.</summary>
    public HeatWait Thaw(CakeTier tier, HeatPlace place) => Of(
        tier, place, CakeBodies.Layer, HeatStart.Even(-18), true, 0, "thaw", [new(HeatSpot.Coldest, place.IsCold ? Math.Min(0, place.Celsius - 2) : 4)]);

    private HeatWait Of(
        CakeTier tier, HeatPlace place, Func<CakeTier, CakeFigures, HeatBody> body, HeatStart start, bool baseShut, int atLeast, string what, IReadOnlyList<HeatGoal> goals)
    {
        Problem[] problems =
        [
            .. CakeBodies.Problems(tier, Figures), .. place.Problems(),
            .. HeatChecks.Between("cakes, factor", CakeTimes, 0.2, 5, " times", "Clear the readings and measure again."),
        ];
        if (problems.Length > 0)
        {
            return HeatWait.None(problems);
        }

        var made = body(tier, Figures).With(m => m.IsEaten ? m.Conducting(CakeTimes) : m);
        var size = $"{TierNames.Of(tier, Inches)}, {Tall(tier)}";
        return HeatRanges.Of(made, start, place, baseShut, 0, goals) is { } range
            ? new HeatWait(range, atLeast, $"{size}: {HeatWait.Said(Math.Max(atLeast, HeatWait.Up(range.Typical)))} in {place.Name}.", [])
            : HeatWait.None([HeatRanges.TooClose(size, what, place, goals)]);
    }

    private string Tall(CakeTier tier) => Inches && tier.Height.Inches % 1 == 0 ? Invariant($"{tier.Height.Inches:0} in high") : Invariant($"{tier.Height.Centimetres:0.#} cm");
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
