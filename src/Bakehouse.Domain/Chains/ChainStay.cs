namespace Bakehouse.Domain.Chains;

using Bakehouse.Domain.Heat;

/// <summary>What is going on in a stretch of a tier's time.</summary>
public enum StayKind
{
    /// <summary>Hands are on it.</summary>
    Hands,

    /// <summary>It waits.</summary>
    Waits,

    /// <summary>It is carried or driven.</summary>
    Road,
}

/// <summary>A tier in one place, as it was or as it is planned.</summary>
/// <param name="From">Included.</param>
/// <param name="To">Not included, after <paramref name="From"/>.</param>
/// <param name="Step">Key of the step: the one at work, or the one that the tier waits for.</param>
/// <param name="Store">Id of the shelf; "" where it is none.</param>
public sealed record ChainStay(Instant From, Instant To, StayKind Kind, string Step, string Store, HeatPlace Place)
{
    /// <summary>Minutes in it.</summary>
    public double Minutes => (To - From).TotalMinutes;
}
