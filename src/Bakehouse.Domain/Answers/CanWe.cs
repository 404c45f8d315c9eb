namespace Bakehouse.Domain.Answers;

using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>What is said while the customer waits: the time that was wished, and if that fails what decides it and what else could be.</summary>
/// <param name="Wished">The order as it was asked for.</param>
/// <param name="Head">The book's head that it was answered on; with another the answer may differ.</param>
public sealed record CanWe(Fit Wished, int Head)
{
    /// <summary>The first time at which the same cake fits without moving anybody; null if none was found or looked for.</summary>
    public Fit? Earliest { get; init; }

    /// <summary>What stands in the way of the wish; null if nothing does, or before it was looked for.</summary>
    public Decides? Decides { get; init; }

    /// <summary>At most three that fit, each another kind, and one at the end where others make way at another time; empty before they were looked for.</summary>
    public IReadOnlyList<Offer> Offers { get; init; } = [];

    /// <summary>True once everything above was looked for.</summary>
    public bool IsWhole { get; init; }
}

/// <summary>How one order fits among the others while they stand still.</summary>
/// <param name="Order">As it was tried.</param>
/// <param name="Ready">When the last making step ends; null without a plan.</param>
/// <param name="Spare">Minutes from ready to when it must leave; below zero if late.</param>
/// <param name="AllLate">Minutes after the promise by order id, of everybody who is late then.</param>
/// <param name="Proof">The whole plan with it; null if there is none.</param>
/// <param name="Reasons">Why it can't be at all: shut, too soon, too large. Empty if it was planned or counted.</param>
public sealed record Fit(Order Order, Instant? Ready, int Spare, IReadOnlyDictionary<string, int> AllLate, Wall? Proof, IReadOnlyList<Reason> Reasons)
{
    /// <summary>Minutes after its own promise; 0 if in time.</summary>
    public int Late => AllLate.GetValueOrDefault(Order.Id.ToString("N"));

    /// <summary>An order that can't be planned at all.</summary>
    public static Fit No(Order order, IReadOnlyList<Reason> reasons) => new(order, null, 0, new Dictionary<string, int>(), null, reasons);

    /// <summary>Beyond the planned days: the hours and places that were counted instead of a plan; else null.</summary>
    public FarBudget? Budget { get; init; }

    /// <summary>True if the promise holds, by a plan or by a budget.</summary>
    public bool IsYes => Budget is { } budget ? budget.Fits : Proof is not null && Late == 0;

    /// <summary>An order beyond the planned days.</summary>
    public static Fit Far(Order order, FarBudget budget) => No(order, []) with { Budget = budget };
}

/// <summary>In what an offer differs from the wish.</summary>
public enum OfferKind
{
    /// <summary>Other cakes move; none of them is late for it.</summary>
    Moves,

    /// <summary>Another day or hour.</summary>
    Time,

    /// <summary>A plainer finish or decoration.</summary>
    Finish,

    /// <summary>Fewer tiers.</summary>
    Build,
}

/// <summary>Something that fits instead.</summary>
/// <param name="Steps">How many steps of other cakes move for it.</param>
/// <param name="Cakes">Numbers of those cakes.</param>
public sealed record Offer(OfferKind Kind, Fit Fit, int Steps, IReadOnlyList<int> Cakes)
{
    /// <summary>What is asked for it more than for the wish, in the shop's money; below zero if less, null while one of the two has no price.</summary>
    public decimal? Dearer { get; init; }
}

/// <summary>What a wish fails on.</summary>
public enum Scarce
{
    /// <summary>Nothing: the cake alone takes longer.</summary>
    Time,

    /// <summary>People's hours.</summary>
    Hands,

    /// <summary>Fridge, freezer or cool room.</summary>
    Cold,

    /// <summary>Ovens or mixers.</summary>
    Machines,
}

/// <summary>What decides: with more of it the wish would hold, or come nearest.</summary>
/// <param name="From">When the first use of what is missing would begin; null for <see cref="Scarce.Time"/>.</param>
/// <param name="Until">When its last use would end.</param>
/// <param name="Minutes">Of work for hands and machines; for cold from first to last.</param>
/// <param name="Still">Minutes late even then; 0 if it would hold.</param>
public sealed record Decides(Scarce What, Instant? From, Instant? Until, int Minutes, int Still)
{
    /// <summary>Id of the person, the shelf, the oven or the mixer; null where no single one is named.</summary>
    public string? Whose { get; init; }

    /// <summary>From then until then: minutes of work that this cake asks of the person or the machine, or centimetres of width on the shelf; 0 if not known.</summary>
    public int Needed { get; init; }

    /// <summary>Of that, what is there: minutes of the person that other cakes leave, or the shelf's width in centimetres.</summary>
    public int There { get; init; }
}
