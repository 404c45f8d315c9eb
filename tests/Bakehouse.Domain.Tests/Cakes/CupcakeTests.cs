namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Drawing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Structure;
using Bakehouse.Testing;
using CsCheck;

/// <summary>Cupcakes alone and beside a cake: figures, quantities, boxes, what is said and drawn of them.</summary>
public sealed class CupcakeTests
{
    private static readonly CakeFigures Usual = CakeFigures.Usual;
    private static readonly Order Alone = Cakes.Alone(1, 24);
    private static readonly Order Both = Cakes.With(Cakes.Good(2, 9, 6), 36);

    /// <summary>A published chart of batter by pan: about 1 3/4 oz for a cupcake, with butter cake batter of 0.95 g/mL.</summary>
    [Fact]
    public void A_case_takes_what_a_published_chart_says() =>
        Assert.Equal(1.75, (double)(Density.FromGramsPerMillilitre((double)Sponge.Of("vanilla")!.BatterDensity) * Usual.CupcakeBatter).Ounces, 0.05);

    /// <summary>A published conversion: two round layers of 8 in, here of 1 1/2 in, the pans of USDA's weights, make 18 to 24 cupcakes.</summary>
    [Fact]
    public void Two_round_layers_make_as_many_as_published()
    {
        var layers = new Pan(new Round(Length.FromInches(8)), Length.FromInches(1.5m)).Batter(Usual.Fill) * 2;
        Assert.InRange(layers.Millilitres / Usual.CupcakeBatter.Millilitres, 18, 24);
    }

    /// <summary>The same conversion: 18 to 22 minutes at 350 °F (177 °C).</summary>
    [Fact]
    public void It_bakes_as_long_as_published()
    {
        Assert.InRange(Method.CupcakeBakeMinutes, 18, 22);
        Assert.Equal(177, (350 - 32) * 5 / 9.0, 0.5);
        Assert.Equal(177, Sponge.Of("vanilla")!.Heat);
    }

    /// <summary>One piece is one portion: a unit of 67 to 200 % of the reference amount is (21 CFR 101.9(b)(2)(i), from memory); 80 g for a cupcake (21 CFR 101.12(b), from memory).</summary>
    [Fact]
    public void One_is_a_portion_by_the_labelling_rule()
    {
        var each = (double)BuildSheet.Of(Alone).BesideMass.Grams / 24;
        Assert.InRange(each, 0.67 * 80, 2.0 * 80);
        Assert.Equal((24, 24), (BuildSheet.Of(Alone).Dessert, BuildSheet.Of(Alone).Coffee));
    }

    /// <summary>By hand: 30 make 3 tins of 12, 12 and 6; 30 × 52 mL of batter, 30 × 30 mL of swirl; 0.40 g/mL of twice the batter and 1 g/mL of swirl.</summary>
    [Fact]
    public void Quantities_are_those_of_so_many()
    {
        var sheet = BuildSheet.Of(Cakes.Alone(1, 30));
        var batch = sheet.Beside[0];
        Assert.Equal((3, 1560.0, 900.0), (batch.Pans.Count, Math.Round(sheet.Batter.Millilitres, 6), Math.Round(batch.Icing.Millilitres, 6)));
        Assert.Equal([12, 12, 6], new Cupcakes(30).EachTin);
        Assert.Equal((0.40 * 3120) + 900, (double)sheet.BesideMass.Grams, 0.01);
        // What is kept back of the colour comes on top: 8 %, 72 mL.
        Assert.Equal(972, sheet.Icing.Millilitres, 0.001);
    }

    /// <summary>By hand.</summary>
    [Theory]
    [InlineData(1, "1 × 4")]
    [InlineData(6, "1 × 6")]
    [InlineData(7, "1 × 12")]
    [InlineData(24, "2 × 12")]
    [InlineData(30, "2 × 12 and 1 × 6")]
    [InlineData(40, "3 × 12 and 1 × 4")]
    public void Boxes_are_as_few_as_can_be(int count, string boxes) => Assert.Equal(boxes, CupcakeBox.Said(CupcakeBox.For(count)));

    /// <summary>Every box holds its cupcakes in rows, no closer than their cases are wide.</summary>
    [Fact]
    public void A_box_has_room_for_what_it_holds() => Assert.All(CupcakeBox.Sold, b =>
    {
        var (across, along) = ((int)(b.Shape.Width.Millimetres / Cupcakes.Across.Millimetres), (int)(b.Shape.Depth.Millimetres / Cupcakes.Across.Millimetres));
        Assert.True(across * along >= b.Holds, b.ToString());
        Assert.True(CupcakeBox.Height > Cupcakes.Baked + Cupcakes.SwirlHeight);
    });

