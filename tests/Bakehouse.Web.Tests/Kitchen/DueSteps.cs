namespace Bakehouse.Web.Tests.Kitchen;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>
/// Which steps must be ringing, read from the rows on the wall alone: fridge exits and handovers from their start, bakes from their end,
/// not ticked and with nothing ticked that comes after; a handover whose cake leaves the fridge up to 10 min before rings with that.
/// Written apart from the code that rings.
/// </summary>
internal static class DueSteps
{
    public static IReadOnlyList<string> Of(BookState book, Instant now)
    {
        if (book is not { Week: { } week, Wall: { } wall })
        {
            return [];
        }

        var planned = book.Orders.Where(o => Stages.IsPlanned(o.Stage)).Select(o => o.Id.ToString("N")).ToHashSet();
        var steps = week.Steps.ToDictionary(s => s.Id);
        var rows = wall.Plan.Steps.Where(r => steps.TryGetValue(r.Step, out var step) && planned.Contains(step.Order)).ToDictionary(r => r.Step);
        var done = Done(book);
        return
        [
            .. rows.Values.Where(r => !done.Contains(r.Step)).Where(r => steps[r.Step].Name switch
            {
                "leavefridge" => At(r.Start) <= now,
                "bake" => At(r.Start + steps[r.Step].Minutes) <= now,
                "handover" or "deliver" => At(r.Start) <= now && !RingsWithTheFridge(r.Step),
                _ => false,
            }).Select(r => r.Step),
        ];

        Instant At(int minute) => wall.Epoch + Duration.FromMinutes(minute);

        bool RingsWithTheFridge(string step)
        {
            var name = steps[step].Name;
            return rows.TryGetValue(step.Replace($".{name}.", ".leavefridge.", StringComparison.Ordinal), out var leave)
                && rows[step].Start - leave.Start is >= 0 and <= 10
                && (name == "handover" || leave.People.Take(1).SequenceEqual(rows[step].People.Take(1)));
        }
    }

    private static HashSet<string> Done(BookState book)
    {
        var done = book.Ticks.Select(t => t.Step).Concat(book.Week!.Fixed.Where(f => f.Why == "done" && f.Step is not null).Select(f => f.Step!)).ToHashSet();
        for (var before = -1; before < done.Count;)
        {
            before = done.Count;
            done.UnionWith(book.Week.Holds.Where(h => done.Contains(h.To)).Select(h => h.From));
        }

        return done;
    }
}
