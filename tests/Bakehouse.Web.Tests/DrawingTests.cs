namespace Bakehouse.Web.Tests;

using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Drawing;
using Bakehouse.Domain.Orders;
using Bakehouse.Testing;
using Bakehouse.Web.Shell;
using Bunit;

public sealed partial class DrawingTests : BunitContext
{
    private static readonly Order Order = Cakes.Good();

    private static readonly BuildSheet Sheet = BuildSheet.Of(Order);

    [Theory]
    [InlineData(440, 460)]
    [InlineData(360, 380)]
    [InlineData(900, 300)]
    public void One_scale_holds_across_and_up_for_all_tiers(double wide, double high)
    {
        var svg = Draw(CakeDrawing.Outside(Sheet, true), wide, high);
        var scale = Number(svg.GetAttribute("data-px-per-cm"));
        var edges = svg.QuerySelectorAll("path.edge").Select(Box).ToList();
        Assert.Equal(3, edges.Count);
        Assert.All(edges.Zip(Sheet.Tiers), pair =>
        {
            Assert.Equal(scale, pair.First.Width / (double)pair.Second.Finished.Diameter.Centimetres, 0.01);
            Assert.Equal(scale, pair.First.Height / (double)pair.Second.Finished.Height.Centimetres, 0.01);
        });
        Assert.True(Number(svg.GetAttribute("width")) <= wide + 0.01 && Number(svg.GetAttribute("height")) <= high + 0.01);
    }

    [Fact]
    public void Two_marks_of_the_ruler_are_a_centimetre_apart()
    {
        var svg = Draw(CakeDrawing.Outside(Sheet, true), 440, 460);
        var ys = svg.QuerySelectorAll("path.ruler").Select(p => Figures(p.GetAttribute("d")!)).Where(n => n[1] == n[3]).Select(n => n[1]).ToList();
        Assert.All(ys.Zip(ys.Skip(1)), pair => Assert.Equal(Number(svg.GetAttribute("data-px-per-cm")), pair.First - pair.Second, 0.01));
    }

    [Fact]
    public void Words_are_legible_at_every_size()
    {
        foreach (var picture in new[] { CakeDrawing.Outside(Sheet, true), CakeDrawing.HalfCut(Sheet, true), CakeDrawing.FromAbove(Sheet, true) })
        {
            var svg = Draw(picture, 300, 260);
            Assert.NotEmpty(svg.QuerySelectorAll("text"));
            Assert.All(svg.QuerySelectorAll("text"), t => Assert.True(Number(t.GetAttribute("font-size")) >= 14.5));
        }

        Assert.Throws<InvalidOperationException>(() => Render<CakePicture>(p => p.Add(d => d.Picture, CakeDrawing.Mini(Sheet)).Add(d => d.TextHeight, 10)));
    }

    [Fact]
    public void It_says_what_is_seen_and_each_pattern_is_there()
    {
        var drawn = Render<CakePicture>(p => p.Add(d => d.Picture, CakeDrawing.HalfCut(Sheet, true)).Add(d => d.Id, "big").Add(d => d.ShowKey, true));
        var svg = drawn.Find("svg[role=img]");
        Assert.Contains("6 in, 8 in, 10 in", drawn.Find($"#{svg.GetAttribute("aria-labelledby")}").TextContent, StringComparison.Ordinal);
        var ids = drawn.FindAll("pattern").Select(p => p.Id).ToList();
        Assert.Equal(ids.Distinct(), ids);
        var used = Url().Matches(drawn.Markup).Select(m => m.Groups["id"].Value).Distinct().ToList();
        Assert.NotEmpty(used);
        Assert.Empty(used.Except(ids));
        Assert.Contains("raspberry jam", drawn.Find(".drawing-key").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mini_cake_is_a_pixel_a_centimetre_without_words()
    {
        var svg = Render<CakePicture>(p => p.Add(d => d.Picture, CakeDrawing.Mini(Sheet)).Add(d => d.PxPerCentimetre, 1d).Add(d => d.Rim, 1.4)).Find("svg");
        // 33.9 cm of cake and a rim of 1.4 px above and below.
        Assert.Equal(33.9 + 2.8, Number(svg.GetAttribute("height")), 0.01);
        Assert.Empty(svg.QuerySelectorAll("text"));
    }

    [Fact]
    public void Words_of_an_order_cannot_become_markup()
    {
        var picture = new CakeDrawing("<b>", new Extent(0, 0, 10, 10), default, [new Lettering(Part.Label, 5, 5, Place.On, "<script>x</script>")], []);
        var drawn = Render<CakePicture>(p => p.Add(d => d.Picture, picture));
        Assert.Empty(drawn.FindAll("script"));
        Assert.Contains("<script>", drawn.Find("text").TextContent, StringComparison.Ordinal);
    }

    private IElement Draw(CakeDrawing picture, double wide, double high) =>
        Render<CakePicture>(p => p.Add(d => d.Picture, picture).Add(d => d.MaxWidth, wide).Add(d => d.MaxHeight, high)).Find("svg");

    // The outline begins at the lower left corner: M left bottom V ... H right V bottom Z.
    private static (double Width, double Height) Box(IElement path)
    {
        var d = path.GetAttribute("d")!;
        var bottom = Figures(d)[1];
        var left = Figures(d)[0];
        var (top, right, corner) = (Figures(d[d.IndexOf('V', StringComparison.Ordinal)..])[0], Figures(d[d.IndexOf('H', StringComparison.Ordinal)..])[0], Figures(d[d.IndexOf('a', StringComparison.Ordinal)..])[0]);
        return (right + corner - left, bottom - (top - corner));
    }

    private static List<double> Figures(string text) => [.. Figure().Matches(text).Select(m => Number(m.Value))];

    private static double Number(string? text) => double.Parse(text!, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"-?[0-9.]+", RegexOptions.None, 1000)]
    private static partial Regex Figure();

    [GeneratedRegex(@"url\(#(?<id>[^)]+)\)", RegexOptions.None, 1000)]
    private static partial Regex Url();
}
