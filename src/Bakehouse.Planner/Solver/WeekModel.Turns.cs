using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Runs of one machine, one after the other, with the turn time between them.</content>
internal sealed partial class WeekModel
{
    private readonly Dictionary<(int Machine, string? Kind, int Length), List<Span>> openings = [];

    private void Sequence(int m)
    {
        var machine = at.Week.Machines[m];
        int[] here = [.. runs.Where(s => steps[s]!.Leads.ContainsKey(m))];
        var least = Math.Min(machine.TurnSame, machine.TurnOther) / at.Grain;
        List<IntervalVar> Intervals(int turn) => [.. here.SelectMany(s => steps[s]!.Takes.Select(l => Interval(steps[s]!.Start, l.Key + turn, Both(steps[s]!.Leads[m], l.Value))))];
        var cleaned = WashingOn(m).ToList();
        AddNoOverlap(Intervals(least));
        if (cleaned.Count > 0)
        {
            // Next to a clean-down no turn time is kept.
            AddNoOverlap([.. least > 0 ? Intervals(0) : [], .. cleaned]);
        }

        foreach (var s in here)
        {
            foreach (var (length, takes) in steps[s]!.Takes)
            {
                Within(steps[s]!.Start, steps[s]!.Possible, Openings(m, week.Kind(s), length), steps[s]!.Leads[m], takes);
            }

            foreach (var t in here.Where(t => t < s))
            {
                var turn = (week.Kind(s) == week.Kind(t) ? machine.TurnSame : machine.TurnOther) / at.Grain;
                if (turn > least)
                {
                    Turn(s, t, m, turn);
                }
            }
        }
    }

    private void AddNoOverlap(List<IntervalVar> intervals)
    {
        if (intervals.Count > 1)
        {
            model.AddNoOverlap(intervals);
        }
    }

    private IntervalVar Interval(LinearExpr start, int length, ILiteral on) =>
        Always(on) ? model.NewFixedSizeIntervalVar(start, length, "") : model.NewOptionalFixedSizeIntervalVar(start, length, on, "");

    private void Turn(int s, int t, int m, int turn)
    {
        ILiteral first = NeverBefore(s, at.Length[s] + turn, t) ? yes.Not() : NeverBefore(t, at.Length[t] + turn, s) ? yes : Either();
        foreach (var (one, other, order) in new[] { (s, t, first), (t, s, first.Not()) })
        {
            foreach (var (length, takes) in Never(order) ? [] : steps[one]!.Takes)
            {
                Before(one, length + turn, other, order, takes, steps[one]!.Leads[m], steps[other]!.Leads[m]);
            }
        }
    }

    /// <summary>Starts of a run of so many grains that what stands still on the machine leaves; of a clean-down if there is no kind.</summary>
    private List<Span> Openings(int m, string? kind, int length)
    {
        if (openings.TryGetValue((m, kind, length), out var known))
        {
            return known;
        }

        var machine = at.Week.Machines[m];
        var starts = new List<Span> { new(0, at.Horizon - length + 1) };
        foreach (var down in machine.Down.Where(_ => kind is not null))
        {
            starts = Spans.Without(starts, (down.From / at.Grain) - length + 1, (down.To + at.Grain - 1) / at.Grain);
        }

        foreach (var load in still.Where(l => l.Machine == m))
        {
            var turn = kind is null ? 0 : (week.Kind(load.Members[0]) == kind ? machine.TurnSame : machine.TurnOther) / at.Grain;
            starts = Spans.Without(starts, load.From - turn - length + 1, load.To + turn);
        }

        foreach (var clean in washes.Where(w => w.Machine == m))
        {
            starts = Spans.Without(starts, clean.From - length + 1, clean.To);
        }

        return openings[(m, kind, length)] = starts;
    }
}
