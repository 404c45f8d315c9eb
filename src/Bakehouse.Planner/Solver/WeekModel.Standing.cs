using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Where things stand, food clocks, ages and promises.</content>
internal sealed partial class WeekModel
{
    private readonly Dictionary<int, Dictionary<int, BoolVar>> stands = [];
    private readonly Dictionary<int, IntVar> lengths = [];

    private void Stand()
    {
        var standing = at.Week.Stores.Select(s => s.Down.Select(d => (new Span(d.From / at.Grain, d.To / at.Grain), s.Places)).ToList()).ToArray();
        var moving = at.Week.Stores.Select(_ => new List<(IntervalVar, int)>()).ToArray();
        for (var h = 0; h < at.Holds.Length; h++)
        {
            var hold = at.Holds[h];
            var (from, to) = (at.StepAt[hold.From], at.StepAt[hold.To]);
            if (steps[from] is not { } before || steps[to] is not { } after || Never(On(hold.If)))
            {
                continue;
            }

            if (before.Free || after.Free)
            {
                StandFree(h, from, to, moving);
            }
            else if (at.Standing[h] >= 0 && at.Start(to) > at.End(from))
            {
                standing[at.Standing[h]].Add((new Span(at.End(from), at.Start(to)), hold.Places));
            }
        }

        for (var k = 0; k < standing.Length; k++)
        {
            Together(standing[k], at.Week.Stores[k].Places, moving[k]);
        }
    }

    private void StandFree(int h, int from, int to, List<(IntervalVar, int)>[] moving)
    {
        var hold = at.Holds[h];
        var on = On(hold.If);
        var length = model.NewIntVar(0, at.Horizon, "");
        model.Add(LinearExpr.Sum([EndOf(from), length]) == steps[to]!.Start).OnlyEnforceIf(on);
        lengths[h] = length;
        var here = stands[h] = [];
        foreach (var standing in hold.In)
        {
            var k = at.StoreAt[standing.Store];
            if (here.ContainsKey(k) || (at.GivenHolds.Contains(hold.Id) && at.Standing[h] != k))
            {
                continue;
            }

            here[k] = Hinted(Either(), at.Standing[h] == k);
            model.Add(length >= (standing.Least + at.Grain - 1) / at.Grain).OnlyEnforceIf(here[k]);
            model.Add(length <= (at.Week.Stores[k].Clear < hold.Height ? 0 : Math.Min(standing.Most, at.Week.Horizon) / at.Grain)).OnlyEnforceIf(here[k]);
            if (hold.Places > 0)
            {
                moving[k].Add((model.NewOptionalIntervalVar(EndOf(from), length, steps[to]!.Start, here[k], ""), hold.Places));
            }
        }

        model.AddExactlyOne([.. here.Values, on.Not()]);
    }

    private void Food()
    {
        foreach (var clock in at.Week.Clocks)
        {
            Clock(clock);
        }

        foreach (var age in at.Week.Ages.Where(a => a.Hard))
        {
            var (from, to) = (at.StepAt[age.From], at.StepAt[age.To]);
            if (Moves(from, to))
            {
                model.Add(steps[to]!.Start - steps[from]!.Start <= at.Length[from] + Math.Max(age.Most / at.Grain, NowBetween(from, to))).OnlyEnforceIf([steps[from]!.On, steps[to]!.On]);
            }
        }

        foreach (var order in at.Week.Orders)
        {
            var s = at.StepAt[order.Out];
            if (steps[s] is { Free: true } step)
            {
                model.Add(step.Start >= ((order.From + at.Grain - 1) / at.Grain) - (order.EdgeIsEnd ? at.Length[s] : 0)).OnlyEnforceIf(step.On);
            }
        }
    }

    private bool Moves(int from, int to) => steps[from] is { } a && steps[to] is { } b && (a.Free || b.Free);

    /// <summary>Grains from the end of one to the start of the other in the plan.</summary>
    private int NowBetween(int from, int to) => at.Rows[from] is null || at.Rows[to] is null ? int.MinValue : at.Start(to) - at.End(from);

    private void Clock(FoodClock clock)
    {
        int[] holds = [.. clock.Holds.Select(id => Array.FindIndex(at.Holds, h => h.Id == id))];
        int[] open = [.. holds.Where(lengths.ContainsKey)];
        if (open.Length == 0)
        {
            return;
        }

        var terms = new List<LinearExpr>();
        foreach (var s in clock.Steps.Select(id => at.StepAt[id]).Where(s => steps[s] is not null))
        {
            terms.Add(LinearExpr.Term(steps[s]!.On, at.Length[s]));
        }

        foreach (var h in open)
        {
            var warm = model.NewIntVar(0, at.Horizon, "");
            foreach (var (_, here) in stands[h].Where(k => !at.Week.Stores[k.Key].Cold))
            {
                model.Add(warm >= lengths[h]).OnlyEnforceIf(here);
            }

            terms.Add(warm);
        }

        var rest = holds.Except(open).Where(h => at.Standing[h] >= 0).Sum(Warm);
        var planned = rest + open.Sum(Warm) + clock.Steps.Where(id => at.Rows[at.StepAt[id]] is not null).Sum(id => at.Length[at.StepAt[id]]);
        model.Add(LinearExpr.Sum(terms) <= Math.Max(clock.Limit / at.Grain, planned) - rest);
    }

    /// <summary>Grains out of the cold in the plan.</summary>
    private int Warm(int h) => at.Standing[h] < 0 || at.Week.Stores[at.Standing[h]].Cold ? 0 : Math.Max(0, NowBetween(at.StepAt[at.Holds[h].From], at.StepAt[at.Holds[h].To]));
}
