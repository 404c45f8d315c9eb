namespace Bakehouse.Domain.Prices;

using static System.FormattableString;

/// <summary>What a shop's hours, things and cakes cost, as far as its owner has said it. Null is not said yet, which is never zero.</summary>
public sealed record ShopPrices
{
    /// <summary>Nothing is said.</summary>
    public static ShopPrices None { get; } = new();

    /// <summary>Money an hour of hands, with all that comes on top of it.</summary>
    public decimal? Wage { get; init; }

    /// <summary>Rent, power, insurance and the like in a year.</summary>
    public decimal? OverheadAYear { get; init; }

    /// <summary>Orders that share it, 1 and up.</summary>
    public int? OrdersAYear { get; init; }

    /// <summary>On cost, 0.30 for 30 %.</summary>
    public decimal? MarkUp { get; init; }

    /// <summary>Below it no cake goes out without a reason: the floor price.</summary>
    public decimal? LeastMarkUp { get; init; }

    /// <summary>Prices are rounded up to a multiple of it.</summary>
    public decimal Step { get; init; } = 1;

    /// <summary>One support that is cut to length.</summary>
    public decimal? SupportEach { get; init; }

    /// <summary>One centre rod.</summary>
    public decimal? RodEach { get; init; }

    /// <summary>Case, insert and box for one cupcake.</summary>
    public decimal? CupcakePack { get; init; }

    /// <summary>Packs of ingredients.</summary>
    public IReadOnlyList<PackPrice> Packs { get; init; } = [];

    /// <summary>Boards under upper tiers.</summary>
    public IReadOnlyList<SizePrice> Boards { get; init; } = [];

    /// <summary>Drums under the whole cake.</summary>
    public IReadOnlyList<SizePrice> Drums { get; init; } = [];

    /// <summary>Boxes.</summary>
    public IReadOnlyList<SizePrice> Boxes { get; init; } = [];

    /// <summary>What is said at the counter: by portion, cut and finish.</summary>
    public PriceList List { get; init; } = new([], [], 0, 1);

    /// <summary>Rates to work with; what is not said counts as nothing, so their sums are too low while <see cref="Unsaid"/> names something.</summary>
    public CostRates Rates() =>
        new(Wage ?? 0, OverheadAYear ?? 0, OrdersAYear ?? 1, MarkUp ?? 0, LeastMarkUp ?? 0, Step, Packs, Boards, Drums, Boxes, SupportEach ?? 0, RodEach ?? 0) { CupcakePack = CupcakePack ?? 0 };

    /// <summary>What every cake needs and nobody has said yet, in words.</summary>
    public IEnumerable<string> Unsaid() => new (string Word, bool Said)[]
    {
        ("wage", Wage is not null), ("overhead", OverheadAYear is not null), ("orders a year", OrdersAYear is not null), ("mark-up", MarkUp is not null), ("least mark-up", LeastMarkUp is not null),
    }.Where(w => !w.Said).Select(w => w.Word);

    /// <summary>Everything that is wrong with them; what is not said is no problem.</summary>
    public IEnumerable<Problem> Problems()
    {
        // Only half of the two said: the other can't be too large.
        var rates = MarkUp is null || LeastMarkUp is null ? Rates() with { LeastMarkUp = Math.Min(0, LeastMarkUp ?? 0), MarkUp = Math.Min(0, MarkUp ?? 0) } : Rates();
        foreach (var twice in Packs.GroupBy(p => p.Ingredient, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            yield return new Problem("Packs", twice.Key, Invariant($"{twice.Count()} packs have a price; one counts."), "Leave the one that you buy.");
        }

        foreach (var problem in rates.Problems().Concat(List.Problems()))
        {
            yield return problem;
        }
    }
}
