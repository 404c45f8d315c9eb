namespace Bakehouse.Domain.Planning;

/// <summary>
/// The wishes of a plan, level by level; less is better and an earlier level always wins.
/// L0 broken rules; L1 minutes late; L2 minutes past a soft age; L3 overtime; L4 freshness and buffer;
/// L5 changes against the plan on the wall; L6 unevenness of hands. Never blended into one number.
/// </summary>
public readonly record struct Levels(long Broken, long Late, long Stale, long Overtime, long Fresh, long Changes, long Uneven)
{
    /// <summary>Negative if this is better than the other, comparing in the order of a plan (or of a repair).</summary>
    public int CompareTo(Levels other, bool repair = false)
    {
        (long, long)[] pairs = repair
            ? [(Broken, other.Broken), (Late, other.Late), (Changes, other.Changes), (Stale, other.Stale), (Overtime, other.Overtime), (Fresh, other.Fresh), (Uneven, other.Uneven)]
            : [(Broken, other.Broken), (Late, other.Late), (Stale, other.Stale), (Overtime, other.Overtime), (Fresh, other.Fresh), (Changes, other.Changes), (Uneven, other.Uneven)];
        foreach (var (mine, theirs) in pairs)
        {
            if (mine != theirs)
            {
                return mine < theirs ? -1 : 1;
            }
        }

        return 0;
    }
}

/// <summary>One broken rule.</summary>
/// <param name="Rule">Id of the rule: W0 to X3.</param>
/// <param name="Sentence">What is wrong, with names and figures, for a person.</param>
/// <param name="Step">Step, hold, order or machine that it is about.</param>
/// <param name="Minute">Minute of the week, or null if it is about no moment.</param>
public sealed record Breach(string Rule, string Sentence, string? Step = null, int? Minute = null);

/// <summary>The Judge's word on a plan.</summary>
public sealed record Verdict(IReadOnlyList<Breach> Breaches, Levels Levels)
{
    /// <summary>True if no rule is broken.</summary>
    public bool Feasible => Breaches.Count == 0;
}
