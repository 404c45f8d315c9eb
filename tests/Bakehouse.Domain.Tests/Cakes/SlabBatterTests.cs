namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>
/// A seven of 12 in, 4 in high, four layers: its template takes 28 of the 60 units of a slab of 7.2 × 12 in. Half of 7.2 × 12 × 4 in³ is 172.8 in³ of
/// batter, 2831.7 mL (1 in³ = 16.387064 mL), 2690.1 g at 0.95 g/mL (all worked by hand).
/// </summary>
public sealed class SlabBatterTests
{
    private const double Millilitres = 2831.7;

    private static readonly Order Seven = Bakehouse.Testing.Cakes.Good() with
    {
        Tiers = [Bakehouse.Testing.Cakes.Tier(1, 1, 12) with
        {
            Height = Length.FromInches(4), Special = new TierSpecial { Outline = new Outline(OutlineKind.Sign, Length.FromInches(12), Sign: "7") },
        }],
    };

    private static readonly BuildSheet Sheet = BuildSheet.Of(Seven);

    [Fact]
    public void All_of_the_slab_is_mixed_on_the_sheet_in_the_plan_and_in_the_cost()
    {
        Assert.Equal(Millilitres, Sheet.Batter.Millilitres, 0.1);
        // Two pans of 1415.8 mL, each 1345.1 g, up to the next five.
        var plan = TierPlan.Of(Sheet.Tiers[0], SampleBakery.Shop);
        Assert.Equal((2, 1350), (plan.Pans, plan.BatterGrams));
        Assert.Equal(2700, CakeSteps.Of(Seven, SampleBakery.Shop).Steps.Where(s => s.Name == "mix").Sum(s => s.Mix!.Size));
        var batter = CakeParts.Of(Seven, Sheet)[Seven.Tiers[0].Id].Single(p => p.Recipe == "vanilla");
        Assert.Equal(2690.1, (double)batter.Made.Grams, 0.1);
    }

    /// <summary>Portions, mass and label are of the cut cake: 28/60 of the batter. 46.08 in² by 3.25 in of sponge are cut off, 2454.1 mL.</summary>
    [Fact]
    public void What_is_cut_off_is_in_no_part_of_the_cake()
    {
        var batter = CakeParts.Of(Seven, Sheet)[Seven.Tiers[0].Id].Single(p => p.Recipe == "vanilla");
        Assert.Equal(1255.4, (double)batter.Mass.Grams, 0.1);
        Assert.Equal(2454.1, Sheet.Tiers[0].LeftOver.Millilitres, 0.1);
        Assert.Equal(40.32 * 3.25, Sheet.Tiers[0].Sponge.CubicInches, 1e-6);
        Assert.All(BuildSheet.Of(Bakehouse.Testing.Cakes.Good()).Tiers, t => Assert.Equal(Volume.Zero, t.LeftOver));
    }

    /// <summary>Sixty grams are weighed in where a cake cut to its pan takes 28: the slab's batter by 28/60 is the cut cake's.</summary>
    [Fact]
    public void What_is_weighed_in_pays_for_the_slab_too()
    {
        decimal Flour(BuildSheet sheet) => IngredientNeeds.Of(Seven with { Tiers = [.. sheet.Tiers.Select(t => t.Tier)] }, sheet, Starter.Sample).Grams["plain-flour"];
        var slab = Seven.Tiers[0] with { Diameter = Length.FromInches(12), Special = new TierSpecial { Outline = new Outline(OutlineKind.Rectangle, Length.FromInches(12), Length.FromInches(7.2m)) } };
        Assert.Equal((double)Flour(BuildSheet.Of([slab], Finish.Smooth, CakeFigures.Usual)), (double)Flour(Sheet), 0.01);
    }
}
