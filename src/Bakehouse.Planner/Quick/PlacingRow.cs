namespace Bakehouse.Planner.Quick;

/// <summary>Hands, tools, machines and stores for one step at one start.</summary>
internal sealed partial class Placing
{
    /// <summary>Puts the step where the wall has it, with its people and its machine, if it can stand there.</summary>
    private bool AtWall(Act act, Seat seat)
    {
        if (wall is null || !wall.Has(act))
        {
            return false;
        }

        var (start, people, machine, batch) = wall.RowOf(act);
        if (start < seat.Low || start > seat.High || Allowed(seat, start) != start || !keeping!.CanStand(act, start, people, machine, batch is not null))
        {
            return false;
        }

        var run = act.OnMachine && batch is not null && board.LastRun(machine, start) == start ? board.RunAt(machine, start) : -1;
        return Put(act, seat, start, people, machine, run);
    }

    private bool NextShared(Act act, ref Seat seat)
    {
        while (true)
        {
            var (machine, start) = (-1, -1);
            foreach (var m in act.Machines)
            {
                var at = (act.PinMachine < 0 || act.PinMachine == m) && seat.At >= 0 ? board.LastRun(m, Math.Min(seat.At, shop.Grains)) : -1;
                (machine, start) = at > start ? (m, at) : (machine, start);
            }

            if (start < seat.Low || start < 0)
            {
                return false;
            }

            seat.At = start - 1;
            var number = board.RunAt(machine, start);
            if (Allowed(seat, start) == start && CanJoin(act, number) && ToolFree(act, start) < 0 && Put(act, seat, start, board.Runs[number].People, machine, number))
            {
                return true;
            }
        }
    }

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

    private bool NextOwn(Act act, ref Seat seat)
    {
        while (true)
        {
            var at = Allowed(seat, seat.At);
            if (at < 0 || OutOfLooks())
            {
                return false;
            }

            var handy = act.Count == 0 ? at : HandsFree(act, at);
            if (handy < at)
            {
                if (handy < seat.Low)
                {
                    return false;
                }

                seat.At = handy;
                continue;
            }

            if (ToolFree(act, at) is >= 0 and var taken)
            {
                seat.At = taken - act.Grains;
                continue;
            }

            seat.At = at - 1;
            if (TryOwn(act, seat, at))
            {
                return true;
            }
        }
    }

    private bool OutOfLooks()
    {
        looks--;
        tries = looks < 0 ? -1 : tries;
        return looks < 0;
    }

    private int ToolFree(Act act, int at)
    {
        var taken = -1;
        foreach (var tool in act.Tools)
        {
            taken = Math.Max(taken, board.ToolTaken(tool, at, at + act.Grains));
        }

        return taken;
    }

    private int HandsFree(Act act, int at)
    {
        if (act.Count > 1 || act.PinPeople != 0)
        {
            while (at >= 0 && Choose(act, at) == 0)
            {
                at--;
            }

            return at;
        }

        var best = -1;
        foreach (var p in act.Able)
        {
            best = Math.Max(best, Bits.LatestStart(duty[p], board.Busy(p), at, act.Grains));
            if (best == at)
            {
                break;
            }
        }

        return best;
    }

    /// <summary>Who does it: people in their shift before people in overtime, specialists first. 0 if there are not enough.</summary>
    private ulong Choose(Act act, int at)
    {
        ulong chosen = 0;
        var count = 0;
        foreach (var calendar in terms.Overtime ? [shop.Shift, duty] : new[] { duty })
        {
            for (var i = 0; i < act.Able.Length && count < act.Count; i++)
            {
                var p = act.Able[terms.Twist == 0 ? i : (i + (int)(Dice.Mix(terms.Twist, (uint)act.Index) % (uint)act.Able.Length)) % act.Able.Length];
                var bit = 1UL << p;
                if ((chosen & bit) == 0 && (act.PinPeople == 0 || (act.PinPeople & bit) != 0) && board.Free(calendar, p, at, at + act.Grains))
                {
                    chosen |= bit;
                    count++;
                }
            }
        }

        return count == act.Count ? chosen : 0;
    }

    private bool TryOwn(Act act, Seat seat, int at)
    {
        var people = act.Count == 0 ? 0 : Choose(act, at);
        if (act.Count > 0 && people == 0)
        {
            return false;
        }

        if (!act.OnMachine)
        {
            return Put(act, seat, at, people, -1, -1);
        }

        if (act.IsMix && !board.AirClear(act, at))
        {
            return false;
        }

        foreach (var m in act.Machines)
        {
            if ((act.PinMachine < 0 || act.PinMachine == m) && board.MachineFree(m, act.Code, at, at + act.Grains) && Put(act, seat, at, people, m, -1))
            {
                return true;
            }
        }

        return false;
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
        foreach (var (link, gaps) in seat.Holds)
        {
            if (!StandOne(link, gaps, at))
            {
                return false;
            }
        }

        return true;
    }

    private bool StandOne(Link link, Gap[] gaps, int at)
    {
        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        foreach (var gap in wall is null ? gaps : [.. gaps.OrderBy(g => g.Place.Store != wall.StoreOf(link))])
        {
            if (at < gap.Low || at > gap.High || (to > from && board.StoreFull(gap.Place.Store, from, to, link) >= 0))
            {
                continue;
            }

            var warm = (shop.StoreCold[gap.Place.Store] ? 0 : to - from) - link.WarmLeast;
            if (link.Clocks.TrueForAll(c => warmLeft[c] >= warm))
            {
                Wind(link, -warm);
                board.Stand(link, gap.Place.Store);
                return true;
            }
        }

        return false;
    }
}
