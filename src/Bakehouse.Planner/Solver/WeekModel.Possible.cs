using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <content>Where each step may start at all: hours, what stands still, waits, and how late an order may be.</content>
internal sealed partial class WeekModel
{
    /// <summary>By step: the loads that stand still to which it may be put.</summary>
    private readonly Dictionary<int, int[]> puttable = [];

    /// <summary>By present step: sorted starts. What stands still has one.</summary>
    private List<(int Step, IReadOnlyList<Span> Starts)> Possible()
    {
        var starts = new List<Span>?[steps.Length];
        var out_ = at.Week.Orders.ToDictionary(o => week.StepAt[o.Out]);
        for (var s = 0; s < steps.Length; s++)
        {
            if (!Never(On(at.Steps[s].If)) && (free[s] || at.Rows[s] is not null))
            {
                starts[s] = free[s] ? Own(s, out_.GetValueOrDefault(s)) : [new Span(at.Start(s), at.Start(s) + 1)];
            }
        }

        Narrow(starts);
        return [.. Enumerable.Range(0, steps.Length).Where(s => starts[s] is not null).Select(s => (s, (IReadOnlyList<Span>)starts[s]!))];
    }

    private List<Span> Own(int s, WeekOrder? order)
    {
        var (first, last) = (week.FreeFrom, at.Horizon - at.Length[s]);
        if (order is not null)
        {
            var before = order.EdgeIsEnd ? at.Length[s] : 0;
            first = Math.Max(first, ((order.From + at.Grain - 1) / at.Grain) - before);
            last = order.Rank == 1 ? Math.Min(last, ((order.To + (int)at.Levels.Late) / at.Grain) - before) : last;
        }

        List<Span> starts = first <= last ? [new Span(first, last + 1)] : [];
        var there = puttable[s] = week.IsRun(s) ? [.. Enumerable.Range(0, still.Count).Where(f => MayBePut(s, still[f]))] : [];
        var put = there.Select(f => new Span(still[f].From, still[f].From + 1));
        if (week.IsRun(s))
        {
            starts = Spans.Shared(starts, Spans.Either(week.Machines[s].SelectMany(m => Openings(m, week.Kind(s), at.Length[s])).Concat(put)));
        }

        if (at.Steps[s].Skill is not null)
        {
            starts = Spans.Shared(starts, Spans.Either(week.Skilled[s].SelectMany(p => Hours(p, at.Length[s])).Concat(put)));
        }

        return at.Week.Tools.Where(t => at.Steps[s].Tools.Contains(t.Id)).SelectMany(t => t.Down)
            .Aggregate(starts, (left, d) => Spans.Without(left, (d.From / at.Grain) - at.Length[s] + 1, (d.To + at.Grain - 1) / at.Grain));
    }

    private bool MayBePut(int s, Load load) => load.Members.All(m => week.Alike(s, m) && !week.Given.Contains(m))
        && at.Length[s] <= load.To - load.From && load.From >= week.FreeFrom && week.Machines[s].Contains(load.Machine)
        && load.Members.Sum(m => week.Share(m, load.Machine)) + week.Share(s, load.Machine) <= week.Room(s, load.Machine);

    /// <summary>Waits and ages between two steps cut the starts of both, until nothing changes.</summary>
    private void Narrow(List<Span>?[] starts)
    {
        var waits = Waits(starts).ToList();
        for (var changed = true; changed;)
        {
            changed = false;
            foreach (var (from, to, least, most) in waits)
            {
                if (starts[from] is { Count: > 0 } a && starts[to] is { Count: > 0 } b)
                {
                    changed |= Cut(starts, to, a[0].From + least, a[^1].To - 1 + most);
                    changed |= Cut(starts, from, b[0].From - most, b[^1].To - 1 - least);
                }
            }
        }
    }

    /// <summary>Least and most grains from start to start.</summary>
    private IEnumerable<(int From, int To, int Least, int Most)> Waits(List<Span>?[] starts)
    {
        bool Both(int from, int to) => starts[from] is not null && starts[to] is not null && (free[from] || free[to])
            && Always(On(at.Steps[from].If)) && Always(On(at.Steps[to].If));
        for (var h = 0; h < at.Holds.Length; h++)
        {
            var (from, to) = week.Ends[h];
            if (Both(from, to) && Always(On(at.Holds[h].If)) && Places(h) is { Count: > 0 } places)
            {
                yield return (from, to, at.Length[from] + places.Min(p => p.Least), at.Length[from] + places.Max(p => p.Most));
            }
        }

        foreach (var age in at.Week.Ages.Where(a => a.Hard))
        {
            var (from, to) = (week.StepAt[age.From], week.StepAt[age.To]);
            if (Both(from, to))
            {
                yield return (from, to, -at.Horizon, at.Length[from] + Oldest(age, from, to));
            }
        }
    }

    /// <summary>Grains that an age may have: what is asked, or what facts made of it.</summary>
    private int Oldest(Age age, int from, int to) => Math.Max(Math.Min(age.Most, at.Week.Horizon) / at.Grain, at.Between(from, to));

    /// <summary>Cuts what is before and after. True if anything was.</summary>
    private bool Cut(List<Span>?[] starts, int s, int first, int last)
    {
        var own = starts[s]!;
        if (!free[s] || own.Count == 0 || (own[0].From >= first && own[^1].To - 1 <= last))
        {
            return false;
        }

        starts[s] = [.. own.Where(n => n.To > first && n.From <= last).Select(n => new Span(Math.Max(n.From, first), Math.Min(n.To, last + 1)))];
        return true;
    }
}
