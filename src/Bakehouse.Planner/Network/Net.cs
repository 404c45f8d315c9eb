namespace Bakehouse.Planner.Network;

/// <summary>
/// A scheduling problem without trade words: activities that are never interrupted, gaps between their starts, and resources that
/// are given back when an activity ends. Time is a whole number of grains from 0. Checked when made.
/// </summary>
internal sealed class Net
{
    /// <param name="activities">Each with its modes, at least one.</param>
    /// <param name="lags">Gaps between starts; an activity may have any number.</param>
    /// <param name="resources">What activities take while they run.</param>
    /// <param name="horizon">All activities end at or before it.</param>
    /// <exception cref="ArgumentException">One message that names everything that does not fit together.</exception>
    public Net(IReadOnlyList<Activity> activities, IReadOnlyList<Lag> lags, IReadOnlyList<Renewable> resources, int horizon)
    {
        (Activities, Lags, Resources, Horizon) = (activities, lags, resources, horizon);
        var wrong = NetChecks.Of(this).ToList();
        if (wrong.Count > 0)
        {
            throw new ArgumentException(string.Join(" ", wrong), nameof(activities));
        }
    }

    public IReadOnlyList<Activity> Activities { get; }

    public IReadOnlyList<Lag> Lags { get; }

    public IReadOnlyList<Renewable> Resources { get; }

    public int Horizon { get; }
}

/// <summary>Something that is done once, in one of its modes.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Modes">Ways to do it; the first is the usual one.</param>
/// <param name="From">It starts at or after this grain.</param>
internal sealed record Activity(string Name, IReadOnlyList<Mode> Modes, int From = 0);

/// <summary>A way to do an activity.</summary>
/// <param name="Length">Grains from start to end.</param>
/// <param name="Demand">Units of each resource, in the order of the net's resources, from start to end.</param>
internal sealed record Mode(int Length, IReadOnlyList<int> Demand);

/// <summary>
/// start(To) is at least start(From) + Least. A most gap of g from a to b is a lag from b to a of -g. With
/// <paramref name="AfterEnd"/> the length of From's mode is added: end(From) + Least.
/// </summary>
internal readonly record struct Lag(int From, int To, int Least, bool AfterEnd = false);

/// <summary>A resource that is given back.</summary>
/// <param name="Name">For messages.</param>
/// <param name="Capacity">Units at any time.</param>
/// <param name="Calendar">Units by grain, of the horizon's length and at most <paramref name="Capacity"/>; null if always all.</param>
internal sealed record Renewable(string Name, int Capacity, IReadOnlyList<int>? Calendar = null);
