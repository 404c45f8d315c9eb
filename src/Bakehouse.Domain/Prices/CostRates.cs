namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>What a pack of an ingredient costs.</summary>
/// <param name="Ingredient">Its id.</param>
/// <param name="Pack">In it, more than zero.</param>
public sealed record PackPrice(string Ingredient, Mass Pack, decimal Price)
{
    /// <summary>A gram of it, not rounded.</summary>
    public decimal Gram => Price / Pack.Grams;
}

/// <summary>What a board or box of a size costs: the smallest that is large enough is taken.</summary>
/// <param name="Size">Width.</param>
public sealed record SizePrice(Length Size, decimal Price);

/// <summary>What things and hours cost a shop. All of it is the shop's own; nothing is guessed.</summary>
/// <param name="Wage">Money an hour of hands, with all that comes on top of it.</param>
/// <param name="OverheadAYear">Rent, power, insurance and the like.</param>
/// <param name="OrdersAYear">1 and up: each bears an equal part.</param>
/// <param name="MarkUp">On cost, 0.30 for 30 % (15 to 45 % in use; common practice, no source).</param>
/// <param name="LeastMarkUp">Below it no cake goes out: the floor price.</param>
/// <param name="Step">Prices are rounded up to a multiple of it.</param>
public sealed record CostRates(
    decimal Wage,
    decimal OverheadAYear,
    int OrdersAYear,
    decimal MarkUp,
    decimal LeastMarkUp,
    decimal Step,
    IReadOnlyList<PackPrice> Packs,
    IReadOnlyList<SizePrice> Boards,
    IReadOnlyList<SizePrice> Drums,
    IReadOnlyList<SizePrice> Boxes,
    decimal SupportEach,
    decimal RodEach)
{
    /// <summary>Case, insert and box for one cupcake.</summary>
    public decimal CupcakePack { get; init; }

    /// <summary>What one order bears of the overhead, not rounded.</summary>
    public decimal Overhead => OverheadAYear / OrdersAYear;

    /// <summary>Everything that is wrong with them.</summary>
    public IEnumerable<Problem> Problems()
    {
        (string Where, decimal Value)[] amounts = [("Wage", Wage), ("Overhead", OverheadAYear), ("Mark-up", MarkUp), ("Least mark-up", LeastMarkUp), ("Support", SupportEach), ("Rod", RodEach), ("Case and box", CupcakePack)];
        foreach (var (where, value) in amounts.Where(a => a.Value < 0))
        {
            yield return new Problem(where, Invariant($"{value}"), "This is zero or more.", "Give what it costs.");
        }

        if (OrdersAYear < 1)
        {
            yield return new Problem("Orders a year", Invariant($"{OrdersAYear}"), "Overhead is shared by one order at least.", "Give how many you made last year.");
        }

        if (Step <= 0)
        {
            yield return new Problem("Rounding", Invariant($"{Step}"), "Prices are rounded to a step above zero.", "0.01, 1 or 5 are usual.");
        }

        if (LeastMarkUp > MarkUp)
        {
            yield return new Problem("Least mark-up", Invariant($"{LeastMarkUp * 100:0.#} %"), Invariant($"It is above the usual mark-up ({MarkUp * 100:0.#} %)."), "Make it smaller.");
        }

        foreach (var pack in Packs.Where(p => p.Pack.Grams <= 0 || p.Price < 0))
        {
            yield return new Problem(pack.Ingredient, Invariant($"{pack.Pack.Grams} g for {pack.Price}"), "A pack holds more than nothing and costs zero or more.", "Give what stands on it.");
        }

        foreach (var size in Boards.Concat(Drums).Concat(Boxes).Where(s => s.Price < 0 || s.Size.Millimetres <= 0))
        {
            yield return new Problem("Board or box", Invariant($"{size.Size.Inches:0.#} in for {size.Price}"), "It has a size, and costs zero or more.", "Give its size and price.");
        }
    }
}
