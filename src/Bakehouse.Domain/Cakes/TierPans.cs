namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>The pans of one tier.</summary>
/// <param name="Count">How many are baked.</param>
/// <param name="Depth">The shallowest pan of the shop that is deep enough; the deepest if none is.</param>
/// <param name="BakedHeight">How high the cake in the fullest bakes.</param>
/// <param name="Batter">Batter in each, or in the fullest of unequal ones.</param>
public sealed record TierPans(int Count, Length Depth, Length BakedHeight, Volume Batter)
{
    /// <summary>Layers thinner than this are split, two from one thicker cake (common practice, no source).</summary>
    public static Length SplitUnder { get; } = Length.FromCentimetres(3);

    /// <summary>From this width on a pan gets a heating core in the middle: 11 in (11 to 12; common practice, no source).</summary>
    public static Length CoreFrom { get; } = Length.FromInches(11);

    /// <summary>Nothing is baked: a false tier.</summary>
    public static TierPans None { get; } = new(0, default, default, Volume.Zero);

    /// <summary>Batter in all of them.</summary>
    public Volume AllBatter => Own.Count == 0 ? Batter * Count : Volume.Sum(Own);

    /// <summary>Batter in each of unequal ones, from the foot up; empty if all have the same.</summary>
    public IReadOnlyList<Volume> Own { get; init; } = [];

    /// <summary>Which layers come out of which cake, counted from the foot, 1 and up; a cake of more than one layer is split. Empty for cupcakes and foam.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Layers { get; init; } = [];

    /// <summary>True if each cake is baked as two half-rounds, since no oven takes the whole pan; then there are twice as many pans as cakes.</summary>
    public bool Halved { get; init; }

    /// <summary>How many of them are split.</summary>
    public int Split => Layers.Count(l => l.Count > 1);

    /// <summary>
    /// Pans for a tier of equal layers; where they are thin, one cake is split into two. Each bakes to the share of the tier's height that its layers
    /// have, so batter is the fill times the outline of the pan times that height: half a pan rises to a whole one. A figure or a letter takes the batter
    /// of the slab that it is cut from.
    /// </summary>
    public static TierPans Of(Shape shape, Length height, int layers, CakeFigures figures)
    {
        var each = height.Millimetres / layers < SplitUnder.Millimetres ? 2 : 1;
        return Baked(shape, [.. Enumerable.Range(1, layers).Chunk(each)], layer => height * (1m / layers), figures);
    }

    /// <summary>Pans for unequal layers: each is baked by itself, to its share of the tier's height; depth and batter are those of the highest.</summary>
    public static TierPans Each(Shape shape, Length height, IReadOnlyList<Length> layers, CakeFigures figures)
    {
        var share = height.Millimetres / layers.Sum(l => l.Millimetres);
        return Baked(shape, [.. Enumerable.Range(1, layers.Count).Chunk(1)], layer => layers[layer - 1] * share, figures);
    }

    /// <summary>The pan of a tier: two half-rounds where the whole round is wider than any oven of the shop takes.</summary>
    public static Shape PanOf(Shape shape, CakeFigures figures) =>
        shape is Round round && figures.WidestPan is { } widest && round.Diameter > widest ? new HalfRound(round.Diameter) : shape.BakedIn();

    /// <param name="cakes">The layers of each cake that is baked.</param>
    /// <param name="high">What a layer has of the tier's height.</param>
    private static TierPans Baked(Shape shape, IReadOnlyList<IReadOnlyList<int>> cakes, Func<int, Length> high, CakeFigures figures)
    {
        var pan = PanOf(shape, figures);
        var times = pan is HalfRound && shape is Round ? 2 : 1;
        List<Length> heights = [.. cakes.Select(c => c.Select(high).Aggregate((a, b) => a + b))];
        var highest = heights.Max();
        // A hair of rounding must not ask for the next deeper pan, nor make equal pans unequal.
        var depth = figures.PanDepths.Where(d => d.Millimetres >= highest.Millimetres - 0.01m).DefaultIfEmpty(figures.PanDepths.Max()).Min();
        return new TierPans(cakes.Count * times, depth, highest, new Pan(pan, highest).Batter(figures.Fill))
        {
            Layers = cakes,
            Halved = times == 2,
            Own = heights.TrueForAll(h => highest.Millimetres - h.Millimetres < 0.01m) ? [] : [.. heights.SelectMany(h => Enumerable.Repeat(new Pan(pan, h).Batter(figures.Fill), times))],
        };
    }
}
