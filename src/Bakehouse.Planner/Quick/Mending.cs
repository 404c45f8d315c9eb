using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Keeps every row of the wall that can stand and places the rest anew: first only what is loose, then with more and more of the
/// steps around it, at last beside another cake that makes room. Rows of the wall are tried first each time.
/// </summary>
internal sealed class Mending
{
    private const int Tries = 600;
    private const int Neighbours = 6;
    private static readonly int[] Radii = [0, 1, 2, 4, int.MaxValue];

    private readonly Shop shop;
    private readonly Board board;
    private readonly Standing standing;
    private readonly Loosening loosening;
    private readonly Placing placing;
    private readonly Insertion insertion;
    private readonly Build[] chosen;
    private readonly int calm;

    public Mending(Shop shop, int calm)
    {
        (this.shop, this.calm) = (shop, calm);
        board = new Board(shop);
        standing = new Standing(shop, board);
        chosen = [.. shop.Jobs.Select(standing.Chosen)];
        loosening = new Loosening(shop, board, standing);
        placing = new Placing(shop, board, standing);
        insertion = new Insertion(shop, board);
    }

    public Draft Mend()
    {
        standing.PutFixed();
        loosening.KeepWhatStands(chosen);
        Build?[] builds = [.. chosen];
        foreach (var job in shop.Jobs.OrderBy(j => j.Due).ThenBy(j => j.Index))
        {
            if (!loosening.Whole(chosen[job.Index], job))
            {
                builds[job.Index] = Mend(job);
            }
        }

        var draft = new Draft(board, builds);
        if (!Array.Exists(builds, b => b is null))
        {
            new Settling(shop, draft).Settle();
        }

        return draft;
    }

    private Build? Mend(Job job)
    {
        var build = chosen[job.Index];
        var before = new Board(shop);
        before.CopyFrom(board);
        foreach (var radius in Radii)
        {
            loosening.Free(job, build, radius, calm);
            if (OnTime(job, build))
            {
                return build;
            }

            board.CopyFrom(before);
        }

        return StoodLate(job, build) || WithRoom(job, build) ? build : Anew(job, before);
    }

    /// <summary>What was late on the wall already and can stand there, stays as it is: a slip is no reason to plan the week anew.</summary>
    private bool StoodLate(Job job, Build build)
    {
        var kept = new Board(shop);
        kept.CopyFrom(board);
        var stands = build.Acts.All(a => board.Rows[a.Index].Start >= 0 || loosening.Return(a)) && loosening.Held(build);
        if (!stands)
        {
            board.CopyFrom(kept);
        }

        return stands;
    }

    private bool OnTime(Job job, Build build) => Ladder().Any(terms => placing.Place(job, build, terms));

    private static IEnumerable<Terms> Ladder() =>
    [
        new(false, 0, 0, 0, 0, Tries, 0),
        new(false, 0, Terms.Any, 0, 0, Tries, 0),
        new(true, 0, Terms.Any, 0, 0, Tries, 0),
        new(true, Terms.Any, Terms.Any, 0, 0, Tries, 0),
    ];

    /// <summary>Another cake with a pickup near this one makes room: both are taken off, this one goes first.</summary>
    private bool WithRoom(Job job, Build build)
    {
        var before = new Board(shop);
        before.CopyFrom(board);
        foreach (var other in shop.Jobs.Where(j => j != job && loosening.Whole(chosen[j.Index], j)).OrderBy(j => Math.Abs(j.Due - job.Due)).ThenBy(j => j.Index).Take(Neighbours))
        {
            loosening.Free(other, chosen[other.Index], int.MaxValue, calm);
            loosening.Free(job, build, int.MaxValue, calm);
            if (OnTime(job, build) && OnTime(other, chosen[other.Index]))
            {
                return true;
            }

            board.CopyFrom(before);
        }

        return false;
    }

    /// <summary>The whole job as late as it must be.</summary>
    private Build? Anew(Job job, Board before)
    {
        board.CopyFrom(before);
        loosening.Free(job, chosen[job.Index], int.MaxValue, 0);
        return Session.Insert(insertion, job);
    }
}
