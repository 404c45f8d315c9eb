namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>A plain cake that stands in the kitchen and is cut beside the one that is shown, so that its tiers stay as they are.</summary>
/// <param name="Tier">With flavour and coat of the cake beside which it is cut; without an id of its own yet.</param>
/// <param name="Over">More than is missing.</param>
/// <param name="IsTight">True if a tenth more than is missing is not reached: a slice that breaks, and somebody has none.</param>
public sealed record CuttingCake(CakeTier Tier, int Portions, int Over, bool IsTight)
{
    /// <summary>Least that a cutting cake has over: a tenth of what is missing (common practice, no source).</summary>
    public const decimal LeastOver = 0.1m;

    // Slabs lie low: two layers on 8 cm (common practice, no source).
    private static readonly (Length Height, int Layers) Low = (Length.FromCentimetres(8), 2), High = (Length.FromCentimetres(10), 3);

    /// <summary>
    /// The smallest slab and the smallest round that serve what is missing; the better one first: it is not tight, then it is a slab, which is one pan
    /// and one low place and cuts into a grid. Empty if none serves so many.
    /// </summary>
    /// <param name="missing">Portions, 1 and up.</param>
    /// <param name="like">The tier whose flavour and coat it takes.</param>
    /// <param name="inches">True where pans are bought in inches.</param>
    /// <param name="canBe">True for a tier that the shop can bake and stand.</param>
    public static IReadOnlyList<CuttingCake> For(int missing, Cut cut, CakeTier like, bool inches, CakeFigures figures, Func<CakeTier, bool> canBe)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(missing, 1);
        var slabs = (inches ? [(13, 9), (18, 13)] : new[] { (30, 20), (40, 30) })
            .Select(s => Sized(like, new Outline(OutlineKind.Rectangle, Size(s.Item1, inches), Size(s.Item2, inches)), Size(s.Item1, inches), Low));
        var rounds = (inches ? Reaching.Sizes : Reaching.MetricSizes).Select(s => Sized(like, null, s, High));
        return
        [
            .. new[] { slabs, rounds }
                .Select(tiers => tiers.Where(canBe).Select(t => Of(t, missing, cut, figures)).FirstOrDefault(c => c.Over >= 0))
                .OfType<CuttingCake>()
                .OrderBy(c => c.IsTight),
        ];
    }

    private static Length Size(int size, bool inches) => inches ? Length.FromInches(size) : Length.FromCentimetres(size);

    private static CakeTier Sized(CakeTier like, Outline? outline, Length wide, (Length Height, int Layers) size) => like with
    {
        Id = Guid.Empty, Diameter = wide, Height = size.Height, Layers = size.Layers, Special = outline is null ? null : new TierSpecial { Outline = outline },
    };

    private static CuttingCake Of(CakeTier tier, int missing, Cut cut, CakeFigures figures)
    {
        var portions = TierPortions.Count(tier.Shape, tier.Height, cut, figures);
        return new CuttingCake(tier, portions, portions - missing, portions - missing < missing * LeastOver);
    }
}
