namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Drawing;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;

public sealed class DrawingTests
{
    private static readonly BuildSheet Sheet = BuildSheet.Of(Cakes.Good());

    public static TheoryData<string> Views => [.. All(Sheet).Select(v => v.Name)];

    [Theory]
    [MemberData(nameof(Views))]
    public void Every_line_lies_in_the_extent(string view)
    {
        var drawing = All(Sheet).Single(v => v.Name == view).Drawing;
        var e = drawing.Extent;
        Assert.NotEmpty(drawing.Lines);
        Assert.All(drawing.Lines.SelectMany(Points), p =>
        {
            Assert.InRange(p.X, e.Left - 1e-6, e.Right + 1e-6);
            Assert.InRange(p.Y, e.Bottom - 1e-6, e.Top + 1e-6);
        });
    }

    /// <summary>Worked by hand: 6+8+10 in, each 10 cm, coats 2 + 5 mm: widths 166.4, 217.2, 268 mm, each 107 high, boards 3, drum 12.</summary>
    [Fact]
    public void Tiers_have_their_finished_sizes_and_stand_on_each_other()
    {
        var edges = CakeDrawing.Outside(Sheet, true).Lines.OfType<Rectangle>().Where(r => r.Part == Part.Edge).ToList();
        Assert.Equal([268, 217.2, 166.4], edges.Select(r => Math.Round(r.Width, 6)));
        Assert.Equal([12.0, 122, 232], edges.Select(r => Math.Round(r.Y, 6)));
        Assert.All(edges, r => Assert.Equal(107, r.Height, 6));
        Assert.Equal(339, (double)Sheet.Height.Millimetres, 6);
    }

    /// <summary>A drip runs down outside, so it is seen on the whole front, and left of the middle where the right is cut; what is written on it has a plate.</summary>
    [Fact]
    public void A_drip_is_drawn_outside_and_not_on_the_cut()
    {
        var tiers = Cakes.Good().Tiers.Select((t, i) => i == 0 ? t : t with { Special = new TierSpecial { Drip = Length.FromCentimetres(4) } }).ToList();
        var dripped = BuildSheet.Of(Cakes.Good() with { Tiers = tiers });
        static List<Rectangle> Brown(CakeDrawing drawing) => [.. drawing.Lines.OfType<Rectangle>().Where(r => r is { Part: Part.Coat, Swatch: "#6E432C" })];
        var (front, cut) = (Brown(CakeDrawing.Outside(dripped, true)), Brown(CakeDrawing.HalfCut(dripped, true)));
        Assert.Empty(Brown(CakeDrawing.HalfCut(Sheet, true)));
        Assert.NotEmpty(cut);
        Assert.True(cut.Count < front.Count && front.Max(r => r.X + r.Width) > 0);
        Assert.All(cut, r => Assert.True(r.X + r.Width <= 1e-9, $"{r.X} + {r.Width}"));
        Assert.All(CakeDrawing.Outside(dripped, true).Lines.OfType<Lettering>().Where(l => l is { Part: Part.Label, Large: true }).OrderByDescending(l => l.Y).Take(2), l => Assert.Equal(WordsOn.Plate, l.Over));
    }

    [Fact]
    public void The_cut_shows_every_layer_and_filling_in_true_thickness()
    {
        var lines = CakeDrawing.HalfCut(Sheet, true).Lines.OfType<Rectangle>().ToList();
        Assert.Equal(12, lines.Count(r => r.Part == Part.Sponge));
        Assert.Equal(9, lines.Count(r => r.Part == Part.Filling));
        Assert.All(lines.Where(r => r.Part == Part.Filling), r => Assert.Equal(6.35, r.Height, 6));
        Assert.Equal(3 * 100, lines.Where(r => r.Part is Part.Sponge or Part.Filling).Sum(r => r.Height), 6);
    }

    [Fact]
    public void Supports_end_flush_with_their_tier_and_are_as_many_from_above_as_on_the_sheet()
    {
        var cut = CakeDrawing.HalfCut(Sheet, true).Lines.OfType<Rectangle>().ToList();
        var tops = cut.Where(r => r.Part == Part.Edge).Select(r => r.Y + r.Height).ToList();
        Assert.All(cut.Where(r => r.Part is Part.Dowel or Part.HiddenDowel), d => Assert.Contains(tops, t => Math.Abs(t - d.Y - d.Height) < 1e-6));
        Assert.Equal(2, cut.Count(r => r.Part == Part.Dowel));
        Assert.Single(cut, r => r.Part == Part.Rod);
        Assert.Equal(Sheet.Supports, CakeDrawing.FromAbove(Sheet, true).Lines.OfType<Circle>().Count(c => c.Part == Part.Dowel));
    }

    [Fact]
    public void Supports_stand_inside_the_tier_above()
    {
        var lines = CakeDrawing.FromAbove(Sheet, true).Lines.OfType<Circle>().ToList();
        foreach (var above in lines.Where(c => c.Part == Part.Above))
        {
            var own = lines.Where(c => c.Part == Part.Dowel && Math.Abs(c.X - above.X) < above.Radius).ToList();
            Assert.True(own.Count >= 4);
            Assert.All(own, d => Assert.True(Math.Sqrt(Math.Pow(d.X - above.X, 2) + Math.Pow(d.Y, 2)) + d.Radius < above.Radius));
        }
    }

