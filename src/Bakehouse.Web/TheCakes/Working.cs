namespace Bakehouse.Web.TheCakes;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Structure;
using Bakehouse.Web.Shell;

/// <summary>A figure with how it was worked out.</summary>
/// <param name="How">The formula, or what was compared.</param>
/// <param name="Source">Where that is published.</param>
public sealed record WorkingLine(string What, string Value, string How, string Source);

/// <summary>Figures that belong together.</summary>
public sealed record WorkingPart(string Name, IReadOnlyList<WorkingLine> Lines);

/// <summary>Loads, balance, road and lifting of a cake, each figure with formula and source.</summary>
public static class Working
{
    /// <summary>A part for every tier that carries one, top first, then the whole cake; nothing for cupcakes alone.</summary>
    /// <param name="routeMinutes">On the road, 0 if it is collected.</param>
    public static IReadOnlyList<WorkingPart> Of(BuildSheet sheet, int routeMinutes, SheetChoices choices, Words words)
    {
        var parts = TravelPart.Of(sheet, routeMinutes);
        return
        [
            .. StackLoads.Of(sheet, choices.Supports, choices.Board).Reverse().Select(load => new WorkingPart(
                $"{words.Tier(sheet.Stack[load.Tier].Tier)}: {load.Supports.Count} × {choices.Supports.Name.ToLowerInvariant()}", [.. Load(sheet, load, choices, words)])),
            .. parts.Count == 0 ? Array.Empty<WorkingPart>() :
            [
                new WorkingPart("The whole cake", [.. Whole(sheet, choices, words), .. parts.Select(p => Lifted(p, parts.Count == 1 ? "" : $" of {PartWords.Name(p, sheet, words)}", words))]),
                new WorkingPart("Boards, seams and room on a shelf", [.. WorkingRoom.Lines(sheet, parts, words)]),
            ],
        ];
    }

    private static IEnumerable<WorkingLine> Load(BuildSheet sheet, TierLoad load, SheetChoices choices, Words words)
    {
        yield return new("Stands on it", $"{words.Weight(load.Carried)}, {N(load.Newtons)} N", $"tiers above with their boards × {Crumb.Gravity.ToString(CultureInfo.InvariantCulture)} m/s²", "Standard gravity, CGPM 1901");
        yield return new($"On each {choices.Supports.Word}", $"{N(load.Each)} N", $"{N(load.Newtons)} N ÷ {load.Supports.Count}, {N(load.Apart.Centimetres)} cm apart on a ring of {N(load.Supports.RingDiameter.Centimetres)} cm", "Shared evenly; count and ring: common practice, no source");
        yield return new($"A {choices.Supports.Word} under the board", $"presses through at {N(load.Punches)} N, {Times(load.Punches / load.Each)} what stands on it", $"{choices.Board.Name.ToLowerInvariant()} is punched at {N(choices.Board.Punching)} MPa × π·d²/4, d = {N(choices.Supports.Across.Millimetres)} mm", choices.Board.Source);
        yield return new($"A {choices.Supports.Word} by itself", $"gives way at {N(load.Carries)} N, {Times(load.Factor)} what stands on it", $"{ColumnOf(choices.Supports, load.Supports.Length)}, {words.CutTo(load.Supports.Length)} long, both ends free to turn", $"Budynas and Nisbett, Shigley’s, ch. 4; {choices.Supports.Material.Source}");
        var width = sheet.Stack[load.Tier + 1].Board.Diameter;
        yield return new("The board above sags", load.SagMillimetres is { } sag ? $"{N(sag)} mm" : "not known", load.SagMillimetres is null ? $"no stiffness is published for {choices.Board.Name.ToLowerInvariant()}" : $"thin plate on {load.Supports.Count} points at its rim; look from {N(StackLoads.SagLimit(width))} mm", "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells");
        yield return new("Cut unevenly it leans", $"{N(load.Lean(Length.FromMillimetres(1)))}°", "for each millimetre that one side is cut shorter: atan(1 mm ÷ ring)", "Geometry");
        yield return new($"Without {choices.Supports.Word}s it sinks", $"{Percent(load.CrumbGives.Least)} to {(load.CrumbGives.Most >= 1 ? "crushed flat" : Percent(load.CrumbGives.Most))}", "of its height the crumb would give: weight ÷ foot ÷ 10 to 1 kPa", "J. Home Econ. Jpn 38(12):1063, 1987");
    }

    private static string ColumnOf(SupportKind kind, Length length) => kind.IsSlender(length) ? "Euler: π²·E·I ÷ L²" : "Johnson: A·S·(1 − S·(L/k)² ÷ (4·π²·E))";

    private static IEnumerable<WorkingLine> Whole(BuildSheet sheet, SheetChoices choices, Words words)
    {
        yield return new("Mass", words.Weight(sheet.Mass), $"tiers {words.Weight(sheet.Cake)}, boards and drum {words.Weight(sheet.BoardsAndDrum)}", "Volumes × densities; sponge: USDA SR28, board: USDA Wood Handbook 1999");
        yield return new("Centre of gravity", words.CutTo(sheet.CentreOfGravity), "above the table: Σ m·z ÷ Σ m", "Statics");
        yield return new("Tips over", $"from {N(sheet.TipsAt)} g sideways", $"half the bottom tier ÷ {words.CutTo(sheet.CentreOfGravity)}, stiff and unslipping; an emergency stop is {N(Road.Breaking.Forward)} g", "49 CFR 393.102(a)(1)");
        yield return new("Slides on its board", $"from {N(Road.SlidesAt(choices.Underlay))} g", $"friction: {choices.Underlay.Name.ToLowerInvariant()}; an urgent stop is {N(Road.Urgent.Gravities)} g", $"{choices.Underlay.Source}; {Road.Urgent.Source}");
    }

    private static WorkingLine Lifted(TravelPart part, string of, Words words)
    {
        var carrying = part.Carrying;
        return new WorkingLine(
            $"Lifting index{of} (1 is the limit)", double.IsFinite(carrying.Index) ? N(carrying.Index) : "none", carrying.Recommended > 0 ? $"{words.Weight(part.Mass)} ÷ {N(carrying.Recommended)} kg, from 23 kg for a box of {N(carrying.BoxCentimetres)} cm set down once from a bench; above 1 look again" : $"a box of {N(carrying.BoxCentimetres)} cm is beyond the equation: two people or a trolley", "NIOSH, DHHS publication 94-110");
    }

    /// <summary>"14 times"; above a hundred no figure says more.</summary>
    private static string Times(double factor) => factor >= 100 ? "over 100 times" : $"{factor.ToString(factor < 10 ? "0.#" : "0", CultureInfo.InvariantCulture)} times";

    private static string Percent(double share) => $"{(share * 100).ToString("0", CultureInfo.InvariantCulture)} %";

    private static string N(double number) => Math.Abs(number) >= 100 ? number.ToString("0", CultureInfo.InvariantCulture) : number.ToString("0.##", CultureInfo.InvariantCulture);

    private static string N(decimal number) => N((double)number);
}
