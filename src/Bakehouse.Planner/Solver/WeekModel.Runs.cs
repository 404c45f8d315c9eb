using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Bowlfuls and oven loads. The step with the lowest number opens a run, others join it.</content>
internal sealed partial class WeekModel
{
    private readonly List<int> runs = [];

    private void Runs()
    {
        runs.AddRange(Enumerable.Range(0, steps.Length).Where(s => steps[s] is { Free: true } && at.IsRun(s)));
        var opener = at.Batches.SelectMany(b => b.Members.Where(m => free[m]).Select(m => (m, First: b.Members.All(o => free[o]) ? b.Members.Min() : -1))).ToDictionary(x => x.m, x => x.First);
        foreach (var s in runs)
        {
            Open(s, opener);
        }

        foreach (var s in runs)
        {
            OneRun(s);
        }

        foreach (var t in runs)
        {
            Fill(t);
        }

        foreach (var load in still)
        {
            FillStill(load);
        }

        foreach (var machine in Enumerable.Range(0, at.Week.Machines.Count))
        {
            Sequence(machine);
        }
    }

    private IEnumerable<int> MachinesFor(int s) => Enumerable.Range(0, at.Week.Machines.Count).Where(m => Share(s, m) <= Room(s, m) && Share(s, m) > 0);

    /// <summary>What a step takes of a machine, 0 if it can't be done there.</summary>
    private long Share(int s, int m)
    {
        var machine = at.Week.Machines[m];
        if (at.Steps[s].Mix is { } mix)
        {
            return machine.Kind == MachineKind.Bowl && Limit(mix.Family, machine.Id) > 0 ? Math.Max(1, mix.Size) : 0;
        }

        var pans = at.Steps[s].Bake!.Pans;
        return machine.Kind == MachineKind.Oven && pans.All(p => machine.Fits.GetValueOrDefault(p) > 0) ? Math.Max(1, pans.Sum(p => Whole(machine) / machine.Fits[p])) : 0;
    }

    private int Limit(string family, string machine) => at.Week.Families.First(f => f.Id == family).Limit.GetValueOrDefault(machine);

    /// <summary>What a machine holds, in the unit of <see cref="Share"/>.</summary>
    private long Room(int s, int m) => at.Steps[s].Mix is { } mix ? Limit(mix.Family, at.Week.Machines[m].Id) : Whole(at.Week.Machines[m]) * at.Week.Machines[m].Levels;

