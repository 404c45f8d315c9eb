namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>Writes work that is no order; the plan makes way for it at once.</summary>
internal static class ChoreEntry
{
    public static Outcome Decide(WriteChore command, Desk desk)
    {
        var before = desk.State.Chores.FirstOrDefault(c => c.Id == command.Chore.Id);
        var subject = command.Chore.Id.ToString("N", CultureInfo.InvariantCulture);
        if ((before?.Version ?? 0) != command.Chore.Version)
        {
            return Outcome.Clash(subject, before is null ? "It was taken away meanwhile." : $"{before.Name} was changed meanwhile: it stands at version {before.Version.ToString(CultureInfo.InvariantCulture)}.", null);
        }

        var problems = command.Chore.Dropped ? [] : ChoreChecks.Problems(command.Chore, desk.Shop);
        return problems.Count > 0
            ? Outcome.Refused(subject, problems.Count == 1 ? problems[0].Sentence : $"{problems.Count.ToString(CultureInfo.InvariantCulture)} things need a look.", problems)
            : Write(command, desk, subject, command.Chore with { Version = command.Chore.Version + 1 });
    }

    private static Outcome Write(WriteChore command, Desk desk, string subject, Chore chore)
    {
        void Rows(BookContext book) => book.Chores.Add(ChoreRow.Of(chore, command.Person, command.Device, desk.Now));
        if (!desk.State.Orders.Any(o => Stages.IsPlanned(o.Stage)))
        {
            return Outcome.Accepted(subject, new Change(desk.State.Wall, Rows));
        }

        var hand = desk.State.Hand with { Chores = [.. desk.State.Chores.Where(c => c.Id != chore.Id), chore] };
        var fitted = new Fitting(desk.Planner, desk.Shop, desk.Now, hand).Replan(desk.State.Orders, desk.State.Ticks, desk.State.Wall).OrOurBug();
        if (!fitted.IsPlan)
        {
            return Outcome.Refused(subject, "The cakes already taken find no room beside it.", [.. fitted.Reasons.Select(r => new Problem("plan", chore.Name, r.Sentence, r.Try))]);
        }

        var said = fitted.Stuck.Select(r => $"{r.Sentence} {r.Try}").Append(new PlanWords(desk).Lost(fitted.Wall)).Where(s => s.Length > 0);
        return Outcome.Accepted(subject, new Change(fitted.Wall, Rows), late: fitted.Late, message: string.Join(' ', said));
    }
}
