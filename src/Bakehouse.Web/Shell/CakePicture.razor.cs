namespace Bakehouse.Web.Shell;

using System.Globalization;
using System.Net;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Drawing;
using Microsoft.AspNetCore.Components;

/// <summary>
/// Renders a drawing of the domain as plain SVG. Lines keep their width and words their size at every scale; only millimetres are
/// scaled, by one factor in both directions.
/// </summary>
public partial class CakePicture
{
    /// <summary>What is drawn.</summary>
    [Parameter, EditorRequired]
    public CakeDrawing Picture { get; set; } = default!;

    /// <summary>Begins the ids of this drawing; its own on the page.</summary>
    [Parameter]
    public string Id { get; set; } = "cake";

    /// <summary>Most px across.</summary>
    [Parameter]
    public double MaxWidth { get; set; } = 440;

    /// <summary>Most px up.</summary>
    [Parameter]
    public double MaxHeight { get; set; } = 460;

    /// <summary>Px in a centimetre, if it is prescribed (1 for a mini cake); else the largest that fits.</summary>
    [Parameter]
    public double? PxPerCentimetre { get; set; }

    /// <summary>Height of words in px; never under 14.5, the least that is legible at the counter.</summary>
    [Parameter]
    public double TextHeight { get; set; } = 14.5;

    /// <summary>Width of the edges in px: 2, for a mini cake 1.4.</summary>
    [Parameter]
    public double Rim { get; set; } = 2;

    /// <summary>True to write the key of the patterns under the drawing.</summary>
    [Parameter]
    public bool ShowKey { get; set; }

    private Paper Paper => Paper.For(Picture, MaxWidth, MaxHeight, TextHeight, Rim, PxPerCentimetre);

