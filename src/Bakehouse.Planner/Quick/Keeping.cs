namespace Bakehouse.Planner.Quick;

/// <summary>Puts a job as it stands on the wall, if every row of it can still stand.</summary>
internal sealed class Keeping(Shop shop, Board board, Standing standing)
{
    private readonly Cleaning cleaning = new(shop, board);

    /// <summary>True if all of it stands now; if not, nothing was changed.</summary>
    public bool Keep(Job job, Build build)
    {
        var kept = Array.TrueForAll(build.Acts, a => a.Standing || KeepStep(a)) && Array.TrueForAll(build.Links, KeepHold) && ClocksHold(build);
        if (!kept)
        {
            Placing.Remove(board, build);
        }

        return kept;
    }

    /// <summary>True if the step can stand exactly there; then it does.</summary>
    public bool KeepStep(Act act)
    {
        var (start, people, machine, batch) = standing.RowOf(act);
        if (!CanStand(act, start, people, machine, batch is not null))
        {
            return false;
        }

        standing.Put(act, start, people, machine);
        return true;
    }

    /// <summary>True if rules W3, H, T, M, A and X allow the step there.</summary>
    public bool CanStand(Act act, int start, ulong people, int machine, bool shares)
    {
        var end = start + act.Grains;
        if (start < (act.PinStart >= 0 ? 0 : shop.FreeFrom) || end > shop.Grains || (people & ~act.Hands) != 0
            || System.Numerics.BitOperations.PopCount(people) != act.Count || !PinsKept(act, start, people, machine)
            || Array.Exists(act.Tools, t => board.ToolTaken(t, start, end) >= 0))
        {
            return false;
        }

        if (!act.OnMachine)
        {
            return AllFree(people, start, end);
        }

        if (machine < 0 || !act.Machines.Contains(machine) || (act.IsMix && !board.AirClear(act, start)))
        {
            return false;
        }

        return shares && board.LastRun(machine, start) == start
            ? MayShare(act, board.RunAt(machine, start), people)
            : AllFree(people, start, end) && board.MachineFree(machine, act.Code, start, end)
                && (!act.IsMix || cleaning.NoneNeeded(machine, act.Has, act.Avoid, start, end));
    }

    private static bool PinsKept(Act act, int start, ulong people, int machine)
        => (act.PinStart < 0 || act.PinStart == start) && (act.PinPeople == 0 || act.PinPeople == people) && (act.PinMachine < 0 || act.PinMachine == machine);

    private bool MayShare(Act act, int number, ulong people)
    {
        var run = board.Runs[number];
        var end = Math.Max(run.End, run.Start + act.Grains);
        var fits = act.IsMix
            ? run.People == people && run.Size + act.Size <= shop.Machines[run.Machine].Limit[act.Code]
            : shop.Machines[run.Machine].Packs(run.Pans + act.Pans, shop.Diameters) && AllFree(people, run.Start, run.Start + act.Grains);
        return fits && run.Code == act.Code && (run.Has & act.Avoid) == 0 && (act.Has & run.Avoid) == 0
            && (end == run.End || (AllFree(act.IsMix ? people : 0, run.End, end) && board.MachineFree(run.Machine, run.Code, run.Start, end, number)))
            && (!act.IsMix || cleaning.NoneNeeded(run.Machine, act.Has, act.Avoid, run.Start, end));
    }

    private bool AllFree(ulong people, int from, int to)
    {
        for (var p = 0; people != 0; p++, people >>= 1)
        {
            if ((people & 1) != 0 && (p >= shop.Duty.Length || !board.Free(shop.Duty, p, from, to)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>True if the hold can stand in its store of the wall between the placed ends; then it does.</summary>
    public bool KeepHold(Link link)
    {
        if (board.Stands[link.Index] >= 0)
        {
            return true;
        }

        var store = standing.StoreOf(link);
        var place = Array.FindIndex(link.In, p => p.Store == store);
        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        if (place < 0 || to - from < link.In[place].Least || to - from > link.In[place].Most || (link.In[place].Passing && to > from)
            || (to > from && board.StoreFull(store, from, to, link) >= 0))
        {
            return false;
        }

        board.Stand(link, store);
        return true;
    }

    /// <summary>True if food clocks and hard ages of the placed job hold.</summary>
    public bool ClocksHold(Build build)
    {
        var warm = new Dictionary<int, int>();
        foreach (var link in build.Links)
        {
            foreach (var c in link.Clocks)
            {
                var minutes = shop.StoreCold[board.Stands[link.Index]] ? 0 : board.Rows[link.To].Start - board.End(shop.Acts[link.From]);
                warm[c] = warm.GetValueOrDefault(c) + minutes;
            }
        }

        return warm.All(w => w.Value + shop.ClockActs[w.Key].Where(a => board.Rows[a].Start >= 0).Sum(a => shop.Acts[a].Grains) <= shop.ClockLimit[w.Key])
            && Array.TrueForAll(build.Acts, a => a.CapsOut.TrueForAll(c => c.Kind != CapKind.Hard || board.Rows[c.To].Start < 0 || board.Rows[c.To].Start - board.End(a) <= c.Grains))
            && build.Acts.All(ServedOnTime);
    }

    private bool ServedOnTime(Act act)
    {
        var order = shop.Week.Orders.FirstOrDefault(o => o.Out == act.Step.Id);
        return order is null || (board.Rows[act.Index].Start * shop.Grain) + (order.EdgeIsEnd ? act.Step.Minutes : 0) >= order.From;
    }
}
