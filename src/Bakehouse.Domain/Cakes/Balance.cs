namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;

/// <summary>A part of a stack: its mass, where its foot is and how high it is.</summary>
/// <param name="Foot">Above the table.</param>
public sealed record StackPart(Mass Mass, Length Foot, Length Height);

/// <summary>Where a stack balances. Each part is taken as even inside.</summary>
public static class Balance
{
    /// <summary>Height of the centre of gravity above the table; Σ m·z ÷ Σ m, z at each part's middle.</summary>
    public static Length CentreOfGravity(IReadOnlyCollection<StackPart> parts)
    {
        var mass = parts.Sum(p => p.Mass.Grams);
        return mass > 0
            ? Length.FromMillimetres(parts.Sum(p => p.Mass.Grams * (p.Foot.Millimetres + (p.Height.Millimetres / 2))) / mass)
            : throw new ArgumentException("A stack without mass has no centre of gravity.", nameof(parts));
    }

    /// <summary>
    /// The sideways pull, in multiples of gravity, at which a stiff stack tips over the edge of its foot: half the foot's width
    /// over the height of the centre of gravity. It says nothing of sliding, nor of tiers shearing off.
    /// </summary>
    public static double TipsAt(Length footDiameter, Length centreOfGravity) =>
        (double)(footDiameter.Millimetres / 2 / centreOfGravity.Millimetres);
}
