namespace Bakehouse.Domain.Cakes;

using static System.FormattableString;

/// <summary>What is celebrated; it decides how many of the invited come.</summary>
public enum Occasion
{
    /// <summary>A wedding.</summary>
    Wedding,

    /// <summary>A birthday.</summary>
    Birthday,

    /// <summary>Anything else: all who are named come.</summary>
    Other,
}

/// <summary>How cake reaches those who come; it decides how many take some.</summary>
public enum Serving
{
    /// <summary>Brought to each place.</summary>
    Plated,

    /// <summary>Everybody takes for themselves.</summary>
    SelfServed,

    /// <summary>Wrapped, to take home.</summary>
    Wrapped,
}

/// <summary>Guests, and the portions that they take.</summary>
/// <param name="Invited">1 to 5000.</param>
/// <param name="KeepsTop">True if the top tier is put by: it is not counted among what is cut.</param>
public sealed record Guests(int Invited, Occasion Occasion, Serving Serving, bool KeepsTop = false)
{
    /// <summary>Most guests that are counted.</summary>
    public const int Most = 5000;

    /// <summary>Share of the invited that comes: wedding 0.80, birthday 0.90, else all (common practice, no source).</summary>
    public static decimal Comes(Occasion occasion) => occasion switch
    {
        Occasion.Wedding => 0.80m,
        Occasion.Birthday => 0.90m,
        Occasion.Other => 1,
        _ => throw new ArgumentOutOfRangeException(nameof(occasion), occasion, "Unknown occasion."),
    };

    /// <summary>
    /// Share of those who come that takes cake: plated all, self-served 0.75 to 0.90, wrapped 0.50 to 0.67; the most of each, since too
    /// little is worse (common practice, no source).
    /// </summary>
    public static decimal Takes(Serving serving) => serving switch
    {
        Serving.Plated => 1,
        Serving.SelfServed => 0.90m,
        Serving.Wrapped => 0.67m,
        _ => throw new ArgumentOutOfRangeException(nameof(serving), serving, "Unknown serving."),
    };

    /// <summary>Portions to be cut, rounded up. Throws where <see cref="Problems"/> says something.</summary>
    public int Portions => Problems().FirstOrDefault() is { } problem ? throw new InvalidOperationException(problem.ToString())
        : (int)decimal.Ceiling(Invited * Comes(Occasion) * Takes(Serving));

    /// <summary>What is wrong with the number.</summary>
    public IEnumerable<Problem> Problems()
    {
        if (Invited is < 1 or > Most)
        {
            yield return new Problem("Guests", Invariant($"{Invited}"), Invariant($"1 to {Most} guests are counted."), "Give how many are invited.");
        }
    }
}
