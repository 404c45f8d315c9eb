using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Wet clean-downs, and flour in the air.</content>
internal sealed partial class WeekModel
{
    private readonly List<(int Machine, int From, int To, CleanRow Row)> washes = [];
    private readonly List<Washing> washing = [];

    /// <summary>A clean-down that may be done before a step that is kept from something.</summary>
    private sealed record Washing(int For, int Machine, IntVar Start, int Length, BoolVar On, Dictionary<int, BoolVar> Who);

    private bool IsMix(int s) => steps[s] is not null && at.Steps[s].Mix is not null;

    private IEnumerable<int> Harmful(int j) => Enumerable.Range(0, steps.Length).Where(i => i != j && IsMix(i) && at.Steps[i].Has.Intersect(at.Steps[j].Avoid).Any());

    /// <summary>A clean-down of the plan stands still unless all that it is for may move.</summary>
    private void Cleans()
    {
        foreach (var row in at.Plan.Cleans)
        {
            var m = at.MachineAt[row.Machine];
            var (from, length) = (row.Start / at.Grain, at.Week.Machines[m].Clean!.Minutes / at.Grain);
            if (row.Start >= at.Week.FreeFrom && For(m, from) is { Length: > 0 } served && served.All(s => free[s]))
            {
                continue;
            }

            washes.Add((m, from, from + length, row));
            busy[at.PersonAt[row.People[0]]].Add(new Span(from, from + length));
        }

        for (var s = 0; s < steps.Length; s++)
        {
            if (steps[s] is { Free: true } && IsMix(s) && at.Steps[s].Avoid.Count > 0 && Harmful(s).Any())
            {
                foreach (var m in MachinesFor(s).Where(m => at.Week.Machines[m].Clean is not null))
                {
                    washing.Add(WashingFor(s, m));
                }
            }
        }
    }

    /// <summary>Steps kept from something between a clean-down and the next on that machine.</summary>
    private int[] For(int m, int from)
    {
        var next = at.Plan.Cleans.Where(c => at.MachineAt[c.Machine] == m && c.Start / at.Grain > from).Select(c => c.Start / at.Grain).DefaultIfEmpty(int.MaxValue).Min();
        return [.. at.Batches.Where(b => b.Machine == m && b.From >= from && b.From < next).SelectMany(b => b.Members).Where(s => at.Steps[s].Avoid.Count > 0)];
    }

    private Washing WashingFor(int s, int m)
    {
        var clean = at.Week.Machines[m].Clean!;
        var length = clean.Minutes / at.Grain;
        var released = Released(s, m);
        var who = Enumerable.Range(0, at.Week.People.Count).Where(p => at.Week.People[p].Skills.Contains(clean.Skill))
            .ToDictionary(p => p, p => Hinted(Either(), released?.People[0] == at.Week.People[p].Id));
        var wash = new Washing(s, m, model.NewIntVar(at.FreeFrom, at.Horizon - length, ""), length, Hinted(Either(), released is not null), who);
        model.AddHint(wash.Start, released is null ? at.FreeFrom : released.Start / at.Grain);
        model.AddExactlyOne([.. who.Values, wash.On.Not()]);
        return wash;
    }

    /// <summary>The clean-down of the plan that may move and is done before this step, the first of those that it is for.</summary>
    private CleanRow? Released(int s, int m) => at.Rows[s]?.Machine != at.Week.Machines[m].Id ? null
        : at.Plan.Cleans.FirstOrDefault(c => at.MachineAt[c.Machine] == m && washes.TrueForAll(w => w.Row != c) && For(m, c.Start / at.Grain).OrderBy(at.Start).FirstOrDefault(-1) == s);

    private IEnumerable<IntervalVar> WashingOn(int m) => washing.Where(w => w.Machine == m).Select(w => model.NewOptionalFixedSizeIntervalVar(w.Start, w.Length, w.On, ""));

    private void Wash()
    {
        foreach (var wash in washing)
        {
            model.AddImplication(wash.On, steps[wash.For]!.Machine[wash.Machine]);
            model.Add(wash.Start + wash.Length <= steps[wash.For]!.Start).OnlyEnforceIf(wash.On);
            Within(wash.Start, Openings(wash.Machine, null, wash.Length), wash.On);
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
            if (OnMachine(i, m) is not { } one || OnMachine(j, m) is not { } other)
            {
                continue;
            }

            var first = Either();
            model.Add(EndOf(i) <= steps[j]!.Start).OnlyEnforceIf([first, one, other]);
            model.Add(EndOf(j) <= steps[i]!.Start).OnlyEnforceIf([first.Not(), one, other]);
            var covered = new List<ILiteral> { first.Not(), one.Not(), other.Not() };
            foreach (var wash in washing.Where(w => w.Machine == m))
            {
                var here = Either();
                model.AddImplication(here, wash.On);
                model.Add(EndOf(i) <= wash.Start).OnlyEnforceIf(here);
                model.Add(wash.Start + wash.Length <= steps[j]!.Start).OnlyEnforceIf(here);
                covered.Add(here);
            }

            foreach (var wash in washes.Where(w => w.Machine == m))
            {
                var here = Either();
                model.Add(EndOf(i) <= wash.From).OnlyEnforceIf(here);
                model.Add(steps[j]!.Start >= wash.To).OnlyEnforceIf(here);
                covered.Add(here);
            }

            model.AddBoolOr(covered);
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
                    var first = Either();
                    model.Add(steps[i]!.Start + (Longest(i) + (air.Settle / at.Grain)) <= steps[j]!.Start).OnlyEnforceIf([first, steps[i]!.On, steps[j]!.On]);
                    model.Add(steps[j]!.Start + Longest(j) <= steps[i]!.Start).OnlyEnforceIf([first.Not(), steps[i]!.On, steps[j]!.On]);
                }
            }
        }
    }

    /// <summary>The longest run in which a mix can be.</summary>
    private int Longest(int s) => Enumerable.Range(0, steps.Length).Where(o => o == s || (IsMix(o) && Alike(s, o))).Max(o => at.Length[o]);
}
