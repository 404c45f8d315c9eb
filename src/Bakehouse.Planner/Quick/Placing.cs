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
    private readonly Openings openings;
    private readonly Cleaning cleaning;
    private readonly int[] depth;
    private readonly Seat[] seats;
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
        Duty = shop.Duty;
        openings = new Openings(shop, board);
        cleaning = new Cleaning(shop, board);
        depth = new int[shop.Acts.Length];
        seats = [.. Enumerable.Range(0, shop.Jobs.SelectMany(j => j.Builds).Max(b => (int?)b.Acts.Length) ?? 0).Select(_ => new Seat())];
        warmLeft = new int[shop.ClockLimit.Length];
    }

    /// <summary>Shifts and the overtime that may be used, per person.</summary>
    public ulong[][] Duty { get; set; }

    /// <summary>Places tried so far, the measure of work.</summary>
    public long Work { get; private set; }

    /// <summary>
    /// Grains by which the pickup is late at least under these terms, or -1 if nothing is found in the whole week; the board stays as it is.
    /// </summary>
    public int LeastLate(Job job, Build which, Terms with)
    {
        openings.Enter(which);
        Work += 10;
        if (!openings.Compute(job, which, with with { From = 1, To = shop.Grains }, with.Overtime ? Duty : shop.Shift, true))
        {
            return -1;
        }

        return job.Outs.Max(o => openings.Has(o.Act) ? Bits.NextSet(openings.Of(shop.Acts[o.Act]), 0) - o.To : 1);
    }

    /// <summary>True if every step of the job now stands; if not, nothing was changed.</summary>
    /// <param name="known">The board is as it was at the last call.</param>
    public bool Place(Job job, Build which, Terms with, bool known = false)
    {
        (build, terms, duty, tries) = (which, with, with.Overtime ? Duty : shop.Shift, with.Tries);
        openings.Enter(build);
        Work += 10;
        if (!openings.Compute(job, build, terms, duty, known) || !WindClocks())
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
    public static void Remove(Board board, Build build)
    {
        foreach (var link in build.Links)
        {
            if (board.Stands[link.Index] >= 0 && !link.Settled)
            {
                board.Unstand(link);
            }
        }

        foreach (var act in build.Acts)
        {
            if (!act.Standing && board.Rows[act.Index].Start >= 0)
            {
                Unplace(board, act);
            }
        }
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

        var cut = openings.Refresh(act, build.ShortlyBefore[k]);
        var seat = Look(act, seats[k]);
        if (cut)
        {
            BlameBefore(k, seat);
        }

        var mine = UInt128.One << k;
        var why = seat.Blame & ~mine;
        var failures = 0;
        for (var found = AtWall(act, seat) || Next(act, seat, failures); found; found = Next(act, seat, failures))
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
        if (board.Stands[link.Index] is < 0 and var _ || !openings.Has(link))
        {
            return;
        }

        var warm = shop.StoreCold[board.Stands[link.Index]] ? 0 : board.Rows[link.To].Start - board.End(shop.Acts[link.From]);
        Wind(link, warm - link.WarmLeast);
        board.Unstand(link);
    }
}
