namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

/// <summary>Tiers that are not plain: other outlines, unequal layers, false tiers, separators, rings, paste, trims.</summary>
public sealed class TierSpecialTests
{
    private static readonly CakeFigures Usual = CakeFigures.Usual;

    /// <summary>Square 8 in, 4 in high: sponge and filling 64·4 in³; batter half of it; 32 with coffee and 20 dessert (charts of squares are grids).</summary>
    [Fact]
    public void A_square_tier_is_built_by_its_own_area()
    {
        var build = Sheet(Tier(8, new TierSpecial { Outline = new Outline(OutlineKind.Square, In(8)) })).Tiers[0];
        Assert.Equal(256, (build.Sponge + build.Filling).CubicInches, 1e-6);
        Assert.Equal(128, build.Pans.AllBatter.CubicInches, 1e-6);
        Assert.Equal((32, 20), (build.Coffee, build.Dessert));
        Assert.Equal(new Slab(In(10), In(10)), build.Board.Shape);
    }

    /// <summary>Hexagon 9 in from corner to corner: 26 with coffee, as charts print (common practice, no source).</summary>
    [Theory]
    [InlineData(OutlineKind.Hexagon, 6, 12)]
    [InlineData(OutlineKind.Hexagon, 9, 26)]
    [InlineData(OutlineKind.Hexagon, 12, 40)]
    [InlineData(OutlineKind.Hexagon, 15, 70)]
    [InlineData(OutlineKind.Petal, 6, 8)]
    [InlineData(OutlineKind.Petal, 9, 18)]
    [InlineData(OutlineKind.Petal, 12, 40)]
    [InlineData(OutlineKind.Petal, 15, 64)]
    public void Other_outlines_give_what_charts_print(OutlineKind kind, int inches, int printed)
    {
        var shape = new Outline(kind, In(inches)).ToShape();
        Assert.Equal(printed, TierPortions.Count(shape, In(4), Cut.Coffee, Usual));
        Assert.True(TierPortions.Count(shape, In(4), Cut.Dessert, Usual) <= printed);
    }

    [Fact]
    public void Wide_pans_get_a_heating_core()
    {
        Assert.True(Sheet(Tier(12)).Tiers[0].HeatingCore);
        Assert.False(Sheet(Tier(10)).Tiers[0].HeatingCore);
        Assert.False(Sheet(Tier(12, new TierSpecial { Outline = new Outline(OutlineKind.Rectangle, In(12), In(9)) })).Tiers[0].HeatingCore);
    }

    [Fact]
    public void A_false_tier_has_no_batter_to_mix_and_no_filling_to_cook()
    {
        var good = Bakehouse.Testing.Cakes.Good();
        var order = good with { Tiers = [good.Tiers[0], good.Tiers[1] with { Filling = "lemon-curd", Special = new TierSpecial { IsFalse = true } }, good.Tiers[2]] };
        var foam = order.Tiers[1].Id.ToString("N");
        var steps = Domain.Methods.CakeSteps.Of(order, Domain.Shops.SampleBakery.Shop).Steps;
        Assert.DoesNotContain(steps, s => s.Tier == foam && (s.Name == "mix" || s.Name == "bake"));
        Assert.DoesNotContain(steps, s => s.Name == "filling");
        Assert.Contains(steps, s => s.Tier == foam && s.Name == "coat");
    }

    [Fact]
    public void Unequal_layers_take_the_batter_of_equal_ones()
    {
        Length[] layers = [In(1), In(2), In(0.5m)];
        var even = Sheet(Tier(8, null, 3)).Tiers[0];
        var own = Sheet(Tier(8, new TierSpecial { LayerHeights = layers }, 3)).Tiers[0];
        Assert.Equal(even.Pans.AllBatter.Millilitres, own.Pans.AllBatter.Millilitres, 6);
        Assert.Equal(layers, own.Layers);
        Assert.True(own.Pans.Own[1] > own.Pans.Own[0]);
    }

