namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>What one person lifts, by the box it is in.</summary>
/// <param name="Recommended">Kilograms that NIOSH's equation recommends.</param>
/// <param name="Index">The load by that; above 1 look again.</param>
public sealed record Carrying(double Kilograms, double BoxCentimetres, double Recommended, double Index)
{
    /// <summary>A cake in its box, set down once from a bench.</summary>
    public static Carrying Of(Mass mass, Box packed)
    {
        var (kilograms, box) = ((double)mass.Kilograms, (double)packed.Width.Centimetres);
        var lift = Lift.FromBench(box);
        return new Carrying(kilograms, box, Lifting.Recommended(lift), Lifting.Index(kilograms, lift));
    }

    /// <summary>The whole cake in its box; null if there are only cupcakes, whose boxes are carried one by one.</summary>
    public static Carrying? Of(BuildSheet sheet) => sheet.Box is { } packed ? Of(sheet.Mass, packed) : null;

    /// <summary>What to look at: the index of each part that is carried, and the shop's own two settings for two people.</summary>
    /// <param name="routeMinutes">On the road, 0 if it is collected.</param>
    public static IEnumerable<Look> Looks(BuildSheet sheet, int routeMinutes = 0)
    {
        var parts = TravelPart.Of(sheet, routeMinutes);
        foreach (var part in parts)
        {
            var where = parts.Count == 1 ? "Carrying" : Invariant($"Carrying {(part.Tiers.Count == 1 ? "tier" : "tiers")} {string.Join(" and ", part.Tiers.Select(t => t + 1))}");
            if (part.Carrying.Index > 1)
            {
                yield return new Look(where, Invariant($"{part.Carrying.Kilograms:0.#} kg"), Invariant($"In this box one person should lift {part.Carrying.Recommended:0.#} kg at most."), "Look: two people or a trolley.", "NIOSH 94-110");
            }
            else if (part.Mass >= sheet.Figures.TwoCarryFrom)
            {
                yield return new Look(where, Invariant($"{part.Carrying.Kilograms:0.#} kg"), Invariant($"From {sheet.Figures.TwoCarryFrom.Kilograms:0.#} kg two people carry."), "Look: two people or a trolley.", "The shop's setting");
            }
        }

        if (sheet.TwoLower)
        {
            yield return new Look("Stacking", Invariant($"{sheet.Stack.Skip(1).Max(t => t.Mass.Kilograms):0.#} kg"), Invariant($"From {sheet.Figures.TwoLowerFrom.Kilograms:0.#} kg two people lower a tier onto its supports."), "Look: call a second pair of hands.", "The shop's setting");
        }
    }
}
