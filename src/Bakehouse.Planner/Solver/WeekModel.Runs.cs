using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Bowlfuls and oven loads. The step with the lowest number opens a run, others join it.</content>
internal sealed partial class WeekModel
{
    private readonly List<int> runs = [];

    private void Runs()
    {
        runs.AddRange(Enumerable.Range(0, steps.Length).Where(s => steps[s] is { Free: true } && week.IsRun(s)));
        var opener = at.Batches.SelectMany(b => b.Members.Where(m => free[m]).Select(m => (m, First: b.Members.All(o => free[o]) ? b.Members.Min() : -1))).ToDictionary(x => x.m, x => x.First);
        foreach (var s in runs)
        {
            Open(s, opener.GetValueOrDefault(s, s));
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

    /// <summary>What a step may be: the opener of a run on some machine, in another's run, or in one that stands still.</summary>
    private void Open(int s, int opener)
    {
        var step = steps[s]!;
        var stood = at.Rows[s]?.Machine;
        foreach (var t in runs.Where(t => t < s && MayJoin(s, t)))
        {
            step.Joins[t] = Hinted(Either(), opener == t);
        }

        foreach (var f in puttable[s].Where(f => Spans.Covers(step.Possible, still[f].From)))
        {
            step.Puts[f] = Hinted(Either(), opener < 0 && stood == at.Week.Machines[still[f].Machine].Id && at.Start(s) == still[f].From);
        }

        int[] machines = [.. week.Machines[s].Where(m => step.Puts.Keys.Any(f => still[f].Machine == m) || Spans.Meet(step.Possible, Openings(m, week.Kind(s), at.Length[s])))];
        step.Leading = step.Joins.Count + step.Puts.Count == 0 ? step.On : Hinted(Either(), opener == s);
        foreach (var m in machines)
        {
            step.Machine[m] = machines.Length == 1 ? step.On : Hinted(Either(), stood == at.Week.Machines[m].Id);
            step.Leads[m] = machines.Length == 1 ? step.Leading : step.Joins.Count + step.Puts.Count == 0 ? step.Machine[m]
                : Hinted(Either(), stood == at.Week.Machines[m].Id && opener == s);
        }
    }

    private bool MayJoin(int s, int t) => week.Alike(s, t) && Spans.Meet(steps[s]!.Possible, steps[t]!.Possible)
        && week.Machines[s].Any(m => week.Machines[t].Contains(m) && week.Share(s, m) + week.Share(t, m) <= week.Room(t, m));

    /// <summary>A step opens a run, or joins one, or is put to one that stands still.</summary>
    private void OneRun(int s)
    {
        var step = steps[s]!;
        var joined = step.Joins.Count + step.Puts.Count > 0;
        if (step.Machine.Count != 1)
        {
            model.AddExactlyOne([.. step.Machine.Values, step.On.Not()]);
        }

        if (joined)
        {
            model.AddExactlyOne([.. step.Joins.Values, .. step.Puts.Values, step.Leading!, step.On.Not()]);
        }

        if (joined && step.Leads.Count != 1)
        {
            model.AddExactlyOne([.. step.Leads.Values, step.Leading!.Not()]);
            foreach (var (m, lead) in step.Leads)
            {
                model.AddImplication(lead, step.Machine[m]);
            }
        }

        foreach (var (t, join) in step.Joins)
        {
            Join(step, steps[t]!, join);
        }

        foreach (var (f, put) in step.Puts)
        {
            model.Add(step.Start == still[f].From).OnlyEnforceIf(put);
            model.AddImplication(put, step.Machine[still[f].Machine]);
        }

        step.Apart = step.On;
        if (step.Puts.Count > 0)
        {
            var apart = Either();
            model.AddExactlyOne([.. step.Puts.Values, apart]);
            step.Apart = apart;
        }
    }

    private void Join(StepVar step, StepVar other, BoolVar join)
    {
        model.AddImplication(join, other.Leading!);
        model.Add(step.Start == other.Start).OnlyEnforceIf(join);
        foreach (var (m, lead) in other.Leads)
        {
            if (!step.Machine.TryGetValue(m, out var there))
            {
                model.AddBoolOr([join.Not(), lead.Not()]);
            }
            else if (!Always(there))
            {
                model.AddBoolOr([join.Not(), lead.Not(), there]);
            }
        }
    }

    /// <summary>What a run holds, and how long it takes.</summary>
    private void Fill(int t)
    {
        var step = steps[t]!;
        int[] joiners = [.. runs.Where(s => steps[s]!.Joins.ContainsKey(t))];
        foreach (var (m, lead) in step.Leads)
        {
            var shares = joiners.Select(s => steps[s]!.Machine.ContainsKey(m) ? week.Share(s, m) : 0).ToArray();
            if (shares.Sum() + week.Share(t, m) > week.Room(t, m))
            {
                Only(model.Add(LinearExpr.WeightedSum(joiners.Select(s => steps[s]!.Joins[t]), shares) <= week.Room(t, m) - week.Share(t, m)), lead);
            }
        }

        foreach (var s in joiners)
        {
            foreach (var other in joiners.Where(o => o > s && week.Harm(s, o)))
            {
                model.AddBoolOr([steps[s]!.Joins[t].Not(), steps[other]!.Joins[t].Not()]);
            }
        }

        int[] takes = [.. joiners.Select(s => at.Length[s]).Append(at.Length[t]).Where(l => l >= at.Length[t]).Distinct().Order()];
        foreach (var length in takes)
        {
            step.Takes[length] = takes.Length == 1 ? yes : Either();
        }

        if (takes.Length > 1)
        {
            model.AddExactlyOne(step.Takes.Values);
        }

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

        var used = load.Members.Sum(m => week.Share(m, load.Machine));
        model.Add(LinearExpr.WeightedSum(put.Select(s => steps[s]!.Puts[f]), put.Select(s => week.Share(s, load.Machine))) <= week.Room(put[0], load.Machine) - used);
        foreach (var s in put)
        {
            foreach (var other in put.Where(o => o > s && week.Harm(s, o)))
            {
                model.AddBoolOr([steps[s]!.Puts[f].Not(), steps[other]!.Puts[f].Not()]);
            }
        }
    }

    private ILiteral Both(ILiteral one, ILiteral other)
    {
        if (Always(other) || one.GetIndex() == other.GetIndex())
        {
            return one;
        }

        if (Always(one))
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
