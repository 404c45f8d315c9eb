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
    private long skipped;

    /// <summary>Starts at an instant.</summary>
    public MovableTime(Instant start) => Set(start, passes: false);

    /// <summary>Time passes until then, at once; timers go on as they were.</summary>
    public void MoveTo(Instant instant) => Set(instant, passes: true);

    /// <summary>Somebody sets the clock: no time passes.</summary>
    public void SetClock(Instant instant) => Set(instant, passes: false);

    /// <inheritdoc/>
    public override long GetTimestamp() => base.GetTimestamp() + Interlocked.Read(ref skipped);

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

    private void Set(Instant instant, bool passes)
    {
        lock (gate)
        {
            var by = instant.ToDateTimeOffset() - (origin + GetElapsedTime(since));
            if (passes && by > TimeSpan.Zero)
            {
                skipped += (long)(by.TotalSeconds * TimestampFrequency);
            }

            origin = instant.ToDateTimeOffset();
            since = GetTimestamp();
        }
    }
}
