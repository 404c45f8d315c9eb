namespace Bakehouse.Domain.Heat;

/// <summary>Minutes, low, typical and high, by the ranges of everything that is not known for certain.</summary>
public sealed record HeatRange(double Low, double Typical, double High)
{
    /// <summary>A range wider than this is none: something lies too close to the temperature of the place.</summary>
    public const double Widest = 2.5;
}

/// <summary>How long something waits.</summary>
/// <param name="Minutes">Null if there is no answer; then <paramref name="Problems"/> say why and what to do.</param>
/// <param name="AtLeast">Minutes that practice asks for, whatever the heat says; 0 for none (common practice, no source).</param>
/// <param name="Why">One sentence: "8 in, 10 cm: 2 h 10 in fridge 1."</param>
public sealed record HeatWait(HeatRange? Minutes, int AtLeast, string Why, IReadOnlyList<Problem> Problems)
{
    /// <summary>Minutes to plan, whole fives: the typical, but never less than practice asks; 0 if there is no answer.</summary>
    public int Planned => Minutes is null ? 0 : Math.Max(AtLeast, Up(Minutes.Typical));

    internal static HeatWait None(IReadOnlyList<Problem> problems) => new(null, 0, "", problems);

    /// <summary>As people say it: 2 h 10, 45 min.</summary>
    public static string Said(int minutes) => (minutes / 60, minutes % 60) switch
    {
        (0, var m) => FormattableString.Invariant($"{m} min"),
        (var h, 0) => FormattableString.Invariant($"{h} h"),
        var (h, m) => FormattableString.Invariant($"{h} h {m:00}"),
    };

    internal static int Up(double minutes) => (int)Math.Ceiling((minutes / 5) - 1e-9) * 5;
}
