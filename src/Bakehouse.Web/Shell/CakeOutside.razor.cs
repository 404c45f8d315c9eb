namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Microsoft.AspNetCore.Components;

/// <summary>Front elevation of a round tiered cake. One scale in x and y for all tiers; the foot stands on the board.</summary>
public partial class CakeOutside
{
    /// <summary>Where the six lines that show roundness stand, degrees from the front, and how strong they are.</summary>
    private static readonly (double Angle, string Opacity)[] Round =
        [(46, ".16"), (56, ".2"), (64, ".25"), (71, ".3"), (77, ".35"), (82, ".4")];

    private const decimal BoardHigh = 1.2m;
    private const decimal Left = 42;
    private const decimal Over = 10.16m;

    /// <summary>Bottom first.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<CakeTier> Tiers { get; set; } = [];

    /// <summary>Second line in each tier, bottom first: its portions.</summary>
    [Parameter]
    public IReadOnlyList<string> Says { get; set; } = [];

    /// <summary>Names the size of a tier by the shop's habit.</summary>
    [Parameter, EditorRequired]
    public Words Words { get; set; } = default!;

    /// <summary>Size of the picture in px at its own scale.</summary>
    [Parameter]
    public decimal Wide { get; set; } = 360;

    [Parameter]
    public decimal Tall { get; set; } = 380;

    /// <summary>Px in a cm, the same in both directions.</summary>
    public decimal Scale => Math.Min((Wide - Left - 10) / Drum, (Tall - 76) / Top);

    private decimal Drum => Tiers.Count == 0 ? 30 : Tiers.Max(t => t.Diameter.Centimetres) + Over;

    private int Top => Math.Max(20, (int)Math.Ceiling((Tiers.Sum(t => t.Height.Centimetres) + 2) / 5) * 5);

    private decimal Middle => Left + ((Wide - Left - 6) / 2);

    private decimal DimY => Tall - 16;

    private Box? Bottom => Boxes.FirstOrDefault();

    private string Title => Tiers.Count == 0 ? "No tier yet" : $"{Tiers.Count} round tiers from the front, to scale";

    private string Dimension => Tiers.Count == 0
        ? ""
        : $"{Tiers[0].Diameter.Inches.ToString("0.#", CultureInfo.InvariantCulture)} in = {Tiers[0].Diameter.Centimetres.ToString("0.#", CultureInfo.InvariantCulture)} cm";

    private IEnumerable<Box> Boxes
    {
        get
        {
            var foot = 0m;
            for (var i = 0; i < Tiers.Count; i++)
            {
                var tier = Tiers[i];
                var wide = tier.Diameter.Centimetres * Scale;
                foot += tier.Height.Centimetres;
                var colour = tier.Colours.Count > 0 ? tier.Colours.MaxBy(c => c.Share)!.Swatch : "#F7F0E1";
                yield return new Box(
                    Middle - (wide / 2), Y(foot), wide, tier.Height.Centimetres * Scale, colour, Math.Max(1, (int)(wide / 9)),
                    Words.Size(tier.Diameter), i < Says.Count ? Says[i] : "", Contrast.Ratio("#15304B", colour) < 4.5);
            }
        }
    }

    private string Ruler => $"M{F(Left)} {F(Y(0))}V{F(Y(Top))}" + string.Concat(Enumerable.Range(0, Top + 1).Select(cm =>
        $"M{F(Left)} {F(Y(cm))}h-{(cm % 10 == 0 ? 12 : cm % 5 == 0 ? 8 : 4)}"));

    private static string F(decimal n) => n.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Text of an SVG; the tag's own name would be taken for markup of the page.</summary>
    private static MarkupString Svg(decimal x, decimal y, string text, string anchor, int weight, decimal size) => new(
        $"<text x=\"{F(x)}\" y=\"{F(y)}\" text-anchor=\"{anchor}\" font-weight=\"{weight}\" font-size=\"{F(size)}\" fill=\"{(weight == 450 ? "var(--ink2)" : "#15304B")}\" stroke=\"none\">{System.Net.WebUtility.HtmlEncode(text)}</text>");

    private decimal Y(decimal cm) => Tall - 40 - (BoardHigh * Scale) - (cm * Scale);

    private sealed record Box(decimal X, decimal Y, decimal W, decimal H, string Colour, int Beads, string First, string Second, bool Plate);
}
