namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>
/// A shop's own figures change the build as computed by hand; a shop without them builds as before. The bottom tier: round, 10 in, 4 in
/// (101.6 mm) high, two layers, one filling of buttercream; r = 127 mm, area π·127² = 50,670.75 mm².
/// </summary>
public sealed class ShopFiguresTests
{
    private static readonly ShopFigures Own = new()
    {
        Fill = 0.6m, Filling = Mm(10), Crumb = Mm(3), Coat = Mm(4), KeptBack = 0.05m, CutShort = Mm(2), TwoLowerFrom = Mass.FromKilograms(2), SpongeDensity = 0.5m, ButtercreamDensity = 0.9m,
    };

    private static readonly Order Golden = Testing.Cakes.Good(1, 10, 8, 6) is var order
        ? order with { Tiers = [.. order.Tiers.Select(t => t with { Height = Length.FromInches(4), Layers = 2, Filling = "buttercream" })] }
        : throw new InvalidOperationException();

    private static BuildSheet Sheet(ShopFigures? own) => BuildSheet.Of(Golden, CakeFigures.Of(SampleBakery.Shop with { Figures = own }));

    [Fact]
    public void A_shop_that_has_measured_nothing_builds_as_before()
    {
        var (none, empty) = (Sheet(null), Sheet(new ShopFigures()));
        Assert.Equal(none.Figures, empty.Figures);
        Assert.Equal(CakeFigures.Usual with { TwoCarryFrom = none.Figures.TwoCarryFrom, DowelDiameter = none.Figures.DowelDiameter, SupportWord = none.Figures.SupportWord, WidestPan = none.Figures.WidestPan }, none.Figures);
        Assert.Equal((2574.1, 268.0, 710.0, 108.6m), (Math.Round(none.Tiers[0].Pans.AllBatter.Millilitres, 1), Math.Round(none.Tiers[0].Crumb.Millilitres, 1), Math.Round(none.Tiers[0].Coat.Millilitres, 1), none.Tiers[0].Supports!.Length.Millimetres));
    }

    /// <summary>
    /// Batter 50,670.75 × 101.6 × 0.6 = 3,088.9 mL; filling 50,670.75 × 10 = 506.7 mL; sponge 50,670.75 × 91.6 = 4,641.4 mL; crumb coat
    /// π(130²·104.6 − 127²·101.6) = 405.4 mL; final coat π(134²·108.6 − 130²·104.6) = 572.7 mL; supports 101.6 + 3 + 4 − 2 = 106.6 mm; mass
    /// 4,641.4 × 0.5 + (506.7 + 405.4 + 572.7) × 0.9 = 3,657.0 g.
    /// </summary>
    [Fact]
    public void Own_figures_change_batter_coats_mass_and_dowels_as_computed_by_hand()
    {
        var bottom = Sheet(Own).Tiers[0];
        Assert.Equal(3088.9, bottom.Pans.AllBatter.Millilitres, 0.1);
        Assert.Equal(506.7, bottom.Filling.Millilitres, 0.1);
        Assert.Equal(4641.4, bottom.Sponge.Millilitres, 0.1);
        Assert.Equal(405.4, bottom.Crumb.Millilitres, 0.1);
        Assert.Equal(572.7, bottom.Coat.Millilitres, 0.1);
        Assert.Equal(106.6m, bottom.Supports!.Length.Millimetres);
        Assert.Equal(3657.0, (double)bottom.Mass.Grams, 0.1);
        Assert.Equal((0.05, true), (Sheet(Own).Figures.KeptBackShare, Sheet(Own).TwoLower));
    }

    /// <summary>The bottom tier's batter is 1.2 times as much, and what is stacked asks for two: the plan is made by the same figures as the page.</summary>
    [Fact]
    public void The_steps_of_a_cake_follow_them()
    {
        var (usual, own) = (CakeSteps.Of(Golden, SampleBakery.Shop), CakeSteps.Of(Golden, SampleBakery.Shop with { Figures = Own }));
        Assert.Equal((1, 2), (usual.Steps.Single(s => s.Name == "stack").Count, own.Steps.Single(s => s.Name == "stack").Count));
        Assert.Equal(1.2, Batter(own) / Batter(usual), 0.01);

        static double Batter(CakeSteps made) => made.Steps.Where(s => s.Name == "mix").Sum(s => (double)s.Mix!.Size);
    }

    /// <summary>2 × 2 in: π·5²/4 = 19.6, π·4²/4 = 12.6 and π·3²/4 = 7.07, so 19 + 12 + 7 = 38. With coffee the chart still prints 38 + 24 + 12 = 74.</summary>
    [Fact]
    public void Portions_go_by_the_slices_of_the_shop()
    {
        var sheet = Sheet(new ShopFigures { Dessert = "Large party" });
        Assert.Equal((38, 74), (sheet.Dessert, sheet.Coffee));
        var order = Golden with { Portions = new Portions(50, Cut.Dessert) };
        Assert.Equal(12, Serves.Of(order, sheet.Figures)!.Missing);

        // A slab 10 × 8 in gives 5 × 4 whole cells of 2 × 2 in.
        Assert.Equal(20, TierPortions.Count(new Slab(Length.FromInches(10), Length.FromInches(8)), Length.FromInches(4), Cut.Dessert, sheet.Figures));
    }

    [Fact]
    public void Everything_that_can_not_be_is_named_at_once_with_its_limits()
    {
        var wrong = new ShopFigures
        {
            Fill = 0.9m, Filling = Mm(40), Crumb = Mm(0), Coat = Mm(25), KeptBack = 0.6m, CutShort = Mm(3), TwoLowerFrom = Mass.FromGrams(100), SpongeDensity = 0, ButtercreamDensity = 3, Dessert = "Fruit cake, finger", Coffee = "as big as a hat",
        };
        var told = ShopChecks.Problems(SampleBakery.Shop with { Figures = wrong });
        Assert.Equal(
            ["fill", "filling", "crumb coat", "final coat", "kept back", "cut short", "two lower", "sponge density", "buttercream density", "coffee slice", "dessert slice"],
            told.Select(p => p.Where));
        Assert.Equal(("90", "This is 90 %; from 30 to 80 % can be.", "50 is usual. Or leave it empty for the usual."), (told[0].Value, told[0].Sentence, told[0].Try));
        Assert.Empty(ShopChecks.Problems(SampleBakery.Shop with { Figures = Own }));
    }

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}
