namespace Bakehouse.Planner.Network;

/// <summary>How many schedules may be generated, and the best one so far.</summary>
/// <param name="total">Schedules, every generated one counted.</param>
/// <param name="better">Told of each better one; null if nobody listens.</param>
/// <param name="cancel">Ends the search like an empty budget; what was found stays.</param>
internal sealed class Budget(int total, Action<Found>? better, CancellationToken cancel)
{
    public int Total => total;

    /// <summary>Schedules generated.</summary>
    public int Used { get; private set; }

    public bool Left => Used < total && !cancel.IsCancellationRequested;

    /// <summary>End of the best schedule; the greatest number if there is none.</summary>
    public int Best { get; private set; } = int.MaxValue;

    /// <summary>Starts of the best schedule; empty if there is none.</summary>
    public int[] Starts { get; private set; } = [];

    public void Count(int schedules = 1) => Used += schedules;

    /// <summary>Keeps a schedule that is better than all before.</summary>
    public void Tell(int[] starts, int end)
    {
        if (end < Best)
        {
            (Best, Starts) = (end, (int[])starts.Clone());
            better?.Invoke(new Found(Used, end, Starts));
        }
    }
}

/// <summary>A better schedule.</summary>
/// <param name="Schedules">Generated so far.</param>
/// <param name="End">Grain at which the last activity ends.</param>
/// <param name="Starts">Start by activity.</param>
internal sealed record Found(int Schedules, int End, int[] Starts);
