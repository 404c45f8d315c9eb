using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>What stands before any search: done, started and pinned steps, and rows of the plan on the wall.</summary>
internal sealed class Standing
{
    private readonly Shop shop;
    private readonly Board board;
    private readonly Dictionary<string, StepRow> rows;
    private readonly Dictionary<string, string> holds;
    private readonly Dictionary<string, int> people;
    private readonly Dictionary<string, int> machines;
    private readonly Dictionary<string, int> stores;

    public Standing(Shop shop, Board board)
    {
        (this.shop, this.board) = (shop, board);
        var wall = shop.Week.Reference;
        rows = (wall?.Steps ?? []).ToDictionary(r => r.Step, StringComparer.Ordinal);
        holds = (wall?.Holds ?? []).ToDictionary(h => h.Hold, h => h.Store, StringComparer.Ordinal);
        people = shop.Week.People.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
        machines = shop.Week.Machines.Select((m, i) => (m.Id, i)).ToDictionary(m => m.Id, m => m.i, StringComparer.Ordinal);
        stores = shop.Week.Stores.Select((s, i) => (s.Id, i)).ToDictionary(s => s.Id, s => s.i, StringComparer.Ordinal);
    }

    /// <summary>Clean-downs of the wall that stand.</summary>
    public HashSet<Clean> Cleans { get; } = [];

    /// <summary>Puts the fixed steps, what stands between them, and the wall's clean-downs.</summary>
    public void PutFixed()
    {
        foreach (var act in shop.Acts.Where(a => a.Standing))
        {
            Put(act, act.PinStart, act.PinPeople, act.PinMachine);
        }

        foreach (var link in shop.Links)
        {
            if (shop.Acts[link.From].Standing && shop.Acts[link.To].Standing && Where(link) is >= 0 and var store)
            {
                board.Stand(link, store);
            }
        }

        // Those of before the week, of a bowl that is gone or by somebody who left can't stand in it: what that bowl met is cleaned down again.
        foreach (var row in (shop.Week.Reference?.Cleans ?? []).Where(c => c.Start >= 0 && machines.ContainsKey(c.Machine) && people.ContainsKey(c.People[0])))
        {
            var clean = new Clean(machines[row.Machine], row.Start / shop.Grain, people[row.People[0]]);
            var end = clean.Start + shop.Machines[clean.Machine].CleanGrains;
            if (board.BowlIdle(clean.Machine, clean.Start, end) && board.Free(shop.Duty, clean.Person, clean.Start, end))
            {
                board.AddClean(clean);
                Cleans.Add(clean);
            }
        }
    }

    /// <summary>The wall's build of a job if all its rows are there, or null.</summary>
    public Build? OnWall(Job job)
        => shop.Week.Reference is null ? null : Array.Find(
            job.Builds,
            b => b.Choices.All(c => shop.Week.Reference.Choices.GetValueOrDefault(c.Key) == c.Value)
                && Array.TrueForAll(b.Acts, a => a.Standing || rows.ContainsKey(a.Step.Id))
                && Array.TrueForAll(b.Links, l => holds.ContainsKey(l.Hold.Id)));

    /// <summary>True if the wall has a row for the step.</summary>
    public bool Has(Act act) => rows.ContainsKey(act.Step.Id);

    /// <summary>The build that the wall has chosen, also if some rows of it are missing.</summary>
    public Build Chosen(Job job) => Array.Find(job.Builds, b => b.Choices.All(c => shop.Week.Reference?.Choices.GetValueOrDefault(c.Key) == c.Value)) ?? job.Builds[0];

    /// <summary>The wall's row of a step: start in grains, people, machine.</summary>
    public (int Start, ulong People, int Machine, string? Batch) RowOf(Act act)
    {
        var row = rows[act.Step.Id];
        return (row.Start / shop.Grain, row.People.Aggregate(0UL, (m, p) => m | (1UL << people.GetValueOrDefault(p, 63))), row.Machine is { } id ? machines.GetValueOrDefault(id, -1) : -1, row.Batch);
    }

    public int StoreOf(Link link) => link.PinStore >= 0 ? link.PinStore : holds.TryGetValue(link.Hold.Id, out var id) ? stores.GetValueOrDefault(id, -1) : -1;

    /// <summary>Puts a step without asking, sharing the run that starts there.</summary>
    public void Put(Act act, int start, ulong who, int machine)
    {
        board.UseTools(act, start, 1);
        if (!act.IsMix)
        {
            board.Take(who, start, start + act.Grains);
        }

        var run = -1;
        if (act.OnMachine)
        {
            run = board.LastRun(machine, start) == start ? board.RunAt(machine, start) : board.Open(act, machine, start, who);
        }

        board.Rows[act.Index] = new Row(start, who, run);
        if (run >= 0)
        {
            board.Join(act, run);
        }
    }

    /// <summary>Where it was; if nobody wrote that down, where it had room for so long, and else the first place it may be.</summary>
    private int Where(Link link)
    {
        if (StoreOf(link) is >= 0 and var known)
        {
            return known;
        }

        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        var fitting = Array.FindAll(link.In, p => to - from >= p.Least && to - from <= p.Most);
        return fitting.Where(p => to <= from || board.StoreFull(p.Store, from, to, link) < 0).Concat(fitting).Concat(link.In).Select(p => p.Store).DefaultIfEmpty(-1).First();
    }
}
