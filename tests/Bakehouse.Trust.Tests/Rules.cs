namespace Bakehouse.Trust.Tests;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;

/// <summary>What the Judge says of the wall of a book that lives.</summary>
internal static class Rules
{
    /// <summary>
    /// Broken rules. X2 does not count: it can come by time passing, when work that nobody has ticked stands before now until the book
    /// changes. Nor do the hands of what is assumed since, nor a wait for what ran out once that hour has come: the week knows it no more, the wall until the next change. A cake that found no room hangs on the wall with no step at all: what is said of that cake is let by.
    /// </summary>
    public static IReadOnlyList<Breach> Broken(Week week, Wall wall)
    {
        var planned = wall.Plan.Steps.Select(s => StepKey.Parse(s.Step)!.Value.Order).ToHashSet();
        return [.. Judge.Examine(week, Assumed.Taken(wall.From(week.Epoch), week.Fixed)).Breaches.Where(b => b.Rule != "X2" && !IsOver(b) && !InNoPlan(b, planned))];
    }

    private static bool IsOver(Breach breach) => breach is { Rule: "W0", Step: { } step } && StepKey.Parse(step.Split('>')[0]) is { Operation: "wait" };

    private static bool InNoPlan(Breach breach, HashSet<Guid> planned) =>
        breach.Step is { } step && StepKey.Parse(step.Split('>')[0]) is { } key && !planned.Contains(key.Order);
}
