namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Measures;
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
    /// <param name="baked">How high it baked; null if each layer is baked by itself.</param>
    public HeatWait Cool(CakeTier tier, HeatPlace place, Length? baked = null) => Of(
        tier, place, new("cool", CoatState.Bare, HeatStart.Even(TurnedOut), 0, new(HeatSpot.Core, Wrapped), new(HeatSpot.Base, Wrapped)) { Baked = baked });

    /// <summary>Wrapped layers until they may be filled, in a fridge or a freezer.</summary>
    /// <param name="baked">How high they baked; null if each layer is baked by itself.</param>
    public HeatWait FirmToFillIn(CakeTier tier, HeatPlace place, Length? baked = null) => Of(
        tier, place, new("firm", CoatState.Bare, HeatStart.Even(Wrapped), 0, new HeatGoal(HeatSpot.Core, FirmToFill)) { Baked = baked });

    /// <summary>The crumb coat until the next coat may go on: top and side at 10 °C.</summary>
    /// <param name="atLeast">Minutes that practice asks for.</param>
    public HeatWait SetCrumb(CakeTier tier, HeatPlace place, int atLeast = 0) => Of(
        tier, place, new("set", CoatState.Crumb, new HeatStart(InsideAtCrumb, FreshCoat), atLeast, new(HeatSpot.Top, 10), new(HeatSpot.Side, 10)));

    /// <summary>The finished tier until it carries another: coat at 8 °C, mean at 12; two hours at least.</summary>
    public HeatWait FirmToStack(CakeTier tier, HeatPlace place, CoatState coat = CoatState.Cream) => Of(
        tier, place, new("firm to stack", coat, new HeatStart(InsideAtCoat, FreshCoat), 120, new(HeatSpot.Top, 8), new(HeatSpot.Side, 8), new(HeatSpot.Mean, 12)));

    /// <summary>The finished tier until it may travel: its core at 8 °C, which takes the night for most; eight hours at least.</summary>
    public HeatWait FirmToTravel(CakeTier tier, HeatPlace place, CoatState coat = CoatState.Cream) => Of(
        tier, place, new("firm to travel", coat, new HeatStart(InsideAtCoat, FreshCoat), 480, new HeatGoal(HeatSpot.Core, 8)));

    /// <summary>Wrapped layers from the freezer until they cut: the coldest place at 4 °C in a room, just thawed in a fridge.</summary>
    /// <param name="baked">How high they baked; null if each layer is baked by itself.</param>
    public HeatWait Thaw(CakeTier tier, HeatPlace place, Length? baked = null) => Of(
        tier, place, new("thaw", CoatState.Bare, HeatStart.Even(-18), 0, new HeatGoal(HeatSpot.Coldest, place.IsCold ? Math.Min(0, place.Celsius - 2) : 4)) { BaseShut = true, Baked = baked });

    private HeatWait Of(CakeTier tier, HeatPlace place, WaitedFor wait)
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

        var size = $"{TierNames.Of(tier, Inches)}, {(wait.Baked is { } baked ? Invariant($"baked {baked.Centimetres:0.#} cm") : Tall(tier))}";
        return KnownWaits.Of(this, tier, place, wait) is { } range
            ? new HeatWait(range, wait.AtLeast, $"{size}: {HeatWait.Said(Math.Max(wait.AtLeast, HeatWait.Up(range.Typical)))} in {place.Name}.", [])
            : HeatWait.None([HeatRanges.TooClose(size, wait.What, place, wait.Goals)]);
    }

    private string Tall(CakeTier tier) => Inches && tier.Height.Inches % 1 == 0 ? Invariant($"{tier.Height.Inches:0} in high") : Invariant($"{tier.Height.Centimetres:0.#} cm");
}
