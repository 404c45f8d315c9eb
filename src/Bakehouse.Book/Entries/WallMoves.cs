namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Planning;

/// <summary>What a change moved on the wall, and the way back.</summary>
internal static class WallMoves
{
    /// <summary>The rows of the former wall that differ, as they were, with all its clean-downs.</summary>
    public static Wall Before(Wall before, Wall after)
    {
        var now = after.From(before.Epoch);
        var steps = now.Steps.ToDictionary(r => r.Step);
        var holds = now.Holds.ToDictionary(r => r.Hold);
        return before with
        {
            Plan = before.Plan with
            {
                Steps = [.. before.Plan.Steps.Where(r => !steps.TryGetValue(r.Step, out var row) || !Same(r, row))],
                Holds = [.. before.Plan.Holds.Where(r => holds.GetValueOrDefault(r.Hold) != r)],
            },
        };
    }

    /// <summary>The wall with those rows as they were before; what the book has taken in or out since stays.</summary>
    public static Wall Back(Wall wall, Wall moved)
    {
        var before = moved.From(wall.Epoch);
        var steps = before.Steps.ToDictionary(r => r.Step);
        var holds = before.Holds.ToDictionary(r => r.Hold);
        return wall with
        {
            Plan = wall.Plan with
            {
                Steps = [.. wall.Plan.Steps.Select(r => steps.GetValueOrDefault(r.Step, r))],
                Holds = [.. wall.Plan.Holds.Select(r => holds.GetValueOrDefault(r.Hold, r))],
                Cleans = before.Cleans,
            },
        };
    }

    /// <summary>Without the rows of what is done by now, or assumed to be: those say what happened.</summary>
    public static Wall ToCome(Wall moved, Week week) => Without(moved, week.Fixed.Where(f => f.Why is "done" or Assumed.Why).Select(f => f.Step!));

    /// <summary>
    /// Without the rows of what was ticked. What a slip only implied to be done stays in: taken back, that is as open as it was, and may be in
    /// the oven.
    /// </summary>
    public static Wall NotTicked(Wall moved, IReadOnlyList<Tick> ticks) => Without(moved, ticks.Select(t => t.Step));

    private static Wall Without(Wall moved, IEnumerable<string> steps)
    {
        var left = steps.ToHashSet(StringComparer.Ordinal);
        return moved with { Plan = moved.Plan with { Steps = [.. moved.Plan.Steps.Where(r => !left.Contains(r.Step))] } };
    }

    /// <summary>The wall with those rows as they were before, also with those that were taken off it since. The week leaves out what it does not want any more.</summary>
    public static Wall Restored(Wall wall, Wall moved)
    {
        var (back, before) = (Back(wall, moved), moved.From(wall.Epoch));
        var (steps, holds) = (back.Plan.Steps.Select(r => r.Step).ToHashSet(), back.Plan.Holds.Select(r => r.Hold).ToHashSet());
        return back with
        {
            Plan = back.Plan with
            {
                Steps = [.. back.Plan.Steps, .. before.Steps.Where(r => !steps.Contains(r.Step))],
                Holds = [.. back.Plan.Holds, .. before.Holds.Where(r => !holds.Contains(r.Hold))],
            },
        };
    }

    private static bool Same(StepRow one, StepRow other) =>
        one.Start == other.Start && one.Machine == other.Machine && one.Batch == other.Batch && one.People.SequenceEqual(other.People, StringComparer.Ordinal);
}
