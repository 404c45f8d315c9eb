namespace Bakehouse.Testing;

using NodaTime;

/// <summary>
/// A clock that runs at the usual speed from a chosen instant and can be moved: for tests in which a real browser and
/// real timers take part, where a clock that stands still would stop them too.
/// </summary>
public sealed class MovableTime : TimeProvider, IClock
{
    private readonly Lock gate = new();
    private DateTimeOffset origin;
    private long since;

    /// <summary>Starts at an instant.</summary>
    public MovableTime(Instant start) => MoveTo(start);

    /// <summary>Moves the clock; timers go on as they were.</summary>
    public void MoveTo(Instant instant)
    {
        lock (gate)
        {
            origin = instant.ToDateTimeOffset();
            since = GetTimestamp();
        }
    }

    /// <inheritdoc/>
    public override DateTimeOffset GetUtcNow()
    {
        lock (gate)
        {
            return origin + GetElapsedTime(since);
        }
    }

    /// <inheritdoc/>
    public Instant GetCurrentInstant() => Instant.FromDateTimeOffset(GetUtcNow());
}
