using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Food clocks and hard ages.</content>
internal sealed partial class WeekModel
{
    private void Food()
    {
        foreach (var clock in at.Week.Clocks)
        {
            Clock(clock);
        }

        foreach (var age in at.Week.Ages.Where(a => a.Hard))
        {
            var (from, to) = (week.StepAt[age.From], week.StepAt[age.To]);
            var most = at.Length[from] + Oldest(age, from, to);
            if (Moves(from, to) && steps[to]!.Last - steps[from]!.First > most)
            {
                Only(model.Add(steps[to]!.Start - steps[from]!.Start <= most), steps[from]!.On, steps[to]!.On);
            }
        }
    }

    private bool Moves(int from, int to) => steps[from] is { } a && steps[to] is { } b && (a.Free || b.Free);

    private void Clock(FoodClock clock)
    {
        int[] holds = [.. clock.Holds.Select(id => Array.FindIndex(at.Holds, h => h.Id == id))];
        int[] open = [.. holds.Where(lengths.ContainsKey)];
        int[] present = [.. clock.Steps.Select(id => week.StepAt[id]).Where(s => steps[s] is not null)];
        var rest = holds.Except(open).Where(h => at.Standing[h] >= 0).Sum(Warm);
        var planned = rest + open.Sum(Warm) + clock.Steps.Where(id => at.Rows[week.StepAt[id]] is not null).Sum(id => at.Length[week.StepAt[id]]);
        var most = Math.Max(clock.Limit / at.Grain, planned) - rest;
        if (open.Length == 0 || present.Sum(s => at.Length[s]) + open.Sum(Warmest) <= most)
        {
            return;
        }

        var terms = present.Select(s => LinearExpr.Term(steps[s]!.On, at.Length[s])).ToList();
        foreach (var h in open.Where(h => Warmest(h) > 0))
        {
            var warm = model.NewIntVar(0, Warmest(h), "");
            foreach (var (_, here) in stands[h].Where(k => !at.Week.Stores[k.Key].Cold))
            {
                Only(model.Add(warm >= lengths[h]), here);
            }

            terms.Add(warm);
        }

        model.Add(LinearExpr.Sum(terms) <= most);
    }

    /// <summary>Most grains that a hold may be out of the cold.</summary>
    private int Warmest(int h) => Places(h).Where(p => stands[h].ContainsKey(p.Store) && !at.Week.Stores[p.Store].Cold).Select(p => p.Most).DefaultIfEmpty(0).Max();

    /// <summary>Grains out of the cold in the plan.</summary>
    private int Warm(int h) => at.Standing[h] < 0 || at.Week.Stores[at.Standing[h]].Cold ? 0 : Math.Max(0, at.Between(week.Ends[h].From, week.Ends[h].To));
}
