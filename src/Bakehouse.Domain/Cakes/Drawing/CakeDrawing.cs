namespace Bakehouse.Domain.Cakes.Drawing;

/// <summary>
/// A cake as lines, to scale; page and paper render the same. Coordinates are millimetres: x to the right from the centre line,
/// y up from the table (seen from above: y away from the looker). One scale holds for both directions and all tiers. Colours are
/// left to whoever renders it, except the order's own swatches.
/// </summary>
/// <param name="Title">What is seen, in one sentence, for those who can't see it.</param>
/// <param name="Extent">Encloses every line.</param>
/// <param name="Surround">Room for words outside the extent.</param>
/// <param name="Lines">In the order in which they are drawn; later ones cover earlier ones.</param>
/// <param name="Key">What the patterns mean, each once.</param>
public sealed record CakeDrawing(
    string Title, Extent Extent, Surround Surround, IReadOnlyList<Drawn> Lines, IReadOnlyList<KeyEntry> Key)
{
    /// <summary>From the front; of cupcakes alone as <see cref="InBoxes"/>.</summary>
    /// <param name="inches">True if the shop names tiers in inches, false for centimetres.</param>
    public static CakeDrawing Outside(BuildSheet sheet, bool inches) => sheet.Stack.Count == 0 ? InBoxes(sheet, inches) : new FrontView(sheet, inches).Outside();

    /// <summary>Left of the centre line from outside, right of it cut through; of cupcakes alone as <see cref="InBoxes"/>.</summary>
    public static CakeDrawing HalfCut(BuildSheet sheet, bool inches) => sheet.Stack.Count == 0 ? InBoxes(sheet, inches) : new HalfCutView(sheet, inches).Draw();

    /// <summary>Each tier that carries another, from above, the bottom one first, with its supports; of cupcakes alone as <see cref="InBoxes"/>.</summary>
    public static CakeDrawing FromAbove(BuildSheet sheet, bool inches) => sheet.Stack.Count == 0 ? InBoxes(sheet, inches) : new AboveView(sheet, inches).Draw();

    /// <summary>The bottom tier from above, or a box of cupcakes, without words, to be drawn at a pixel a centimetre.</summary>
    public static CakeDrawing Outline(BuildSheet sheet) => sheet.Stack.Count == 0 ? new CupcakeView(sheet, true).Outline() : new AboveView(sheet, true).Outline();

    /// <summary>Outline only, to be drawn at a pixel a centimetre: heads of rows, offers, stops.</summary>
    public static CakeDrawing Mini(BuildSheet sheet) => sheet.Stack.Count == 0 ? new CupcakeView(sheet, true).Mini() : new FrontView(sheet, true).Mini();

    /// <summary>The cupcakes that stand beside, in their boxes from above. The sheet must have some.</summary>
    public static CakeDrawing InBoxes(BuildSheet sheet, bool inches) => new CupcakeView(sheet, inches).Draw();
}

/// <summary>The rectangle that encloses a drawing, in millimetres.</summary>
public readonly record struct Extent(double Left, double Bottom, double Right, double Top)
{
    /// <summary>From left to right.</summary>
    public double Width => Right - Left;

    /// <summary>From bottom to top.</summary>
    public double Height => Top - Bottom;
}

/// <summary>Room outside the extent, in heights of the text, since text has its own size at any scale.</summary>
public readonly record struct Surround(double Left, double Top, double Right, double Bottom);

/// <summary>One entry of the key: a pattern and its word.</summary>
/// <param name="Food">The food, for sponge and filling; else empty.</param>
/// <param name="Word">What it is called.</param>
public sealed record KeyEntry(Part Part, string Food, string Word);
