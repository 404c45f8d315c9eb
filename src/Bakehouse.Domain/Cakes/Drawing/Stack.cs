namespace Bakehouse.Domain.Cakes.Drawing;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;

/// <summary>A tier in its place: feet and sizes in millimetres above the table.</summary>
/// <param name="BoardFoot">Underside of its board (for the bottom tier: the drum).</param>
/// <param name="Foot">Underside of the tier.</param>
/// <param name="Radius">With coats.</param>
/// <param name="BareRadius">Without.</param>
/// <param name="Height">With coats.</param>
internal sealed record StandingTier(
    TierBuild Build, double BoardFoot, double Foot, double Radius, double BareRadius, double Height)
{
    public double Top => Foot + Height;

    /// <summary>Both coats.</summary>
    public double Grown => Radius - BareRadius;

    public double BoardRadius => (double)Build.Board.Diameter.Millimetres / 2;

    public string MainSwatch => Build.Tier.Colours.MaxBy(c => c.Share)?.Swatch ?? Contrast.White;

    public string[] Swatches => [.. Build.Tier.Colours.Select(c => c.Swatch)];

    /// <summary>"vanilla" and the like; an unknown sponge is drawn as vanilla.</summary>
    public string SpongeFood => Sponge.Of(Build.Tier.Sponge)?.Food ?? "vanilla";

    /// <summary>True if only the first coat is on it, so that the layers show through.</summary>
    public bool LayersShow => Build.Coat == Volume.Zero && Build.Paste is null;
}

/// <summary>The tiers on each other, and the words of their sizes.</summary>
internal sealed class Stack
{
    public Stack(BuildSheet sheet, bool inches)
    {
        Inches = inches;
        var foot = 0.0;
        foreach (var build in sheet.Stack)
        {
            var tier = new StandingTier(
                build,
                foot + Mm(build.Separator),
                foot + Mm(build.Separator) + Mm(build.Board.Thickness),
                Mm(build.Finished.Diameter) / 2,
                Mm(build.Shape.Wide) / 2,
                Mm(build.Finished.Height));
            Tiers.Add(tier);
            foot = tier.Top;
        }
    }

    public List<StandingTier> Tiers { get; } = [];

    public StandingTier Bottom => Tiers[0];

    public double Top => Tiers[^1].Top;

    public double HalfWidth => Tiers.Max(t => Math.Max(t.Radius, t.BoardRadius));

    private bool Inches { get; }

    public static double Mm(Length length) => (double)length.Millimetres;

    /// <summary>"10 in", "14 × 10 in", "8": what stands on the tier itself.</summary>
    public string Face(CakeTier tier) => TierNames.Face(tier, Inches);

    /// <summary>"10 in", "9 in hexagon", "14 × 10 in".</summary>
    public string Named(CakeTier tier) => TierNames.Of(tier, Inches);

    /// <summary>"10 in = 25.4 cm", the shop's habit first.</summary>
    public string BothSizes(Length length) => Inches
        ? $"{InInches(length)} = {InCentimetres(length)}"
        : $"{InCentimetres(length)} = {InInches(length)}";

    public static string InCentimetres(Length length) => $"{length.Centimetres.ToString("0.#", CultureInfo.InvariantCulture)} cm";

    /// <summary>"6 in, 8 in and 10 in, top first": for the title.</summary>
    public string Sizes => string.Join(", ", Enumerable.Reverse(Tiers).Select(t => Named(t.Build.Tier)));

    /// <summary>What stands in the free height below a tier: the supports of the one that carries it.</summary>
    public IEnumerable<Rectangle> Pillars(double across)
    {
        foreach (var (below, above) in Tiers.Zip(Tiers.Skip(1)).Where(p => p.Second.Build.Separator.Millimetres > 0 && p.First.Build.Supports is not null))
        {
            var ring = Mm(below.Build.Supports!.RingDiameter) / 2;
            foreach (var x in below.Build.Supports.Angles.Select(a => Math.Round(ring * Math.Cos(a * Math.PI / 180), 3)).Distinct())
            {
                yield return new Rectangle(Part.Dowel, x - (across / 2), below.Top, across, above.BoardFoot - below.Top);
            }
        }
    }

    private static string InInches(Length length) => $"{length.Inches.ToString("0.#", CultureInfo.InvariantCulture)} in";
}
