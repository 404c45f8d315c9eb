namespace Bakehouse.Domain.Cakes.Drawing;

using static FormattableString;

/// <summary>The cake from the front.</summary>
internal sealed class FrontView(BuildSheet sheet, bool inches)
{
    private const double Corner = 5.5, BeadRadius = 4;

    /// <summary>Six lines at r·sin of these angles from the front show that a tier is round.</summary>
    private static readonly (double Degrees, double Opacity)[] Round6 =
        [(46, .16), (56, .21), (64, .26), (71, .31), (77, .36), (82, .40)];

    private readonly Stack stack = new(sheet, inches);

    public CakeDrawing Outside()
    {
        var frame = new Frame(stack);
        List<Drawn> lines = [.. frame.Ruler()];
        foreach (var tier in stack.Tiers)
        {
            lines.Add(BoardOf(tier));
            lines.AddRange(CoatOf(tier, -tier.Radius, 2 * tier.Radius, true, true));
            lines.AddRange(Relief(tier));
            lines.AddRange(Drip.On(tier));
            lines.AddRange(Beads(tier));
            lines.Add(Label(tier, 0, 2 * tier.Radius));
        }

        lines.AddRange(stack.Pillars(Stack.Mm(sheet.Figures.DowelDiameter)));
        lines.AddRange(frame.Dimension());
        return new CakeDrawing($"The cake from the front, to scale: {stack.Sizes}, top first.", frame.Extent, Frame.Surround, lines, []);
    }

    public CakeDrawing Mini()
    {
        List<Drawn> lines = [];
        foreach (var tier in stack.Tiers)
        {
            lines.Add(BoardOf(tier));
            lines.AddRange(CoatOf(tier, -tier.Radius, 2 * tier.Radius, true, true));
        }

        return new CakeDrawing(
            $"{stack.Sizes}, top first.", new Extent(-stack.HalfWidth, 0, stack.HalfWidth, stack.Top), default, lines, []);
    }

    public static Rectangle BoardOf(StandingTier tier) =>
        new(Part.Board, -tier.BoardRadius, tier.BoardFoot, 2 * tier.BoardRadius, tier.Foot - tier.BoardFoot);

    /// <summary>
    /// The coat between x and x + width, its edge, and the layers where they show through. Several colours are drawn as bands from
    /// below, each as high as its share: how much of each, not where it goes.
    /// </summary>
    public static IEnumerable<Drawn> CoatOf(StandingTier tier, double x, double width, bool left, bool right)
    {
        var (topLeft, topRight) = (left ? Corner : 0, right ? Corner : 0);
        var foot = tier.Foot;
        foreach (var colour in tier.Build.Tier.Colours.Where(c => c.Share > 0))
        {
            var high = tier.Height * (double)colour.Share;
            var topmost = foot + high > tier.Top - 1e-6;
            yield return new Rectangle(Part.Coat, x, foot, width, high)
            {
                Swatch = colour.Swatch,
                TopLeft = topmost ? Math.Min(topLeft, high) : 0,
                TopRight = topmost ? Math.Min(topRight, high) : 0,
            };
            foot += high;
        }

        foreach (var layer in tier.LayersShow ? Layers.Of(tier, x, width) : [])
        {
            yield return layer with { Opacity = 0.35 };
        }

        yield return new Rectangle(Part.Edge, x, tier.Foot, width, tier.Height) { TopLeft = topLeft, TopRight = topRight };
    }

    /// <summary>Size and portions; words stand on a plate where neither ink nor white reads on every colour.</summary>
    public Lettering Label(StandingTier tier, double x, double room) =>
        new(Part.Label, x, tier.Foot + (tier.Height / 2), Place.On, stack.Face(tier.Build.Tier), tier.Build.Tier.IsFalse ? "not eaten" : Invariant($"{tier.Build.Dessert} dessert"))
        {
            Large = true,
            Room = room,
            Over = tier.LayersShow || Drip.IsOn(tier) ? WordsOn.Plate : Contrast.On(tier.Swatches),
            Swatch = Drip.IsOn(tier) && !tier.LayersShow ? tier.MainSwatch : null,
        };

    /// <summary>Roundness by its six lines, a straight side by one near the right edge, all others by the upright edges that are seen.</summary>
    private static IEnumerable<Segment> Relief(StandingTier tier) => tier.Build.Shape switch
    {
        Round => Round6.Select(r => Upright(tier, tier.Radius * Math.Sin(r.Degrees * Math.PI / 180), r.Opacity)),
        Slab => [Upright(tier, tier.Radius * 0.9, .4)],
        var shape => Contour.Creases(shape, tier.Grown).Where(x => Math.Abs(x) < tier.Radius - 2).Select(x => Upright(tier, x, .4)),
    };

    private static Segment Upright(StandingTier tier, double x, double opacity) =>
        new(Part.Roundness, x, tier.Foot + (2 * BeadRadius), x, tier.Top - Corner) { Opacity = opacity };

    private static IEnumerable<Drawn> Beads(StandingTier tier)
    {
        var count = (int)(tier.Radius / BeadRadius);
        var step = 2 * tier.Radius / count;
        return Enumerable.Range(0, count).Select(i =>
            new Circle(Part.Bead, -tier.Radius + ((i + 0.5) * step), tier.Foot + BeadRadius, BeadRadius) { Swatch = tier.Build.Tier.Colours[0].Swatch });
    }
}
