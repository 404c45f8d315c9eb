namespace Bakehouse.Domain.Answers;

using Bakehouse.Domain.Planning;

/// <summary>When a cake is ready in a plan, and how that stands to its promise. Minutes of the week.</summary>
/// <param name="Ready">End of the last making step.</param>
/// <param name="Flag">When it must leave: the agreed pickup, or the departure that a delivery needs.</param>
/// <param name="Late">Minutes after what is promised, 0 if in time.</param>
/// <param name="Waits">Minutes for which a ready cake has stood past the hour at which its customer wanted to fetch it; else 0.</param>
public sealed record Readiness(int Ready, int Flag, int Late, int Waits)
{
    /// <summary>Minutes from ready to the flag; below zero if it is ready after it.</summary>
    public int Spare => Flag - Ready;

    /// <summary>How that promise stands; null if a step that it needs has no row.</summary>
    /// <param name="now">The minute of looking: what should be done by then and is not, counts as late. Null for the plan alone.</param>
    public static Readiness? Of(Week week, WeekOrder promise, IReadOnlyList<StepRow> rows, int? now = null)
    {
        if (rows.FirstOrDefault(s => s.Step == promise.Ready) is not { } ready || rows.FirstOrDefault(s => s.Step == promise.Out) is not { } away)
        {
            return null;
        }

        int Minutes(string step) => week.Steps.FirstOrDefault(s => s.Id == step)?.Minutes ?? 0;
        var way = promise.EdgeIsEnd ? Minutes(promise.Out) : 0;
        var (isReady, isAway, looked) = (IsDone(week, promise.Ready), IsDone(week, promise.Out), now ?? 0);
        var leaves = Math.Max(away.Start, isAway || (isReady && !promise.EdgeIsEnd) ? 0 : looked);
        return new Readiness(
            Math.Max(ready.Start + Minutes(promise.Ready), isReady ? 0 : looked),
            promise.To - way,
            Math.Max(0, leaves + way - promise.To),
            isReady && !isAway && !promise.EdgeIsEnd ? Math.Max(0, looked - promise.To) : 0);
    }

    private static bool IsDone(Week week, string step) => week.Fixed.Any(f => f.Step == step && f.Why is ("done" or Assumed.Why));
}
