namespace Bakehouse.Domain.Planning;

/// <summary>Makes plans. Same input, same plan, byte by byte on any machine.</summary>
public interface IPlanner
{
    /// <summary>
    /// Plans the whole week. Orders whose rows all stand in the week's reference keep them, as far as the fixed rows
    /// allow; the others are placed one by one, backwards from their pickups.
    /// </summary>
    /// <returns>A plan that breaks no rule, with minutes late per order, or the reasons why no plan can do it.</returns>
    PlanOutcome Plan(Week week, CancellationToken cancel = default);

    /// <summary>Places only the steps that the reference lacks; every row of the reference stands still (rule X3).</summary>
    PlanOutcome Insert(Week week, CancellationToken cancel = default);

    /// <summary>
    /// After a tick or a slip: keeps the reference's people, places and order of work and pushes later only what can't
    /// stand any more. Everything else keeps its rows.
    /// </summary>
    PlanOutcome Push(Week week, CancellationToken cancel = default);

    /// <summary>
    /// After something went wrong: promises first, then as few changes against the reference as are found (levels in the order of a
    /// repair). Never makes late what <see cref="Push"/> keeps.
    /// </summary>
    /// <param name="calmUntil">
    /// Rows of the reference that start before this minute and can stand do so, unless a promise would fall by it.
    /// </param>
    PlanOutcome Repair(Week week, int calmUntil, CancellationToken cancel = default);
}

/// <summary>What a planner returns: a plan with what is late, or reasons why there can be none.</summary>
/// <param name="Plan">Null if no plan can do it.</param>
/// <param name="Late">Minutes late by order id, only orders that are late.</param>
/// <param name="Reasons">Why there is no plan, each naming step, place, person and what to try; empty if there is one.</param>
public sealed record PlanOutcome(Plan? Plan, IReadOnlyDictionary<string, int> Late, IReadOnlyList<Reason> Reasons);

/// <summary>Why something can't be, in the baker's words, and what to try.</summary>
public sealed record Reason(string Sentence, string Try, string? Order = null, string? Step = null);
