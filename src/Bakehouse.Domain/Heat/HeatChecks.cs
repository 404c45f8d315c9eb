namespace Bakehouse.Domain.Heat;

using static System.FormattableString;

/// <summary>What a body, its materials or its stays may not be, so that nothing is worked out that means nothing.</summary>
public static class HeatChecks
{
    /// <summary>Longest time worked out: 60 days, in minutes.</summary>
    public const double LongestMinutes = 60 * 1440;

    /// <summary>Every problem; empty if heat can be worked out.</summary>
    public static IReadOnlyList<Problem> Of(HeatBody body, HeatStart start, IReadOnlyList<Stay> stays) =>
    [
        .. body.Slabs.Count > 0 ? [] : new[] { new Problem("body", "no slabs", "There is nothing to warm or cool.", "Give a layer at least.") },
        .. body.Slabs.SelectMany(Of),
        .. Outline(body),
        .. body.Slabs.SelectMany(s => s.Coat is null ? [s.Inside] : new[] { s.Inside, s.Coat }).Distinct().SelectMany(Of),
        .. Between("start, inside", start.Inside, -270, 2000, " °C"),
        .. Between("start, coat", start.Coat, -270, 2000, " °C"),
        .. stays.Count > 0 ? [] : new[] { new Problem("stays", "none", "Nobody said where it stands.", "Give a place and minutes.") },
        .. stays.SelectMany(Of),
    ];

    /// <summary>Every problem of how finely something is cut; empty if it comes to an end.</summary>
    public static IReadOnlyList<Problem> Of(HeatDetail detail) =>
    [
        .. Between("cell", detail.Cell ?? 0.01, 0.0002, 0.5, " m"),
        .. Between("first step", detail.FirstStep, 0.01, 3600, " s"),
        .. Between("growth", detail.Growth, 0, 0.5, ""),
        .. Between("longest step", detail.LongestStep, double.IsNaN(detail.FirstStep) ? 0.01 : detail.FirstStep, 3600, " s"),
    ];

    /// <summary>A problem if a figure is no number between two limits, both allowed.</summary>
    internal static IEnumerable<Problem> Between(string where, double value, double least, double most, string unit, string? fix = null)
    {
        if (!(value >= least && value <= most))
        {
            yield return new Problem(where, Invariant($"{value:0.####}{unit}"), Invariant($"It lies between {least:0.####} and {most:0.####}{unit}."), fix ?? "Look at the figure and its unit.");
        }
    }

    private static IEnumerable<Problem> Of(HeatSlab slab) =>
    [
        .. Between("thickness", slab.Thickness, 0.0005, 5, " m"),
        .. Between("half width", slab.HalfWidth, 0.005, 5, " m"),
        .. Between("half depth", slab.HalfDepth ?? 1, 0.005, 5, " m"),
        .. slab.Coat is null ? [] : Between("coat", slab.CoatThickness, 0.0005, Math.Min(slab.HalfWidth, slab.HalfDepth ?? 5) * 0.9, " m"),
    ];

    private static IEnumerable<Problem> Outline(HeatBody body)
    {
        if (body.Slabs.Any(s => s.HalfDepth is null) && body.Slabs.Any(s => s.HalfDepth is not null))
        {
            yield return new Problem("body", "round and square", "Round slabs and blocks do not stack here.", "Work out each part by itself.");
        }
        else if (body.Slabs.Count > 0 && body.IsBlock && body.Slabs.Any(s => s.HalfWidth != body.Slabs[0].HalfWidth || s.HalfDepth != body.Slabs[0].HalfDepth))
        {
            yield return new Problem("body", "blocks of several sizes", "Blocks that stack here have one outline.", "Work out each part by itself.");
        }
    }

    private static IEnumerable<Problem> Of(HeatMaterial made)
    {
        var rises = made.Points.Count >= 2 && made.Points.Zip(made.Points.Skip(1)).All(p => p.Second.Celsius > p.First.Celsius && p.Second.Enthalpy > p.First.Enthalpy);
        return
        [
            .. Between($"{made.Name}, density", made.Density, 1, 25_000, " kg/m³", "Weigh a level cup of it, in grams, and divide by 0.237."),
            .. rises ? []
                : new[] { new Problem($"{made.Name}, heat", Invariant($"{made.Points.Count} points"), "It holds more heat the warmer it is, told for two temperatures at least.", "Give its specific heat, or what it is made of.") },
            .. made.Points.SelectMany(p => Between($"{made.Name}, conductivity", p.Conductivity, 0.005, 500, " W/(m·K)", "Cake is 0.08 to 0.13, icing 0.2 to 0.35.")).Take(1),
        ];
    }

    private static IEnumerable<Problem> Of(Stay stay) =>
    [
        .. Between("minutes", stay.Minutes, 0.01, LongestMinutes, " min"),
        .. Between("air", stay.In.Celsius, -100, 2000, " °C"),
        .. Between("air at the end", stay.In.CelsiusAtEnd ?? 0, -100, 2000, " °C"),
        .. Between("moved air", stay.In.Blown ?? 1, 0, 100_000, " W/(m²K)"),
        .. Between("still air", stay.In.Stirred, 0, 100, " W/(m²K)"),
        .. Between("emissivity", stay.In.Emissivity, 0, 1, ""),
        .. Between("box", stay.In.Cover, 0, 10, " m²K/W"),
        .. Between("convection", stay.In.Times, 0.1, 10, " times"),
    ];
}
