namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>The steps that nobody ticked and that are taken as done at a moment, with their planned ends.</summary>
public sealed class AssumedNow
{
    private readonly Dictionary<string, (Instant End, string? Person)> rows;

    /// <summary>Pure.</summary>
    /// <param name="now">The moment of looking; the week may have been compiled earlier.</param>
    /// <param name="notDone">What somebody said is not done, and when.</param>
    public AssumedNow(Week week, Wall wall, IReadOnlyList<Tick> ticks, Instant now, IReadOnlyDictionary<string, Instant> notDone)
    {
        var plan = new OpenPlan(week, wall, ticks, now, notDone);
        rows = plan.AssumedRows.ToDictionary(r => r.Step, r => (plan.At(plan.End(r)), r.People.Count > 0 ? r.People[0] : null));
    }

    /// <summary>The steps.</summary>
    public IEnumerable<string> Steps => rows.Keys;

    /// <summary>True if that step is assumed.</summary>
    public bool Contains(string step) => rows.ContainsKey(step);

    /// <summary>When a step ended if it was done as planned, and who was planned, if that is still known; null if it is not assumed.</summary>
    public (Instant End, string? Person)? AsPlanned(string step) => rows.TryGetValue(step, out var row) ? row : null;
}
