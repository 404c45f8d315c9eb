namespace Bakehouse.Web.Shell;

using System.Globalization;

/// <summary>Contrast of two colours by the formula of WCAG 2.2 (W3C), definitions of relative luminance and contrast ratio.</summary>
public static class Contrast
{
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
