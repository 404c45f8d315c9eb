using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// Places one job while all others stand still: on time in the usual hours if it can be, then without its wishes for
/// freshness, then with overtime, then past a soft age, and only then late, as little as may be.
/// </summary>
internal sealed class Insertion(Shop shop, Board board)
{
    private const int FirstStep = 6;
    private const int Halvings = 5;

    private readonly Placing placing = new(shop, board);
    private bool known;

    public long Work => placing.Work;

    /// <summary>Shifts and the overtime that may be used, per person.</summary>
    public ulong[][] Duty
    {
        get => placing.Duty;
        set => placing.Duty = value;
    }

    /// <summary>Returns the build that now stands, or null (and nothing changed) if no place was found.</summary>
    public Build? Insert(Job job, Manner manner)
    {
        known = false;
        Build? best = null;
        var (bestTerms, bestLevels) = (default(Terms), default(Levels));
        foreach (var build in job.Builds)
        {
            if (OneBuild(job, build, manner) is not { } terms)
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

        return best is not null && Try(job, best, bestTerms) ? best : null;
    }

    /// <summary>Puts what is off of a build beside what stands of it, no later than it stands; true if all of it stands now.</summary>
    public bool Complete(Job job, Build build, Manner manner)
    {
        known = false;
        foreach (var terms in Ladder(0, 0, manner))
        {
            if (Try(job, build, terms))
            {
                return true;
            }
        }

        return false;
    }

    private bool Try(Job job, Build build, Terms terms)
    {
        var placed = placing.Place(job, build, terms, known);
        known = true;
        return placed;
    }

    private Terms? OneBuild(Job job, Build build, Manner m)
    {
        var all = Loosest(0, 0, m);
        if (m.Doubtful && !Try(job, build, all))
        {
            return Late(job, build, m);
        }

        if (m.Doubtful)
        {
            placing.TakeBack();
        }

        return First(job, build, 0, 0, m) ?? (m.Doubtful && Try(job, build, all) ? all : Late(job, build, m));
    }

    private Terms? First(Job job, Build build, int from, int to, Manner m)
    {
        foreach (var terms in Ladder(from, to, m))
        {
            if (Try(job, build, terms))
            {
                return terms;
            }
        }

        return null;
    }

    private static IEnumerable<Terms> Ladder(int from, int to, Manner m)
    {
        var strict = new Terms(false, 0, 0, from, to, m.Tries, m.Twist, m.Early);
        yield return strict;
        if (m.Fresh > 0)
        {
            yield return strict with { Fresh = m.Fresh };
        }

        if (m.Most != Bound.InUsualHours)
        {
            yield return strict with { Overtime = true, Fresh = m.Fresh };
            if (m.Fresh != Terms.Any)
            {
                yield return strict with { Overtime = true, Fresh = Terms.Any };
            }
        }

        if (m.Most == Bound.Anything)
        {
            yield return Loosest(from, to, m);
        }
    }

    private static Terms Loosest(int from, int to, Manner m) => m.Most switch
    {
        Bound.Anything => new(true, Terms.Any, Terms.Any, from, to, m.Tries, m.Twist, m.Early),
        Bound.KeepingAges => new(true, 0, Terms.Any, from, to, m.Tries, m.Twist, m.Early),
        _ => new(false, 0, m.Fresh, from, to, m.Tries, m.Twist, m.Early),
    };

    private Terms? Late(Job job, Build build, Manner m)
    {
        if (job.Outs.Length == 0 || m.MostLate <= 0)
        {
            return null;
        }

        var least = Math.Max(1, placing.LeastLate(job, build, Loosest(0, 0, m)));
        var found = m.Rough ? Within(job, build, Loosest(least, Math.Min(m.MostLate, shop.Grains), m)) : SomeTime(job, build, least, m);
        if (found is not { } terms)
        {
            return null;
        }

        var less = m.Rough && (m.Twist & 3) != 1 ? LessAndLess(job, build, terms) : Earlier(job, build, terms, m.Rough ? Halvings : int.MaxValue);
        return Nicer(job, build, less, m);
    }

    private Terms? Within(Job job, Build build, Terms terms) => terms.From <= terms.To && Try(job, build, terms) ? terms : null;

    private Terms? SomeTime(Job job, Build build, int least, Manner m)
    {
        var step = FirstStep;
        for (var from = least; from <= shop.Grains; from += step, step += step / 2)
        {
            if (Within(job, build, Loosest(from, from + step - 1, m)) is { } terms)
            {
                return terms;
            }
        }

        return null;
    }

    /// <summary>Makes it less late by more and more grains while that goes; nothing stands after it.</summary>
    private Terms LessAndLess(Job job, Build build, Terms found)
    {
        var high = GrainsLate(job);
        placing.TakeBack();
        for (var step = 1; high - step >= found.From && Try(job, build, found with { To = high - step }); step *= 2)
        {
            found = found with { To = high - step };
            high = GrainsLate(job);
            placing.TakeBack();
        }

        return found;
    }

    /// <summary>Halves the lateness found while an earlier pickup can still be met; nothing stands after it.</summary>
    private Terms Earlier(Job job, Build build, Terms found, int times)
    {
        var (low, high) = (found.From, GrainsLate(job));
        placing.TakeBack();
        for (; low < high && times > 0; times--)
        {
            var middle = (low + high - 1) / 2;
            if (Try(job, build, found with { From = low, To = middle }))
            {
                found = found with { From = low, To = middle };
                high = Math.Min(middle, GrainsLate(job));
                placing.TakeBack();
            }
            else
            {
                low = middle + 1;
            }
        }

        return found;
    }

    private Terms Nicer(Job job, Build build, Terms found, Manner manner)
    {
        if ((!manner.Rough || manner.Nice) && First(job, build, found.From, found.To, manner) is { } terms)
        {
            return terms;
        }

        return Try(job, build, found) ? found
            : throw new InvalidOperationException($"Job {job.Index} lost its place at {found.To} grains late.");
    }

    private int GrainsLate(Job job) => job.Outs.Max(o => Score.MinutesLate(shop, board, o)) / shop.Grain;
}

/// <summary>How one insertion searches.</summary>
/// <param name="Tries">Places of steps that may be tried under each terms.</param>
/// <param name="Twist">0, or a number that shuffles which person and store is tried first.</param>
/// <param name="Early">Of 256 steps, so many begin their search earlier than they need to; only with a twist.</param>
/// <param name="Fresh">Grains by which freshness may be passed before overtime is asked for.</param>
/// <param name="Doubtful">Look first if it can be on time at all.</param>
/// <param name="Rough">Take the first lateness found.</param>
/// <param name="Nice">Look for the other wishes at the lateness found, also when rough.</param>
/// <param name="MostLate">Grains late that are still of use.</param>
/// <param name="Most">What else is still of use.</param>
internal readonly record struct Manner(
    int Tries, uint Twist, uint Early = 0, int Fresh = Terms.Any, bool Doubtful = false, bool Rough = false, bool Nice = false, int MostLate = int.MaxValue / 2, Bound Most = Bound.Anything);

/// <summary>How far an insertion may go.</summary>
internal enum Bound
{
    Anything,
    KeepingAges,
    InUsualHours,
}
