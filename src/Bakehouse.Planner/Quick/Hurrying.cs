namespace Bakehouse.Planner.Quick;

/// <summary>
/// What came in by a slip, and what should have begun already, is done as soon as it can be while everything else stands: a sponge is
/// baked again at once, a cake forgotten in the freezer comes out now. The search places late first; here it is turned round.
/// </summary>
internal sealed class Hurrying
{
    private const int MostLooks = 20_000;
    private readonly Shop shop;
    private readonly Board board;
    private readonly Build?[] builds;
    private readonly Standing standing;
    private readonly Keeping keeping;
    private readonly Loosening loosening;
    private readonly Dictionary<int, int> latest = [];
    private int looks;

    public Hurrying(Shop shop, Draft draft)
    {
        this.shop = shop;
        (board, builds) = draft;
        standing = new Standing(shop, board);
        keeping = new Keeping(shop, board, standing);
        loosening = new Loosening(shop, board, standing);
    }

    /// <summary>Goes through what hangs together by waits; steps that can't all begin earlier keep their places.</summary>
    public void Hurry()
    {
        var kept = new Board(shop);
        foreach (var build in builds.OfType<Build>())
        {
            foreach (var acts in Together(build))
            {
                kept.CopyFrom(board);
                looks = MostLooks;
                Array.ForEach(acts, TakeOff);
                if (!Place(build, acts))
                {
                    board.CopyFrom(kept);
                }
            }
        }
    }

    private List<Act[]> Together(Build build)
    {
        List<Act> left = [.. build.Acts.Where(Waits).OrderBy(a => board.Rows[a.Index].Start).ThenBy(a => Array.IndexOf(build.Acts, a) * -1)];
        var groups = new List<Act[]>();
        while (left.Count > 0)
        {
            var near = new HashSet<int> { left[0].Index };
            while (build.Links.Any(l => left.Exists(a => a.Index == l.From) && left.Exists(a => a.Index == l.To) && near.Contains(l.From) != near.Contains(l.To) && near.Add(near.Contains(l.From) ? l.To : l.From)))
            {
                // One more each time.
            }

            groups.Add([.. left.Where(a => near.Contains(a.Index))]);
            left.RemoveAll(a => near.Contains(a.Index));
        }

        return groups;
    }

    /// <summary>New, or planned for a time that is over.</summary>
    private bool Waits(Act act) => !act.Standing && board.Rows[act.Index].Start >= 0 && (!standing.Has(act) || standing.RowOf(act).Start < shop.FreeFrom);

    private void TakeOff(Act act)
    {
        latest[act.Index] = board.Rows[act.Index].Start;
        Clear(act);
    }

    /// <summary>The first at each start in turn, the others as soon as they can after it.</summary>
    private bool Place(Build build, Act[] acts)
    {
        var (low, high) = Window(build, acts[0]);
        for (var start = low; start <= high && looks > 0; start++)
        {
            if (Put(build, acts[0], start, start) && Array.TrueForAll(acts[1..], a => Window(build, a) is var (from, to) && Put(build, a, from, to)) && keeping.ClocksHold(build))
            {
                return true;
            }

            Array.ForEach(acts, Clear);
        }

        return false;
    }

    /// <summary>True if it stands with its holds, as early in the window as can be.</summary>
    private bool Put(Build build, Act act, int low, int high)
    {
        for (var start = low; start <= high && looks > 0; start++)
        {
            foreach (var (who, machine) in Ways(act, start))
            {
                looks--;
                if (keeping.CanStand(act, start, who, machine, false))
                {
                    standing.Put(act, start, who, machine);
                    if (Ready(build, act).All(loosening.Stand))
                    {
                        return true;
                    }

                    Clear(act);
                }
            }
        }

        return false;
    }

    private void Clear(Act act)
    {
        if (board.Rows[act.Index].Start < 0)
        {
            return;
        }

        foreach (var link in act.In.Concat(act.Out).Where(l => board.Stands[l.Index] >= 0))
        {
            board.Unstand(link);
        }

        Placing.Unplace(board, act);
    }

    /// <summary>Its holds of which both ends stand now.</summary>
    private IEnumerable<Link> Ready(Build build, Act act) =>
        act.In.Concat(act.Out).Where(l => build.Links.Contains(l) && board.Rows[l.From].Start >= 0 && board.Rows[l.To].Start >= 0);

    private (int Low, int High) Window(Build build, Act act)
    {
        var (low, high) = (shop.FreeFrom, latest[act.Index]);
        foreach (var link in act.In.Where(l => build.Links.Contains(l) && board.Rows[l.From].Start >= 0))
        {
            low = Math.Max(low, board.End(shop.Acts[link.From]) + link.Least);
            high = Math.Min(high, board.End(shop.Acts[link.From]) + link.Most);
        }

        foreach (var link in act.Out.Where(l => build.Links.Contains(l) && board.Rows[l.To].Start >= 0))
        {
            low = Math.Max(low, board.Rows[link.To].Start - act.Grains - link.Most);
            high = Math.Min(high, board.Rows[link.To].Start - act.Grains - link.Least);
        }

        return (low, high);
    }

    /// <summary>Hands of the wall first; in the usual hours only.</summary>
    private IEnumerable<(ulong Who, int Machine)> Ways(Act act, int start)
    {
        var wished = standing.Has(act) ? standing.RowOf(act) : default;
        ulong[] hands = act.Count switch
        {
            0 => [0],
            1 => [.. act.Able.Where(p => board.Free(shop.Shift, p, start, start + act.Grains)).Select(p => 1UL << p).OrderBy(p => p != wished.People)],
            _ => wished.People == 0 ? [] : [wished.People],
        };
        int[] machines = act.OnMachine ? act.Machines : [-1];
        return hands.SelectMany(who => machines.Select(m => (who, m)));
    }
}
