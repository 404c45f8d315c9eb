namespace Bakehouse.Domain.Structure;

/// <summary>
/// The same equation in inches and pounds. It is a set of its own, with rounded constants (10 in for 25 cm, 51 lb for 23 kg), so a lift
/// has two slightly different answers.
/// </summary>
public static class LiftingInches
{
    /// <summary>10/H; 1 up to 10 in, 0 beyond 25 in.</summary>
    public static double HorizontalMultiplier(double inches) => inches <= 10 ? 1 : inches > 25 ? 0 : 10 / inches;

    /// <summary>1 − 0.0075·|V − 30|; 0 above 70 in.</summary>
    public static double VerticalMultiplier(double inches) => inches > 70 ? 0 : 1 - (0.0075 * Math.Abs(inches - 30));

    /// <summary>0.82 + 1.8/D, D at least 10 in; 0 beyond 70 in.</summary>
    public static double DistanceMultiplier(double inches) => inches > 70 ? 0 : 0.82 + (1.8 / Math.Max(10, inches));

    /// <summary>Recommended weight in pounds; the lift's lengths are inches here.</summary>
    public static double Recommended(double horizontal, double vertical, double distance, double twist, double perMinute, LiftingTime time, Grip grip)
    {
        // The two tables by height change at 30 in here and at 75 cm there.
        var inTable = vertical >= 30 ? 75 : 0;
        return Lifting.LoadConstantPounds * HorizontalMultiplier(horizontal) * VerticalMultiplier(vertical) * DistanceMultiplier(distance)
            * Lifting.TwistMultiplier(twist) * Lifting.FrequencyMultiplier(perMinute, time, inTable) * Lifting.GripMultiplier(grip, inTable);
    }
}
