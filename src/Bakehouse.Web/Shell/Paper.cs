namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes.Drawing;

/// <summary>The sheet a drawing is put on: its size and where each millimetre falls, in px.</summary>
/// <param name="Scale">Px in a millimetre, across and up.</param>
/// <param name="Left">Px left of the drawing's extent.</param>
/// <param name="Top">Px over it.</param>
internal readonly record struct Paper(Extent Extent, double Scale, double Left, double Top, double Width, double Height)
{
    /// <summary>The largest scale that fits with the words around, or the one prescribed.</summary>
    public static Paper For(CakeDrawing picture, double maxWidth, double maxHeight, double textHeight, double rim, double? pxPerCentimetre)
    {
        var (around, extent) = (picture.Surround, picture.Extent);
        var across = ((around.Left + around.Right) * textHeight) + (2 * rim);
        var up = ((around.Top + around.Bottom) * textHeight) + (2 * rim);
        var scale = pxPerCentimetre / 10 ?? Math.Min((maxWidth - across) / extent.Width, (maxHeight - up) / extent.Height);
        return scale > 0
            ? new Paper(
                extent,
                scale,
                (around.Left * textHeight) + rim,
                (around.Top * textHeight) + rim,
                (extent.Width * scale) + across,
                (extent.Height * scale) + up)
            : throw new ArgumentOutOfRangeException(nameof(maxWidth), (maxWidth, maxHeight), "A drawing needs more px than its words take.");
    }

    /// <summary>Px from the left.</summary>
    public double X(double millimetres) => Left + ((millimetres - Extent.Left) * Scale);

    /// <summary>Px from the top.</summary>
    public double Y(double millimetres) => Top + ((Extent.Top - millimetres) * Scale);
}
