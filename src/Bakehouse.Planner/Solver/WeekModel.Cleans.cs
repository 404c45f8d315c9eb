using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Wet clean-downs, and flour in the air.</content>
internal sealed partial class WeekModel
{
    private readonly List<(int Machine, int From, int To, CleanRow Row)> washes = [];
    private readonly List<Washing> washing = [];

    /// <summary>A clean-down that may be done before a step that is kept from something.</summary>
    private sealed record Washing(int For, int Machine, IntVar Start, List<Span> Possible, int Length, BoolVar On, Dictionary<int, ILiteral> Who);

    private bool IsMix(int s) => steps[s] is not null && at.Steps[s].Mix is not null;

    private IEnumerable<int> Harmful(int j) => Enumerable.Range(0, steps.Length).Where(i => i != j && week.Taints(i, j) && IsMix(i));

    /// <summary>A clean-down of the plan stands still unless all that it is for may move.</summary>
    private void WashesStandStill()
    {
        foreach (var row in at.Plan.Cleans)
        {
            var m = week.MachineAt[row.Machine];
            var (from, length) = (row.Start / at.Grain, at.Week.Machines[m].Clean!.Minutes / at.Grain);
            if (row.Start >= at.Week.FreeFrom && For(m, from) is { Length: > 0 } served && served.All(s => free[s]))
            {
                continue;
            }

            washes.Add((m, from, from + length, row));
            busy[week.PersonAt[row.People[0]]].Add(new Span(from, from + length));
        }
    }

    /// <summary>One for each step and machine before which something harmful may be there.</summary>
    private void Washings()
    {
        for (var s = 0; s < steps.Length; s++)
        {
            if (steps[s] is { Free: true } && IsMix(s) && at.Steps[s].Avoid.Count > 0)
            {
                foreach (var m in week.Machines[s].Where(m => at.Week.Machines[m].Clean is not null && Harmful(s).Any(i => MayBeOn(i, m) && !NeverBefore(i, at.Length[i], s))))
                {
                    AddWashing(s, m);
                }
            }
        }
    }

    /// <summary>Steps kept from something between a clean-down and the next on that machine.</summary>
    private int[] For(int m, int from)
    {
        var next = at.Plan.Cleans.Where(c => week.MachineAt[c.Machine] == m && c.Start / at.Grain > from).Select(c => c.Start / at.Grain).DefaultIfEmpty(int.MaxValue).Min();
        return [.. at.Batches.Where(b => b.Machine == m && b.From >= from && b.From < next).SelectMany(b => b.Members).Where(s => at.Steps[s].Avoid.Count > 0)];
    }

    private void AddWashing(int s, int m)
    {
        var clean = at.Week.Machines[m].Clean!;
        var length = clean.Minutes / at.Grain;
        int[] able = [.. Enumerable.Range(0, at.Week.People.Count).Where(p => at.Week.People[p].Skills.Contains(clean.Skill))];
        var possible = Spans.Shared([new Span(week.FreeFrom, steps[s]!.Last - length + 1)], Spans.Shared(Openings(m, null, length), Spans.Either(able.SelectMany(p => Hours(p, length)))));
        if (possible.Count == 0)
        {
            return;
        }

        var released = Released(s, m);
        var on = Hinted(Either(), released is not null);
        var who = able.ToDictionary(p => p, p => able.Length == 1 ? (ILiteral)on : Hinted(Either(), released?.People[0] == at.Week.People[p].Id));
        var wash = new Washing(s, m, model.NewIntVarFromDomain(Of(possible), ""), possible, length, on, who);
        model.AddHint(wash.Start, released is null ? possible[0].From : released.Start / at.Grain);
        if (able.Length > 1)
        {
            model.AddExactlyOne([.. who.Values, on.Not()]);
        }

        washing.Add(wash);
    }

    /// <summary>The clean-down of the plan that may move and is done before this step, the first of those that it is for.</summary>
    private CleanRow? Released(int s, int m) => at.Rows[s]?.Machine != at.Week.Machines[m].Id ? null
        : at.Plan.Cleans.FirstOrDefault(c => week.MachineAt[c.Machine] == m && washes.TrueForAll(w => w.Row != c) && For(m, c.Start / at.Grain).OrderBy(at.Start).FirstOrDefault(-1) == s);

