namespace Bakehouse.Planner.Quick;

/// <summary>
/// Goes through the wall in its order of work and puts each step where it stands, or as little later as people,
/// machines, tools and the steps before it allow. A job that can't be pushed without breaking a gap, a clock or its
/// pickup is left out, to be placed anew while the others stand still.
/// </summary>
internal sealed class Pushing(Shop shop, Board board, Standing standing)
{
    private readonly Keeping keeping = new(shop, board, standing);
    private readonly Board fixedOnly = new(shop);

    /// <summary>Returns the jobs that must be placed anew; the builds of the others are filled in.</summary>
    public Job[] Push(Build?[] builds)
    {
        fixedOnly.CopyFrom(board);
        var anew = shop.Jobs.Where(j => standing.OnWall(j) is null).ToHashSet();
        for (var again = true; again;)
        {
            board.CopyFrom(fixedOnly);
            again = Sweep(anew);
        }

        foreach (var job in shop.Jobs.Where(j => !anew.Contains(j)))
        {
            builds[job.Index] = standing.OnWall(job);
        }

        return [.. shop.Jobs.Where(anew.Contains)];
    }

    /// <summary>One pass over the wall; true if a job fell out of it and the pass must be made again without it.</summary>
    private bool Sweep(HashSet<Job> anew)
    {
        var jobs = shop.Jobs.Where(j => !anew.Contains(j)).Select(j => (Job: j, Build: standing.OnWall(j)!)).ToList();
        var work = jobs.SelectMany(j => j.Build.Acts.Where(a => !a.Standing).Select(a => (j.Job, j.Build, Act: a, standing.RowOf(a).Start)))
            .OrderBy(x => x.Start).ThenBy(x => Array.IndexOf(x.Build.Acts, x.Act) * -1).ToList();
        var moved = new Dictionary<int, int>();
        foreach (var (job, build, act, _) in work)
        {
            if (!PushStep(build, act, moved))
            {
                return anew.Add(job);
            }
        }

        foreach (var (job, build) in jobs)
        {
            if (!Array.TrueForAll(build.Links, keeping.KeepHold) || !keeping.ClocksHold(build) || NewlyLate(job, build))
            {
                return anew.Add(job);
            }
        }

        return false;
    }

    private bool PushStep(Build build, Act act, Dictionary<int, int> moved)
    {
        var (wished, people, machine, batch) = standing.RowOf(act);
        var key = act.OnMachine && batch is not null ? (machine * shop.Grains) + wished : -1;
        if (key >= 0 && moved.TryGetValue(key, out var shared) && shared >= Ready(build, act) && keeping.CanStand(act, shared, people, machine, true))
        {
            standing.Put(act, shared, people, machine);
            return true;
        }

        var start = Math.Max(wished, Math.Max(Ready(build, act), act.PinStart >= 0 ? 0 : shop.FreeFrom));
        while (start + act.Grains <= shop.Grains && !keeping.CanStand(act, start, people, machine, false))
        {
            start++;
        }

        if (start + act.Grains > shop.Grains)
        {
            return false;
        }

        standing.Put(act, start, people, machine);
        if (key >= 0)
        {
            moved.TryAdd(key, start);
        }

        return true;
    }

    private int Ready(Build build, Act act)
    {
        var ready = 0;
        foreach (var link in act.In)
        {
            if (build.Links.Contains(link) && board.Rows[link.From].Start >= 0)
            {
                var store = standing.StoreOf(link);
                var least = Array.Find(link.In, p => p.Store == store).Least;
                ready = Math.Max(ready, board.End(shop.Acts[link.From]) + least);
            }
        }

        return ready;
    }

    private bool NewlyLate(Job job, Build build)
    {
        foreach (var order in job.Outs)
        {
            var act = shop.Acts[order.Act];
            if (build.Acts.Contains(act) && !act.Standing && board.Rows[act.Index].Start > standing.RowOf(act).Start && Score.MinutesLate(shop, board, order) > 0)
            {
                return true;
            }
        }

        return false;
    }
}
