using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>From a solution back to a plan.</content>
internal sealed partial class WeekModel
{
    /// <summary>The plan that the solver found.</summary>
    public Plan Read(CpSolver found)
    {
        var choices = at.Week.Choices.ToDictionary(c => c.Id, c => c.Options.First(o => found.BooleanValue(taken[(c.Id, o)])), StringComparer.Ordinal);
        var labels = Labels(found);
        var rows = Enumerable.Range(0, steps.Length).Select(s => RowOf(s, found, labels)).OfType<StepRow>().ToList();
        var holds = new List<HoldRow>();
        for (var h = 0; h < at.Holds.Length; h++)
        {
            if (stands.TryGetValue(h, out var here))
            {
                holds.AddRange(here.Where(k => found.BooleanValue(k.Value)).Select(k => new HoldRow(at.Holds[h].Id, at.Week.Stores[k.Key].Id)));
            }
            else if (at.Standing[h] >= 0 && (at.Holds[h].If is null || found.BooleanValue(On(at.Holds[h].If))))
            {
                holds.Add(new HoldRow(at.Holds[h].Id, at.Week.Stores[at.Standing[h]].Id));
            }
        }

        var cleans = washes.Select(w => w.Row).Concat(washing.Where(w => found.BooleanValue(w.On)).Select(w =>
            new CleanRow(at.Week.Machines[w.Machine].Id, (int)found.Value(w.Start) * at.Grain, [at.Week.People[w.Who.First(p => found.BooleanValue(p.Value)).Key].Id])));
        return new Plan(at.Plan.Week, choices, rows, holds, [.. cleans.OrderBy(c => c.Start).ThenBy(c => c.Machine, StringComparer.Ordinal)]);
    }

    /// <summary>By step: the label that the members of its run share; only where there are two or more.</summary>
    private Dictionary<int, string> Labels(CpSolver found)
    {
        var opener = runs.Where(s => found.BooleanValue(steps[s]!.On)).ToDictionary(s => s, s =>
            steps[s]!.Joins.Where(j => found.BooleanValue(j.Value)).Select(j => j.Key).DefaultIfEmpty(
                steps[s]!.Puts.Where(p => found.BooleanValue(p.Value)).Select(p => still[p.Key].Members[0]).DefaultIfEmpty(s).First()).First());
        foreach (var load in still)
        {
            foreach (var member in load.Members)
            {
                opener[member] = load.Members[0];
            }
        }

        return opener.GroupBy(o => o.Value).Where(g => g.Count() > 1).SelectMany(g => g).ToDictionary(o => o.Key, o => "with " + at.Steps[o.Value].Id);
    }

    private StepRow? RowOf(int s, CpSolver found, Dictionary<int, string> labels)
    {
        if (steps[s] is not { } step || !found.BooleanValue(step.On))
        {
            return null;
        }

        var label = labels.GetValueOrDefault(s);
        if (!step.Free)
        {
            return at.Rows[s]! with { Batch = label };
        }

        var people = step.Who.Where(w => found.BooleanValue(w.Value)).Select(w => at.Week.People[w.Key].Id).ToList();
        var machine = step.Machine.Where(m => found.BooleanValue(m.Value)).Select(m => at.Week.Machines[m.Key].Id).FirstOrDefault();
        return new StepRow(at.Steps[s].Id, (int)found.Value(step.Start) * at.Grain, people, machine, label);
    }
}
