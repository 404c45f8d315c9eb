namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Structure;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>M and N: tipping, sliding, pulls on the road; lifting.</summary>
internal static class MoveRows
{
    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("M-CG", r => r.Is(Balance.CentreOfGravity([.. new[] { 12, 9, 6 }.Select((d, i) => new StackPart(Mass.FromGrams(d * d), In(4 * i), In(4)))]).Inches)),
        ("M-TIP-6x8", r => r.Holds(Balance.TipsAt(In(2 * r.In("b")), In(r.In("h"))))),
        ("M-SLIDE-card", r => r.Holds(Road.SlidesAt(Underlay.Card))),
        ("M-SLIDE-mat", r => r.Holds(Road.SlidesAt(Underlay.Mat))),
        ("M-SLIDE-foil", r => r.Holds(Road.SlidesAt(Underlay.Foil))),
        ("M-G-routine", r => r.Holds(Road.Routine.Gravities)),
        ("M-G-comfort", r => r.Holds(Road.Comfortable.Gravities)),
        ("M-G-urgent", r => r.Holds(Road.Urgent.Gravities)),
        ("M-G-fmcsa-b", r => r.Holds(Road.Breaking.Forward, Road.Breaking.Rear, Road.Breaking.Side)),
        ("M-G-fmcsa-w", r => r.Holds(Road.Working.Forward, Road.Working.Rear, Road.Working.Side)),
        ("N-LC", r => r.Holds(Lifting.LoadConstant, Lifting.LoadConstantPounds)),
        ("N-H", r => r.Holds(Lifting.Horizontal(r.In("W"), Lift.BenchCm))),
        ("N-EX4-o", r => r.Holds(Rounded(10, 22, 37, 0, 3, Grip.Fair))),
        ("N-EX4-of", r => r.Holds(LiftingInches.Recommended(r.In("H"), r.In("V"), r.In("D"), r.In("A"), r.In("F"), LiftingTime.Hour, Grip.Fair))),
        ("N-EX4-d", r => r.Holds(Rounded(20, 59, 37, 0, 3, Grip.Fair), LiftingInches.Recommended(20, 59, 37, 0, 3, LiftingTime.Hour, Grip.Fair))),
        ("N-EX1-o", r => r.Holds(Rounded(23, 15, 48, 0, 0.2, Grip.Fair, r.Given[1]))),
        ("N-EX1-d", r => r.Holds(Rounded(23, 64, 48, 0, 0.2, Grip.Fair, r.Given[1]))),
        ("N-CCOHS", r => r.Holds(Lifting.LoadConstant * r.Given[2] * Round2(Lifting.TwistMultiplier(90)) * Lifting.FrequencyMultiplier(10, LiftingTime.Day, 75))),
        ("N-HM40", r => r.Holds(Lifting.HorizontalMultiplier(r.In("H")))),
        ("N-VM", r => r.Holds([.. r.Given.Select(Lifting.VerticalMultiplier)])),
        ("N-DM", r => r.Holds([.. r.Given.Select(Lifting.DistanceMultiplier)])),
        ("N-AM", r => r.Holds([.. r.Given.Select(Lifting.TwistMultiplier)])),
        ("N-FM-*", Frequency),
        ("N-CM", r => r.Holds([.. new double[] { 74, 75 }.SelectMany(v => new[] { Grip.Good, Grip.Fair, Grip.Poor }.Select(g => Lifting.GripMultiplier(g, v)))])),
        ("N-CAKE", r => r.Holds(Lifting.Recommended(Lift.FromBench(r.In("W"))))),
        ("N-HSE-close", r => r.Holds(Filter(HandHeight.Knuckle, false, false), Filter(HandHeight.Knuckle, true, false))),
        ("N-HSE-head", r => r.Holds(Four(HandHeight.Shoulder))),
        ("N-HSE-rest", r => { r.Holds(Four(HandHeight.Elbow)); r.Holds(Four(HandHeight.LowerLeg)); }),
        ("N-HSE-floor", r => r.Holds(Four(HandHeight.Floor))),
        ("N-HSE-twist", r => r.Holds(LiftingFilter.LessForTwist(46), LiftingFilter.LessForTwist(91))),
        ("N-HSE-freq", r => r.Holds(LiftingFilter.LessForFrequency(1.5), LiftingFilter.LessForFrequency(6), LiftingFilter.LessForFrequency(13))),
        ("N-FREQ15", r => r.Holds(Lifting.SpreadOut(r.Given[0], r.Given[1]))),
        ("N-12KG", r => r.Holds(Lifting.Recommended(new Lift(25, 55, 90, 0, 3, LiftingTime.Hour, Grip.Fair)))),
    ];

    private static double Filter(HandHeight height, bool woman, bool armsOut) => LiftingFilter.Kilograms(height, woman, armsOut);

    private static double[] Four(HandHeight height) => [Filter(height, false, false), Filter(height, false, true), Filter(height, true, false), Filter(height, true, true)];

    // As the printed worksheets do: each multiplier rounded to two places, then multiplied. Example 1 prints 0.44 for 10/23, so there its own is taken.
    private static double Rounded(double h, double v, double d, double twist, double perMinute, Grip grip, double? printedH = null) =>
        Lifting.LoadConstantPounds * (printedH ?? Round2(LiftingInches.HorizontalMultiplier(h))) * Round2(LiftingInches.VerticalMultiplier(v)) * Round2(LiftingInches.DistanceMultiplier(d))
        * Round2(Lifting.TwistMultiplier(twist)) * Lifting.FrequencyMultiplier(perMinute, LiftingTime.Hour, v >= 30 ? 75 : 0) * Lifting.GripMultiplier(grip, v >= 30 ? 75 : 0);

    private static double Round2(double multiplier) => (double)Math.Round((decimal)multiplier, 2, MidpointRounding.AwayFromZero);

    private static void Frequency(CheckRow r)
    {
        var perMinute = r.Given[0] + (r.Inputs.Contains(">15", StringComparison.Ordinal) ? 0.01 : 0);
        r.Holds([.. from time in Enum.GetValues<LiftingTime>() from v in new double[] { 74, 75 } select Lifting.FrequencyMultiplier(perMinute, time, v)]);
    }
}
