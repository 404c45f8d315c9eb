using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Hands.</content>
internal sealed partial class WeekModel
{
    private readonly Dictionary<(int Person, int Length), List<Span>> hours = [];
    private List<LinearExpr>[] worked = [];

    private void Hands()
    {
        worked = [.. at.Week.People.Select(_ => new List<LinearExpr>())];
        var doing = at.Week.People.Select(_ => new List<IntervalVar>()).ToArray();
        for (var s = 0; s < steps.Length; s++)
        {
            if (steps[s] is { Free: true } step && at.Steps[s].Skill is not null)
            {
                Who(s, step);
            }
        }

        for (var s = 0; s < steps.Length; s++)
        {
            foreach (var (p, who) in steps[s] is { Free: true } step ? step.Who : [])
            {
                Do(s, p, who, doing[p]);
            }
        }

        foreach (var wash in washing)
        {
            foreach (var (p, who) in wash.Who)
            {
                Busy(wash.Start, wash.Possible, wash.Length, who, p, doing[p]);
            }
        }

        foreach (var list in doing)
        {
            AddNoOverlap(list);
        }
    }

    private void Who(int s, StepVar step)
    {
        int[] able = [.. week.Skilled[s].Where(p => step.Puts.Count > 0 || Spans.Meet(step.Possible, Hours(p, at.Length[s])))];
        var count = at.Steps[s].Count;
        foreach (var p in able)
        {
            step.Who[p] = able.Length == count ? step.On : Hinted(Either(), at.Rows[s]?.People.Contains(at.Week.People[p].Id) == true);
            Within(step.Start, step.Possible, Hours(p, at.Length[s]), step.Who[p], step.Apart ?? yes);
        }

        if (able.Length < count)
        {
            model.AddBoolOr([step.On.Not()]);
        }
        else if (able.Length > count)
        {
            model.Add(LinearExpr.Sum(step.Who.Values) == LinearExpr.Term(step.On, count));
        }

        foreach (var (t, join) in step.Joins)
        {
            SameHands(step, steps[t]!, join);
        }

        foreach (var (f, put) in step.Puts)
        {
            var there = at.Rows[still[f].Members[0]]!.People.Select(p => week.PersonAt[p]).ToHashSet();
            foreach (var (p, who) in step.Who)
            {
                model.AddImplication(put, there.Contains(p) ? who : who.Not());
            }
        }
    }

    private void SameHands(StepVar step, StepVar other, BoolVar join)
    {
        foreach (var (p, who) in step.Who)
        {
            if (!other.Who.TryGetValue(p, out var there))
            {
                model.AddBoolOr([join.Not(), who.Not()]);
            }
            else if (!Always(there))
            {
                model.AddBoolOr([join.Not(), who.Not(), there]);
            }
        }
    }

    /// <summary>A run takes its people once, from its start to the end of its longest step.</summary>
    private void Do(int s, int p, ILiteral who, List<IntervalVar> doing)
    {
        var step = steps[s]!;
        if (step.Leading is null)
        {
            Busy(step.Start, step.Possible, at.Length[s], who, p, doing);
            return;
        }

        var opens = Both(who, step.Leading);
        foreach (var (length, takes) in step.Takes)
        {
            Busy(step.Start, step.Possible, length, Both(opens, takes), p, doing);
        }
    }

    private void Busy(LinearExpr start, IReadOnlyList<Span> possible, int length, ILiteral when, int p, List<IntervalVar> doing)
    {
        doing.Add(Interval(start, length, when));
        Within(start, possible, Hours(p, length), when);
        worked[p].Add(LinearExpr.Term(when, length));
        if (wanted[2])
        {
            Overtime(start, Spans.Shared(possible, Hours(p, length)), length, when, p);
        }
    }

    /// <summary>Starts at which somebody can work for so many grains.</summary>
    private List<Span> Hours(int p, int length)
    {
        if (!hours.TryGetValue((p, length), out var starts))
        {
            starts = [.. week.Stretches[p].Select(h => new Span(Math.Max(h.From, 0), h.To - length + 1)).Where(h => h.From < h.To)];
            starts = busy[p].Where(b => b.From < b.To).Aggregate(starts, (left, b) => Spans.Without(left, b.From - length + 1, b.To));
            hours[(p, length)] = starts;
        }

        return starts;
    }
}
