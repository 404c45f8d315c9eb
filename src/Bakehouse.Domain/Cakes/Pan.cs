namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A straight-sided baking pan.</summary>
/// <param name="Shape">Its outline inside.</param>
/// <param name="Depth">Inside depth.</param>
public sealed record Pan(Shape Shape, Length Depth)
{
    /// <summary>Volume up to the brim.</summary>
    public Volume Brim => Shape.Area * Depth;

    /// <summary>Batter that fills it to that fraction of the brim, above 0 to 1.</summary>
    public Volume Batter(double fill) => fill is > 0 and <= 1
        ? Brim * fill
        : throw new ArgumentOutOfRangeException(nameof(fill), fill, "A pan is filled by more than 0 and at most 1 of its brim.");

    /// <summary>How much of this pan's recipe another pan takes: the ratio of the volumes to the brim.</summary>
    public double ScaleTo(Pan other) => other.Brim / Brim;
}

/// <summary>The pans of one tier.</summary>
/// <param name="Count">How many are baked.</param>
/// <param name="Depth">The shallowest pan of the shop that is deep enough; the deepest if none is.</param>
/// <param name="BakedHeight">How high the cake in each bakes: the tier's height shared out.</param>
/// <param name="Batter">Batter in each.</param>
public sealed record TierPans(int Count, Length Depth, Length BakedHeight, Volume Batter)
{
    /// <summary>Layers thinner than this are split, two from one thicker cake (common practice, no source).</summary>
    public static Length SplitUnder { get; } = Length.FromCentimetres(3);

    /// <summary>Batter in all of them.</summary>
    public Volume AllBatter => Own.Count == 0 ? Batter * Count : Volume.Sum(Own);

    /// <summary>Batter in each of unequal ones, from the foot up; empty if all have the same.</summary>
    public IReadOnlyList<Volume> Own { get; init; } = [];

    /// <summary>
    /// Pans for a tier. Each bakes to its share of the tier's height, so batter is the fill times the outline times that
    /// height: half a pan rises to a whole one.
    /// </summary>
    public static TierPans Of(Shape shape, Length height, int layers, CakeFigures figures)
    {
        var count = height.Millimetres / layers < SplitUnder.Millimetres ? (layers + 1) / 2 : layers;
        return Baked(shape, height * (1m / count), count, figures);
    }

    /// <summary>Pans for unequal layers: each is baked by itself, to its share of the tier's height; depth and batter are those of the highest.</summary>
    public static TierPans Each(Shape shape, Length height, IReadOnlyList<Length> layers, CakeFigures figures)
    {
        var share = height.Millimetres / layers.Sum(l => l.Millimetres);
        return Baked(shape, layers.Max() * share, layers.Count, figures) with { Own = [.. layers.Select(l => new Pan(shape, l * share).Batter(figures.Fill))] };
    }

    /// <summary>From this width on a pan gets a heating core in the middle: 11 in (11 to 12; common practice, no source).</summary>
    public static Length CoreFrom { get; } = Length.FromInches(11);

    /// <summary>Nothing is baked: a false tier.</summary>
    public static TierPans None { get; } = new(0, default, default, Volume.Zero);

    private static TierPans Baked(Shape shape, Length baked, int count, CakeFigures figures)
    {
        // A hair of rounding must not ask for the next deeper pan.
        var depth = figures.PanDepths.Where(d => d.Millimetres >= baked.Millimetres - 0.01m).DefaultIfEmpty(figures.PanDepths.Max()).Min();
        return new TierPans(count, depth, baked, new Pan(shape, baked).Batter(figures.Fill));
    }
}
