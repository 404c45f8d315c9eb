namespace Bakehouse.Domain.Chores;

using Bakehouse.Domain.Planning;

/// <summary>Takes the time of chores out of a week: hours of people, and machines and shelves out of use.</summary>
internal static class ChoreWeek
{
    /// <summary>The week with every chore in it. What a chore names and the shop no longer has is passed over.</summary>
    public static Week With(this Week week, IReadOnlyList<Chore> chores, WeekTime time) =>
        chores.SelectMany(c => c.In(time).Select(span => (Chore: c, Span: span))).Aggregate(week, (w, c) => Take(w, c.Chore, c.Span));

    private static Week Take(Week week, Chore chore, Span span) => week with
    {
        People = [.. week.People.Select(p => chore.People.Contains(p.Id) ? p with { Shifts = p.Shifts.Without(span), Extra = p.Extra.Without(span) } : p)],
        Machines = [.. week.Machines.Select(m => chore.Machines.Contains(m.Id) ? m with { Down = m.Down.Joined(span) } : m)],
        Stores = [.. week.Stores.Select(s => chore.Shelves.Contains(s.Id) ? s with { Down = s.Down.Joined(span) } : s)],
    };
}
