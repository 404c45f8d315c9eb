namespace Bakehouse.Domain.Planning;

/// <content>Bowls, ovens and allergens.</content>
public static partial class Judge
{
    /// <summary>The machine can do it.</summary>
    private static IEnumerable<Breach> M1(WeekIndex at) =>
        from w in at.Working
        where w.Step.Mix is not null || w.Step.Bake is not null
        where !Can(at, w.Step, w.Row.Machine)
        select new Breach("M1", $"{w.Row.Machine ?? "No machine"} can't do {w.Step.Id}.", w.Step.Id, w.Row.Start);

    private static bool Can(WeekIndex at, Step step, string? name)
    {
        if (name is null || !at.Machines.TryGetValue(name, out var machine))
        {
            return false;
        }

        return step.Mix is { } mix
            ? machine.Kind == MachineKind.Bowl && at.Families.TryGetValue(mix.Family, out var family) && family.Limit.ContainsKey(name)
            : machine.Kind == MachineKind.Oven && step.Bake!.Pans.All(pan => machine.Fits.GetValueOrDefault(pan) > 0);
    }

    /// <summary>A bowl is not overfilled.</summary>
    private static IEnumerable<Breach> M2(WeekIndex at) =>
        from batch in at.Batches
        where batch.IsMix && batch.Machine is not null
        let limit = at.Families.GetValueOrDefault(batch.Kind)?.Limit.GetValueOrDefault(batch.Machine!, int.MaxValue) ?? int.MaxValue
        let size = batch.Members.Sum(m => m.Mix?.Size ?? 0)
        where size > limit
        select new Breach("M2", $"{batch.Machine} holds {limit} of {batch.Kind} and gets {size}.", batch.Name, batch.Span.From);

    /// <summary>A bowlful is one family, one start, the same people; an oven load one heat, one start.</summary>
    private static IEnumerable<Breach> M3(WeekIndex at) =>
        from batch in at.Batches
        where batch.Members.Count > 1
        where batch.Rows.Any(r => r.Start != batch.Rows[0].Start)
            || batch.Members.Any(m => (m.Mix?.Family ?? m.Bake!.Heat) != batch.Kind || (m.Mix is null) == batch.IsMix)
            || batch.Rows.Any(r => !r.People.ToHashSet().SetEquals(batch.Rows[0].People))
        select new Breach("M3", $"The members of the batch with {batch.Name} differ in family, heat, start or people.", batch.Name, batch.Span.From);

    /// <summary>The pans of a load stand on the levels.</summary>
    private static IEnumerable<Breach> M4(WeekIndex at) =>
        from batch in at.Batches
        where !batch.IsMix && batch.Machine is not null && at.Machines.ContainsKey(batch.Machine)
        let oven = at.Machines[batch.Machine!]
        let pans = batch.Members.SelectMany(m => m.Bake?.Pans ?? []).ToList()
        where pans.TrueForAll(p => oven.Fits.GetValueOrDefault(p) > 0) && !(oven.Deck is { } deck ? StandOnDecks(deck, oven.Levels, pans) : StandOnLevels(oven, pans))
        select new Breach("M4", $"The pans {string.Join(", ", pans)} of the load with {batch.Name} do not stand on {oven.Levels} levels of {oven.Id}.", batch.Name, batch.Span.From);

    /// <summary>Exact: tries levels for the pans, widest first; shares of a level are whole parts of one common number.</summary>
    private static bool StandOnLevels(Machine oven, List<int> pans)
    {
        var level = oven.Fits.Values.Where(f => f > 0).Aggregate(1L, (all, f) => all / Gcd(all, f) * f);
        var sizes = pans.Select(p => level / oven.Fits[p]).OrderDescending().ToArray();
        var free = Enumerable.Repeat(level, oven.Levels).ToArray();
        return sizes.Sum() <= level * oven.Levels && Stand(0);

        bool Stand(int pan)
        {
            if (pan == sizes.Length)
            {
                return true;
            }

            var tried = new HashSet<long>();
            for (var i = 0; i < free.Length; i++)
            {
                if (free[i] < sizes[pan] || !tried.Add(free[i]))
                {
                    continue;
                }

                free[i] -= sizes[pan];
                if (Stand(pan + 1))
                {
                    return true;
                }

                free[i] += sizes[pan];
            }

            return false;
        }
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);

    /// <summary>Runs of a machine don't overlap and leave turn time; none before and after a clean-down.</summary>
    private static IEnumerable<Breach> M5(WeekIndex at)
    {
        foreach (var machine in at.Week.Machines)
        {
            var runs = RunsOf(at, machine.Id);
            for (var i = 1; i < runs.Count; i++)
            {
                var (last, next) = (runs[i - 1], runs[i]);
                var turn = last.Kind is null || next.Kind is null ? 0 : last.Kind == next.Kind ? machine.TurnSame : machine.TurnOther;
                if (next.Span.From < last.Span.To + turn)
                {
                    yield return new Breach("M5", $"{machine.Id} starts {next.What} at minute {next.Span.From}, less than {turn} min after {last.What}.", next.What, next.Span.From);
                }
            }
        }
    }

