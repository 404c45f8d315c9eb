namespace Bakehouse.Domain.Chores;

using Bakehouse.Domain.Planning;

/// <summary>What work that is no order may be.</summary>
public enum ChoreKind
{
    /// <summary>Baking for the counter.</summary>
    CounterBake,

    /// <summary>Goods come in, or something else is brought out than a cake of the book.</summary>
    Delivery,

    /// <summary>Cleaning.</summary>
    Cleaning,

    /// <summary>Children to school, and home.</summary>
    SchoolRun,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>
/// Work that is no order: it takes people, ovens, bowls or shelves, once or on days of the week. A fact, edited as a whole and kept by
/// version. Times are local in the shop; on the nights when clocks change it keeps to the clock on the wall.
/// </summary>
/// <param name="Version">1 and up; each saved change adds one.</param>
/// <param name="Name">As people call it; never empty.</param>
/// <param name="First">The day, or the first day on which it may be.</param>
/// <param name="From">Begins, local.</param>
/// <param name="To">Ends, local, after it begins on the same day.</param>
/// <param name="Days">Weekdays on which it comes again; empty for once, on <paramref name="First"/>.</param>
/// <param name="Last">Last day on which it may be, included; null for no end.</param>
/// <param name="People">Ids of who is taken.</param>
/// <param name="Machines">Ids of ovens and bowls that are taken.</param>
/// <param name="Shelves">Ids of shelves that are full meanwhile: a share of a fridge is so many of its shelves.</param>
/// <param name="Dropped">True once it was taken away; the versions before stay.</param>
public sealed record Chore(
    Guid Id,
    int Version,
    ChoreKind Kind,
    string Name,
    LocalDate First,
    LocalTime From,
    LocalTime To,
    IReadOnlyList<IsoDayOfWeek> Days,
    LocalDate? Last,
    IReadOnlyList<string> People,
    IReadOnlyList<string> Machines,
    IReadOnlyList<string> Shelves,
    bool Dropped = false)
{
    /// <summary>True if it is on that day.</summary>
    public bool IsOn(LocalDate day) => !Dropped
        && (Days.Count == 0 ? day == First : day >= First && (Last is not { } last || day <= last) && Days.Contains(day.DayOfWeek));

    /// <summary>Its times in a week, sorted: whole grains around it, so nothing touches it. Parts outside the week are cut off.</summary>
    public IReadOnlyList<Span> In(WeekTime time)
    {
        ArgumentNullException.ThrowIfNull(time);
        IReadOnlyList<Span> spans = [];
        for (var day = time.Monday; time.Minute(day.AtMidnight()) < time.Horizon; day = day.PlusDays(1))
        {
            if (IsOn(day))
            {
                var from = time.Minute(day + From) / WeekTime.Grain * WeekTime.Grain;
                spans = spans.Joined(new Span(Math.Max(0, from), Math.Min(time.Horizon, WeekTime.Up(time.Minute(day + To)))));
            }
        }

        return spans;
    }
}
