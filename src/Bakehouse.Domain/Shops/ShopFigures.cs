namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>
/// What a shop has measured or decided itself about how its cakes are built. What is null is as usual, and where the usual figure comes
/// from stands beside it in <see cref="CakeFigures"/>.
/// </summary>
public sealed record ShopFigures
{
    /// <summary>Batter as a share of the baked height, 0.3 to 0.8.</summary>
    public decimal? Fill { get; init; }

    /// <summary>One filling, 1 to 20 mm.</summary>
    public Length? Filling { get; init; }

    /// <summary>The crumb coat, 0.5 to 10 mm.</summary>
    public Length? Crumb { get; init; }

    /// <summary>The final coat over it, 1 to 20 mm.</summary>
    public Length? Coat { get; init; }

    /// <summary>Share of each colour that is kept back, 0 to 0.5.</summary>
    public decimal? KeptBack { get; init; }

    /// <summary>So much shorter than the coated tier its supports are cut, 0 to 2 mm.</summary>
    public Length? CutShort { get; init; }

    /// <summary>From this mass on two people lower a tier onto its supports, 1 to 50 kg.</summary>
    public Mass? TwoLowerFrom { get; init; }

    /// <summary>Baked sponge, grams in a millilitre, 0.15 to 0.8; genoise keeps its own.</summary>
    public decimal? SpongeDensity { get; init; }

    /// <summary>Buttercream, grams in a millilitre, 0.4 to 1.5.</summary>
    public decimal? ButtercreamDensity { get; init; }

    /// <summary>Name of the slice that counts as a dessert portion (<see cref="SliceHabit"/>); null for the printed chart.</summary>
    public string? Dessert { get; init; }

    /// <summary>Name of the slice that counts as a portion with coffee; null for the printed chart.</summary>
    public string? Coffee { get; init; }

    /// <summary>Those figures with these in their places. They must be right by <see cref="Problems"/>.</summary>
    public CakeFigures In(CakeFigures usual) => usual with
    {
        Fill = (double?)Fill ?? usual.Fill,
        FillingThickness = Filling ?? usual.FillingThickness,
        CrumbThickness = Crumb ?? usual.CrumbThickness,
        CoatThickness = Coat ?? usual.CoatThickness,
        KeptBackShare = (double?)KeptBack ?? usual.KeptBackShare,
        CutShort = CutShort ?? usual.CutShort,
        TwoLowerFrom = TwoLowerFrom ?? usual.TwoLowerFrom,
        SpongeDensity = DensityOf(SpongeDensity) ?? usual.SpongeDensity,
        IcingDensity = DensityOf(ButtercreamDensity) ?? usual.IcingDensity,
        DessertSlice = SliceHabit.Named(Dessert)?.Slice,
        CoffeeSlice = SliceHabit.Named(Coffee)?.Slice,
    };

    /// <summary>Everything wrong with them, in one list.</summary>
    public IReadOnlyList<Problem> Problems() =>
    [
        .. Within("fill", Fill * 100, 30, 80, " %", "50 is usual."),
        .. Within("filling", Filling?.Millimetres, 1, 20, " mm", "6 to 10 is usual."),
        .. Within("crumb coat", Crumb?.Millimetres, 0.5m, 10, " mm", "1.2 to 3 is usual."),
        .. Within("final coat", Coat?.Millimetres, 1, 20, " mm", "3 to 6 is usual."),
        .. Within("kept back", KeptBack * 100, 0, 50, " %", "5 to 10 is usual."),
        .. Within("cut short", CutShort?.Millimetres, 0, 2, " mm", "0 to 2 is usual."),
        .. Within("two lower", TwoLowerFrom?.Kilograms, 1, 50, " kg", "8 is usual."),
        .. Within("sponge density", SpongeDensity, 0.15m, 0.8m, " g/mL", "Weigh a trimmed layer, in grams, and divide by its millilitres."),
        .. Within("buttercream density", ButtercreamDensity, 0.4m, 1.5m, " g/mL", "Weigh a level cup of it, in grams, and divide by 237."),
        .. Known("dessert slice", Dessert),
        .. Known("coffee slice", Coffee),
        .. Smaller(),
    ];

    private static Density? DensityOf(decimal? gramsPerMillilitre) => gramsPerMillilitre is { } density ? Density.FromGramsPerMillilitre((double)density) : null;

    private static IEnumerable<Problem> Within(string where, decimal? value, decimal least, decimal most, string unit, string fix) =>
        value is { } given ? ShopChecks.Between(where, given, least, most, unit).Select(p => p with { Try = $"{fix} Or leave it empty for the usual." }) : [];

    private static IEnumerable<Problem> Known(string where, string? name) => name is null || SliceHabit.Named(name) is not null ? []
        : [new Problem(where, Problem.Shown(name), "No slice goes by this name.", $"Choose one of {string.Join(", ", SliceHabit.All.Select(s => s.Name))}.")];

    /// <summary>Who counts by coffee counts on more portions: a smaller dessert slice would turn that round.</summary>
    private IEnumerable<Problem> Smaller()
    {
        var (dessert, coffee) = (SliceHabit.Named(Dessert)?.Slice ?? Slice.Of(Cut.Dessert), SliceHabit.Named(Coffee)?.Slice ?? Slice.Of(Cut.Coffee));
        if (dessert.Width.Millimetres * dessert.Depth.Millimetres < coffee.Width.Millimetres * coffee.Depth.Millimetres)
        {
            yield return new Problem("dessert slice", Dessert ?? "", "A dessert slice is no smaller than one with coffee.", "Choose a larger one, or a smaller one with coffee.");
        }
    }
}
