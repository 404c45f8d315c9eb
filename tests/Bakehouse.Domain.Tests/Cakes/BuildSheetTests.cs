namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using CsCheck;

/// <summary>
/// The golden order: round 10, 8, 6 in; each bare 4 in = two layers of 1.875 in and one filling of 1/4 in; crumb 2 mm, final 5 mm
/// over it; cake 0.40, buttercream 1.00 g/mL; fill a half. Every value computed from the formulas (π, exact shells), boards ignored.
/// </summary>
public sealed class BuildSheetTests
{
    private static readonly BuildSheet Golden =
        BuildSheet.Of([Tier(10), Tier(8), Tier(6)], Finish.Smooth, CakeFigures.Usual);

    [Theory]
    [InlineData(0, 4826.4, 321.8, 268.0, 710.0, 3230.3, 2574.1)]
    [InlineData(1, 3088.9, 205.9, 198.4, 530.6, 2170.5, 1647.4)]
    [InlineData(2, 1737.5, 115.8, 137.0, 371.4, 1319.2, 926.7)]
    public void Each_tier(int tier, double cake, double filling, double crumb, double coat, double grams, double batter)
    {
        var build = Golden.Tiers[tier];
        Assert.Equal(cake, build.Sponge.Millilitres, 0.1);
        Assert.Equal(filling, build.Filling.Millilitres, 0.1);
        Assert.Equal(crumb, build.Crumb.Millilitres, 0.1);
        Assert.Equal(coat, build.Coat.Millilitres, 0.1);
        Assert.Equal(grams, (double)build.Mass.Grams, 0.1);
        Assert.Equal(batter, build.Pans.AllBatter.Millilitres, 0.1);
        Assert.Equal(1.875, (double)build.LayerHeight.Inches, 1e-9);
    }

    /// <summary>Buttercream 2858.9 mL, with 8 % kept back 3087.6 mL; stack 6720 g.</summary>
    [Fact]
    public void The_whole_cake()
    {
        var icing = Volume.Sum(Golden.Tiers.Select(t => t.Icing));
        Assert.Equal(2858.9, icing.Millilitres, 0.1);
        Assert.Equal(3087.6, ColourBatch.For(new ColourVolume("Ivory", "#F7F0E1", icing), Golden.Figures).ToMix.Millilitres, 0.1);
        Assert.Equal(6720, (double)Golden.Cake.Grams, 0.1);
    }

    /// <summary>78 slices by area, 75 by rings, 74 in charts.</summary>
    [Theory]
    [InlineData(PortionRule.Area, 78)]
    [InlineData(PortionRule.Rings, 75)]
    [InlineData(PortionRule.Chart, 74)]
    public void Portions_with_coffee(PortionRule rule, int portions)
    {
        var sheet = BuildSheet.Of([Tier(10), Tier(8), Tier(6)], Finish.Smooth, CakeFigures.Usual with { PortionRule = rule });
        Assert.Equal(portions, sheet.Portions(Cut.Coffee));
    }

    /// <summary>Tier middles at 2, 6 and 10 in: centre of gravity 4.8624 in; tips at 1.0283 g about the bottom tier.</summary>
    [Fact]
    public void Balance_of_the_golden_order()
    {
        var parts = Golden.Tiers.Select((t, i) => new StackPart(t.Mass, In(4 * i), In(4))).ToList();
        var centre = Balance.CentreOfGravity(parts);
        Assert.Equal(4.8624, (double)centre.Inches, 0.0005);
        Assert.Equal(1.0283, Balance.TipsAt(In(10), centre), 0.0005);
    }

    /// <summary>12/9/6 in, each 4 in, equal density: 1134/261 = 4.344828 in; one barrel of 6 × 8 in tips at 0.75 g; computed.</summary>
    [Fact]
    public void Balance_of_other_stacks()
    {
        StackPart[] stack = [.. new[] { 12, 9, 6 }.Select((d, i) => new StackPart(Mass.FromGrams(d * d), In(4 * i), In(4)))];
        Assert.Equal(4.344828, (double)Balance.CentreOfGravity(stack).Inches, 1e-6);
        Assert.Equal(0.75, Balance.TipsAt(In(6), In(4)));
    }

    /// <summary>
    /// What the supports in the bottom tier carry: 34.22 N, a sixth each 5.704 N (m·g with standard gravity 9.80665 m/s²,
    /// computed).
    /// </summary>
    [Fact]
    public void Six_supports_carry_the_two_upper_tiers()
    {
        var newton = Golden.Tiers.Skip(1).Sum(t => (double)t.Mass.Kilograms) * 9.80665;
        Assert.Equal(34.22, newton, 0.01);
        Assert.Equal(5.704, newton / Golden.Tiers[0].Supports!.Count, 0.001);
        Assert.Null(Golden.Tiers[2].Supports);
        Assert.Equal(Golden.Tiers[0].Finished.Height, Golden.Tiers[0].Supports!.Length);
    }

