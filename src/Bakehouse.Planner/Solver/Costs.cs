using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>Which steps of a plan cost something at a level; the levels are numbered from 0 as in the model.</summary>
internal static class Costs
{
    /// <summary>Steps, some of them twice.</summary>
    public static IEnumerable<int> Of(Ground at, int level) => level switch
    {
        0 => at.Week.Orders.Where(o => o.Rank == 1 && at.Late(o) > 0).SelectMany(o => Enumerable.Range(0, at.Steps.Length).Where(s => at.Steps[s].Order == o.Id)),
        1 => at.Week.Ages.Where(a => !a.Hard && Gap(at, a.From, a.To) > a.Most).SelectMany(a => new[] { at.Numbers.StepAt[a.From], at.Numbers.StepAt[a.To] }),
        2 => Enumerable.Range(0, at.Steps.Length).Where(s => at.Rows[s] is { } row && row.People.Any(p => at.Numbers.Extra[at.Numbers.PersonAt[p]].Any(e => e.Meets(new Span(at.Start(s), at.End(s)))))),
        3 => at.Week.Orders.SelectMany(o => NotFresh(at, o)),
        4 => (at.Week.Reference?.Steps ?? []).Where(r => at.Numbers.StepAt.TryGetValue(r.Step, out var s) && at.Rows[s] is { } row && Changed(r, row)).Select(r => at.Numbers.StepAt[r.Step]),
        _ => [],
    };

    private static IEnumerable<int> NotFresh(Ground at, WeekOrder order)
    {
        if (order.Rank > 1 && at.Late(order) > 0)
        {
            yield return at.Numbers.StepAt[order.Out];
        }

        if (Gap(at, order.Ready, order.Out) < order.Buffer)
        {
            yield return at.Numbers.StepAt[order.Ready];
        }

        foreach (var fresh in order.Fresh.Where(f => Gap(at, f.Step, order.Out) > f.Most))
        {
            yield return at.Numbers.StepAt[fresh.Step];
        }
    }

    private static bool Changed(StepRow then, StepRow row) => then.Start != row.Start || then.Machine != row.Machine || !then.People.ToHashSet(StringComparer.Ordinal).SetEquals(row.People);

    /// <summary>Minutes from the end of one to the start of the other.</summary>
    private static long Gap(Ground at, string from, string to) => (long)at.Between(at.Numbers.StepAt[from], at.Numbers.StepAt[to]) * at.Grain;
}
