namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>A row of the price list: a portion of a cake with that finish and cut.</summary>
public sealed record PortionPrice(Finish Finish, Cut Cut, decimal Each);

/// <summary>What decoration adds, as a share of the price: 0.20 for 20 %.</summary>
public sealed record DecorationPrice(Decoration Decoration, decimal Share);

/// <summary>Prices by portions and finish, as they are said at the counter before anything is worked out.</summary>
/// <param name="Least">No order costs less.</param>
/// <param name="Step">Prices are rounded up to a multiple of it.</param>
public sealed record PriceList(IReadOnlyList<PortionPrice> Portions, IReadOnlyList<DecorationPrice> Decorations, decimal Least, decimal Step)
{
    /// <summary>One cupcake with a simple swirl; null as long as the list has no price for it.</summary>
    public decimal? Cupcake { get; init; }

    /// <summary>The price of so many portions; null if the list has no row for that finish and cut.</summary>
    /// <param name="portions">1 and up.</param>
    public decimal? Price(int portions, Cut cut, Finish finish, Decoration decoration)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(portions, 1);
        return Price(portions, 0, cut, finish, decoration);
    }

    /// <summary>
    /// The price of so many portions of cake and so many cupcakes together; decoration adds the same share to both. Null if the list has no row for
    /// what is asked.
    /// </summary>
    /// <param name="portions">Zero if there are only cupcakes.</param>
    /// <param name="cupcakes">Zero if there are none.</param>
    public decimal? Price(int portions, int cupcakes, Cut cut, Finish finish, Decoration decoration)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(portions);
        ArgumentOutOfRangeException.ThrowIfNegative(cupcakes);
        var added = 1 + (Decorations.FirstOrDefault(d => d.Decoration == decoration)?.Share ?? 0);
        var cake = portions == 0 ? 0 : portions * Portions.FirstOrDefault(p => p.Finish == finish && p.Cut == cut)?.Each;
        var beside = cupcakes == 0 ? 0 : cupcakes * Cupcake;
        return (cake + beside) * added is { } price ? Cash.UpTo(Math.Max(Least, price), Step) : null;
    }

    /// <summary>A price against what the cake costs; null if it stands above the floor.</summary>
    public static Problem? Below(decimal price, CakeCost cost) => price >= cost.Floor ? null : new Problem(
        "Price", Invariant($"{price:0.00}"), Invariant($"The floor of this cake is {cost.Floor:0.00}; it costs {cost.Cost:0.00} to make."), Invariant($"Ask {cost.Price:0.00}, or make less of it."));

    /// <summary>Everything that is wrong with the list.</summary>
    public IEnumerable<Problem> Problems()
    {
        foreach (var row in Portions.Where(p => p.Each < 0))
        {
            yield return new Problem("Price list", Invariant($"{row.Each}"), "A portion costs zero or more.", "Give its price.");
        }

        foreach (var twice in Portions.GroupBy(p => (p.Finish, p.Cut)).Where(g => g.Count() > 1))
        {
            yield return new Problem("Price list", Invariant($"{twice.Key.Finish}, {twice.Key.Cut}"), "This row stands twice.", "Take one away.");
        }

        if (Cupcake < 0)
        {
            yield return new Problem("Price list", Invariant($"{Cupcake}"), "A cupcake costs zero or more.", "Give its price.");
        }

        if (Step <= 0 || Least < 0)
        {
            yield return new Problem("Price list", Invariant($"{Step}, {Least}"), "The step is above zero, the least price zero or more.", "Give both.");
        }
    }
}
