namespace Bakehouse.Domain.Cakes.Drawing;

using static FormattableString;

/// <summary>Each tier that carries another, from above, side by side in one scale, the bottom one first; a single cake alone.</summary>
internal sealed class AboveView(BuildSheet sheet, bool inches)
{
    private const double Apart = 70, Arm = 6;

    private readonly Stack stack = new(sheet, inches);
    private readonly double dowel = Stack.Mm(sheet.Figures.DowelDiameter);

    public CakeDrawing Draw()
    {
        var shown = stack.Tiers.Count == 1 ? stack.Tiers : stack.Tiers[..^1];
        var (low, high) = (-shown.Max(t => Reach(t, d => -d.Y)), shown.Max(t => Reach(t, d => d.Y)));
        List<Drawn> lines = [];
        var left = 0.0;
        foreach (var tier in shown)
        {
            var reach = Reach(tier, d => Math.Abs(d.X));
            lines.AddRange(Tier(tier, left + reach));
            lines.Add(new Lettering(Part.Label, left + reach, low, Place.Below, stack.Named(tier.Build.Tier), CutTo(tier)));
            left += (2 * reach) + Apart;
        }

        var title = sheet.Supports == 0
            ? $"The cake from above, to scale: {stack.Sizes}."
            : "The supports from above, to scale: " + string.Join("; ", shown.Select(Said)) + ".";
        return new CakeDrawing(title, new Extent(0, low, left - Apart, high), new Surround(0.4, 0.4, 0.4, 3), lines, []);
    }

    public CakeDrawing Outline()
    {
        var tier = stack.Bottom;
        var (across, low, high) = (Reach(tier, d => Math.Abs(d.X)), -Reach(tier, d => -d.Y), Reach(tier, d => d.Y));
        return new CakeDrawing($"{stack.Named(tier.Build.Tier)}, from above.", new Extent(-across, low, across, high), default, [Around(Part.Coat, tier.Build.Shape, tier.Grown, 0) with { Swatch = tier.MainSwatch }, Around(Part.Edge, tier.Build.Shape, tier.Grown, 0)], []);
    }

    private IEnumerable<Drawn> Tier(StandingTier tier, double x)
    {
        yield return Around(Part.Coat, tier.Build.Shape, tier.Grown, x) with { Swatch = tier.MainSwatch };
        yield return Around(Part.Edge, tier.Build.Shape, tier.Grown, x);
        yield return new Segment(Part.Cross, x - Arm, 0, x + Arm, 0);
        yield return new Segment(Part.Cross, x, -Arm, x, Arm);
        if (tier.Build.Supports is not { } supports)
        {
            yield break;
        }

        yield return Around(Part.Above, Carried(tier)!.Build.Board.Shape, 0, x);
        var ring = Stack.Mm(supports.RingDiameter) / 2;
        foreach (var angle in supports.Angles.Select(a => a * Math.PI / 180))
        {
            yield return new Circle(Part.Dowel, x + (ring * Math.Cos(angle)), ring * Math.Sin(angle), dowel / 2);
        }
    }

    private static Drawn Around(Part part, Shape shape, double grown, double x) => shape is Round round
        ? new Circle(part, x, 0, (Stack.Mm(round.Diameter) / 2) + grown)
        : new Patch(part, [.. Contour.Of(shape, grown).Select(l => (IReadOnlyList<Dot>)[.. l.Select(d => d with { X = d.X + x })])]);

    private StandingTier? Carried(StandingTier tier) => stack.Tiers.ElementAtOrDefault(stack.Tiers.IndexOf(tier) + 1);

    // A wider tier above reaches over the one that carries it.
    private double Reach(StandingTier tier, Func<Dot, double> way) => Contour.Of(tier.Build.Shape, tier.Grown)
        .Concat(tier.Build.Supports is not null && Carried(tier) is { } carried ? Contour.Of(carried.Build.Board.Shape) : []).SelectMany(l => l).Max(way);

    private static string CutTo(StandingTier tier) => tier.Build.Supports is { } s
        ? Invariant($"{s.Count} × {s.Length.Centimetres:0.0} cm")
        : "";

    private string Said(StandingTier tier) => tier.Build.Supports is { } s
        ? Invariant($"in {stack.Named(tier.Build.Tier)} {s.Count}, all cut to {s.Length.Centimetres:0.0} cm")
        : stack.Named(tier.Build.Tier);
}
