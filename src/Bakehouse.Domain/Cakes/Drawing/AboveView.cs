namespace Bakehouse.Domain.Cakes.Drawing;

using static FormattableString;

/// <summary>Each tier that carries another, from above, side by side in one scale, the bottom one first; a single cake alone.</summary>
internal sealed class AboveView(BuildSheet sheet, bool inches)
{
    private const double Apart = 30, Arm = 6;

    private readonly Stack stack = new(sheet, inches);
    private readonly double dowel = Stack.Mm(sheet.Figures.DowelDiameter);

    public CakeDrawing Draw()
    {
        var shown = stack.Tiers.Count == 1 ? stack.Tiers : stack.Tiers[..^1];
        List<Drawn> lines = [];
        var left = 0.0;
        foreach (var tier in shown)
        {
            lines.AddRange(Tier(tier, left + Reach(tier)));
            left += (2 * Reach(tier)) + Apart;
        }

        var tallest = shown.Max(Reach);
        var title = sheet.Supports == 0
            ? $"The cake from above, to scale: {stack.Sizes}."
            : "The supports from above, to scale: " + string.Join("; ", shown.Select(Said)) + ".";
        return new CakeDrawing(title, new Extent(0, -tallest, left - Apart, tallest), new Surround(0.4, 0.4, 0.4, 3), lines, []);
    }

    private IEnumerable<Drawn> Tier(StandingTier tier, double x)
    {
        yield return new Circle(Part.Coat, x, 0, tier.Radius) { Swatch = tier.MainSwatch };
        yield return new Circle(Part.Edge, x, 0, tier.Radius);
        yield return new Segment(Part.Cross, x - Arm, 0, x + Arm, 0);
        yield return new Segment(Part.Cross, x, -Arm, x, Arm);
        yield return new Lettering(Part.Label, x, -Reach(tier), Place.Below, stack.Size(tier.Build.Tier.Diameter), CutTo(tier));
        if (tier.Build.Supports is not { } supports)
        {
            yield break;
        }

        yield return new Circle(Part.Above, x, 0, Carried(tier)!.BoardRadius);
        var ring = Stack.Mm(supports.RingDiameter) / 2;
        foreach (var angle in supports.Angles.Select(a => a * Math.PI / 180))
        {
            yield return new Circle(Part.Dowel, x + (ring * Math.Cos(angle)), ring * Math.Sin(angle), dowel / 2);
        }
    }

    private StandingTier? Carried(StandingTier tier) => stack.Tiers.ElementAtOrDefault(stack.Tiers.IndexOf(tier) + 1);

    // A wider tier above reaches over the one that carries it.
    private double Reach(StandingTier tier) => Math.Max(tier.Radius, Carried(tier)?.BoardRadius ?? 0);

    private static string CutTo(StandingTier tier) => tier.Build.Supports is { } s
        ? Invariant($"{s.Count} × {s.Length.Centimetres:0.0} cm")
        : "";

    private string Said(StandingTier tier) => tier.Build.Supports is { } s
        ? Invariant($"in {stack.Size(tier.Build.Tier.Diameter)} {s.Count}, all cut to {s.Length.Centimetres:0.0} cm")
        : stack.Size(tier.Build.Tier.Diameter);
}
