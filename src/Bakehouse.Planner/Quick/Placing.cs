namespace Bakehouse.Planner.Quick;

/// <summary>
/// Places the steps of one job, last step first, each as late as may be, while everything else stands still. When a
/// step finds no place, the search goes back to the latest step that narrows it and moves that one earlier.
/// </summary>
internal sealed partial class Placing
{
    private const int LooksPerTry = 6;

    private readonly Shop shop;
    private readonly Board board;
    private readonly Windows windows;
    private readonly Cleaning cleaning;
    private readonly int[] depth;
    private readonly int[] warmLeft;
    private readonly List<(int Act, int Cleans)> done = [];
    private Build build = null!;
    private Terms terms;
    private ulong[][] duty = null!;
    private int tries;
    private int looks;
    private UInt128 blame;
    private readonly Standing? wall;
    private readonly Keeping? keeping;

    /// <param name="wall">When a plan on the wall is to be kept as far as it goes: its rows are tried first. Else null.</param>
    public Placing(Shop shop, Board board, Standing? wall = null)
    {
        (this.shop, this.board, this.wall) = (shop, board, wall);
        keeping = wall is null ? null : new Keeping(shop, board, wall);
        windows = new Windows(shop, board);
        cleaning = new Cleaning(shop, board);
        depth = new int[shop.Acts.Length];
        warmLeft = new int[shop.ClockLimit.Length];
    }

    /// <summary>Places tried so far, the measure of work.</summary>
    public long Work { get; private set; }

    /// <summary>Earliest start of a step by the last windows.</summary>
    public int Earliest(Act act) => windows.Early[act.Index];

    /// <summary>True if every step of the job now stands; if not, nothing was changed.</summary>
    public bool Place(Job job, Build which, Terms with)
    {
        (build, terms, duty, tries) = (which, with, with.Overtime ? shop.Duty : shop.Shift, with.Tries);
        windows.Enter(build);
        Work += 10;
        if (!windows.Compute(job, build, terms) || !WindClocks())
        {
            return false;
        }

        for (var i = 0; i < build.Acts.Length; i++)
        {
            depth[build.Acts[i].Index] = i;
        }

        done.Clear();
        looks = with.Tries * LooksPerTry;
        var placed = Step(0);
        Work += with.Tries - Math.Max(tries, 0) + (((with.Tries * LooksPerTry) - Math.Max(looks, 0)) / LooksPerTry);
        return placed;
    }

    /// <summary>Takes back what the last successful <see cref="Place"/> did.</summary>
    public void TakeBack()
    {
        while (done.Count > 0)
        {
            Undo();
        }
    }

    /// <summary>Takes a whole job off the board, what is fixed stays.</summary>
    public static void Remove(Board board, Job job, Build build)
    {
        _ = job;
        foreach (var link in build.Links.Where(l => board.Stands[l.Index] >= 0 && !BothStand(board, l, build)))
        {
            board.Unstand(link);
        }

        foreach (var act in build.Acts.Where(a => !a.Standing && board.Rows[a.Index].Start >= 0))
        {
            Unplace(board, act);
        }
    }

    private static bool BothStand(Board board, Link link, Build build)
    {
        _ = board;
        return Array.Exists(build.Acts, a => a.Index == link.From && a.Standing) && Array.Exists(build.Acts, a => a.Index == link.To && a.Standing);
    }

    /// <summary>Takes one step off the board; its holds must be off already.</summary>
    public static void Unplace(Board board, Act act)
    {
        var row = board.Rows[act.Index];
        if (row.Run >= 0)
        {
            board.Leave(act, row.Run);
        }

        if (!act.IsMix)
        {
            board.Release(row.People, row.Start, row.Start + act.Grains);
        }

        board.UseTools(act, row.Start, -1);
        board.Rows[act.Index] = new Row(-1, 0, -1);
    }

    private bool WindClocks()
    {
        for (var c = 0; c < warmLeft.Length; c++)
        {
            warmLeft[c] = shop.ClockLimit[c];
            foreach (var a in shop.ClockActs[c])
            {
                warmLeft[c] -= windows.Has(a) ? shop.Acts[a].Grains : 0;
            }
        }

        foreach (var link in build.Links)
        {
            var warm = board.Stands[link.Index] is >= 0 and var store && !shop.StoreCold[store]
                ? board.Rows[link.To].Start - board.End(shop.Acts[link.From])
                : board.Stands[link.Index] >= 0 ? 0 : link.WarmLeast;
            Wind(link, -warm);
        }

        return Array.TrueForAll(build.Links, l => l.Clocks.TrueForAll(c => warmLeft[c] >= 0));
    }

    private void Wind(Link link, int by)
    {
        foreach (var c in link.Clocks)
        {
            warmLeft[c] += by;
        }
    }

    private bool Step(int k)
    {
        if (k == build.Acts.Length)
        {
            return true;
        }

        var act = build.Acts[k];
        if (board.Rows[act.Index].Start >= 0)
        {
            return Step(k + 1);
        }

        var seat = Look(act);
        var mine = UInt128.One << k;
        var why = seat.Blame & ~mine;
        var failures = 0;
        for (var found = AtWall(act, seat) || Next(act, ref seat, failures); found; found = Next(act, ref seat, failures))
        {
            if (--tries < 0)
            {
                Undo();
                return false;
            }

            if (Step(k + 1))
            {
                return true;
            }

            Undo();
            if (tries < 0)
            {
                return false;
            }

            if ((blame & mine) == 0)
            {
                return false;
            }

            why |= blame & ~mine;
            failures++;
        }

        blame = why;
        tries--;
        return false;
    }

    private void Undo()
    {
        var (index, cleans) = done[^1];
        done.RemoveAt(done.Count - 1);
        var act = shop.Acts[index];
        foreach (var link in act.Out)
        {
            Unhold(link);
        }

        foreach (var link in act.In)
        {
            Unhold(link);
        }

        Unplace(board, act);
        while (board.Cleans.Count > cleans)
        {
            board.DropClean(board.Cleans.Count - 1);
        }
    }

    private void Unhold(Link link)
    {
        if (board.Stands[link.Index] is < 0 and var _ || !windows.Has(link))
        {
            return;
        }

        var warm = shop.StoreCold[board.Stands[link.Index]] ? 0 : board.Rows[link.To].Start - board.End(shop.Acts[link.From]);
        Wind(link, warm - link.WarmLeast);
        board.Unstand(link);
    }
}
