namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>
/// A batch of cupcakes of one sponge and one swirl. It stands beside the tiers, never on or under one: it has no board, no supports and no coat
/// but its swirl, and it counts one portion a piece. As an entry of the order's tiers it is covered by whatever looks at what an order contains.
/// </summary>
/// <param name="Count">1 to <see cref="Most"/>.</param>
public sealed record Cupcakes(int Count)
{
    /// <summary>So many at most in one batch: ten trays; more are another batch (common practice, no source).</summary>
    public const int Most = 240;

    /// <summary>So many batches at most in one order (common practice, no source).</summary>
    public const int MostBatches = 6;

    /// <summary>Cups of a tin: 3 by 4 (common practice, no source).</summary>
    public const int InTin = 12;

    /// <summary>Cupcakes that are piped, boxed and put on a shelf together: two trays of a tin each (common practice, no source).</summary>
    public const int OnTray = 24;

    /// <summary>Across the top of a case: 2 3/4 in (common practice, no source; 2 1/2 to 3 in in use).</summary>
    public static Length Across { get; } = Length.FromInches(2.75m);

    /// <summary>Baked, in its case, without its swirl: 4 cm (common practice, no source).</summary>
    public static Length Baked { get; } = Length.FromCentimetres(4);

    /// <summary>The swirl on it: 4 cm high (common practice, no source; 3 to 5 in use).</summary>
    public static Length SwirlHeight { get; } = Length.FromCentimetres(4);

    /// <summary>From middle to middle on a tray and in a box, so that swirls don't touch: 3 1/2 in (common practice, no source).</summary>
    public static Length Apart { get; } = Length.FromInches(3.5m);

    /// <summary>A tin of twelve from outside: 14 × 10 1/2 in (common practice, no source). A tray that takes what comes out of it is as large.</summary>
    public static Slab Tin { get; } = new(Length.FromInches(14), Length.FromInches(10.5m));

    /// <summary>Tins, the last one perhaps not full.</summary>
    public int Tins => (Count + InTin - 1) / InTin;

    /// <summary>Cupcakes in each tin.</summary>
    public IReadOnlyList<int> EachTin => Shared(InTin);

    /// <summary>Cupcakes in each lot that is piped and boxed together, the first first.</summary>
    public IReadOnlyList<int> EachTray => Shared(OnTray);

    /// <summary>True for a tier of an order that is a batch of cupcakes.</summary>
    public static bool Are(CakeTier tier) => tier.Special?.Cupcakes is not null;

    /// <summary>The entry of an order for a batch: all but its count, sponge and swirl is given.</summary>
    /// <param name="swirl">Colours of the swirl; the shares add up to 1.</param>
    public static CakeTier Batch(Guid id, int count, string sponge, IReadOnlyList<CoatColour> swirl) =>
        new(id, Across, Baked, 1, sponge, "buttercream", swirl) { Special = new TierSpecial { Cupcakes = new Cupcakes(count) } };

    /// <summary>"24 cupcakes", "1 cupcake".</summary>
    public override string ToString() => Invariant($"{Count} cupcake{(Count == 1 ? "" : "s")}");

    private List<int> Shared(int most) => [.. Enumerable.Range(0, (Count + most - 1) / most).Select(i => Math.Min(most, Count - (i * most)))];
}

/// <summary>A box with an insert for so many cupcakes.</summary>
/// <param name="Holds">Cupcakes, at most.</param>
/// <param name="Shape">Inside, from above.</param>
public sealed record CupcakeBox(int Holds, Slab Shape)
{
    /// <summary>Inside: 4 in, so that no swirl touches the lid (common practice, no source).</summary>
    public static Length Height { get; } = Length.FromInches(4);

    /// <summary>
    /// Boxes that are sold: of 4, 6 and 12, 7 × 7, 10 × 7 and 14 × 10 in (common practice, no source): 3 1/2 in and a little less for each
    /// cupcake in a row.
    /// </summary>
    public static IReadOnlyList<CupcakeBox> Sold { get; } = [Of(4, 7, 7), Of(6, 10, 7), Of(12, 14, 10)];

    /// <summary>Boxes for so many: the fewest that take them, and of these the ones with the fewest empty places; the fullest first.</summary>
    /// <param name="count">1 and up.</param>
    public static IReadOnlyList<CupcakeBox> For(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var largest = Sold[^1];
        var full = count / largest.Holds;
        var rest = count % largest.Holds;
        return [.. Enumerable.Repeat(largest, full), .. rest == 0 ? [] : new[] { Sold.First(b => b.Holds >= rest) }];
    }

    /// <summary>"2 × 12 and 1 × 6": boxes by what they hold, the largest first.</summary>
    public static string Said(IEnumerable<CupcakeBox> boxes) =>
        string.Join(" and ", boxes.GroupBy(b => b.Holds).OrderByDescending(g => g.Key).Select(g => Invariant($"{g.Count()} × {g.Key}")));

    private static CupcakeBox Of(int holds, int wide, int deep) => new(holds, new Slab(Length.FromInches(wide), Length.FromInches(deep)));
}
