using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Hands and tools.</content>
internal sealed partial class WeekModel
{
    private readonly List<(LinearExpr Minutes, long Most)> overtime = [];
    private List<LinearExpr>[] worked = [];

    private void Hands()
    {
        worked = [.. at.Week.People.Select(_ => new List<LinearExpr>())];
        var doing = at.Week.People.Select(_ => new List<IntervalVar>()).ToArray();
        for (var s = 0; s < steps.Length; s++)
        {
            if (steps[s] is { Free: true } step && at.Steps[s].Skill is { } skill)
            {
                Who(s, step, skill);
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
                Busy(wash.Start, wash.Length, who, p, doing[p]);
            }
        }

        foreach (var list in doing.Where(l => l.Count > 1))
        {
            model.AddNoOverlap(list);
        }
    }

    private void Who(int s, StepVar step, string skill)
    {
        for (var p = 0; p < at.Week.People.Count; p++)
        {
            if (at.Week.People[p].Skills.Contains(skill))
            {
                step.Who[p] = Hinted(Either(), at.Rows[s]?.People.Contains(at.Week.People[p].Id) == true);
                Within(step.Start, Hours(p, at.Length[s]), step.Who[p], step.Apart ?? yes);
            }
        }

        if (step.On.GetIndex() == yes.GetIndex())
        {
            model.Add(LinearExpr.Sum(step.Who.Values) == at.Steps[s].Count);
        }
        else
        {
            model.Add(LinearExpr.Sum(step.Who.Values) == at.Steps[s].Count).OnlyEnforceIf(step.On);
            model.Add(LinearExpr.Sum(step.Who.Values) == 0).OnlyEnforceIf(step.On.Not());
        }

        foreach (var (t, join) in step.Joins)
        {
            foreach (var (p, who) in step.Who)
            {
                model.AddBoolOr([join.Not(), who.Not(), steps[t]!.Who[p]]);
            }
        }

        foreach (var (f, put) in step.Puts)
        {
            var there = at.Rows[still[f].Members[0]]!.People.Select(p => at.PersonAt[p]).ToHashSet();
            foreach (var (p, who) in step.Who)
            {
                model.AddImplication(put, there.Contains(p) ? who : who.Not());
            }
        }
    }

    /// <summary>A run takes its people once, from its start to the end of its longest step.</summary>
    private void Do(int s, int p, BoolVar who, List<IntervalVar> doing)
    {
        var step = steps[s]!;
        if (step.Leading is null)
        {
            Busy(step.Start, at.Length[s], who, p, doing);
            return;
        }

        var opens = Both(who, step.Leading);
        foreach (var (length, takes) in step.Takes)
        {
            Busy(step.Start, length, Both(opens, takes), p, doing);
        }
    }

    private void Busy(LinearExpr start, int length, ILiteral when, int p, List<IntervalVar> doing)
    {
        doing.Add(model.NewOptionalFixedSizeIntervalVar(start, length, when, ""));
        var hours = Hours(p, length);
        Within(start, hours, when);
        worked[p].Add(LinearExpr.Term(when, length));
        Overtime(start, length, when, p, hours);
    }

    /// <summary>Starts at which somebody can work for so many grains.</summary>
    private List<Span> Hours(int p, int length)
    {
        List<Span> starts = [.. at.Stretches[p].Select(h => new Span(Math.Max(h.From, 0), h.To - length + 1)).Where(h => h.From < h.To)];
        return busy[p].Where(b => b.From < b.To).Aggregate(starts, (left, b) => Spans.Without(left, b.From - length + 1, b.To));
    }

    /// <summary>Minutes inside possible overtime: all of them, or as many as reach into it.</summary>
    private void Overtime(LinearExpr start, int length, ILiteral when, int p, List<Span> hours)
    {
        List<Span> touching = [.. at.Extra[p].Select(e => new Span(e.From - length + 1, e.To))];
        if (Spans.Shared(hours, Spans.Either(touching)).Count == 0)
        {
            return;
        }

        var cases = new List<ILiteral> { when.Not() };
        void Case(List<Span> region, Action<BoolVar> charge)
        {
            if (Spans.Shared(hours, region) is { Count: > 0 } starts)
            {
                var here = Either();
                Within(start, starts, here);
                charge(here);
                cases.Add(here);
            }
        }

        Case(touching.Aggregate(new List<Span> { new(0, at.Horizon) }, (left, t) => Spans.Without(left, t.From, t.To)), _ => { });
        Case([.. at.Extra[p].Where(e => e.Minutes >= length).Select(e => new Span(e.From, e.To - length + 1)), .. at.Extra[p].Where(e => e.Minutes < length).Select(e => new Span(e.From - length + 1, e.To))],
            here => overtime.Add((LinearExpr.Term(here, length), length)));
        foreach (var extra in at.Extra[p].Where(e => e.Minutes >= length && length > 1))
        {
            Case([new Span(extra.From - length + 1, extra.From)], here => Reaching(start + (length - extra.From), length, here));
            Case([new Span(extra.To - length + 1, extra.To)], here => Reaching(extra.To - start, length, here));
        }

        model.AddBoolOr(cases);
    }

    private void Reaching(LinearExpr minutes, int length, ILiteral when)
    {
        var part = model.NewIntVar(0, length, "");
        model.Add(part >= minutes).OnlyEnforceIf(when);
        overtime.Add((part, length));
    }

    private void Tools()
    {
        foreach (var tool in at.Week.Tools)
        {
            int[] uses = [.. Enumerable.Range(0, steps.Length).Where(s => steps[s] is not null && at.Steps[s].Tools.Contains(tool.Id))];
            if (!Array.Exists(uses, s => steps[s]!.Free))
            {
                continue;
            }

            foreach (var s in uses.Where(s => steps[s]!.Free))
            {
                var starts = tool.Down.Aggregate(new List<Span> { new(0, at.Horizon) }, (left, d) => Spans.Without(left, (d.From / at.Grain) - at.Length[s] + 1, (d.To + at.Grain - 1) / at.Grain));
                Within(steps[s]!.Start, starts, steps[s]!.On);
            }

            Together([.. uses.Where(s => !steps[s]!.Free).Select(s => (new Span(at.Start(s), at.End(s)), 1))], tool.Count,
                [.. uses.Where(s => steps[s]!.Free).Select(s => (model.NewOptionalFixedSizeIntervalVar(steps[s]!.Start, at.Length[s], steps[s]!.On, ""), 1))]);
        }
    }

    /// <summary>At no time more than there is; what stands still is summed first.</summary>
    private void Together(List<(Span Span, int Amount)> standing, int most, List<(IntervalVar Interval, int Amount)> moving)
    {
        if (moving.Count == 0 || standing.Sum(s => s.Amount) + moving.Sum(m => m.Amount) <= most)
        {
            return;
        }

        var sum = model.AddCumulative(most);
        foreach (var (interval, amount) in moving)
        {
            sum.AddDemand(interval, amount);
        }

        int[] edges = [.. standing.SelectMany(s => new[] { s.Span.From, s.Span.To }).Distinct().Order()];
        for (var i = 1; i < edges.Length; i++)
        {
            var level = standing.Where(s => s.Span.From <= edges[i - 1] && s.Span.To >= edges[i]).Sum(s => s.Amount);
            if (level > 0)
            {
                sum.AddDemand(model.NewFixedSizeIntervalVar(edges[i - 1], edges[i] - edges[i - 1], ""), Math.Min(level, most));
            }
        }
    }
}