    private bool MayBeOn(int s, int m) => free[s] ? week.Machines[s].Contains(m) : at.Rows[s]!.Machine == at.Week.Machines[m].Id;

    private IEnumerable<IntervalVar> WashingOn(int m) => washing.Where(w => w.Machine == m).Select(w => model.NewOptionalFixedSizeIntervalVar(w.Start, w.Length, w.On, ""));

    private void Wash()
    {
        foreach (var wash in washing)
        {
            var step = steps[wash.For]!;
            model.AddImplication(wash.On, step.Machine.GetValueOrDefault(wash.Machine, yes.Not()));
            model.Add(wash.Start + wash.Length <= step.Start).OnlyEnforceIf(wash.On);
        }

        for (var j = 0; j < steps.Length; j++)
        {
            if (IsMix(j) && at.Steps[j].Avoid.Count > 0)
            {
                foreach (var i in Harmful(j).Where(i => free[i] || free[j]))
                {
                    Between(i, j);
                }
            }
        }
    }

    private void Between(int i, int j)
    {
        foreach (var m in Enumerable.Range(0, at.Week.Machines.Count))
        {
            if (OnMachine(i, m) is not { } one || OnMachine(j, m) is not { } other || NeverBefore(i, at.Length[i], j))
            {
                continue;
            }

            ILiteral first = NeverBefore(j, at.Length[j], i) ? yes : Either();
            Before(i, at.Length[i], j, first, one, other);
            if (!Always(first))
            {
                Before(j, at.Length[j], i, first.Not(), one, other);
            }

            model.AddBoolOr([first.Not(), one.Not(), other.Not(), .. Covered(i, j, m)]);
        }
    }

    /// <summary>Clean-downs that may lie between the two.</summary>
    private IEnumerable<ILiteral> Covered(int i, int j, int m)
    {
        foreach (var wash in washing.Where(w => w.Machine == m && steps[i]!.First + at.Length[i] < w.Possible[^1].To && w.Possible[0].From + w.Length <= steps[j]!.Last))
        {
            var here = Either();
            model.AddImplication(here, wash.On);
            model.Add(EndOf(i) <= wash.Start).OnlyEnforceIf(here);
            model.Add(wash.Start + wash.Length <= steps[j]!.Start).OnlyEnforceIf(here);
            yield return here;
        }

        foreach (var wash in washes.Where(w => w.Machine == m && steps[i]!.First + at.Length[i] <= w.From && w.To <= steps[j]!.Last))
        {
            var here = Either();
            model.Add(EndOf(i) <= wash.From).OnlyEnforceIf(here);
            model.Add(steps[j]!.Start >= wash.To).OnlyEnforceIf(here);
            yield return here;
        }
    }

    private ILiteral? OnMachine(int s, int m) => free[s] ? steps[s]!.Machine.GetValueOrDefault(m) : at.Rows[s]!.Machine == at.Week.Machines[m].Id ? yes : null;

    private void Air()
    {
        foreach (var air in at.Week.Air)
        {
            foreach (var j in Enumerable.Range(0, steps.Length).Where(j => IsMix(j) && at.Steps[j].Avoid.Contains(air.Allergen)))
            {
                foreach (var i in Harmful(j).Where(i => at.Steps[i].Has.Contains(air.Allergen) && (free[i] || free[j])))
                {
                    Settle(i, Longest(i, o => !at.Steps[o].Has.Contains(air.Allergen)) + (air.Settle / at.Grain), j, Longest(j, o => !at.Steps[o].Avoid.Contains(air.Allergen)));
                }
            }
        }
    }

    private void Settle(int i, int settled, int j, int mixed)
    {
        ILiteral first = NeverBefore(i, settled, j) ? yes.Not() : NeverBefore(j, mixed, i) ? yes : Either();
        if (!Never(first))
        {
            Before(i, settled, j, first, steps[i]!.On, steps[j]!.On);
        }

        if (!Always(first))
        {
            Before(j, mixed, i, first.Not(), steps[i]!.On, steps[j]!.On);
        }
    }

    /// <summary>The longest that a mix keeps the air: its own end, or that of another in its run which does not speak for itself.</summary>
    private int Longest(int s, Func<int, bool> silent) =>
        Enumerable.Range(0, steps.Length).Where(o => o == s || (week.Alike(s, o) && IsMix(o) && silent(o))).Max(o => at.Length[o]);
}
