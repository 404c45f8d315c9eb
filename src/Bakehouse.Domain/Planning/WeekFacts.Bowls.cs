namespace Bakehouse.Domain.Planning;

/// <content>What each bowl met, and what it was cleaned of.</content>
internal sealed partial class WeekFacts
{
    /// <summary>
    /// The last mix done in each bowl stays in it, with the allergens of every mix before it that the bowl was not cleaned of: one that met
    /// nuts is still to be cleaned for whoever must be kept from them.
    /// </summary>
    private Dictionary<string, (Step Step, int Start, string Machine)> LastBowls()
    {
        var began = running.Where(r => rows[r].Machine is not null).ToLookup(r => rows[r].Machine!, r => rows[r].Start);
        var last = new Dictionary<string, (Step, int, string)>();
        var mixes = week.Steps.Where(s => s.Mix is not null && done.ContainsKey(s.Id) && rows.TryGetValue(s.Id, out var r) && r.Machine is not null);
        foreach (var bowl in mixes.GroupBy(s => rows[s.Id].Machine!))
        {
            var machine = week.Machines.FirstOrDefault(m => m.Id == bowl.Key);
            var step = bowl.MaxBy(s => done[s.Id])!;
            if (machine is null || !Takes(machine, step))
            {
                continue;
            }

            var latest = began[bowl.Key].Append(done[step.Id] + machine.TurnOther).Min() - machine.TurnOther - step.Minutes;
            var has = bowl.SelectMany(s => s.Has.Where(a => !IsCleanedOf(a, s.Id, bowl.Key))).Distinct().ToList();
            last[step.Id] = (step with { Skill = null, Tools = [], Has = has, Avoid = [] }, Math.Max(0, Math.Min(latest, done[step.Id] - step.Minutes)), bowl.Key);
        }

        return last;
    }

    /// <summary>True if the bowl met what the step is kept from: then the planner must find room for a clean-down before it.</summary>
    private bool Tainted(StepRow row, Step step) =>
        bowls.Values.Any(b => b.Machine == row.Machine && b.Step.Has.Intersect(step.Avoid).Any());

    /// <summary>A done mix keeps its bowl as long as the shop has it: what that bowl met must be known until the next cake kept from it.</summary>
    private string? BowlOf(string step) => steps[step].Mix is not null && rows.TryGetValue(step, out var row) && week.Machines.Any(m => m.Id == row.Machine) ? row.Machine : null;

    /// <summary>
    /// True for a mix whose bowl met what it is kept from and was not cleaned since, as when the customer's word came after it was planned:
    /// it has not begun, and is planned anew behind a clean-down.
    /// </summary>
    private bool IsUncleaned(string mix) => rows.TryGetValue(mix, out var row) && row.Machine is { } bowl && steps[mix].Mix is not null
        && In(bowl).Any(r => done.TryGetValue(r.Step, out var end) && steps[r.Step].Has.Intersect(steps[mix].Avoid).Any() && !IsCleanedBetween(bowl, end, row.Start));

    /// <summary>
    /// A planned clean-down counts once a mix that is kept from the allergen was made behind it, or is being made: its tick waits for the
    /// clean-down. One whose hour has merely passed does not.
    /// </summary>
    private bool IsCleanedOf(string allergen, string mix, string bowl) => In(bowl)
        .Where(r => steps[r.Step].Avoid.Contains(allergen))
        .Any(r => running.Contains(r.Step) ? IsCleanedBetween(bowl, done[mix], r.Start) : done.TryGetValue(r.Step, out var end) && IsCleanedBetween(bowl, done[mix], end));

    /// <summary>True if the bowl was cleaned down between two minutes, by somebody and in a way that today's shop still has.</summary>
    private bool IsCleanedBetween(string bowl, int from, int to) => week.Machines.FirstOrDefault(m => m.Id == bowl) is { Clean: { } how } machine
        && (wall?.Cleans ?? []).Any(c => c.Machine == bowl && c.Start >= from && new Span(c.Start, c.Start + how.Minutes) is var span && span.To <= to
            && c.People.All(p => people.TryGetValue(p, out var who) && who.Person.Skills.Contains(how.Skill) && who.Hours.Any(h => h.Covers(span)))
            && !machine.Down.Any(d => d.Meets(span)));

    private IEnumerable<StepRow> In(string bowl) => rows.Values.Where(r => r.Machine == bowl && steps.TryGetValue(r.Step, out var step) && step.Mix is not null);
}
