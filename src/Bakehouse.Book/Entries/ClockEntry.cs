namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;

/// <summary>
/// A clock that stands before what the book has written already is wrong, or was. Facts are written all the same; no plan is made,
/// because it would lie in hours that are over.
/// </summary>
internal static class ClockEntry
{
    /// <summary>True if the outcome would move the plan while the clock is behind the book.</summary>
    public static bool HoldsBack(Outcome outcome, Desk desk) =>
        desk.ClockIsBehind && outcome.Change is { } change && !ReferenceEquals(change.Wall, desk.State.Wall);

    public static Outcome Behind(string subject, Desk desk) => Outcome.Refused(subject, new Problem(
        "clock",
        desk.DayAndClock(desk.Now),
        $"This machine’s clock shows {desk.DayAndClock(desk.Now)}, but the book was written in at {desk.DayAndClock(desk.State.Newest)}: nothing can be planned.",
        "Set the clock of this machine. If it is right now, let the owner say so on the strip at the top of the page."));

    /// <summary>From its line in the audit on, what was written earlier does not count as newer.</summary>
    public static Outcome Trust(Desk desk) => Outcome.Accepted("clock", new Change(desk.State.Wall, _ => { }));
}
