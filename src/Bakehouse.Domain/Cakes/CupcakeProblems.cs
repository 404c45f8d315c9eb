namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>What keeps a batch of cupcakes from being made at all.</summary>
internal static class CupcakeProblems
{
    /// <summary>Everything that is wrong with one batch but its colours.</summary>
    /// <param name="where">The field, as it is called on screen.</param>
    public static IEnumerable<Problem> Of(CakeTier tier, Cupcakes cupcakes, string where)
    {
        if (cupcakes.Count is < 1 or > Cupcakes.Most)
        {
            yield return new Problem(where, Invariant($"{cupcakes.Count}"), Invariant($"A batch is 1 to {Cupcakes.Most} cupcakes."), cupcakes.Count < 1 ? "Give how many, or take them away." : "Add a second batch for the rest.");
        }

        if (tier.Layers != 1)
        {
            yield return new Problem(where, Invariant($"{tier.Layers} layers"), "A cupcake has one layer: there is no filling in it.", "Give it one layer.");
        }

        if (tier.Special! with { Cupcakes = null, LayerHeights = [] } != Plain || tier.Special.LayerHeights.Count > 0)
        {
            yield return new Problem(where, Invariant($"{cupcakes}"), "Cupcakes have no outline, layers, pillars, paste, beads or drip of a tier.", "Take that off, or order a tier beside them.");
        }
    }

    /// <summary>Tiers come first, bottom first; what stands beside them comes after.</summary>
    public static IEnumerable<Problem> Order(IReadOnlyList<CakeTier> tiers)
    {
        if (tiers.SkipWhile(t => !t.StandsBeside).Any(t => !t.StandsBeside))
        {
            yield return new Problem("Tiers", Invariant($"{tiers.Count}"), "Cupcakes stand beside the cake, and a tier comes after them.", "Write the tiers first, the cupcakes after the top one.");
        }
    }

    private static readonly TierSpecial Plain = new() { LayerHeights = [] };
}