    private IEnumerable<(Part Part, string Food)> Patterned =>
        Picture.Lines.Where(l => DrawingPattern.Has(l.Part)).Select(l => (l.Part, l.Food))
            .Concat(Picture.Key.Where(k => DrawingPattern.Has(k.Part)).Select(k => (k.Part, k.Food)))
            .DistinctBy(p => PatternId(p.Part, p.Food));

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (TextHeight < 14.5)
        {
            throw new InvalidOperationException($"Words of a drawing are 14.5 px high or more, not {F(TextHeight)}.");
        }
    }

    private static string F(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Class(Drawn line) => line.Part switch
    {
        Part.HiddenDowel => "hidden-dowel",
        Part.RulerLine => "ruler-line",
        Part.CentreLine => "centre-line",
        var part => part.ToString().ToLowerInvariant(),
    };

    private static string? Opacity(Drawn line) => line.Opacity < 1 ? F(line.Opacity) : null;

    private static string? Stroke(Drawn line) => line.Part switch
    {
        Part.Coat => null,
        Part.RulerLine => "var(--line, #C8D3DC)",
        // A coat keeps its colour by night, so the lines on it keep theirs.
        Part.Roundness or Part.Cross or Part.Above or Part.Bead => Contrast.Ink,
        _ => "var(--ink, #15304B)",
    };

    private static string? Dashes(Drawn line) => line.Part switch
    {
        Part.HiddenDowel => "4 3",
        Part.Above => "5 4",
        Part.RulerLine => "2 4",
        Part.CentreLine => "8 3 2 3",
        _ => null,
    };

    private string? Width(Drawn line) => Stroke(line) is null ? null : line.Part switch
    {
        Part.Edge or Part.Board => F(Rim),
        Part.Ruler or Part.Dimension or Part.HiddenDowel or Part.Above => "1.4",
        _ => "1",
    };

    private string Fill(Drawn line) => Fill(line.Part, line.Food, line.Swatch);

    private string Fill(Part part, string food, string? swatch) => part switch
    {
        Part.Coat or Part.Bead => swatch ?? "var(--enamel, #FFFFFF)",
        Part.Board => "var(--board, #CBD5DD)",
        Part.Foam => "var(--wash, #F3F6F8)",
        var p when DrawingPattern.Has(p) => $"url(#{PatternId(part, food)})",
        _ => "none",
    };

    private string PatternId(Part part, string food) => DrawingPattern.IdOf(Id, part, food);

    // A dowel seen from its end is never smaller than a dot that can be counted.
    private double Radius(Circle c) => Math.Max(c.Part == Part.Dowel ? 3 : 0, c.Radius * Paper.Scale);

    // A filling is never thinner than 3 px, so that its hatch can be seen.
    private string Outline(Rectangle r)
    {
        var high = r.Height * Paper.Scale;
        var more = r.Part == Part.Filling ? Math.Max(0, 3 - high) : 0;
        var (left, right) = (Paper.X(r.X), Paper.X(r.X + r.Width));
        var (top, bottom) = (Paper.Y(r.Y + r.Height) - (more / 2), Paper.Y(r.Y) + (more / 2));
        var (a, b) = (r.TopLeft * Paper.Scale, r.TopRight * Paper.Scale);
        return $"M{F(left)} {F(bottom)}V{F(top + a)}{Arc(a, a, -a)}H{F(right - b)}{Arc(b, b, b)}V{F(bottom)}Z";
    }

    private string Closed(Patch patch) => string.Concat(patch.Loops.Select(l => $"M{string.Join('L', l.Select(d => $"{F(Paper.X(d.X))} {F(Paper.Y(d.Y))}"))}Z"));

    private static string Arc(double radius, double dx, double dy) =>
        radius > 0 ? $"a{F(radius)} {F(radius)} 0 0 1 {F(dx)} {F(dy)}" : "";

    private double TextSize(Lettering l) => l.Large ? TextHeight * 1.4 : TextHeight;

    private double WordsHeight(Lettering l) => TextSize(l) + (l.Second.Length > 0 ? TextHeight * 1.2 : 0);

    // A figure or letter of the shop's font is about 0.55 of its height wide.
    private double WordsWidth(Lettering l) => 0.55 * Math.Max(l.Text.Length * TextSize(l), l.Second.Length * TextHeight);

    private bool Fits(Lettering l) => l.Room is null || WordsWidth(l) + 4 <= l.Room * Paper.Scale;

    // The second line goes first where there is no room for both.
    private Lettering Shown(Lettering l) => Fits(l) ? l : l with { Second = "" };

    private double WordsLeft(Lettering l) => Paper.X(l.X) - l.Place switch
    {
        Place.Left => WordsWidth(l) + 4,
        Place.Right => -4,
        _ => WordsWidth(l) / 2,
    };

    // The base line of the first line of words.
    private double FirstLine(Lettering l) => Paper.Y(l.Y) + l.Place switch
    {
        Place.Below => TextSize(l) + 2,
        Place.Above => -8,
        _ => (0.36 * TextSize(l)) - (l.Second.Length > 0 ? TextHeight * 0.6 : 0),
    };

    /// <summary>An SVG's text tag is Razor's own word, so it is written as markup; the words are encoded.</summary>
    private MarkupString Written(Lettering l)
    {
        var (x, anchor) = l.Place switch
        {
            Place.Left => (Paper.X(l.X) - 4, "end"),
            Place.Right => (Paper.X(l.X) + 4, "start"),
            _ => (Paper.X(l.X), "middle"),
        };
        var colour = l.Over == WordsOn.White ? Contrast.White
            : l.Part == Part.Label && l.Place == Place.On ? Contrast.Ink
            : l.Part == Part.Ruler ? "var(--ink2, #47607A)" : "var(--ink, #15304B)";
        var first = Line(FirstLine(l), l.Text, TextSize(l), l.Large ? 700 : 550);
        return new MarkupString(l.Second.Length == 0 ? first : first + Line(FirstLine(l) + (TextHeight * 1.25), l.Second, TextHeight, 550));

        string Line(double y, string words, double size, int weight) =>
            $"<text x=\"{F(x)}\" y=\"{F(y)}\" text-anchor=\"{anchor}\" font-size=\"{F(size)}\" font-weight=\"{weight}\" fill=\"{colour}\">{WebUtility.HtmlEncode(words)}</text>";
    }
}