    /// <summary>Parts of a level: a number that every count of pans divides.</summary>
    private static long Whole(Machine oven) => oven.Fits.Values.Where(f => f > 0).Aggregate(1L, (all, f) => all / Gcd(all, f) * f);

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);

    private bool Alike(int s, int t) => (at.Steps[s].Mix is null) == (at.Steps[t].Mix is null) && at.Kind(s) == at.Kind(t)
        && at.Steps[s].Skill == at.Steps[t].Skill && (at.Steps[s].Skill is null || at.Steps[s].Count == at.Steps[t].Count) && !Harm(s, t);

    private bool Harm(int s, int t) => at.Steps[s].Has.Intersect(at.Steps[t].Avoid).Any() || at.Steps[t].Has.Intersect(at.Steps[s].Avoid).Any();

    private void Open(int s, Dictionary<int, int> opener)
    {
        var step = steps[s]!;
        var row = at.Rows[s];
        foreach (var m in MachinesFor(s))
        {
            step.Machine[m] = Either();
            step.Leads[m] = Hinted(Either(), row?.Machine == at.Week.Machines[m].Id && opener.GetValueOrDefault(s, s) == s);
        }

        step.Leading = Either();
        foreach (var t in runs.Where(t => t < s && Alike(s, t)))
        {
            step.Joins[t] = Hinted(Either(), opener.GetValueOrDefault(s, s) == t);
        }

        for (var f = 0; f < still.Count; f++)
        {
            var load = still[f];
            if (load.Members.All(m => Alike(s, m) && !at.Given.Contains(m)) && at.Length[s] <= load.To - load.From && load.From >= at.FreeFrom && step.Machine.ContainsKey(load.Machine)
                && load.Members.Sum(m => Share(m, load.Machine)) + Share(s, load.Machine) <= Room(s, load.Machine))
            {
                step.Puts[f] = Hinted(Either(), opener.GetValueOrDefault(s, s) < 0 && at.Rows[s]!.Machine == at.Week.Machines[load.Machine].Id && at.Start(s) == load.From);
            }
        }
    }

    /// <summary>A step opens a run, or joins one, or is put to one that stands still.</summary>
    private void OneRun(int s)
    {
        var step = steps[s]!;
        model.AddExactlyOne([.. step.Leads.Values, .. step.Joins.Values, .. step.Puts.Values, step.On.Not()]);
        model.AddExactlyOne([.. step.Machine.Values, step.On.Not()]);
        model.AddExactlyOne([.. step.Leads.Values, step.Leading!.Not()]);
        foreach (var (m, lead) in step.Leads)
        {
            model.AddImplication(lead, step.Machine[m]);
        }

        foreach (var (t, join) in step.Joins)
        {
            var other = steps[t]!;
            model.AddImplication(join, other.Leading!);
            model.Add(step.Start == other.Start).OnlyEnforceIf(join);
            foreach (var m in other.Leads.Keys)
            {
                model.AddBoolOr([join.Not(), other.Leads[m].Not(), step.Machine.TryGetValue(m, out var there) ? there : yes.Not()]);
            }
        }

        foreach (var (f, put) in step.Puts)
        {
            model.Add(step.Start == still[f].From).OnlyEnforceIf(put);
            model.AddImplication(put, step.Machine[still[f].Machine]);
        }

        step.Apart = yes;
        if (step.Puts.Count > 0)
        {
            var apart = Either();
            model.AddExactlyOne([.. step.Puts.Values, apart]);
            step.Apart = apart;
        }
    }

    /// <summary>What a run holds, and how long it takes.</summary>
    private void Fill(int t)
    {
        var step = steps[t]!;
        int[] joiners = [.. runs.Where(s => steps[s]!.Joins.ContainsKey(t))];
        foreach (var (m, lead) in step.Leads)
        {
            if (joiners.Length > 0)
            {
                var shares = joiners.Select(s => steps[s]!.Machine.ContainsKey(m) ? Share(s, m) : 0).ToArray();
                model.Add(LinearExpr.WeightedSum(joiners.Select(s => steps[s]!.Joins[t]), shares) + Share(t, m) <= Room(t, m)).OnlyEnforceIf(lead);
            }
        }

        foreach (var s in joiners)
        {
            foreach (var other in joiners.Where(o => o > s && Harm(s, o)))
            {
                model.AddBoolOr([steps[s]!.Joins[t].Not(), steps[other]!.Joins[t].Not()]);
            }
        }

        int[] takes = [.. joiners.Select(s => at.Length[s]).Append(at.Length[t]).Where(l => l >= at.Length[t]).Distinct().Order()];
        foreach (var length in takes)
        {
            step.Takes[length] = takes.Length == 1 ? yes : Either();
        }

        model.AddExactlyOne(step.Takes.Values);
        foreach (var s in joiners.Where(s => at.Length[s] > at.Length[t]))
        {
            model.AddBoolOr([steps[s]!.Joins[t].Not(), .. step.Takes.Where(l => l.Key >= at.Length[s]).Select(l => l.Value)]);
        }
    }

    private void FillStill(Load load)
    {
        var f = still.IndexOf(load);
        int[] put = [.. runs.Where(s => steps[s]!.Puts.ContainsKey(f))];
        if (put.Length == 0)
        {
            return;
        }

        var used = load.Members.Sum(m => Share(m, load.Machine));
        model.Add(LinearExpr.WeightedSum(put.Select(s => steps[s]!.Puts[f]), put.Select(s => Share(s, load.Machine))) <= Room(put[0], load.Machine) - used);
        foreach (var s in put)
        {
            foreach (var other in put.Where(o => o > s && Harm(s, o)))
            {
                model.AddBoolOr([steps[s]!.Puts[f].Not(), steps[other]!.Puts[f].Not()]);
            }
        }
    }

    /// <summary>Runs of one machine, one after the other, with the turn time between them.</summary>
    private void Sequence(int m)
    {
        var machine = at.Week.Machines[m];
        int[] here = [.. runs.Where(s => steps[s]!.Leads.ContainsKey(m))];
        var intervals = here.SelectMany(s => steps[s]!.Takes.Select(l =>
            model.NewOptionalFixedSizeIntervalVar(steps[s]!.Start, l.Key, Both(steps[s]!.Leads[m], l.Value), "")));
        model.AddNoOverlap([.. intervals, .. WashingOn(m)]);
        foreach (var s in here)
        {
            foreach (var (length, takes) in steps[s]!.Takes)
            {
                Within(steps[s]!.Start, Openings(m, at.Kind(s), length), steps[s]!.Leads[m], takes);
            }

            foreach (var t in here.Where(t => t < s))
            {
                Turn(s, t, m, machine);
            }
        }
    }

    private void Turn(int s, int t, int m, Machine machine)
    {
        var turn = (at.Kind(s) == at.Kind(t) ? machine.TurnSame : machine.TurnOther) / at.Grain;
        if (turn == 0)
        {
            return;
        }

        var first = Either();
        foreach (var (one, other, order) in new[] { (s, t, (ILiteral)first), (t, s, first.Not()) })
        {
            foreach (var (length, takes) in steps[one]!.Takes)
            {
                model.Add(steps[one]!.Start + (length + turn) <= steps[other]!.Start).OnlyEnforceIf([order, takes, steps[one]!.Leads[m], steps[other]!.Leads[m]]);
            }
        }
    }

    /// <summary>Starts of a run of so many grains that what stands still on the machine leaves.</summary>
    private List<Span> Openings(int m, string? kind, int length)
    {
        var machine = at.Week.Machines[m];
        var starts = new List<Span> { new(0, at.Horizon - length + 1) };
        foreach (var down in machine.Down.Where(_ => kind is not null))
        {
            starts = Spans.Without(starts, (down.From / at.Grain) - length + 1, (down.To + at.Grain - 1) / at.Grain);
        }

        foreach (var load in still.Where(l => l.Machine == m))
        {
            var turn = kind is null ? 0 : (at.Kind(load.Members[0]) == kind ? machine.TurnSame : machine.TurnOther) / at.Grain;
            starts = Spans.Without(starts, load.From - turn - length + 1, load.To + turn);
        }

        foreach (var clean in washes.Where(w => w.Machine == m))
        {
            starts = Spans.Without(starts, clean.From - length + 1, clean.To);
        }

        return starts;
    }

    private ILiteral Both(ILiteral one, ILiteral other)
    {
        if (other.GetIndex() == yes.GetIndex())
        {
            return one;
        }

        if (one.GetIndex() == yes.GetIndex())
        {
            return other;
        }

        var both = Either();
        model.AddImplication(both, one);
        model.AddImplication(both, other);
        model.AddBoolOr([both, one.Not(), other.Not()]);
        return both;
    }
}
