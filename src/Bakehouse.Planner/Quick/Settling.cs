using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>Goes through what a repair moved and puts back on its row of the wall whatever can stand there after all.</summary>
internal sealed class Settling
{
    private readonly Shop shop;
    private readonly Board board;
    private readonly Build?[] builds;
    private readonly Standing standing;
    private readonly Keeping keeping;
    private readonly Board spare;

    public Settling(Shop shop, Draft draft)
    {
        this.shop = shop;
        (board, builds) = draft;
        standing = new Standing(shop, board);
        keeping = new Keeping(shop, board, standing);
        spare = new Board(shop);
    }

    /// <summary>Until a whole pass brings nothing back.</summary>
    public void Settle()
    {
        for (var again = true; again;)
        {
            again = false;
            foreach (var job in shop.Jobs)
            {
                foreach (var act in builds[job.Index]!.Acts.Where(Moved).OrderBy(a => standing.RowOf(a).Start))
                {
                    again |= Back(job, builds[job.Index]!, act);
                }
            }
        }
    }

    private bool Moved(Act act)
    {
        if (act.Standing || !standing.Has(act) || board.Rows[act.Index].Start < 0)
        {
            return false;
        }

        var (start, people, machine, _) = standing.RowOf(act);
        var row = board.Rows[act.Index];
        return row.Start != start || row.People != people || (row.Run >= 0 && board.Runs[row.Run].Machine != machine);
    }

    private bool Back(Job job, Build build, Act act)
    {
        var late = job.Outs.Sum(o => Score.MinutesLate(shop, board, o));
        spare.CopyFrom(board);
        Link[] links = [.. act.In.Concat(act.Out).Where(l => board.Stands[l.Index] >= 0)];
        foreach (var link in links)
        {
            board.Unstand(link);
        }

        Placing.Unplace(board, act);
        if (keeping.KeepStep(act) && Array.TrueForAll(links, l => keeping.KeepHold(l) || StandAs(l)) && keeping.ClocksHold(build)
            && job.Outs.Sum(o => Score.MinutesLate(shop, board, o)) <= late)
        {
            return true;
        }

        board.CopyFrom(spare);
        return false;
    }

    /// <summary>In the store where it stood in this draft.</summary>
    private bool StandAs(Link link)
    {
        var store = spare.Stands[link.Index];
        var place = Array.Find(link.In, p => p.Store == store);
        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        if (to < from || to - from < place.Least || to - from > place.Most || (place.Passing && to > from)
            || (to > from && board.StoreFull(store, from, to, link) >= 0))
        {
            return false;
        }

        board.Stand(link, store);
        return true;
    }
}
