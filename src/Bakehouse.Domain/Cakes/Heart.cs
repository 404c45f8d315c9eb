namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>
/// A heart: a square on its corner with half-discs on its two upper sides, as it is made from a square and a halved round cake of the same
/// size. Named by its width; the side of the square a = W ÷ (1 + 1/√2).
/// </summary>
/// <param name="Width">Where it is widest.</param>
public sealed record Heart(Length Width) : Shape
{
    private static readonly double Root = Math.Sqrt(2);

    private double Side => Mm(Width) / (1 + (1 / Root));

    /// <summary>a² + π·a²/4.</summary>
    public override Area Area => Area.FromSquareMillimetres(Side * Side * (1 + (Math.PI / 4)));

    /// <summary>2·a + π·a.</summary>
    public override double PerimeterMillimetres => (2 + Math.PI) * Side;

    /// <inheritdoc/>
    public override Length Wide => Width;

    /// <summary>From the tip to the top of the lobes: a·(√2 + 1/2 − 1/√8).</summary>
    public override Length Deep => Length.FromMillimetres(Math.Round((decimal)(Side * (Root + 0.5 - (1 / (2 * Root)))), 3));

    /// <summary>A circle around its middle (half its depth above the tip) that takes tip, lobes and sides: at most the width and a twentieth.</summary>
    public override double Around => Mm(Width) * 1.05;

    /// <summary>The circle inside the square.</summary>
    public override double Inside => Side;

    /// <summary>Only for a ring inside it, where a circle's is near enough: how it grows is worked out exactly.</summary>
    protected override double Corners => Math.PI;

    /// <summary>
    /// The square grown on its two free sides, both discs grown, less what the discs share beyond the cleft (twice a sector less a triangle).
    /// </summary>
    public override Area GrownBy(Length outwards)
    {
        var (a, t) = (Side, Mm(outwards));
        var radius = (a / 2) + t;
        var across = a / 2 / Root;
        var along = Math.Sqrt((radius * radius) - (across * across)) - across;
        var open = Math.Atan2(along / Root, (a / 2) + (along / Root));
        var shared = (radius * radius * open) - (a / 2 * (along / Root));
        return Area.FromSquareMillimetres(((a + t) * (a + t)) + (Math.PI * radius * radius) - shared);
    }
}
