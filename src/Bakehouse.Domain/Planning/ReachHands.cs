namespace Bakehouse.Domain.Planning;

/// <summary>Where in a week enough people with a skill are at work in one stretch.</summary>
internal sealed class ReachHands
{
    private readonly Week week;
    private readonly Dictionary<string, int[]> ends = [];
    private readonly Dictionary<(string Skill, int Minutes, int Count), bool[]> known = [];

    public ReachHands(Week week)
    {
        this.week = week;
        foreach (var person in week.People)
        {
            var end = new int[(week.Horizon / week.Grain) + 1];
            foreach (var stretch in Stretches(person))
            {
                for (var t = Math.Max(0, stretch.From / week.Grain); t * week.Grain < Math.Min(stretch.To, week.Horizon); t++)
                {
                    end[t] = stretch.To;
                }
            }

            ends[person.Id] = end;
        }
    }

    /// <summary>Hours and possible overtime, touching ones joined.</summary>
    public static IReadOnlyList<Span> Stretches(WeekPerson person) =>
        person.Extra.Aggregate(person.Shifts.Aggregate((IReadOnlyList<Span>)[], (all, s) => all.Joined(s)), (all, s) => all.Joined(s));

    /// <summary>First minute from then on at which the step can begin; after the week if there is none.</summary>
    public int From(Step step, int minute)
    {
        var starts = Starts(step);
        var first = Math.Max(0, (minute + week.Grain - 1) / week.Grain);
        var found = first >= starts.Length ? -1 : Array.IndexOf(starts, true, first);
        return found < 0 ? week.Horizon : found * week.Grain;
    }

    /// <summary>Last minute up to then at which the step can begin; -1 if there is none.</summary>
    public int Until(Step step, int minute)
    {
        var starts = Starts(step);
        var last = Math.Min(starts.Length - 1, minute / week.Grain);
        var found = minute < 0 ? -1 : Array.LastIndexOf(starts, true, last);
        return found < 0 ? -1 : found * week.Grain;
    }

    private bool[] Starts(Step step)
    {
        var key = (step.Skill!, step.Minutes, step.Count);
        if (!known.TryGetValue(key, out var starts))
        {
            var able = week.People.Where(p => p.Skills.Contains(step.Skill!)).Select(p => ends[p.Id]).ToList();
            starts = new bool[(week.Horizon / week.Grain) + 1];
            for (var t = 0; t < starts.Length; t++)
            {
                var end = (t * week.Grain) + step.Minutes;
                starts[t] = able.Count(a => a[t] >= end && a[t] > 0) >= step.Count;
            }

            known[key] = starts;
        }

        return starts;
    }
}
