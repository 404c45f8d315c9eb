namespace Bakehouse.Web.Bell;

using NodaTime;

/// <summary>The clock of the machine was moved, or the machine slept.</summary>
/// <param name="By">Forward above zero, back below.</param>
/// <param name="To">What it showed then.</param>
public sealed record ClockMove(Duration By, Instant To);

/// <summary>A look at the clock.</summary>
/// <param name="Wall">What the clock shows.</param>
/// <param name="Reached">
/// The time that rings go by: what the clock shows, but never less than the time that has passed since the app was opened. So what
/// was due stays due, and comes on time, when the clock is set back.
/// </param>
/// <param name="Moved">The last jump, for ten minutes after it; else null.</param>
public readonly record struct Moment(Instant Wall, Instant Reached, ClockMove? Moved);

/// <summary>Holds the clock of the machine against a timer that nobody can set. From five seconds on a difference is a jump.</summary>
public sealed class ClockWatch
{
    private static readonly Duration Jump = Duration.FromSeconds(5);
    private static readonly TimeSpan Told = TimeSpan.FromMinutes(10);
    private readonly IClock clock;
    private readonly TimeProvider time;
    private readonly Lock gate = new();
    private (Instant Wall, long Stamp) opened;
    private (Instant Wall, long Stamp) last;
    private (ClockMove Move, long Stamp)? moved;

    /// <summary>Begins to watch now.</summary>
    public ClockWatch(IClock clock, TimeProvider time)
    {
        (this.clock, this.time) = (clock, time);
        opened = last = Read();
    }

    /// <summary>Looks now.</summary>
    public Moment Look()
    {
        lock (gate)
        {
            var now = Read();
            var by = now.Wall - last.Wall - Passed(last.Stamp, now.Stamp);
            if (by > Jump || by < -Jump)
            {
                moved = (new ClockMove(by, now.Wall), now.Stamp);
            }

            last = now;
            if (moved is { } told && time.GetElapsedTime(told.Stamp, now.Stamp) >= Told)
            {
                moved = null;
            }

            return new Moment(now.Wall, Instant.Max(now.Wall, opened.Wall + Passed(opened.Stamp, now.Stamp)), moved?.Move);
        }
    }

    /// <summary>Somebody says that the clock is right now: rings go by it alone from here on.</summary>
    public void Trust()
    {
        lock (gate)
        {
            opened = last = Read();
            moved = null;
        }
    }

    private (Instant Wall, long Stamp) Read() => (clock.GetCurrentInstant(), time.GetTimestamp());

    private Duration Passed(long from, long to) => Duration.FromTimeSpan(time.GetElapsedTime(from, to));
}
