namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>Icing spread around and on a straight-sided tier: exact shells, none under it.</summary>
/// <param name="Side">Around, over the height of what is coated.</param>
/// <param name="Top">On top, out to the coated edge.</param>
public readonly record struct Coat(Volume Side, Volume Top)
{
    /// <summary>Side and top.</summary>
    public Volume All => Side + Top;

    /// <summary>A coat of that thickness on a tier of that outline and height.</summary>
    public static Coat On(Shape shape, Length height, Length thickness)
    {
        var grown = shape.GrownBy(thickness);
        return new Coat(Between(shape.Area, grown) * height, grown * thickness);
    }

    /// <summary>
    /// The second coat over the first: it lies between the outlines grown by the first thickness and by both, over the
    /// height with the first coat on top.
    /// </summary>
    public static Coat Over(Shape shape, Length height, Length first, Length second)
    {
        var outer = shape.GrownBy(first + second);
        return new Coat(Between(shape.GrownBy(first), outer) * (height + first), outer * second);
    }

    // Both areas are sums of doubles: without a coat they may differ by a hair either way.
    private static Area Between(Area inner, Area outer) => Area.FromSquareMillimetres(Math.Max(0, outer.SquareMillimetres - inner.SquareMillimetres));
}
