using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Minutes inside possible overtime: none, all of them, or as many as reach into it.</content>
internal sealed partial class WeekModel
{
    private readonly List<LinearExpr> overtime = [];

    /// <param name="possible">Starts within hours.</param>
    private void Overtime(LinearExpr start, List<Span> possible, int length, ILiteral when, int p)
    {
        var cases = Cases(start, possible, length, p).Select(c => (Starts: Spans.Shared(possible, c.Region), c.Charge)).Where(c => c.Starts.Count > 0).ToList();
        if (cases.TrueForAll(c => c.Charge is null))
        {
            return;
        }

        if (cases.Count == 1)
        {
            cases[0].Charge!(when);
            return;
        }

        // The first is the cheapest: it holds unless another is taken.
        var taking = cases.Skip(1).Select(_ => (ILiteral)Either()).ToList();
        Within(start, possible, cases[0].Starts, [when, .. taking.Select(t => t.Not())]);
        if (cases[0].Charge is { } first)
        {
            first(Unless(when, taking));
        }

        foreach (var ((starts, charge), here) in cases.Skip(1).Zip(taking))
        {
            Within(start, possible, starts, here);
            charge!(here);
        }
    }

    /// <summary>Regions of starts, each with what it costs; null if nothing.</summary>
    private IEnumerable<(List<Span> Region, Action<ILiteral>? Charge)> Cases(LinearExpr start, List<Span> possible, int length, int p)
    {
        var extra = week.Extra[p];
        List<Span> touching = Spans.Either(extra.Select(e => new Span(e.From - length + 1, e.To)));
        yield return (touching.Aggregate(possible, (left, t) => Spans.Without(left, t.From, t.To)), null);
        yield return (Spans.Either(extra.Select(e => e.Minutes >= length ? new Span(e.From, e.To - length + 1) : new Span(e.From - length + 1, e.To))),
            here => overtime.Add(LinearExpr.Term(here, length)));
        foreach (var e in extra.Where(e => e.Minutes >= length && length > 1))
        {
            yield return ([new Span(e.From - length + 1, e.From)], here => Reaching(start + (length - e.From), length, here));
            yield return ([new Span(e.To - length + 1, e.To)], here => Reaching(e.To - start, length, here));
        }
    }

    /// <summary>True where the first holds and none of the others.</summary>
    private BoolVar Unless(ILiteral when, List<ILiteral> others)
    {
        var alone = Either();
        model.AddBoolOr([alone, when.Not(), .. others]);
        return alone;
    }

    private void Reaching(LinearExpr minutes, int length, ILiteral when)
    {
        var part = model.NewIntVar(0, length, "");
        Only(model.Add(part >= minutes), when);
        overtime.Add(part);
    }
}