    [Fact]
    public void Several_colours_are_bands_of_their_shares()
    {
        var tier = Cakes.Tier(1, 1, 8) with { Colours = [new("Navy", "#2B3F63", 0.25m), new("Ivory", "#F7F0E1", 0.75m)] };
        var lines = CakeDrawing.Outside(BuildSheet.Of([tier], Finish.Smooth, CakeFigures.Usual), true).Lines;
        var bands = lines.OfType<Rectangle>().Where(r => r.Part == Part.Coat).ToList();
        Assert.Equal(["#2B3F63", "#F7F0E1"], bands.Select(b => b.Swatch));
        Assert.Equal(3, bands[1].Height / bands[0].Height, 6);
        Assert.Equal(WordsOn.Plate, lines.OfType<Lettering>().Single(l => l.Part == Part.Label).Over);
    }

    [Fact]
    public void Layers_show_through_a_semi_naked_coat()
    {
        var order = Cakes.Good();
        Assert.DoesNotContain(CakeDrawing.Outside(Sheet, true).Lines, l => l.Part == Part.Sponge);
        var naked = CakeDrawing.Outside(BuildSheet.Of(order with { Finish = Finish.SemiNaked }), true).Lines.Where(l => l.Part == Part.Sponge).ToList();
        Assert.Equal(12, naked.Count);
        Assert.All(naked, l => Assert.Equal(0.35, l.Opacity));
    }

    [Fact]
    public void Sizes_stand_in_the_shops_habit_with_the_other_beside()
    {
        Assert.Contains("10 in = 25.4 cm", Words(CakeDrawing.Outside(Sheet, true)));
        Assert.Contains("25.4 cm = 10 in", Words(CakeDrawing.Outside(Sheet, false)));
        Assert.Contains("6 × 10.7 cm", CakeDrawing.FromAbove(Sheet, true).Lines.OfType<Lettering>().Select(l => l.Second));
    }

    [Fact]
    public void The_ruler_counts_centimetres_from_the_table_to_over_the_cake()
    {
        var lines = CakeDrawing.Outside(Sheet, true).Lines;
        var ticks = lines.OfType<Segment>().Where(s => s.Part == Part.Ruler && s.Y1 == s.Y2).ToList();
        Assert.Equal(41, ticks.Count);
        Assert.All(ticks.Zip(ticks.Skip(1)), pair => Assert.Equal(10, pair.Second.Y1 - pair.First.Y1, 9));
        Assert.Equal(["cm", "0", "10", "20", "30", "40"], lines.OfType<Lettering>().Where(l => l.Part == Part.Ruler).Select(l => l.Text));
    }

    [Fact]
    public void The_key_names_each_pattern_once()
    {
        var order = Cakes.Good();
        var mixed = order with { Tiers = [order.Tiers[0], order.Tiers[1] with { Sponge = "chocolate", Filling = "ganache" }, order.Tiers[2]] };
        Assert.Equal(
            ["vanilla", "chocolate", "raspberry jam", "chocolate ganache", "coat", "dowel, rod"],
            CakeDrawing.HalfCut(BuildSheet.Of(mixed), true).Key.Select(k => k.Word));
    }

    [Fact]
    public void A_wider_tier_above_still_fits_the_picture()
    {
        var sheet = BuildSheet.Of(Cakes.Good(1, 6, 10));
        Assert.All(All(sheet), v => Assert.All(v.Drawing.Lines.SelectMany(Points), p =>
            Assert.InRange(p.X, v.Drawing.Extent.Left - 1e-6, v.Drawing.Extent.Right + 1e-6)));
        Assert.True(sheet.Tiers[0].Supports!.RingDiameter < Length.FromInches(6));
    }

    private static IEnumerable<string> Words(CakeDrawing drawing) => drawing.Lines.OfType<Lettering>().Select(l => l.Text);

    private static IEnumerable<(string Name, CakeDrawing Drawing)> All(BuildSheet sheet) =>
    [
        ("outside", CakeDrawing.Outside(sheet, true)),
        ("half cut", CakeDrawing.HalfCut(sheet, true)),
        ("from above", CakeDrawing.FromAbove(sheet, true)),
        ("mini", CakeDrawing.Mini(sheet)),
    ];

    private static IEnumerable<(double X, double Y)> Points(Drawn line) => line switch
    {
        Rectangle r => [(r.X, r.Y), (r.X + r.Width, r.Y + r.Height)],
        Circle c => [(c.X - c.Radius, c.Y - c.Radius), (c.X + c.Radius, c.Y + c.Radius)],
        Segment s => [(s.X1, s.Y1), (s.X2, s.Y2)],
        Lettering l => [(l.X, l.Y)],
        _ => throw new InvalidOperationException($"Unknown line {line}."),
    };
}
