namespace Bakehouse.Planner.Quick;

/// <summary>Wet clean-downs between an allergen and a cake kept from it, on the same bowl (rules A2 and M6).</summary>
internal sealed class Cleaning(Shop shop, Board board)
{
    /// <summary>
    /// Makes a run with these allergens possible at [from, to): adds the clean-downs it needs before and after.
    /// Returns false, with nothing added, if one is needed and there is no room or nobody for it.
    /// </summary>
    public bool Make(int machine, ulong has, ulong avoid, int from, int to, ulong[][] duty)
    {
        var before = board.Cleans.Count;
        if (((has | avoid) & shop.Clashing) == 0)
        {
            return true;
        }

        var dirtied = LastDirty(machine, avoid, from);
        var endangered = NextKept(machine, has, to);
        if ((dirtied < 0 || Add(machine, dirtied, from, duty)) && (endangered == int.MaxValue || Add(machine, to, endangered, duty)))
        {
            return true;
        }

        while (board.Cleans.Count > before)
        {
            board.DropClean(board.Cleans.Count - 1);
        }

        return false;
    }

    /// <summary>True if a run with these allergens can stand there without a clean-down.</summary>
    public bool NoneNeeded(int machine, ulong has, ulong avoid, int from, int to)
        => ((has | avoid) & shop.Clashing) == 0 || (LastDirty(machine, avoid, from) < 0 && NextKept(machine, has, to) == int.MaxValue);

    /// <summary>Drops clean-downs that stand between nothing any more, except those that the wall already has.</summary>
    public void DropIdle(IReadOnlySet<Clean> keep)
    {
        if (board.Cleans.Count == 0)
        {
            return;
        }

        foreach (var clean in board.Cleans.Except(keep).OrderBy(c => c.Start).ToList())
        {
            if (!Needed(clean))
            {
                board.DropClean(board.Cleans.IndexOf(clean));
            }
        }
    }

    private bool Needed(Clean clean)
    {
        var (from, to) = (LastClean(clean.Machine, clean.Start - 1), NextClean(clean.Machine, clean.Start + 1));
        ulong has = 0, avoid = 0;
        for (var at = board.LastRun(clean.Machine, clean.Start); at >= from && at >= 0; at = board.LastRun(clean.Machine, at - 1))
        {
            has |= board.Runs[board.RunAt(clean.Machine, at)].Has;
        }

        for (var at = board.NextRun(clean.Machine, clean.Start); at < to; at = board.NextRun(clean.Machine, at + 1))
        {
            avoid |= board.Runs[board.RunAt(clean.Machine, at)].Avoid;
        }

        return (has & avoid) != 0;
    }

    /// <summary>End of the last run since the last clean-down that has something to keep away from, or -1.</summary>
    private int LastDirty(int machine, ulong avoid, int before)
    {
        avoid &= shop.Clashing;
        var clean = avoid == 0 ? 0 : LastClean(machine, before);
        for (var at = avoid == 0 ? -1 : board.LastRun(machine, before - 1); at >= clean && at >= 0; at = board.LastRun(machine, at - 1))
        {
            var run = board.Runs[board.RunAt(machine, at)];
            if ((run.Has & avoid) != 0)
            {
                return run.End;
            }
        }

        return -1;
    }

    private int NextKept(int machine, ulong has, int after)
    {
        has &= shop.Clashing;
        var clean = has == 0 ? 0 : NextClean(machine, after);
        for (var at = has == 0 ? int.MaxValue : board.NextRun(machine, after); at < clean; at = board.NextRun(machine, at + 1))
        {
            if ((board.Runs[board.RunAt(machine, at)].Avoid & has) != 0)
            {
                return at;
            }
        }

        return int.MaxValue;
    }

    private int LastClean(int machine, int before)
    {
        var last = -1;
        foreach (var clean in board.Cleans)
        {
            last = clean.Machine == machine && clean.Start < before ? Math.Max(last, clean.Start) : last;
        }

        return last;
    }

    private int NextClean(int machine, int after)
    {
        var next = int.MaxValue;
        foreach (var clean in board.Cleans)
        {
            next = clean.Machine == machine && clean.Start >= after ? Math.Min(next, clean.Start) : next;
        }

        return next;
    }

    private bool Add(int machine, int from, int to, ulong[][] duty)
    {
        var facts = shop.Machines[machine];
        from = Math.Max(from, shop.FreeFrom);
        for (var start = to - facts.CleanGrains; facts.CleanGrains > 0 && start >= from; start--)
        {
            if (!board.BowlIdle(machine, start, start + facts.CleanGrains))
            {
                continue;
            }

            foreach (var person in facts.Cleaners)
            {
                if (board.Free(duty, person, start, start + facts.CleanGrains))
                {
                    board.AddClean(new Clean(machine, start, person));
                    return true;
                }
            }
        }

        return false;
    }
}