    /// <summary>Batches and clean-downs of a machine in order of time; a clean-down has no kind.</summary>
    private static List<(Span Span, string? Kind, string What, Batch? Batch)> RunsOf(WeekIndex at, string machine) =>
    [
        .. at.Batches.Where(b => b.Machine == machine).Select(b => (b.Span, (string?)b.Kind, b.Name, (Batch?)b))
            .Concat(at.Plan.Cleans.Where(c => c.Machine == machine).Select(c => (CleanSpan(at, c), (string?)null, $"a clean-down", (Batch?)null)))
            .OrderBy(r => r.Item1.From).ThenBy(r => r.Item1.To),
    ];

    /// <summary>A clean-down is done properly.</summary>
    private static IEnumerable<Breach> M6(WeekIndex at)
    {
        foreach (var clean in at.Plan.Cleans.Where(c => at.Machines.ContainsKey(c.Machine)))
        {
            var how = at.Machines[clean.Machine].Clean;
            var wrong = how is null ? "has no clean-down"
                : clean.People.Count != 1 ? $"is cleaned by {clean.People.Count} people, not one"
                : !at.People.TryGetValue(clean.People[0], out var person) || !person.Skills.Contains(how.Skill) ? $"is cleaned by somebody who can't {how.Skill}"
                : !InOne(Union(person.Shifts.Concat(person.Extra)), CleanSpan(at, clean)) ? $"is cleaned while {person.Name} is not at work"
                : !InsideWeek(at.Week, clean.Start, how.Minutes) ? "is cleaned outside the week"
                : null;
            if (wrong is not null)
            {
                yield return new Breach("M6", $"{clean.Machine} {wrong}.", clean.Machine, clean.Start);
            }
        }
    }

    /// <summary>A machine out of use is not used.</summary>
    private static IEnumerable<Breach> M7(WeekIndex at) =>
        from machine in at.Week.Machines
        where machine.Down.Count > 0
        from run in RunsOf(at, machine.Id)
        where run.Batch is not null && machine.Down.Any(d => d.Meets(run.Span))
        select new Breach("M7", $"{machine.Id} is out of use during {run.What}.", run.What, run.Span.From);

    /// <summary>Nothing in a batch harms another's customer.</summary>
    private static IEnumerable<Breach> A1(WeekIndex at) =>
        from batch in at.Batches
        let harm = batch.Has.Intersect(batch.Avoid).ToList()
        where harm.Count > 0
        select new Breach("A1", $"The batch with {batch.Name} brings {string.Join(", ", harm)} to an order that is kept from it.", batch.Name, batch.Span.From);

    /// <summary>Wet clean-down between an allergen and a cake kept from it, on the same bowl.</summary>
    private static IEnumerable<Breach> A2(WeekIndex at)
    {
        foreach (var bowl in at.Week.Machines.Where(m => m.Kind == MachineKind.Bowl))
        {
            var since = new Dictionary<string, string>();
            foreach (var run in RunsOf(at, bowl.Id))
            {
                if (run.Batch is null)
                {
                    since.Clear();
                    continue;
                }

                foreach (var allergen in run.Batch.Avoid.Where(since.ContainsKey))
                {
                    yield return new Breach("A2", $"{bowl.Id} is not cleaned of {allergen} between {since[allergen]} and {run.What}.", run.What, run.Span.From);
                }

                foreach (var allergen in run.Batch.Has)
                {
                    since[allergen] = run.What;
                }
            }
        }
    }

    /// <summary>The air settles after a mix with flour before a mix that is kept from it, anywhere.</summary>
    private static IEnumerable<Breach> A3(WeekIndex at)
    {
        foreach (var air in at.Week.Air)
        {
            var kept = at.Batches.Where(b => b.IsMix && b.Avoid.Contains(air.Allergen)).ToList();
            foreach (var dusty in at.Batches.Where(b => kept.Count > 0 && b.IsMix && b.Has.Contains(air.Allergen)))
            {
                foreach (var mix in kept.Where(k => k != dusty && k.Span.From < dusty.Span.To + air.Settle && k.Span.To > dusty.Span.From))
                {
                    yield return new Breach("A3", $"{mix.Name} is mixed within {air.Settle} min of {dusty.Name}: {air.Allergen} is in the air.", mix.Name, mix.Span.From);
                }
            }
        }
    }
}
