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

        problems.AddRange(NotMade(key, desk));
        problems.AddRange(UncleanBowl.BeforeTick(command.Step, desk));
        problems.AddRange(PastClock.BeforeTick(key, order, command.Done ?? desk.Now, desk));
        return problems.Count > 0
            ? Outcome.Refused(command.Step, problems[0].Sentence, problems)
            : Ticking.Decide(command, desk, command.Step, [new Tick(command.Step, command.Done ?? desk.Now, command.By)]);
    }

    /// <summary>
    /// A cake is not boxed and does not leave while work on it is planned for later and nobody ticked it: one tap too many would take that work
    /// off everybody's list. What was planned to be over by now is asked about elsewhere.
    /// </summary>
    private static IEnumerable<Problem> NotMade(StepKey key, Desk desk)
    {
        if (!BeforeWork.Leaves(key.Operation) || desk.State is not { Week: { } week, Wall: { } wall })
        {
            return [];
        }

        var ticked = desk.State.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var later = wall.Plan.Steps.Where(r => wall.Epoch + Duration.FromMinutes(r.Start) > desk.Now && !ticked.Contains(r.Step)).ToDictionary(r => r.Step);
        return Before(key.ToString(), week).Where(s => later.ContainsKey(s) && StepKey.Parse(s) is { } before && BeforeWork.IsMaking(before.Operation))
            .OrderBy(s => later[s].Start).Take(1)
            .Select(s => new Problem("step", new PlanWords(desk).Name(s), $"{new PlanWords(desk).Name(s)} comes before it and is planned for {desk.DayAndClock(wall.Epoch + Duration.FromMinutes(later[s].Start))}.", "Tick what is done first."));
    }

    /// <summary>Every step that must be over before that one.</summary>
    private static HashSet<string> Before(string step, Week week)
    {
        var from = week.Holds.ToLookup(h => h.To, h => h.From, StringComparer.Ordinal);
        var (found, open) = (new HashSet<string>(StringComparer.Ordinal), new Stack<string>([step]));
        while (open.TryPop(out var next))
        {
            foreach (var before in from[next].Where(found.Add))
            {
                open.Push(before);
            }
        }

        return found;
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
