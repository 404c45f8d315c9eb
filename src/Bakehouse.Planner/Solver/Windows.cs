using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Solver;

/// <summary>Which steps may move at once: some orders, a stretch of time, or what one pair of hands does.</summary>
internal sealed class Windows(Ground at, Dice dice)
{
    private const int TwoDays = 2880;

    private readonly int[] movable = [.. Enumerable.Range(0, at.Steps.Length).Where(s => !at.Numbers.Given.Contains(s) && at.Rows[s] is not null)];

    /// <summary>Steps that may move at all.</summary>
    public int Movable => movable.Length;

    /// <summary>All that may move.</summary>
    public bool[] Whole() => Marked(Enumerable.Range(0, at.Steps.Length).Where(s => !at.Numbers.Given.Contains(s)));

    /// <summary>About so many steps, where something is to be gained.</summary>
    public bool[] Pick(int size)
    {
        var needy = Needy();
        var own = movable.Where(s => at.Steps[s].Order == needy.Id).ToArray();
        var anchor = own.Length == 0 ? movable[dice.Below(movable.Length)] : own[dice.Below(own.Length)];
        return dice.Below(5) switch
        {
            0 => Marked(ByOrders(anchor, size)),
            1 or 2 => Marked(own.Concat(Near((needy.To / at.Grain) - dice.Below(TwoDays / at.Grain)).Where(s => !own.Contains(s)).Take(Math.Max(0, size - own.Length)))),
            3 => Marked(Near(at.Start(anchor)).Take(size)),
            _ => Marked(WithHands(anchor, size)),
        };
    }

    private IEnumerable<int> Near(int time) => movable.OrderBy(s => Math.Abs(at.Start(s) - time)).ThenBy(s => s);

    private bool[] Marked(IEnumerable<int> chosen)
    {
        var free = new bool[at.Steps.Length];
        foreach (var s in chosen)
        {
            free[s] = true;
        }

        // What a choice decides moves with it, or the choice stays.
        foreach (var step in Enumerable.Range(0, free.Length).Where(s => at.Rows[s] is null && at.Steps[s].If is { } asked && !at.Numbers.Given.Contains(s) && Decided(asked.Choice).Where(d => at.Rows[d] is not null).All(d => free[d])))
        {
            free[step] = true;
        }

        return free;
    }

    private IEnumerable<int> Decided(string choice) => Enumerable.Range(0, at.Steps.Length).Where(s => at.Steps[s].If?.Choice == choice);

    /// <summary>An order that is late, or one of any.</summary>
    private WeekOrder Needy()
    {
        var late = at.Week.Orders.Where(o => at.Rows[at.Numbers.StepAt[o.Out]] is not null && (at.Start(at.Numbers.StepAt[o.Out]) * at.Grain) + (o.EdgeIsEnd ? at.Steps[at.Numbers.StepAt[o.Out]].Minutes : 0) > o.To).ToList();
        var pool = late.Count > 0 && dice.Below(4) > 0 ? late : at.Week.Orders;
        return pool[dice.Below(pool.Count)];
    }

    private IEnumerable<int> ByOrders(int anchor, int size)
    {
        var names = movable.Select(s => at.Steps[s].Order).Distinct(StringComparer.Ordinal).ToList();
        var order = names.OrderBy(n => n == at.Steps[anchor].Order ? 0 : 1 + dice.Below(1000)).ToList();
        var taken = 0;
        foreach (var name in order)
        {
            var own = movable.Where(s => at.Steps[s].Order == name).ToList();
            if (taken > 0 && taken + own.Count > size * 5 / 4)
            {
                continue;
            }

            taken += own.Count;
            foreach (var s in own)
            {
                yield return s;
            }
        }
    }

    /// <summary>What the same people do around a time, each with what comes before and after it.</summary>
    private List<int> WithHands(int anchor, int size)
    {
        var people = at.Rows[anchor]!.People.ToHashSet(StringComparer.Ordinal);
        var chosen = new List<int>();
        foreach (var s in movable.Where(s => people.Count == 0 || at.Rows[s]!.People.Any(people.Contains)).OrderBy(s => Math.Abs(at.Start(s) - at.Start(anchor))).ThenBy(s => s))
        {
            if (chosen.Count >= size)
            {
                break;
            }

            chosen.Add(s);
            chosen.AddRange(at.Holds.Where(h => at.Numbers.StepAt[h.From] == s || at.Numbers.StepAt[h.To] == s).Select(h => at.Numbers.StepAt[h.From] == s ? at.Numbers.StepAt[h.To] : at.Numbers.StepAt[h.From])
                .Where(o => at.Rows[o] is not null && !at.Numbers.Given.Contains(o) && at.Steps[o].Skill is null));
        }

        return chosen;
    }
}
