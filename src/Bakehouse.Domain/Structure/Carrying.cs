namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using static System.FormattableString;

/// <summary>What one person lifts, by the box it is in.</summary>
/// <param name="Recommended">Kilograms that NIOSH's equation recommends.</param>
/// <param name="Index">The load by that; above 1 look again.</param>
public sealed record Carrying(double Kilograms, double BoxCentimetres, double Recommended, double Index)
{
    /// <summary>A cake in its box, set down once from a bench; null if there are only cupcakes, whose boxes are carried one by one.</summary>
    public static Carrying? Of(BuildSheet sheet)
    {
        if (sheet.Box is not { } packed)
        {
            return null;
        }

        var (kilograms, box) = ((double)sheet.Mass.Kilograms, (double)packed.Width.Centimetres);
        var lift = Lift.FromBench(box);
        return new Carrying(kilograms, box, Lifting.Recommended(lift), Lifting.Index(kilograms, lift));
    }

    /// <summary>What to look at: the index, and the shop's own two settings for two people.</summary>
    public static IEnumerable<Look> Looks(BuildSheet sheet)
    {
        if (Of(sheet) is not { } carrying)
        {
            yield break;
        }

        if (carrying.Index > 1)
        {
            yield return new Look("Carrying", Invariant($"{carrying.Kilograms:0.#} kg"), Invariant($"In this box one person should lift {carrying.Recommended:0.#} kg at most."), "Look: two people or a trolley.", "NIOSH 94-110");
        }
        else if (sheet.TwoCarry)
        {
            yield return new Look("Carrying", Invariant($"{carrying.Kilograms:0.#} kg"), Invariant($"From {sheet.Figures.TwoCarryFrom.Kilograms:0.#} kg two people carry."), "Look: two people or a trolley.", "The shop's setting");
        }

        if (sheet.TwoLower)
        {
            yield return new Look("Stacking", Invariant($"{sheet.Stack.Skip(1).Max(t => t.Mass.Kilograms):0.#} kg"), Invariant($"From {sheet.Figures.TwoLowerFrom.Kilograms:0.#} kg two people lower a tier onto its supports."), "Look: call a second pair of hands.", "The shop's setting");
        }
    }
}
