namespace Bakehouse.Planner.Quick;

/// <summary>Which rows of the wall still stand, and which are taken off so that something can be placed anew.</summary>
internal sealed class Loosening(Shop shop, Board board, Standing standing)
{
    private readonly Keeping keeping = new(shop, board, standing);

    /// <summary>Puts all rows and holds of the wall that can stand; where two clash, the later one is left off.</summary>
    public void KeepWhatStands(Build[] builds)
    {
        foreach (var act in builds.SelectMany(b => b.Acts).Where(a => !a.Standing && standing.Has(a)).OrderBy(a => standing.RowOf(a).Start).ThenBy(a => a.Index))
        {
            keeping.KeepStep(act);
        }

        foreach (var link in builds.SelectMany(b => b.Links).Where(Between).OrderBy(l => board.Rows[l.To].Start).ThenBy(l => l.Index))
        {
            if (Between(link) && !keeping.KeepHold(link) && !Elsewhere(link))
            {
                Off(Loose(link));
            }
        }

        foreach (var (job, build) in shop.Jobs.Select(j => (j, builds[j.Index])))
        {
            LetGoOut(job, build);
        }
    }

    /// <summary>True if every step and hold of it stands, its clocks and ages hold and it is not late.</summary>
    public bool Whole(Build build, Job job) => Array.TrueForAll(build.Acts, a => board.Rows[a.Index].Start >= 0) && Held(build)
        && Array.TrueForAll(job.Outs, o => Score.MinutesLate(shop, board, o) == 0);

    /// <summary>True if the holds of a build whose steps all stand can stand too and its clocks and ages hold; then they do.</summary>
    public bool Held(Build build) =>
        Array.TrueForAll(build.Links, Stand) && keeping.ClocksHold(build);

    /// <summary>True if the hold can stand between its placed ends, on the wall's place or elsewhere; then it does.</summary>
    public bool Stand(Link link) => board.Stands[link.Index] >= 0 || BothStanding(link) || keeping.KeepHold(link) || Elsewhere(link);

    /// <summary>True if the step can stand as on the wall; then it does, without its holds.</summary>
    public bool Return(Act act) => standing.Has(act) && keeping.KeepStep(act);

    /// <summary>
    /// Takes off what lies within so many waits of a step that is off; all of the job for the greatest radius. What is fixed, and what
    /// starts before the calm is over, stays.
    /// </summary>
    public void Free(Job job, Build build, int radius, int calm)
    {
        _ = job;
        var off = build.Acts.Where(a => board.Rows[a.Index].Start < 0).Select(a => a.Index).ToHashSet();
        for (var i = 0; i < radius && radius != int.MaxValue; i++)
        {
            var near = build.Links.Where(l => off.Contains(l.From) || off.Contains(l.To)).SelectMany(l => new[] { l.From, l.To }).ToList();
            off.UnionWith(near);
        }

        foreach (var act in build.Acts.Where(a => (radius == int.MaxValue || off.Contains(a.Index)) && !a.Standing && board.Rows[a.Index].Start >= calm))
        {
            Off(act);
        }
    }

    private bool Between(Link link) => board.Stands[link.Index] < 0 && board.Rows[link.From].Start >= 0 && board.Rows[link.To].Start >= 0 && !BothStanding(link);

    private bool BothStanding(Link link) => shop.Acts[link.From].Standing && shop.Acts[link.To].Standing;

    private Act Loose(Link link) => shop.Acts[link.To].Standing ? shop.Acts[link.From] : shop.Acts[link.To];

    /// <summary>True if the hold can stand in another place than on the wall; then it does.</summary>
    private bool Elsewhere(Link link)
    {
        var (from, to) = (board.End(shop.Acts[link.From]), board.Rows[link.To].Start);
        var place = Array.FindIndex(link.In, p => (link.PinStore < 0 || link.PinStore == p.Store) && to - from >= p.Least && to - from <= p.Most
            && !(p.Passing && to > from) && (to <= from || board.StoreFull(p.Store, from, to, link) < 0));
        if (to < from || place < 0)
        {
            return false;
        }

        board.Stand(link, link.In[place].Store);
        return true;
    }

    /// <summary>A handover that is late or too early by now is placed anew.</summary>
    private void LetGoOut(Job job, Build build)
    {
        foreach (var order in job.Outs)
        {
            var act = shop.Acts[order.Act];
            if (build.Acts.Contains(act) && !act.Standing && board.Rows[act.Index].Start is >= 0 and var start
                && (Score.MinutesLate(shop, board, order) > 0 || start < order.From))
            {
                Off(act);
            }
        }
    }

    private void Off(Act act)
    {
        if (board.Rows[act.Index].Start < 0)
        {
            return;
        }

        foreach (var link in act.In.Concat(act.Out).Where(l => board.Stands[l.Index] >= 0))
        {
            board.Unstand(link);
        }

        Placing.Unplace(board, act);
    }
}
