using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Places one job while all others stand still: on time in the usual hours if it can be, then without its wishes for
/// freshness, then with overtime, then past a soft age, and only then late, as little as may be.
/// </summary>
internal sealed class Insertion(Shop shop, Board board)
{
    private const int FirstStep = 6;

    private readonly Placing placing = new(shop, board);

    public long Work => placing.Work;

    /// <summary>Returns the build that now stands, or null (and nothing changed) if no place was found.</summary>
    public Build? Insert(Job job, int tries, uint twist)
    {
        Build? best = null;
        var (bestTerms, bestLevels) = (default(Terms), default(Levels));
        foreach (var build in job.Builds)
        {
            if (OneBuild(job, build, tries, twist) is not { } terms)
            {
                continue;
            }

            var levels = Score.OfJob(shop, board, job, build) with { Overtime = terms.Overtime ? 1 : 0 };
            if (job.Builds.Length == 1)
            {
                return build;
            }

            placing.TakeBack();
            if (best is null || levels.CompareTo(bestLevels) < 0)
            {
                (best, bestTerms, bestLevels) = (build, terms, levels);
            }
        }

        return best is not null && placing.Place(job, best, bestTerms) ? best : null;
    }

    private Terms? OneBuild(Job job, Build build, int tries, uint twist)
    {
        foreach (var terms in Ladder(0, 0, tries, twist))
        {
            if (placing.Place(job, build, terms))
            {
                return terms;
            }
        }

        return job.Orders.Length == 0 ? null : Late(job, build, tries, twist);
    }

    private static IEnumerable<Terms> Ladder(int from, int to, int tries, uint twist) =>
    [
        new(false, true, true, from, to, tries, twist),
        new(false, true, false, from, to, tries, twist),
        new(true, true, false, from, to, tries, twist),
        new(true, false, false, from, to, tries, twist),
    ];

    private Terms? Late(Job job, Build build, int tries, uint twist)
    {
        var step = FirstStep;
        for (var from = 1; from <= shop.Grains; from += step, step += step / 2)
        {
            var terms = new Terms(true, false, false, from, from + step - 1, tries, twist);
            if (placing.Place(job, build, terms))
            {
                return Nicer(job, build, Earlier(job, build, terms));
            }
        }

        return null;
    }

    /// <summary>Halves the lateness found while an earlier pickup can still be met.</summary>
    private Terms Earlier(Job job, Build build, Terms found)
    {
        var (low, high) = (found.From, GrainsLate(job, build));
        while (low < high)
        {
            placing.TakeBack();
            var middle = (low + high - 1) / 2;
            if (placing.Place(job, build, found with { From = low, To = middle }))
            {
                high = Math.Min(middle, GrainsLate(job, build));
                found = found with { From = low, To = high };
            }
            else
            {
                low = middle + 1;
                found = found with { From = low, To = Math.Max(low, high) };
                Require(placing.Place(job, build, found with { From = Math.Min(low, high), To = high }) || placing.Place(job, build, found), job);
                high = Math.Min(high, GrainsLate(job, build));
            }
        }

        return found with { From = high, To = high };
    }

    private static void Require(bool placed, Job job)
    {
        if (!placed)
        {
            throw new InvalidOperationException($"Job {job.Index} lost its place while it was moved earlier.");
        }
    }

    private Terms Nicer(Job job, Build build, Terms found)
    {
        placing.TakeBack();
        foreach (var terms in Ladder(found.From, found.To, found.Tries, found.Twist))
        {
            if (placing.Place(job, build, terms))
            {
                return terms;
            }
        }

        throw new InvalidOperationException($"Job {job.Index} lost its place at {found.To} grains late.");
    }

    private int GrainsLate(Job job, Build build) => job.Orders.Max(o => Score.MinutesLate(shop, board, build, o)) / shop.Grain;
}
