using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Tools, and what is shared by amounts.</content>
internal sealed partial class WeekModel
{
    private void Tools()
    {
        foreach (var tool in at.Week.Tools)
        {
            int[] uses = [.. Enumerable.Range(0, steps.Length).Where(s => steps[s] is not null && at.Steps[s].Tools.Contains(tool.Id))];
            if (!Array.Exists(uses, s => steps[s]!.Free) || OneByOne(uses))
            {
                continue;
            }

            Together([.. uses.Where(s => !steps[s]!.Free).Select(s => (new Span(at.Start(s), at.End(s)), 1))], tool.Count,
                [.. uses.Where(s => steps[s]!.Free).Select(s => new Taking(new Span(steps[s]!.First, steps[s]!.Last + at.Length[s]), 1, () => Interval(steps[s]!.Start, at.Length[s], steps[s]!.On)))]);
        }
    }

    /// <summary>True if the same hands are in all, so that no two are at once anyway.</summary>
    private bool OneByOne(int[] uses)
    {
        var sole = uses.Select(Sole).Distinct().ToList();
        return sole is [>= 0];
    }

    /// <summary>Who does a step whatever the plan, alone in a run; -1 if that is open.</summary>
    private int Sole(int s)
    {
        if (week.IsRun(s))
        {
            return -1;
        }

        return steps[s] is { Free: true } step ? step.Who is { Count: 1 } who ? who.Keys.First() : -1
            : at.Rows[s]!.People is [var one] ? week.PersonAt[one] : -1;
    }

    /// <summary>What may take some of an amount: when at most, how much, and its interval.</summary>
    private sealed record Taking(Span Widest, int Amount, Func<IntervalVar> Interval);

    /// <summary>At no time more than there is; what stands still is summed first, and where all can be at once nothing is said.</summary>
    private void Together(List<(Span Span, int Amount)> standing, int most, List<Taking> moving)
    {
        if (Peak([.. standing, .. moving.Select(m => (m.Widest, m.Amount))]) <= most || moving.Count == 0)
        {
            return;
        }

        var sum = model.AddCumulative(most);
        foreach (var taking in moving)
        {
            sum.AddDemand(taking.Interval(), taking.Amount);
        }

        int[] edges = [.. standing.SelectMany(s => new[] { s.Span.From, s.Span.To }).Distinct().Order()];
        for (var i = 1; i < edges.Length; i++)
        {
            var level = standing.Where(s => s.Span.From <= edges[i - 1] && s.Span.To >= edges[i]).Sum(s => s.Amount);
            if (level > 0 && moving.Exists(m => m.Widest.Meets(new Span(edges[i - 1], edges[i]))))
            {
                sum.AddDemand(model.NewFixedSizeIntervalVar(edges[i - 1], edges[i] - edges[i - 1], ""), Math.Min(level, most));
            }
        }
    }

    private static int Peak(List<(Span Span, int Amount)> all)
    {
        var (peak, now) = (0, 0);
        foreach (var (_, change) in all.Where(a => a.Span.From < a.Span.To).SelectMany(a => new[] { (Time: a.Span.From, a.Amount), (Time: a.Span.To, Amount: -a.Amount) }).Order())
        {
            now += change;
            peak = Math.Max(peak, now);
        }

        return peak;
    }
}
