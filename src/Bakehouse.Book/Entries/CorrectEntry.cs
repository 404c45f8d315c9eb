namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>
/// A tick was for somebody else, or at another hour. The former row stays, taken back with the reason; the plan follows the new one.
/// </summary>
internal static class CorrectEntry
{
    private const int LongestReason = 200;

    public static Outcome Decide(CorrectTick command, Desk desk)
    {
        var order = StepKey.Parse(command.Step) is { } key ? desk.Order(key.Order) : null;
        if (order is null || desk.TicksOf(order.Id).FirstOrDefault(t => t.Step == command.Step) is not { } stands)
        {
            return Outcome.Refused(command.Step, new Problem("step", command.Step, "This step is not ticked.", "Tick it with its hour."));
        }

        var problems = TickEntry.Problems(command.Step, command.By, command.Done, desk);
        if (command.Reason.Trim().Length is 0 or > LongestReason)
        {
            problems.Add(new Problem("reason", command.Reason, "The log needs a reason in a few words.", $"Write up to {LongestReason} characters."));
        }

        if (problems.Count == 0 && stands.Person == command.By && stands.Done == command.Done)
        {
            problems.Add(new Problem("done", desk.Clock(command.Done), "That is what the book has already.", "Change who or when."));
        }

        return problems.Count > 0 ? Outcome.Refused(command.Step, problems[0].Sentence, problems) : Write(command, desk, order);
    }

    private static Outcome Write(CorrectTick command, Desk desk, Order order)
    {
        var tick = new Tick(command.Step, command.Done, command.By);
        var followed = Follow.Of(desk, [order], [.. desk.State.Ticks.Where(t => t.Step != command.Step), tick]);
        return Outcome.Accepted(command.Step, new Change(followed.Wall, book =>
        {
            // First the old one, in a statement of its own: two of a step that stand can't be written.
            UndoEntry.TakeBack(book, command.Step, command.Person, desk.Now).Reason = command.Reason.Trim();
            book.SaveChanges();
            book.Ticks.Add(Ticking.Row(command, desk, tick));
        }), order, followed.Late, followed.Message);
    }
}
