namespace Bakehouse.Planner.Quick;

/// <summary>Moving one step while all others stand.</summary>
internal sealed partial class Placing
{
    /// <summary>
    /// Moves a step as late, or as early, as everything else allows under these terms. Where it breaks the terms as it stands, any place that
    /// keeps them will do. True if it moved.
    /// </summary>
    public bool Move(Job job, Build which, Act act, Terms with, bool later)
    {
        (build, terms, duty, looks, tries) = (which, with, with.Overtime ? Duty : shop.Shift, int.MaxValue, int.MaxValue);
        openings.Enter(build);
        Work += 3;
        if (!WindClocks())
        {
            return false;
        }

        var old = board.Rows[act.Index];
        var machine = old.Run >= 0 ? board.Runs[old.Run].Machine : -1;
        var stores = Stores(act);
        done.Clear();
        done.Add((act.Index, board.Cleans.Count));
        Undo();
        openings.Only(job, act, terms, duty);
        var moved = Try(act, Look(act, seats[0]), old.Start, later);
        if (!moved)
        {
            PutAsItWas(act, old, machine, stores);
        }

        done.Clear();
        return moved;
    }

    private int[] Stores(Act act)
    {
        var stores = new int[act.In.Count + act.Out.Count];
        for (var i = 0; i < stores.Length; i++)
        {
            stores[i] = board.Stands[LinkOf(act, i).Index];
        }

        return stores;
    }

    private static Link LinkOf(Act act, int i) => i < act.In.Count ? act.In[i] : act.Out[i - act.In.Count];

    private bool Try(Act act, Seat seat, int old, bool later)
    {
        var starts = openings.Of(act);
        var kept = (starts[old >> 6] >> old & 1) != 0;
        for (var at = Next(starts, later ? seat.High : seat.Low, later); at >= seat.Low && at <= seat.High; at = Next(starts, later ? at - 1 : at + 1, later))
        {
            if (kept && (later ? at <= old : at >= old))
            {
                return false;
            }

            if (Allowed(act, seat, at) == at && ToolFree(act, at) < 0 && (TryShared(act, seat, at) || TryOwn(act, seat, at)))
            {
                return true;
            }
        }

        return false;
    }

    private static int Next(ReadOnlySpan<ulong> starts, int at, bool later) => later ? Bits.LastSet(starts, at) : Bits.NextSet(starts, at);

    private bool TryShared(Act act, Seat seat, int at)
    {
        foreach (var m in act.Machines)
        {
            if ((act.PinMachine < 0 || act.PinMachine == m) && board.LastRunOf(m, act.Code, at) == at
                && board.RunAt(m, at) is >= 0 and var run && CanJoin(act, run) && Put(act, seat, at, board.Runs[run].People, m, run))
            {
                return true;
            }
        }

        return false;
    }

    private void PutAsItWas(Act act, Row old, int machine, int[] stores)
    {
        board.UseTools(act, old.Start, 1);
        if (!act.IsMix)
        {
            board.Take(old.People, old.Start, old.Start + act.Grains);
        }

        var run = machine < 0 ? -1 : board.LastRunOf(machine, act.Code, old.Start) == old.Start ? board.RunAt(machine, old.Start) : board.Open(act, machine, old.Start, old.People);
        board.Rows[act.Index] = old with { Run = run };
        if (run >= 0)
        {
            board.Join(act, run);
        }

        for (var i = 0; i < stores.Length; i++)
        {
            if (stores[i] >= 0)
            {
                board.Stand(LinkOf(act, i), stores[i]);
            }
        }
    }
}
