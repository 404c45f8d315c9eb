namespace Bakehouse.Domain.Structure;

/// <summary>How well a thing can be gripped (NIOSH 94-110, table 7).</summary>
public enum Grip
{
    /// <summary>Handles or cut-outs.</summary>
    Good,

    /// <summary>Fingers bent under the box.</summary>
    Fair,

    /// <summary>Neither, or a box deeper than 40 or higher than 30 cm without handles.</summary>
    Poor,
}

/// <summary>How long lifting goes on in a day (NIOSH 94-110, table 5).</summary>
public enum LiftingTime
{
    /// <summary>An hour at most.</summary>
    Hour,

    /// <summary>More than one and at most two hours.</summary>
    TwoHours,

    /// <summary>More than two and at most eight hours.</summary>
    Day,
}

/// <summary>One way of lifting, in metric units.</summary>
/// <param name="HorizontalCm">From the middle of the ankles to the hands.</param>
/// <param name="VerticalCm">From the floor to the hands, at the point that is looked at.</param>
/// <param name="DistanceCm">That it is raised or lowered.</param>
/// <param name="TwistDegrees">Of the body, 0 straight ahead.</param>
/// <param name="PerMinute">Lifts a minute; 0.2 for one now and then.</param>
public sealed record Lift(double HorizontalCm, double VerticalCm, double DistanceCm, double TwistDegrees, double PerMinute, LiftingTime Time, Grip Grip)
{
    /// <summary>Where the lift begins, if it is looked at where it ends: the table of frequencies goes by that. Null if it is looked at there.</summary>
    public double? OriginCm { get; init; }

    /// <summary>Height of a bench: 75 cm, where the vertical multiplier is 1.</summary>
    public const double BenchCm = 75;

    /// <summary>A box set down once from a bench, held by its bottom edges: 25 cm down at most, no twist.</summary>
    /// <param name="boxCm">Its depth from the body outwards.</param>
    public static Lift FromBench(double boxCm) => new(Lifting.Horizontal(boxCm, BenchCm), BenchCm, 25, 0, 0.2, LiftingTime.Hour, Grip.Fair);
}

/// <summary>
/// The revised lifting equation of NIOSH (DHHS publication 94-110, revision 9/2021): the recommended weight is 23 kg times six multipliers.
/// A filter and no licence: local rules come first.
/// </summary>
public static class Lifting
{
    /// <summary>Load constant, kg.</summary>
    public const double LoadConstant = 23;

    /// <summary>Load constant of the set in inches and pounds: 51 lb, which is no conversion of 23 kg.</summary>
    public const double LoadConstantPounds = 51;

    // Lifts a minute, then the multiplier: an hour, two hours, a day; each with hands below 75 cm and from there up.
    private static readonly double[][] Frequency =
    [
        [0.2, 1.00, 1.00, .95, .95, .85, .85], [0.5, .97, .97, .92, .92, .81, .81], [1, .94, .94, .88, .88, .75, .75], [2, .91, .91, .84, .84, .65, .65],
        [3, .88, .88, .79, .79, .55, .55], [4, .84, .84, .72, .72, .45, .45], [5, .80, .80, .60, .60, .35, .35], [6, .75, .75, .50, .50, .27, .27],
        [7, .70, .70, .42, .42, .22, .22], [8, .60, .60, .35, .35, .18, .18], [9, .52, .52, .30, .30, .00, .15], [10, .45, .45, .26, .26, .00, .13],
        [11, .41, .41, .00, .23, .00, .00], [12, .37, .37, .00, .21, .00, .00], [13, .00, .34, .00, .00, .00, .00], [14, .00, .31, .00, .00, .00, .00],
        [15, .00, .28, .00, .00, .00, .00],
    ];

    /// <summary>Hands from the ankles, cm, for a box that deep held close: 20 + W/2, below 25 cm of height 25 + W/2.</summary>
    public static double Horizontal(double boxCm, double verticalCm) => (verticalCm >= 25 ? 20 : 25) + (boxCm / 2);

    /// <summary>25/H; 1 up to 25 cm, 0 beyond 63 cm.</summary>
    public static double HorizontalMultiplier(double cm) => cm <= 25 ? 1 : cm > 63 ? 0 : 25 / cm;

    /// <summary>1 − 0.003·|V − 75|; 0 above 175 cm.</summary>
    public static double VerticalMultiplier(double cm) => cm > 175 ? 0 : 1 - (0.003 * Math.Abs(cm - 75));

    /// <summary>0.82 + 4.5/D, D at least 25 cm; 0 beyond 175 cm.</summary>
    public static double DistanceMultiplier(double cm) => cm > 175 ? 0 : 0.82 + (4.5 / Math.Max(25, cm));

    /// <summary>1 − 0.0032·A; 0 beyond 135 degrees.</summary>
    public static double TwistMultiplier(double degrees) => degrees > 135 ? 0 : 1 - (0.0032 * degrees);

    /// <summary>Table 5; straight between its rows, 0 beyond 15 a minute.</summary>
    public static double FrequencyMultiplier(double perMinute, LiftingTime time, double verticalCm)
    {
        var column = 1 + (2 * (int)time) + (verticalCm >= 75 ? 1 : 0);
        if (perMinute <= Frequency[0][0])
        {
            return Frequency[0][column];
        }

        var next = Array.FindIndex(Frequency, row => row[0] >= perMinute);
        if (next < 0)
        {
            return 0;
        }

        var (low, high) = (Frequency[next - 1], Frequency[next]);
        return low[column] + ((high[column] - low[column]) * (perMinute - low[0]) / (high[0] - low[0]));
    }

    /// <summary>Table 7: good 1, fair 0.95 below 75 cm of height, poor 0.90.</summary>
    public static double GripMultiplier(Grip grip, double verticalCm) => grip switch
    {
        Grip.Good => 1,
        Grip.Fair => verticalCm < 75 ? 0.95 : 1,
        Grip.Poor => 0.90,
        _ => throw new ArgumentOutOfRangeException(nameof(grip), grip, "Unknown grip."),
    };

    /// <summary>Lifts a minute where 15 minutes of work hold so many minutes of lifting (94-110, page 16).</summary>
    public static double SpreadOut(double perMinute, double minutesInFifteen) => perMinute * minutesInFifteen / 15;

    /// <summary>Recommended weight in kg; 0 where the lift is beyond what the equation allows.</summary>
    public static double Recommended(Lift lift) => LoadConstant * Multiplier(lift);

    /// <summary>The six multipliers together.</summary>
    public static double Multiplier(Lift lift) => HorizontalMultiplier(lift.HorizontalCm) * VerticalMultiplier(lift.VerticalCm) * DistanceMultiplier(lift.DistanceCm)
        * TwistMultiplier(lift.TwistDegrees) * FrequencyMultiplier(lift.PerMinute, lift.Time, lift.OriginCm ?? lift.VerticalCm) * GripMultiplier(lift.Grip, lift.VerticalCm);

    /// <summary>Lifting index: the load by the recommended weight; above 1 look again. Endless where nothing is recommended.</summary>
    public static double Index(double kilograms, Lift lift) => kilograms / Recommended(lift);
}
