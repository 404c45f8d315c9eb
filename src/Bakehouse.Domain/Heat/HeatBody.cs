namespace Bakehouse.Domain.Heat;

/// <summary>A flat piece of a body: a layer, a filling, a coat on top, a board.</summary>
/// <param name="Thickness">m.</param>
/// <param name="HalfWidth">Radius of a round one, half the width of a block, m, with its coat.</param>
/// <param name="Inside">What it is made of.</param>
public sealed record HeatSlab(double Thickness, double HalfWidth, HeatMaterial Inside)
{
    /// <summary>Half the depth of a block, m; null for a round one.</summary>
    public double? HalfDepth { get; init; }

    /// <summary>What covers its side; null for nothing.</summary>
    public HeatMaterial? Coat { get; init; }

    /// <summary>Thickness of that, m.</summary>
    public double CoatThickness { get; init; }
}

/// <summary>
/// A cake, a layer or a stack, as slabs from below, all with one axis. All are round, or all are blocks of one outline.
/// </summary>
public sealed record HeatBody(IReadOnlyList<HeatSlab> Slabs)
{
    /// <summary>How high on the axis the core is, m; half of the height if nobody says otherwise.</summary>
    public double? CoreAt { get; init; }

    /// <summary>m.</summary>
    public double Height => Slabs.Sum(s => s.Thickness);

    /// <summary>True if its slabs are blocks.</summary>
    public bool IsBlock => Slabs[0].HalfDepth is not null;

    /// <summary>Mass of what is eaten of it, kg.</summary>
    public double EatenMass => Slabs.Sum(s => Mass(s));

    /// <summary>The same with every material changed.</summary>
    public HeatBody With(Func<HeatMaterial, HeatMaterial> change) => this with
    {
        Slabs = [.. Slabs.Select(s => s with { Inside = change(s.Inside), Coat = s.Coat is null ? null : change(s.Coat) })],
    };

    private static double Mass(HeatSlab slab)
    {
        var inner = Area(slab, slab.Coat is null ? 0 : slab.CoatThickness);
        var coat = slab.Coat is { IsEaten: true } c ? (Area(slab, 0) - inner) * c.Density : 0;
        return slab.Thickness * ((slab.Inside.IsEaten ? inner * slab.Inside.Density : 0) + coat);
    }

    private static double Area(HeatSlab slab, double less) => slab.HalfDepth is { } deep
        ? 4 * (slab.HalfWidth - less) * (deep - less)
        : Math.PI * (slab.HalfWidth - less) * (slab.HalfWidth - less);
}

/// <summary>How warm a body is when it begins.</summary>
/// <param name="Inside">°C of layers, fillings and boards.</param>
/// <param name="Coat">°C of coats, at the side and on top.</param>
public readonly record struct HeatStart(double Inside, double Coat)
{
    /// <summary>Equally warm everywhere.</summary>
    public static HeatStart Even(double celsius) => new(celsius, celsius);
}
