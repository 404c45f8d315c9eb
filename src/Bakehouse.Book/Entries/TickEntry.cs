namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>
/// A step is done. The tick is a fact: it is written even if no plan can follow it. The first to tick a step wins.
/// </summary>
internal static class TickEntry
{
    // Clocks of two devices differ a little; more than this is a wrong clock.
    private static readonly Duration Ahead = Duration.FromMinutes(2);

    public static Outcome Decide(TickStep command, Desk desk)
    {
        if (StepKey.Parse(command.Step) is not { } key || desk.Order(key.Order) is not { } order)
        {
            return Outcome.Refused(command.Step, new Problem("step", command.Step, "The book knows no such step.", "Load the work list again."));
        }

        if (desk.TicksOf(order.Id).FirstOrDefault(t => t.Step == command.Step) is { } first)
        {
            return Outcome.Clash(command.Step, $"{desk.NameOf(first.Person)} did it at {desk.Clock(first.Done)}.", order);
        }

        var problems = Problems(command.Step, command.By, command.Done, desk);
        if (BeforeWork.IsMaking(key.Operation))
        {
            problems.AddRange(desk.State.StopsOf(order));
        }

        return problems.Count > 0
            ? Outcome.Refused(command.Step, problems[0].Sentence, problems)
            : Ticking.Decide(command, desk, command.Step, [new Tick(command.Step, command.Done ?? desk.Now, command.By)]);
    }

    /// <summary>What is wrong with a tick: the step, who did it, or when.</summary>
    internal static List<Problem> Problems(string step, string by, Instant? done, Desk desk)
    {
        List<Problem> problems = [];
        if (desk.State.Week?.Steps.Any(s => s.Id == step) != true)
        {
            problems.Add(new Problem("step", step, "This step is not in the plan any more.", "Load the work list again."));
        }

        if (desk.Shop.PersonOf(by) is null)
        {
            problems.Add(new Problem("by", by, "Nobody of that name works here.", "Say who did it."));
        }

        if (done > desk.Now + Ahead)
        {
            problems.Add(new Problem("done", desk.Clock(done.Value), $"That is later than now, {desk.Clock(desk.Now)}.", "Set the clock of this screen."));
        }

        return problems;
    }
}
