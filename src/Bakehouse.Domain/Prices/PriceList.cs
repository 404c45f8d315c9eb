namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>A row of the price list: a portion of a cake with that finish and cut.</summary>
public sealed record PortionPrice(Finish Finish, Cut Cut, decimal Each);

/// <summary>What decoration adds, as a share of the price: 0.20 for 20 %.</summary>
public sealed record DecorationPrice(Decoration Decoration, decimal Share);

/// <summary>A line of a listed price, in words: "2 false tiers".</summary>
public sealed record PriceLine(string What, decimal Amount);

/// <summary>What a cake is asked for by the list.</summary>
/// <param name="Portions">Of the stack; zero if there are only cupcakes.</param>
/// <param name="FalseTiers">Tiers of foam.</param>
/// <param name="Drips">Tiers with a drip.</param>
/// <param name="Paste">True if sugar paste covers it.</param>
/// <param name="Cupcakes">Beside it; decoration adds the same share to them.</param>
public sealed record ListedCake(int Portions, Cut Cut, Finish Finish, Decoration Decoration, int FalseTiers = 0, int Drips = 0, bool Paste = false, int Cupcakes = 0);

/// <summary>Prices by portions and finish, as they are said at the counter before anything is worked out.</summary>
/// <param name="Least">No order costs less.</param>
/// <param name="Step">Prices are rounded up to a multiple of it.</param>
public sealed record PriceList(IReadOnlyList<PortionPrice> Portions, IReadOnlyList<DecorationPrice> Decorations, decimal Least, decimal Step)
{
    /// <summary>One cupcake with a simple swirl; null as long as the list has no price for it.</summary>
    public decimal? Cupcake { get; init; }

    /// <summary>Each tier of foam: it has no portions and is coated all the same; null is not said yet.</summary>
    public decimal? FalseTier { get; init; }

    /// <summary>Each tier with a drip; null is not said yet.</summary>
    public decimal? DripTier { get; init; }

    /// <summary>What sugar paste adds, as a share of the portions' price: 0.30 for 30 %; null is not said yet.</summary>
    public decimal? PasteShare { get; init; }

    /// <summary>The price of a cake; null if the list has no price for something about it.</summary>
    public decimal? Price(ListedCake cake) =>
        Unlisted(cake).Count > 0 ? null : Cash.UpTo(Math.Max(Least, Lines(cake).Sum(l => l.Amount)), Step);

    /// <summary>What makes up the price, before the least price and the step; without lines for what the list has no price for.</summary>
    public IReadOnlyList<PriceLine> Lines(ListedCake cake)
    {
        var (plain, beside) = ((Row(cake)?.Each ?? 0) * cake.Portions, (Cupcake ?? 0) * cake.Cupcakes);
        var share = Decorations.FirstOrDefault(d => d.Decoration == cake.Decoration)?.Share ?? 0;
        return [.. new PriceLine[]
        {
            new(Invariant($"{cake.Portions} {(cake.Portions == 1 ? "portion" : "portions")}"), plain),
            new(cake.Cupcakes == 1 ? "1 cupcake" : Invariant($"{cake.Cupcakes} cupcakes"), beside),
            new(Invariant($"{cake.Decoration} decoration"), (plain + beside) * share),
            new("Sugar paste", cake.Paste ? plain * (PasteShare ?? 0) : 0),
            new(cake.FalseTiers == 1 ? "1 false tier" : Invariant($"{cake.FalseTiers} false tiers"), cake.FalseTiers * (FalseTier ?? 0)),
            new(cake.Drips == 1 ? "Drip on 1 tier" : Invariant($"Drip on {cake.Drips} tiers"), cake.Drips * (DripTier ?? 0)),
        }.Where(l => l.Amount != 0)];
    }

    /// <summary>What of a cake the list has no price for, in words; empty if it is all there.</summary>
    public IReadOnlyList<string> Unlisted(ListedCake cake) => [.. new (string Word, bool Lacks)[]
    {
        ("a portion of that finish and cut", cake.Portions > 0 && Row(cake) is null), ("a cupcake", cake.Cupcakes > 0 && Cupcake is null), ("a false tier", cake.FalseTiers > 0 && FalseTier is null), ("a drip", cake.Drips > 0 && DripTier is null), ("sugar paste", cake.Paste && PasteShare is null),
    }.Where(w => w.Lacks).Select(w => w.Word)];

    private PortionPrice? Row(ListedCake cake) => Portions.FirstOrDefault(p => p.Finish == cake.Finish && p.Cut == cake.Cut);

    /// <summary>A price against what the cake costs; null if it stands above the floor. What it costs to make is not said: a customer may read along.</summary>
    /// <param name="asked">What is asked for it.</param>
    /// <param name="sign">Of the shop's money.</param>
    public static Problem? Below(decimal price, CakeCost cost, decimal asked, string sign) => price >= cost.Floor ? null : new Problem(
        "Price", Invariant($"{sign}{price:0.00}"), Invariant($"The floor of this cake is {sign}{cost.Floor:0.00}."), Invariant($"Ask {sign}{asked:0.00}, or make less of it."));

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

        foreach (var (what, amount) in new[] { ("false tier", FalseTier), ("drip", DripTier), ("sugar paste", PasteShare), ("cupcake", Cupcake) }.Where(e => e.Item2 < 0))
        {
            yield return new Problem("Price list", Invariant($"{what}: {amount}"), "It costs zero or more.", "Give its price.");
        }

        if (Step <= 0 || Least < 0)
        {
            yield return new Problem("Price list", Invariant($"{Step}, {Least}"), "The step is above zero, the least price zero or more.", "Give both.");
        }
    }
}
