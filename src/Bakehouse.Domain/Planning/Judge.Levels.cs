namespace Bakehouse.Domain.Planning;

/// <content>The levels of wishes.</content>
public static partial class Judge
{
    private static Levels LevelsOf(WeekIndex at, int broken) =>
        new(broken, L1(at), L2(at), L3(at), L4(at), L5(at), L6(at));

    /// <summary>Minutes late of each promised order that is late, by order id.</summary>
    public static IReadOnlyDictionary<string, int> MinutesLate(Week week, Plan plan)
    {
        var at = new WeekIndex(week, plan);
        return week.Orders.Where(o => at.Runs(o.Out) && Late(at, o) > 0).ToDictionary(o => o.Id, o => Late(at, o));
    }

    private static int Moment(WeekIndex at, WeekOrder order) => order.EdgeIsEnd ? at.End(order.Out) : at.Start(order.Out);

    private static int Late(WeekIndex at, WeekOrder order) => Math.Max(0, Moment(at, order) - order.To);

    /// <summary>Minutes that promised orders are late.</summary>
    private static long L1(WeekIndex at) =>
        at.Week.Orders.Where(o => o.Rank == 1 && at.Runs(o.Out)).Sum(o => (long)Late(at, o));

    /// <summary>Minutes past a soft age.</summary>
    private static long L2(WeekIndex at) =>
        at.Week.Ages.Where(a => !a.Hard && at.Runs(a.From) && at.Runs(a.To))
            .Sum(a => (long)Math.Max(0, at.Start(a.To) - at.End(a.From) - a.Most));

    /// <summary>Minutes worked inside possible overtime.</summary>
    private static long L3(WeekIndex at) =>
        Hands(at).Where(h => at.People.ContainsKey(h.Person))
            .Sum(h => at.People[h.Person].Extra.Sum(e => (long)Math.Max(0, Math.Min(e.To, h.Span.To) - Math.Max(e.From, h.Span.From))));

    /// <summary>Freshness, buffers and late wishes.</summary>
    private static long L4(WeekIndex at)
    {
        long sum = 0;
        foreach (var order in at.Week.Orders.Where(o => at.Runs(o.Out)))
        {
            sum += order.Fresh.Where(f => at.Runs(f.Step)).Sum(f => (long)Math.Max(0, at.Start(order.Out) - at.End(f.Step) - f.Most));
            sum += at.Runs(order.Ready) ? Math.Max(0, order.Buffer - (at.Start(order.Out) - at.End(order.Ready))) : 0;
            sum += order.Rank == 2 ? Late(at, order) : 0;
        }

        return sum;
    }

    /// <summary>Changes against the plan on the wall: steps still wanted that moved or changed hands, holds elsewhere.</summary>
    private static long L5(WeekIndex at)
    {
        if (at.Week.Reference is not { } wall)
        {
            return 0;
        }

        var steps = wall.Steps.Count(r => at.Steps.ContainsKey(r.Step)
            && (!at.Runs(r.Step) || at.Rows[r.Step].Start != r.Start || at.Rows[r.Step].Machine != r.Machine
                || !at.Rows[r.Step].People.ToHashSet().SetEquals(r.People)));
        var holds = wall.Holds.Count(r => at.Holds.TryGetValue(r.Hold, out var hold)
            && (!at.Present(hold.If) || at.HoldRows.GetValueOrDefault(r.Hold)?.Store != r.Store));
        return steps + holds;
    }

    /// <summary>Most minus least hands-on minutes among those over whom hands are to be spread.</summary>
    private static long L6(WeekIndex at)
    {
        var shared = at.Week.People.Where(p => p.Share).ToDictionary(p => p.Id, _ => 0L);
        if (shared.Count < 2)
        {
            return 0;
        }

        foreach (var (person, span, _) in Hands(at).Where(h => shared.ContainsKey(h.Person)))
        {
            shared[person] += span.Minutes;
        }

        return shared.Values.Max() - shared.Values.Min();
    }
}
