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

    /// <summary>About so many steps, where something is to be gained at a level.</summary>
    public bool[] Pick(int size, int level)
    {
        var anchor = Anchor(level);
        var order = at.Week.Orders.FirstOrDefault(o => o.Id == at.Steps[anchor].Order);
        int[] own = [.. movable.Where(s => at.Steps[s].Order == at.Steps[anchor].Order)];
        var due = order is null ? at.Start(anchor) : order.To / at.Grain;
        bool[] Around(IEnumerable<int> others) => Marked(own.Concat(others.Where(s => !own.Contains(s)).Take(Math.Max(0, size - own.Length))));

        // Who is late gets on time only if the whole order moves.
        return (dice.Below(5), level) switch
        {
            (0, _) => Marked(ByOrders(anchor, size)),
            (1 or 2, _) => Around(Near(due - dice.Below(TwoDays / at.Grain))),
            (3, 0) => Around(Near(at.Start(anchor))),
            (3, _) => Marked(Near(at.Start(anchor)).Take(size)),
            (_, 0) => Around(WithHands(anchor, size)),
            _ => Marked(WithHands(anchor, size)),
        };
    }

    /// <summary>A step that costs something at a level; now and then any, but for promises.</summary>
    private int Anchor(int level)
    {
        int[] costly = [.. Costs.Of(at, level).Where(s => at.Rows[s] is not null && !at.Numbers.Given.Contains(s))];
        var pool = costly.Length > 0 && (level == 0 || dice.Below(4) > 0) ? costly : movable;
        return pool[dice.Below(pool.Length)];
    }

    private IEnumerable<int> Near(int time) => movable.OrderBy(s => Math.Abs(at.Start(s) - time)).ThenBy(s => s);

    private bool[] Marked(IEnumerable<int> chosen)
    {
        var free = new bool[at.Steps.Length];
        foreach (var s in chosen)
        {
            free[s] = true;
        }

        // The longest of a run leaves it with the others, or it could not come back.
        foreach (var load in at.Batches.Where(b => b.Members.Any(m => free[m] && at.End(m) == b.To)))
        {
            foreach (var member in load.Members.Where(m => !at.Numbers.Given.Contains(m)))
            {
                free[member] = true;
            }
        }

        // What a choice decides moves with it, or the choice stays.
        foreach (var step in Enumerable.Range(0, free.Length).Where(s => at.Rows[s] is null && at.Steps[s].If is { } asked && !at.Numbers.Given.Contains(s) && Decided(asked.Choice).Where(d => at.Rows[d] is not null).All(d => free[d])))
        {
            free[step] = true;
        }

        return free;
    }

    private IEnumerable<int> Decided(string choice) => Enumerable.Range(0, at.Steps.Length).Where(s => at.Steps[s].If?.Choice == choice);

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
