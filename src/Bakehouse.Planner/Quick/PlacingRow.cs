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
        if (start < seat.Low || start > seat.High || Allowed(act, seat, start) != start || !keeping!.CanStand(act, start, people, machine, batch is not null))
        {
            return false;
        }

        var run = act.OnMachine && batch is not null && board.LastRun(machine, start) == start ? board.RunAt(machine, start) : -1;
        return Put(act, seat, start, people, machine, run);
    }

    private bool NextShared(Act act, Seat seat)
    {
        while (true)
        {
            var (machine, start) = (-1, -1);
            foreach (var m in act.Machines)
            {
                var at = act.PinMachine < 0 || act.PinMachine == m ? board.LastRunOf(m, act.Code, Math.Min(seat.At, shop.Grains)) : -1;
                (machine, start) = at > start ? (m, at) : (machine, start);
            }

            if (start < seat.Low || start < 0)
            {
                return false;
            }

            seat.At = start - 1;
            var number = board.RunAt(machine, start);
            if (Allowed(act, seat, start) == start && CanJoin(act, number) && ToolFree(act, start) < 0 && Put(act, seat, start, board.Runs[number].People, machine, number))
            {
                return true;
            }
        }
    }

    private bool NextOwn(Act act, Seat seat)
    {
        while (true)
        {
            var at = Allowed(act, seat, seat.At);
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

            if (act.OnMachine && MachineBusy(act, at) is var back && back < at)
            {
                seat.At = back;
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

    /// <summary>Latest start at or before that at which one of its machines has nothing on; turn times are not looked at.</summary>
    private int MachineBusy(Act act, int at)
    {
        var latest = -1;
        foreach (var m in act.Machines)
        {
            if (act.PinMachine < 0 || act.PinMachine == m)
            {
                latest = Math.Max(latest, board.BusyUntil(m, at, at + act.Grains) is >= 0 and var taken ? taken - act.Grains : at);
            }
        }

        return latest;
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
        var (chosen, count) = Pick(act, at, terms.Overtime ? shop.Shift : duty, 0, 0);
        if (count < act.Count && terms.Overtime)
        {
            (chosen, count) = Pick(act, at, duty, chosen, count);
        }

        return count == act.Count ? chosen : 0;
    }

    private (ulong Chosen, int Count) Pick(Act act, int at, ulong[][] calendar, ulong chosen, int count)
    {
        var turn = terms.Twist == 0 ? 0 : (int)(Dice.Mix(terms.Twist, (uint)act.Index) % (uint)act.Able.Length);
        for (var i = 0; i < act.Able.Length && count < act.Count; i++)
        {
            var p = act.Able[(i + turn) % act.Able.Length];
            var bit = 1UL << p;
            if ((chosen & bit) == 0 && (act.PinPeople == 0 || (act.PinPeople & bit) != 0) && board.Free(calendar, p, at, at + act.Grains))
            {
                chosen |= bit;
                count++;
            }
        }

        return (chosen, count);
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
}
