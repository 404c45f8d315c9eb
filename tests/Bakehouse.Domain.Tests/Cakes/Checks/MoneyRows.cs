namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Prices;

/// <summary>F: prices, margins, rounding, tax, deposits, shares, packs.</summary>
internal static class MoneyRows
{
    private static readonly CostRates Rates = new(18, 14_600, 365, 0.30m, 0.15m, 0.01m, [], [], [], [], 0, 0);

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("F-1", r => r.Is(Earning.Price((decimal)r.Given[0], (decimal)r.Given[1] / 100))),
        ("F-2", r => r.Is(Earning.Margin(3.00m, (decimal)r.Given[1]))),
        ("F-MK*", r => r.Is(Earning.MarginOf((decimal)r.Given[0] / 100) * 100)),
        ("F-4", r => r.Holds(Earning.BreakEven((decimal)r.Given[1], (decimal)r.Given[0], (decimal)r.Given[2])!.Value)),
        ("F-5", r => r.Is(Earning.FixedShare((decimal)r.In("F"), (decimal)r.In("v"), 100) * 100, Earning.FixedShare((decimal)r.In("F"), (decimal)r.In("v"), 200) * 100)),
        ("F-6", r => r.Is([.. r.Given.Select(g => Cash.Rounded((decimal)g))])),
        ("F-7", r => r.Is([.. r.Given.Select(g => Cash.Rounded((decimal)g, CashRounding.HalfEven))])),
        ("F-9", r => r.Is(Cash.TaxInside((decimal)r.Given[0], (decimal)r.Given[1] / 100))),
        ("F-10", r => r.Is(Cash.Deposit((decimal)r.Given[0], (decimal)r.Given[1] / 100, (decimal)r.Given[2]))),
        ("F-11", r => r.Is(Activity.Cost)),
        ("F-12", r => r.Is(Activity.Price)),
        ("F-13", r => r.Is([.. Cash.Split(100, [1, 1, 1])])),
        ("F-14", Packs),
        ("F-15", Eggs),
    ];

    private static CakeCost Activity => CakeCost.Of(42.60m, 11.20m, 390, Rates);

    private static void Packs(CheckRow r)
    {
        var bought = Buying.Packs(Mass.FromKilograms((decimal)r.Given[0]), Mass.FromKilograms((decimal)r.Given[1]));
        r.Is(bought.Packs, bought.Over.Kilograms);
    }

    private static void Eggs(CheckRow r)
    {
        var bought = Buying.Eggs(Mass.FromGrams((decimal)r.Given[0]), "large", (int)r.Given[1]);
        r.Is(bought.Eggs, bought.Boxes, bought.Over);
    }
}
