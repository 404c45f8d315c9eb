namespace Bakehouse.Domain.Cakes;

using System.Globalization;

/// <summary>Contrast of two colours by the formula of WCAG 2.2 (W3C), definitions of relative luminance and contrast ratio.</summary>
public static class Contrast
{
    /// <summary>The ink of drawings and words, on screen by day and on paper.</summary>
    public const string Ink = "#15304B";

    /// <summary>White.</summary>
    public const string White = "#FFFFFF";

    /// <summary>The least contrast of words with their ground (WCAG 2.2, success criterion 1.4.3, level AA).</summary>
    public const double LeastForWords = 4.5;

    /// <summary>How words are written over these swatches so that each gives contrast enough: in ink, else in white, else on a plate.</summary>
    /// <param name="swatches">Each as #RRGGBB.</param>
    public static WordsOn On(IReadOnlyCollection<string> swatches) =>
        swatches.All(s => Ratio(Ink, s) >= LeastForWords) ? WordsOn.Ink
        : swatches.All(s => Ratio(White, s) >= LeastForWords) ? WordsOn.White
        : WordsOn.Plate;

    /// <summary>1 to 21; the order of the two makes no difference.</summary>
    /// <param name="one">As #RRGGBB.</param>
    /// <param name="other">As #RRGGBB.</param>
    public static double Ratio(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var rgb = int.Parse(colour.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return (0.2126 * Linear(rgb >> 16)) + (0.7152 * Linear((rgb >> 8) & 255)) + (0.0722 * Linear(rgb & 255));
    }

    private static double Linear(int channel)
    {
        var c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }
}

/// <summary>How words are written over a ground.</summary>
public enum WordsOn
{
    /// <summary>In ink.</summary>
    Ink,

    /// <summary>In white.</summary>
    White,

    /// <summary>In ink on a white plate.</summary>
    Plate,
}
