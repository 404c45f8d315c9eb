namespace Bakehouse.Domain.Cakes.Drawing;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Cupcakes in their boxes from above, to scale: each box with the swirls in it, the boxes of one batch together.</summary>
internal sealed class CupcakeView(BuildSheet sheet, bool inches)
{
    private const double Gap = 25;

    /// <summary>Boxes side by side.</summary>
    private const int InRow = 3;

    private static readonly double Case = Mm(Cupcakes.Across) / 2;

    /// <summary>All batches below one another, each box once; words below each batch.</summary>
    public CakeDrawing Draw()
    {
        List<Drawn> lines = [];
        var (right, y) = (0.0, 0.0);
        foreach (var tier in sheet.Beside.Select(b => b.Tier))
        {
            foreach (var row in CupcakeBox.For(tier.Special!.Cupcakes!.Count).Zip(Filled(tier)).Chunk(InRow))
            {
                var x = 0.0;
                y -= row.Max(b => Mm(b.First.Shape.Depth));
                foreach (var (box, filled) in row)
                {
                    lines.AddRange(Boxed(box, filled, tier.Colours, x, y));
                    right = Math.Max(right, x + Mm(box.Shape.Width));
                    x += Mm(box.Shape.Width) + Gap;
                }

                y -= Gap;
            }

            lines.Add(new Lettering(Part.Label, right / 2, y + Gap, Place.Below, TierNames.Of(tier, inches)));
            y -= 3 * Gap;
        }

        var bottom = y + (4 * Gap);
        return new CakeDrawing($"In their boxes from above, to scale: {Said}.", new Extent(0, bottom, right, 0), new Surround(0.4, 0.4, 0.4, 1.6), lines, []);
    }

    /// <summary>The first box alone, without words.</summary>
    public CakeDrawing Outline()
    {
        var tier = sheet.Beside[0].Tier;
        var box = CupcakeBox.For(tier.Special!.Cupcakes!.Count)[0];
        return new CakeDrawing($"{Said}, from above.", new Extent(0, 0, Mm(box.Shape.Width), Mm(box.Shape.Depth)), default, [.. Boxed(box, Filled(tier)[0], tier.Colours, 0, 0)], []);
    }

    /// <summary>Three in a row from the front, twice as large as cakes are drawn: case and swirl, without words.</summary>
    public CakeDrawing Mini()
    {
        var (tier, wide, baked, swirl) = (sheet.Beside[0].Tier, 4 * Case, 2 * Mm(Cupcakes.Baked), 2 * Mm(Cupcakes.SwirlHeight));
        var row = Enumerable.Range(0, Math.Min(3, tier.Special!.Cupcakes!.Count)).Select(i => 2 * i * Mm(Cupcakes.Apart)).ToList();
        return new CakeDrawing(
            $"{Said}.", new Extent(0, 0, row[^1] + wide, baked + swirl), default, [.. row.SelectMany((x, i) => new Drawn[]
            {
                new Rectangle(Part.Board, x + 16, 0, wide - 32, baked),
                new Rectangle(Part.Coat, x, baked, wide, swirl) { Swatch = Swatch(tier.Colours, i, row.Count), TopLeft = wide / 2, TopRight = wide / 2 },
                new Rectangle(Part.Edge, x, baked, wide, swirl) { TopLeft = wide / 2, TopRight = wide / 2 },
            })], []);
    }

    private string Said => string.Join(", ", sheet.Beside.Select(b => TierNames.Of(b.Tier, inches)));

    /// <summary>Cupcakes in each box, the first full ones first.</summary>
    private static List<int> Filled(CakeTier tier)
    {
        var left = tier.Special!.Cupcakes!.Count;
        return [.. CupcakeBox.For(left).Select(b => (Math.Min(b.Holds, left), left -= b.Holds).Item1)];
    }

    private static IEnumerable<Drawn> Boxed(CupcakeBox box, int filled, IReadOnlyList<CoatColour> colours, double x, double y)
    {
        var (wide, deep) = (Mm(box.Shape.Width), Mm(box.Shape.Depth));
        yield return new Rectangle(Part.Board, x, y, wide, deep);
        var columns = (int)Math.Round(wide / Mm(Cupcakes.Apart));
        var rows = box.Holds / columns;
        for (var i = 0; i < filled; i++)
        {
            var (middle, up) = (x + (wide * ((i % columns) + 0.5) / columns), y + deep - (deep * ((i / columns) + 0.5) / rows));
            yield return new Circle(Part.Coat, middle, up, Case) { Swatch = Swatch(colours, i, filled) };
            yield return new Circle(Part.Edge, middle, up, Case);
            yield return new Circle(Part.Edge, middle, up, Case / 2);
        }
    }

    /// <summary>Several colours go by their shares: how many of each, not which.</summary>
    private static string Swatch(IReadOnlyList<CoatColour> colours, int index, int of)
    {
        var until = 0m;
        foreach (var colour in colours)
        {
            until += colour.Share;
            if ((index + 0.5m) / of <= until)
            {
                return colour.Swatch;
            }
        }

        return colours.Count == 0 ? Contrast.White : colours[^1].Swatch;
    }

    private static double Mm(Length length) => (double)length.Millimetres;
}