    [Fact]
    public void A_false_tier_is_coated_and_eaten_by_nobody()
    {
        var sheet = Sheet(Tier(10), Tier(8, new TierSpecial { IsFalse = true }), Tier(6));
        var foam = sheet.Tiers[1];
        Assert.Equal((0, 0, 0, Volume.Zero, Volume.Zero), (foam.Dessert, foam.Coffee, foam.Pans.Count, foam.Sponge, foam.Filling));
        Assert.Equal(Sheet(Tier(8)).Tiers[0].Coat, foam.Coat);
        Assert.True(foam.Mass < sheet.Tiers[2].Mass);
        Assert.Null(foam.Supports);
    }

    [Fact]
    public void A_separator_lifts_what_stands_on_it_and_lengthens_the_supports()
    {
        var (plain, lifted) = (Sheet(Tier(10), Tier(6)), Sheet(Tier(10), Tier(6, new TierSpecial { Separator = In(3) })));
        Assert.Equal(plain.Height + In(3), lifted.Height);
        Assert.Equal(plain.Tiers[0].Supports!.Length + In(3), lifted.Tiers[0].Supports!.Length);
        Assert.True(lifted.CentreOfGravity > plain.CentreOfGravity);
    }

    [Fact]
    public void Supports_may_be_cut_a_hair_short()
    {
        var flush = Sheet(Tier(10), Tier(8)).Tiers[0].Supports!;
        var shorter = BuildSheet.Of([Tier(10), Tier(8)], Finish.Smooth, Usual with { CutShort = Mm(2) }).Tiers[0].Supports!;
        Assert.Equal(flush.Length - Mm(2), shorter.Length);
    }

    /// <summary>8 in, ring of 1/2 in, one filling of 1/4 in: ring π/4·(64 − 49)·0.25 in³, the rest is filling (computed).</summary>
    [Fact]
    public void A_ring_takes_the_place_of_filling()
    {
        var ringed = Sheet(Tier(8, new TierSpecial { Dam = In(0.5m) }) with { Filling = "lemon-curd" }).Tiers[0];
        Assert.Equal(Math.PI / 4 * 15 * 0.25, ringed.Dam.CubicInches, 1e-6);
        Assert.Equal(Math.PI * 16 * 0.25, (ringed.Dam + ringed.Filling).CubicInches, 1e-6);
        Assert.Equal((ringed.Crumb + ringed.Coat + ringed.Dam).Millilitres, ringed.Icing.Millilitres, 6);
    }

    /// <summary>Paste for 8 in, 4 in high: three charts print 0.68 to 0.80 kg (common practice, no source); between what stays on and what is rolled out.</summary>
    [Fact]
    public void Paste_takes_the_place_of_the_final_coat()
    {
        var build = Sheet(Tier(8, new TierSpecial { Paste = PasteSheet.Usual })).Tiers[0];
        Assert.Equal(Volume.Zero, build.Coat);
        Assert.True(build.Paste!.OnCake < Mass.FromKilograms(0.68m) && build.Paste.Rolled > Mass.FromKilograms(0.68m), build.Paste.ToString());
        Assert.Equal(Length.FromInches(8) + Length.FromMillimetres(12), build.Finished.Diameter);
    }

    /// <summary>Seven tenths and three tenths of the sheet, worked by hand; together all of it.</summary>
    [Fact]
    public void Paste_is_shared_out_by_colour()
    {
        var tier = Tier(8, new TierSpecial { Paste = PasteSheet.Usual }) with { Colours = [new CoatColour("Ivory", "#F7F0E1", 0.7m), new CoatColour("Sage", "#C7D5BD", 0.3m)] };
        var sheet = Sheet(tier with { Id = Guid.NewGuid() }, tier);
        var (paste, colours) = (sheet.Tiers[0].Paste!, sheet.Tiers[0].PasteColours);
        Assert.Equal(["Ivory", "Sage"], colours.Select(c => c.Name));
        Assert.Equal((double)paste.Rolled.Grams * 0.3, (double)colours[1].Rolled.Grams, 1e-6);
        Assert.Equal(paste.OnCake.Grams, colours.Sum(c => c.OnCake.Grams));
        Assert.Equal(2 * paste.Rolled.Grams, sheet.Paste.Sum(c => c.Rolled.Grams));
        Assert.Equal(2, sheet.Paste.Count);
        Assert.Empty(Sheet(Tier(8)).Paste);
    }