    [Fact]
    public void It_is_called_as_it_is_said()
    {
        Assert.Equal(("24 cupcakes", "6+9 and 36 cupcakes"), (Alone.SizeInInches, Both.SizeInInches));
        Assert.Equal(("24 cupcakes", "6+9 in and 36 cupcakes"), (StepWords.Size(Alone.Tiers, SampleBakery.Shop), StepWords.Size(Both.Tiers, SampleBakery.Shop)));
        Assert.Equal("1 cupcake", new Cupcakes(1).ToString());
        Assert.Equal("36 cupcakes", Cakes.With(Cakes.Alone(1, 12), 24).SizeInInches);
    }

    /// <summary>What is worked out of the stack is the same with and without cupcakes beside it; portions and cream are more.</summary>
    [Fact]
    public void The_stack_stays_as_it_is() => Gen.Select(Gen.Int[4, 14].Array[1, 5], Gen.Int[1, Cupcakes.Most].Array[1, Cupcakes.MostBatches]).Each(200, drawn =>
    {
        var cake = Cakes.Good(3, drawn.Item1);
        var (without, with) = (BuildSheet.Of(cake), BuildSheet.Of(Cakes.With(cake, drawn.Item2)));
        Assert.Equal((without.Drum, without.Box, without.Rods, without.Mass, without.Height, without.TipsAt), (with.Drum, with.Box, with.Rods, with.Mass, with.Height, with.TipsAt));
        Assert.Equal(without.Supports, with.Supports);
        Assert.Equal(without.Dessert + drawn.Item2.Sum(), with.Dessert);
        Assert.Equal(without.Batter.Millilitres + (52 * drawn.Item2.Sum()), with.Batter.Millilitres, 0.01);
        Assert.Equal(drawn.Item2.Sum(), drawn.Item2.Sum(n => CupcakeBox.For(n).Sum(b => b.Holds)) - drawn.Item2.Sum(n => CupcakeBox.For(n).Sum(b => b.Holds) - n));
    });

    [Fact]
    public void Cupcakes_alone_have_no_stack_and_nothing_breaks()
    {
        var sheet = BuildSheet.Of(Alone);
        Assert.Empty(Alone.Stack);
        Assert.Equal((null, null, 0, 0), (sheet.Drum, sheet.Box, sheet.Rods, sheet.Supports));
        Assert.Equal(0, sheet.Mass.Grams);
        Assert.Empty(Footprint.Of(sheet));
        Assert.Empty(Carrying.Looks(sheet));
        Assert.Empty(Travelling.Of(sheet, 200).Parts);
        Assert.False(DayCaps.Counts(Alone, Alone.Handover.At.Date));
        var written = WrittenSheet.Of(Alone, Usual, SheetChoices.Usual);
        Assert.Equal((null, null, 24), (written.Packed, written.Travels, written.Totals.Portions.Dessert));
        Assert.Equal([new WrittenCupcakeBox(2, 12, 355.6m, 254, 101.6m)], written.Cupcakes[0].Boxes);
        Assert.All(Drawings(sheet), d => Assert.True(d.Extent.Width > 0 && d.Extent.Height > 0 && d.Title.Contains("24 cupcakes", StringComparison.Ordinal), d.Title));
    }

    /// <summary>Every circle lies in a box, and none on another: to scale.</summary>
    [Fact]
    public void They_are_drawn_apart_and_in_their_boxes() => Gen.Int[1, Cupcakes.Most].Each(60, count =>
    {
        var drawing = CakeDrawing.InBoxes(BuildSheet.Of(Cakes.Alone(1, count)), true);
        var swirls = drawing.Lines.OfType<Circle>().Where(c => c.Part == Part.Coat).ToList();
        var boxes = drawing.Lines.OfType<Rectangle>().ToList();
        Assert.Equal(count, swirls.Count);
        Assert.All(swirls, s => Assert.Contains(boxes, b => s.X - s.Radius >= b.X && s.X + s.Radius <= b.X + b.Width && s.Y - s.Radius >= b.Y && s.Y + s.Radius <= b.Y + b.Height));
        Assert.All(swirls, s => Assert.DoesNotContain(swirls, o => o != s && Math.Sqrt(((o.X - s.X) * (o.X - s.X)) + ((o.Y - s.Y) * (o.Y - s.Y))) < s.Radius + o.Radius));
    });

