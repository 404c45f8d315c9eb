namespace Bakehouse.Domain.Reminders;

/// <summary>
/// When nobody answers, the owner's screens are called, too: after 5 min, for what leaves the fridge, is handed over or passes a food
/// limit after 2 min; again each 10 min, 3 times in all (common practice, no source). An answer ends the ring and so the calls.
/// </summary>
public static class Calls
{
    /// <summary>How often the owner is called for one ring.</summary>
    public const int Most = 3;

    /// <summary>From one call to the next.</summary>
    public static Duration Again { get; } = Duration.FromMinutes(10);

    /// <summary>How long a ring may stay unanswered before the first call.</summary>
    public static Duration Patience(RingKind kind) => Duration.FromMinutes(kind == RingKind.OvenOut ? 5 : 2);

    /// <summary>How many calls there have been for an unanswered ring: 0 to 3. Pure.</summary>
    public static int Of(Ring ring, Instant now)
    {
        var waited = now - ring.Due - Patience(ring.Kind);
        return waited < Duration.Zero ? 0 : (int)Math.Min(Most, 1 + Math.Floor(waited / Again));
    }
}