    [Fact]
    public void Beads_and_drips_are_counted_and_weighed()
    {
        var (plain, trimmed) = (Sheet(Tier(8)).Tiers[0], Sheet(Tier(8, new TierSpecial { FootBead = In(0.5m), Drip = In(1) })).Tiers[0]);
        Assert.Equal(Math.PI * 8 * Math.PI / 16, trimmed.Beads.CubicInches, 1e-6);
        Assert.Equal((plain.Icing + trimmed.Beads).Millilitres, trimmed.Icing.Millilitres, 6);
        Assert.True(trimmed.Drip > Volume.Zero && trimmed.Mass > plain.Mass);
        Assert.Equal(trimmed.Colours.Sum(c => c.Needed.Millilitres), (trimmed.Coat + trimmed.Beads).Millilitres, 6);
    }

    [Fact]
    public void A_form_that_does_not_fit_is_named_all_at_once()
    {
        CakeTier[] tiers =
        [
            Tier(8, new TierSpecial { LayerHeights = [In(1)], Paste = Length.FromMillimetres(20) }),
            Tier(8, new TierSpecial { Outline = new Outline(OutlineKind.Square, In(9)), Dam = In(6) }),
            Tier(8, new TierSpecial { Outline = new Outline(OutlineKind.Petal, In(8), Lobes: 3) }),
        ];
        var problems = BuildProblems.Of(tiers, Usual);
        Assert.Equal(["Tier 1", "Tier 1", "Tier 1", "Tier 2", "Tier 2", "Tier 3"], problems.Select(p => p.Where));
        Assert.All(problems, p => Assert.True(p.Value.Length > 0 && p.Try.Length > 0));
    }

    /// <summary>Whatever is drawn: a sheet or problems, never a fault.</summary>
    [Fact]
    public void Any_form_gives_a_sheet_or_says_why_not()
    {
        var outline = Gen.Select(Gen.Enum<OutlineKind>(), Gen.Int[1, 20], Gen.Int[1, 20], Gen.Int[2, 18], Gen.Int[0, 3].Select(i => Drawn[i]), (k, w, d, l, s) => new Outline(k, In(w), d > 18 ? null : In(d), l, s));
        var form = Gen.Select(outline, Gen.Bool, Gen.Int[0, 80], Gen.Int[0, 60], Gen.Int[0, 12], Gen.Int[0, 20], (o, foam, apart, dam, paste, bead) => new TierSpecial
        {
            Outline = o, IsFalse = foam, Separator = Mm(apart), Dam = Mm(dam), Paste = paste == 0 ? null : Mm(paste), FootBead = Mm(bead), TopBead = Mm(bead), Drip = Mm(dam),
        });
        Gen.Select(form, Gen.Int[1, 5]).Array[1, 4].Sample(forms =>
        {
            CakeTier[] tiers = [.. forms.Select((f, i) => Tier(1, f.Item1, f.Item2) with { Id = new Guid(i, 0, 0, new byte[8]), Diameter = f.Item1.Outline!.Wide })];
            var problems = BuildProblems.Of(tiers, Usual);
            Assert.All(problems, p => Assert.True(p.Sentence.Length > 0 && p.Try.Length > 0));
            if (problems.Count == 0)
            {
                var sheet = BuildSheet.Of(tiers, Finish.Smooth, Usual);
                Assert.Equal((double)sheet.Cake.Grams, sheet.Tiers.Sum(t => (double)t.Mass.Grams), 6);
                Assert.True(sheet.CentreOfGravity < sheet.Height && sheet.TipsAt > 0);
                Assert.All(sheet.Tiers.Where(t => !t.Tier.IsFalse), t => Assert.Equal((t.Shape.Area * t.Tier.Height).Millilitres, (t.Sponge + t.Filling + t.Dam).Millilitres, 6));
            }
        });
    }

    private static readonly string[] Drawn = ["7", "W", "", "ab"];

    private static BuildSheet Sheet(params CakeTier[] tiers) => BuildSheet.Of(tiers, Finish.Smooth, Usual);

    private static CakeTier Tier(int inches, TierSpecial? form = null, int layers = 2) =>
        new(new Guid(inches, 0, 0, new byte[8]), In(inches), In(4), layers, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]) { Special = form };

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