    /// <summary>By hand: 24 at 4.20 are 100.80, up to the next 5; 36 dessert portions at 6.50 and 36 cupcakes are 385.20.</summary>
    [Fact]
    public void One_price_for_cake_and_cupcakes()
    {
        Assert.Equal(105, Price(Alone).Listed);
        Assert.Equal((36, 390m), (BuildSheet.Of(Both).Stack.Sum(t => t.Dessert), Price(Both).Listed));
        Assert.Empty(Price(Alone).Missing);
        Assert.Contains(Price(Alone).Cost.Lines, l => l is { Name: "Cases and boxes", Amount: "24", Cost: 5.28m });
        Assert.DoesNotContain(Price(Alone).Cost.Lines, l => l.Name is "Drum" or "Box");
        var unsaid = SampleBakery.Shop with { Prices = SampleBakery.Shop.Prices! with { CupcakePack = null, List = SampleBakery.Shop.Prices.List with { Cupcake = null } } };
        Assert.Equal((null, "case and box for a cupcake"), (CakePrice.Of(Alone, Starter.Sample, unsaid)!.Listed, CakePrice.Of(Alone, Starter.Sample, unsaid)!.Missing.Single()));
    }

    [Fact]
    public void What_is_wrong_with_them_is_told_with_what_to_do()
    {
        Assert.Empty(OrderChecks.OfTiers(Alone, SampleBakery.Shop));
        Assert.Empty(OrderChecks.OfTiers(Both, SampleBakery.Shop));
        Assert.All([0, Cupcakes.Most + 1], n => Assert.Contains(OrderChecks.OfTiers(Alone with { Tiers = [Cakes.Batch(Alone, 1, n)] }, SampleBakery.Shop), p => p.Sentence == "A batch is 1 to 240 cupcakes." && p.Try.Length > 0));
        Assert.Contains(OrderChecks.OfTiers(Alone with { Tiers = [.. Enumerable.Range(1, 7).Select(i => Cakes.Batch(Alone, i, 12))] }, SampleBakery.Shop), p => p.Sentence.Contains("at most 6 batches", StringComparison.Ordinal));
        Assert.Contains(OrderChecks.OfTiers(Both with { Tiers = [.. Both.Beside, .. Both.Stack] }, SampleBakery.Shop), p => p.Sentence.Contains("a tier comes after them", StringComparison.Ordinal));
        Assert.Contains(OrderChecks.OfTiers(Alone with { Tiers = [Alone.Tiers[0] with { Layers = 2 }] }, SampleBakery.Shop), p => p.Sentence.Contains("one layer", StringComparison.Ordinal));
        Assert.Contains(OrderChecks.OfTiers(Alone with { Tiers = [Alone.Tiers[0] with { Special = Alone.Tiers[0].Special! with { IsFalse = true } }] }, SampleBakery.Shop), p => p.Sentence.Contains("of a tier", StringComparison.Ordinal));
        Assert.Contains(OrderChecks.OfTiers(Alone, SampleBakery.Shop with { Ovens = [new Oven("o", "O", OvenKind.Fan, 1, Length.FromCentimetres(30), Length.FromCentimetres(30))] }), p => p.Sentence.Contains("tin of 14 × 11 in", StringComparison.Ordinal));
        Assert.Null(BuildSheet.Try([Cakes.Batch(Alone, 1, 0)], Finish.Smooth, Usual));
    }

    [Fact]
    public void A_larger_order_is_offered_where_it_serves_too_few()
    {
        var asked = Alone with { Portions = new Portions(30, Cut.Dessert) };
        Assert.Equal(30, NextSize.For(asked, Length.FromInches(1), Usual, _ => true)!.Single().Special!.Cupcakes!.Count);
        var wider = NextSize.For(Both with { Portions = new Portions(90, Cut.Dessert) }, Length.FromInches(1), Usual, _ => true)!;
        Assert.Equal((36, true), (wider[^1].Special!.Cupcakes!.Count, wider[0].Diameter > Both.Tiers[0].Diameter));
        Assert.Equal(0, Serves.Of(BuildSheet.Of(Alone), Alone.Portions, keepsTop: true).Kept);
        Assert.Equal(12, Serves.Of(BuildSheet.Of(Both), Both.Portions, keepsTop: true).Kept);
    }

    private static CakePrice Price(Order order) => CakePrice.Of(order, Starter.Sample, SampleBakery.Shop)!;

    private static IEnumerable<CakeDrawing> Drawings(BuildSheet sheet) =>
        [CakeDrawing.Outside(sheet, true), CakeDrawing.HalfCut(sheet, true), CakeDrawing.FromAbove(sheet, true), CakeDrawing.Outline(sheet), CakeDrawing.Mini(sheet)];
}
