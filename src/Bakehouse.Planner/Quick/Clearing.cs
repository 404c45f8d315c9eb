namespace Bakehouse.Planner.Quick;

/// <summary>Says what comes off the board in a round, and takes it off: a few whole jobs, or the steps of a stretch of time.</summary>
internal sealed class Clearing(Shop shop, Job[] movable, Dice dice)
{
    private const int Most = 5;
    private const int Few = 8;
    private const int Many = 24;

    /// <summary>Takes some off; returns the jobs to be put back, in that order. A job that is off as a whole loses its build.</summary>
    public List<Job> Clear(Board from, Board board, Build?[] builds)
    {
        var late = movable.ToDictionary(j => j, j => Lateness(from, builds, j));
        var picked = Pick(from, builds, late);
        if (dice.Below(2) == 0)
        {
            Stretch(board, builds, picked);
        }
        else
        {
            foreach (var job in picked)
            {
                if (builds[job.Index] is { } build)
                {
                    Placing.Remove(board, build);
                    builds[job.Index] = null;
                }
            }
        }

        foreach (var job in movable)
        {
            if (builds[job.Index] is null && !picked.Contains(job))
            {
                picked.Add(job);
            }
        }

        return dice.Below(3) == 0 ? [.. picked.OrderBy(_ => dice.Next())] : [.. picked.OrderByDescending(j => late[j]).ThenBy(_ => dice.Next())];
    }

    /// <summary>Takes the picked jobs' steps between two times off.</summary>
    private void Stretch(Board board, Build?[] builds, List<Job> picked)
    {
        if (builds[picked[0].Index] is not { } first)
        {
            return;
        }

        var middle = board.Rows[first.Acts[dice.Below(first.Acts.Length)].Index].Start;
        var width = 12 << dice.Below(6);
        var (from, to) = dice.Below(3) switch
        {
            0 => (middle - (width / 2), middle + (width / 2)),
            1 => (middle, int.MaxValue),
            _ => (0, middle),
        };
        foreach (var job in picked)
        {
            if (builds[job.Index] is { } build)
            {
                Off(board, build, from, to);
            }
        }
    }

    private static void Off(Board board, Build build, int from, int to)
    {
        foreach (var act in build.Acts)
        {
            if (act.Standing || board.Rows[act.Index].Start < from || board.Rows[act.Index].Start >= to)
            {
                continue;
            }

            foreach (var link in act.In)
            {
                if (board.Stands[link.Index] >= 0)
                {
                    board.Unstand(link);
                }
            }

            foreach (var link in act.Out)
            {
                if (board.Stands[link.Index] >= 0)
                {
                    board.Unstand(link);
                }
            }

            Placing.Unplace(board, act);
        }
    }

    private long Lateness(Board board, Build?[] builds, Job job)
        => builds[job.Index] is { } build ? Score.OfJob(shop, board, job, build).Late : long.MaxValue;

    /// <summary>One job that has something to mend, and a few whose pickups are near.</summary>
    private List<Job> Pick(Board board, Build?[] builds, Dictionary<Job, long> late)
    {
        var seed = Seed(board, builds, late);
        var near = movable.Where(j => j != seed).OrderBy(j => Math.Abs(j.Due - seed.Due)).ThenBy(j => j.Index).Take(dice.Below(5) < 2 ? Many : Few).ToList();
        var picked = new List<Job> { seed };
        for (var count = dice.Below(Math.Min(Most, near.Count + 1)); count > 0; count--)
        {
            var at = dice.Below(near.Count);
            picked.Add(near[at]);
            near.RemoveAt(at);
        }

        return picked;
    }

    private Job Seed(Board board, Build?[] builds, Dictionary<Job, long> late)
    {
        var poor = movable.Where(j => builds[j.Index] is null || late[j] > 0).ToList();
        if (poor.Count == 0)
        {
            poor = [.. movable.Where(j => Score.OfJob(shop, board, j, builds[j.Index]!).Stale > 0)];
        }

        if (poor.Count == 0)
        {
            poor = [.. movable.Where(j => Array.Exists(builds[j.Index]!.Acts, a => !a.Standing && InOvertime(board, a)))];
        }

        if (poor.Count == 0)
        {
            poor = [.. movable.Where(j => Score.OfJob(shop, board, j, builds[j.Index]!).Fresh > 0)];
        }

        return poor.Count > 0 && dice.Below(4) > 0 ? poor[dice.Below(poor.Count)] : movable[dice.Below(movable.Length)];
    }

    private bool InOvertime(Board board, Act act)
    {
        var row = board.Rows[act.Index];
        for (var p = 0; p < shop.Extra.Length && row.Start >= 0; p++)
        {
            if ((row.People >> p & 1) != 0 && Bits.NextSet(shop.Extra[p], row.Start) < row.Start + act.Grains)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Shifts and overtime for a round. Where somebody works overtime for the picked jobs, it is now and then left out around one of those
    /// steps, so that another place is looked for.
    /// </summary>
    public ulong[][] Duty(Board board, Build?[] builds, List<Job> picked)
    {
        var over = picked.SelectMany(j => builds[j.Index]?.Acts ?? []).Where(a => !a.Standing && InOvertime(board, a)).ToList();
        if (over.Count == 0 || dice.Below(3) == 0)
        {
            return shop.Duty;
        }

        var middle = board.Rows[over[dice.Below(over.Count)].Index].Start;
        var reach = 36 << dice.Below(4);
        ulong[][] duty = [.. shop.Duty.Select(d => (ulong[])d.Clone())];
        for (var p = 0; p < duty.Length; p++)
        {
            var extra = (ulong[])shop.Extra[p].Clone();
            Bits.Keep(extra, middle - reach, middle + reach);
            BitRows.AndNot(extra, shop.Shift[p]);
            BitRows.AndNot(duty[p], extra);
        }

        return duty;
    }
}
