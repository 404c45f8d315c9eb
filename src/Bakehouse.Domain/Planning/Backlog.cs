namespace Bakehouse.Domain.Planning;

/// <summary>
/// How long it may take until hands get to something that waits already: nights, days off and all the work that should have begun by
/// now lie before it. A limit that ends sooner would leave the week without any plan.
/// </summary>
internal sealed class Backlog
{
    private const int Calm = 240;
    private readonly Week week;
    private readonly Dictionary<string, int> overdue;
    private readonly Dictionary<string, int[]> hands = [];
    private readonly Dictionary<string, int> earliest = [];
    private readonly Dictionary<string, int> done;
    private readonly ILookup<string, Hold> before;
    private readonly ILookup<string, Hold> after;

    /// <param name="done">Ends of the done steps.</param>
    /// <param name="starts">Starts on the wall.</param>
    public Backlog(Week week, Dictionary<string, int> done, IReadOnlyDictionary<string, int> starts)
    {
        (this.week, this.done) = (week, done);
        before = week.Holds.ToLookup(h => h.To);
        after = week.Holds.ToLookup(h => h.From);
        Steps = week.Steps.ToDictionary(s => s.Id);
        overdue = week.Steps.Where(s => s.Skill is not null && !done.ContainsKey(s.Id) && starts.GetValueOrDefault(s.Id, int.MaxValue) < week.FreeFrom)
            .GroupBy(s => s.Skill!).ToDictionary(g => g.Key, g => g.Sum(s => s.Minutes * s.Count));
    }

    private Dictionary<string, Step> Steps { get; }

    /// <summary>
    /// The minute by which a step will have found hands, if it can begin at <paramref name="from"/>: four hours of hands with its
    /// skill and twice what is overdue; at the latest the end of the week.
    /// </summary>
    public int Through(string step, int from)
    {
        if (Steps[step].Skill is not { } skill)
        {
            // An oven needs nobody, but somebody must be there when it is done: nothing goes in at night.
            return after[step].Select(h => Through(h.To, from)).Append(Math.Min(week.Horizon, from + Calm)).Max();
        }

        var needed = Calm + (2 * overdue.GetValueOrDefault(skill));
        var counted = Hands(skill);
        var first = Math.Clamp(from / WeekTime.Grain, 0, counted.Length - 1);
        var found = Array.FindIndex(counted, first, minutes => minutes - counted[first] >= needed);
        return found < 0 ? week.Horizon : found * WeekTime.Grain;
    }

    /// <summary>The earliest minute at which a step could begin if hands were always there: the longest chain of what is still open.</summary>
    public int Earliest(string step)
    {
        if (!earliest.TryGetValue(step, out var minute))
        {
            minute = before[step].Select(h => (done.TryGetValue(h.From, out var end) ? end : Earliest(h.From) + Steps[h.From].Minutes) + h.In.Min(i => i.Least))
                .Append(week.FreeFrom).Max();
            earliest[step] = minute = Math.Max(minute, week.Orders.FirstOrDefault(o => o.Out == step) is { } order ? order.From : 0);
        }

        return minute;
    }

    /// <summary>True if something else that the step needs is not made yet.</summary>
    public bool WaitsForOthers(string step) => before[step].Any(h => !done.ContainsKey(h.From));

    /// <summary>Minutes of hands with that skill from the start of the week, by grain.</summary>
    private int[] Hands(string skill)
    {
        if (hands.TryGetValue(skill, out var known))
        {
            return known;
        }

        var counted = new int[(week.Horizon / WeekTime.Grain) + 1];
        foreach (var span in week.People.Where(p => p.Skills.Contains(skill)).SelectMany(p => p.Shifts))
        {
            for (var minute = Math.Max(0, span.From); minute < span.To && minute < week.Horizon; minute += WeekTime.Grain)
            {
                counted[(minute / WeekTime.Grain) + 1] += WeekTime.Grain;
            }
        }

        for (var i = 1; i < counted.Length; i++)
        {
            counted[i] += counted[i - 1];
        }

        return hands[skill] = counted;
    }
}
