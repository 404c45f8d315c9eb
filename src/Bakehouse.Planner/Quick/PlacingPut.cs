namespace Bakehouse.Planner.Quick;

/// <summary>Joining a run, and putting a step where it may stand.</summary>
internal sealed partial class Placing
{
    private bool CanJoin(Act act, int number)
    {
        var run = board.Runs[number];
        var end = Math.Max(run.End, run.Start + act.Grains);
        if (run.Code != act.Code || (run.Has & act.Avoid) != 0 || (act.Has & run.Avoid) != 0 || end > shop.Grains)
        {
            return false;
        }

        var facts = shop.Machines[run.Machine];
        if (act.IsMix ? !SameHands(act, run, end) || run.Size + act.Size > facts.Limit[act.Code] : act.Count > 0 || !facts.Packs(run.Pans + act.Pans, shop.Diameters))
        {
            return false;
        }

        return (end == run.End || board.MachineFree(run.Machine, run.Code, run.Start, end, number))
            && (!act.IsMix || (board.AirClear(act, run.Start) && cleaning.NoneNeeded(run.Machine, act.Has, act.Avoid, run.Start, end)));
    }

    private bool SameHands(Act act, Run run, int end)
    {
        var people = run.People;
        if ((people & ~act.Hands) != 0 || System.Numerics.BitOperations.PopCount(people) != act.Count || (act.PinPeople != 0 && act.PinPeople != people))
        {
            return false;
        }

        for (var p = 0; end > run.End && people != 0; p++, people >>= 1)
        {
            if ((people & 1) != 0 && !board.Free(duty, p, run.End, end))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Puts the step there with its holds and clean-downs, or changes nothing.</summary>
    private bool Put(Act act, Seat seat, int at, ulong people, int machine, int run)
    {
        var cleans = board.Cleans.Count;
        done.Add((act.Index, cleans));
        board.UseTools(act, at, 1);
        if (!act.IsMix)
        {
            board.Take(people, at, at + act.Grains);
        }

        if (machine >= 0 && run < 0)
        {
            run = board.Open(act, machine, at, people);
        }

        board.Rows[act.Index] = new Row(at, people, run);
        if (run >= 0)
        {
            board.Join(act, run);
        }

        if (StandAll(seat, at) && (!act.IsMix || cleaning.Make(machine, act.Has, act.Avoid, at, board.Runs[run].End, duty)))
        {
            return true;
        }

        Undo();
        return false;
    }

    private bool StandAll(Seat seat, int at)
    {
        foreach (ref readonly var stay in seat.Stays)
        {
            if (!StandOne(stay.Link, stay.Stores, at))
            {
                return false;
            }
        }

        return true;
    }

    private bool StandOne(Link link, ReadOnlySpan<Gap> gaps, int at)
    {
        var wished = wall is null ? -1 : wall.StoreOf(link);
        foreach (ref readonly var gap in gaps)
        {
            if (gap.Place.Store == wished && StandIn(link, gap, at))
            {
                return true;
            }
        }

        foreach (ref readonly var gap in gaps)
        {
            if (gap.Place.Store != wished && StandIn(link, gap, at))
            {
                return true;
            }
        }

        return false;
    }

    private bool StandIn(Link link, in Gap gap, int at)
    {
        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        if (at < gap.Low || at > gap.High || (to > from && board.StoreFull(gap.Place.Store, from, to, link) >= 0))
        {
            return false;
        }

        var warm = (shop.StoreCold[gap.Place.Store] ? 0 : to - from) - link.WarmLeast;
        foreach (var c in link.Clocks)
        {
            if (warmLeft[c] < warm)
            {
                return false;
            }
        }

        Wind(link, -warm);
        board.Stand(link, gap.Place.Store);
        return true;
    }
}