    /// <summary>
    /// Supports beneath a load: 4 in 6 in, 5 to 6 in 8 in, 6 to 8 in 10 in, 8 and more in 12 in; 1.5 in inside the board above
    /// (common practice, no source).
    /// </summary>
    [Theory]
    [InlineData(6, 4, 4)]
    [InlineData(8, 5, 6)]
    [InlineData(10, 6, 8)]
    [InlineData(12, 8, 99)]
    [InlineData(16, 8, 99)]
    public void Supports_as_usual(int inches, int least, int most)
    {
        var supports = Supports.For(In(inches), In(inches - 2), In(4));
        Assert.InRange(supports.Count, least, most);
        Assert.True(supports.RingDiameter < In(inches - 2));
        Assert.Equal(supports.Count, supports.Angles.Distinct().Count());
    }

    [Fact]
    public void Supports_stand_an_inch_and_a_half_inside_the_board_above() =>
        Assert.Equal(In(5), Supports.For(In(10), In(8), In(4)).RingDiameter);

    /// <summary>Finished 8 in single cake: 1.5 to 2.0 kg (common practice, no source). Such cakes are 3 to 4 in high; at the golden 4 in it is 2.17 kg.</summary>
    [Fact]
    public void A_single_8_inch_cake_weighs_what_is_reported()
    {
        var sheet = BuildSheet.Of([Tier(8) with { Height = In(3.5m) }], Finish.Smooth, CakeFigures.Usual);
        Assert.InRange(sheet.Cake.Kilograms, 1.5m, 2.0m);
    }

    [Fact]
    public void Two_people_are_asked_for_at_the_figures_mass()
    {
        var at = CakeFigures.Usual with { TwoCarryFrom = Golden.Mass, TwoLowerFrom = Golden.Tiers[1].Mass };
        var over = at with { TwoCarryFrom = Golden.Mass + Mass.FromGrams(1), TwoLowerFrom = Golden.Tiers[1].Mass + Mass.FromGrams(1) };
        Assert.True(Golden with { Figures = at } is { TwoCarry: true, TwoLower: true });
        Assert.True(Golden with { Figures = over } is { TwoCarry: false, TwoLower: false });
    }

    [Fact]
    public void A_semi_naked_cake_has_only_the_first_coat_in_its_colours()
    {
        var sheet = BuildSheet.Of([Tier(8)], Finish.SemiNaked, CakeFigures.Usual);
        Assert.Equal(Volume.Zero, sheet.Tiers[0].Coat);
        Assert.Equal(198.4, Assert.Single(sheet.Colours).Needed.Millilitres, 0.1);
    }

    [Fact]
    public void An_order_and_its_tiers_give_the_same_sheet()
    {
        var order = Cakes.Good();
        var sheet = BuildSheet.Of(order);
        Assert.Equal((60, 74), (sheet.Dessert, sheet.Coffee));
        Assert.Equal(1, sheet.Rods);
        // Of the whole height neither the drum, on which the bottom tier stands, nor the upper half of the top tier.
        Assert.Equal(sheet.Height - (sheet.Tiers[^1].Finished.Height * 0.5m) - sheet.Drum!.Thickness, sheet.RodLength);
        Assert.Equal(11, sheet.Supports);
        Assert.Equal(sheet.Batter.Millilitres, BuildSheet.Of(order.Tiers, order.Finish, CakeFigures.Usual).Batter.Millilitres);
    }

    [Fact]
    public void What_cannot_be_built_is_named_all_at_once()
    {
        CakeTier[] tiers = [Tier(8) with { Layers = 8, Height = Length.FromCentimetres(4) }, Tier(6) with { Colours = [] }, Tier(6) with { Layers = 0 }];
        var problems = BuildProblems.Of(tiers, CakeFigures.Usual);
        Assert.Equal(["Tier 1", "Tier 2", "Tier 3"], problems.Select(p => p.Where));
        Assert.Contains("8.45 cm", problems[0].Sentence, StringComparison.Ordinal);
        var thrown = Assert.Throws<ArgumentException>(() => BuildSheet.Of(tiers, Finish.Smooth, CakeFigures.Usual));
        Assert.All(problems, p => Assert.Contains(p.Sentence, thrown.Message, StringComparison.Ordinal));
        Assert.Equal("Tiers", Assert.Single(BuildProblems.Of([], CakeFigures.Usual)).Where);
    }

    [Fact]
    public void Whatever_can_be_ordered_weighs_something_and_stands()
    {
        var tier = Gen.Select(Gen.Int[3, 18], Gen.Int[30, 250], Gen.Int[1, 8], (d, h, l) => Tier(d) with { Height = Length.FromMillimetres(h), Layers = l });
        Gen.Select(tier.Array[1, 8], Gen.Enum<Finish>()).Sample((tiers, finish) =>
        {
            if (BuildProblems.Of(tiers, CakeFigures.Usual).Count > 0)
            {
                return;
            }

            var sheet = BuildSheet.Of(tiers, finish, CakeFigures.Usual);
            Assert.True(sheet.Mass > sheet.Cake && sheet.CentreOfGravity < sheet.Height && sheet.TipsAt > 0);
            Assert.All(sheet.Tiers, t => Assert.Equal(
                (double)(t.Tier.Height.Millimetres / 1000m) * new Round(t.Tier.Diameter).Area.SquareMillimetres, t.Sponge.Millilitres + t.Filling.Millilitres, 6));
        });
    }

    private static CakeTier Tier(int inches) =>
        new(new Guid(inches, 0, 0, new byte[8]), In(inches), In(4), 2, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);

    private static Length In(decimal inches) => Length.FromInches(inches);
}
