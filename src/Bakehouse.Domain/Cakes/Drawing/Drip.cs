namespace Bakehouse.Domain.Cakes.Drawing;

/// <summary>A drip from the front: a band along the edge, and runs of changing length that cover half of the side.</summary>
internal static class Drip
{
    /// <summary>Chocolate, as it is drawn wherever it is food.</summary>
    private const string Chocolate = "#6E432C";

    /// <summary>Width of a run and height of the band, mm; a run every other width covers half (common practice, no source).</summary>
    private const double Run = 8, Band = 6;

    /// <summary>Parts of the farthest reach, one run after the other.</summary>
    private static readonly double[] Lengths = [0.7, 1, 0.55, 0.85];

    /// <summary>What is drawn of it; nothing on a tier without one.</summary>
    /// <param name="until">Drawn from the left edge to here, mm from the middle; the whole width if not given.</param>
    public static IEnumerable<Drawn> On(StandingTier tier, double? until = null)
    {
        var reach = Math.Min(tier.Height - Run, (double)(tier.Build.Tier.Special?.Drip.Millimetres ?? 0));
        if (reach <= 0)
        {
            yield break;
        }

        var right = until ?? tier.Radius;
        yield return Coat(-tier.Radius, tier.Top - Band, tier.Radius + right, Band) with { TopLeft = Band - 0.5, TopRight = until is null ? Band - 0.5 : 0 };
        var runs = Math.Max(1, (int)(tier.Radius / Run));
        var step = 2 * tier.Radius / runs;
        for (var i = 0; i < runs; i++)
        {
            var (x, down) = (-tier.Radius + ((i + 0.5) * step), Math.Max(Run, reach * Lengths[i % Lengths.Length]) - (Run / 2));
            if (x + (Run / 2) > right)
            {
                yield break;
            }

            yield return Coat(x - (Run / 2), tier.Top - down, Run, down);
            yield return new Circle(Part.Coat, x, tier.Top - down, Run / 2) { Swatch = Chocolate };
        }
    }

    /// <summary>True if the tier has one: what is written on it needs a plate.</summary>
    public static bool IsOn(StandingTier tier) => tier.Build.Tier.Special is { Drip.Millimetres: > 0 };

    private static Rectangle Coat(double x, double y, double width, double height) => new(Part.Coat, x, y, width, height) { Swatch = Chocolate };
}
