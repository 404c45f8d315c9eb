namespace Bakehouse.Domain.Reminders;

/// <summary>What calls.</summary>
public enum RingKind
{
    /// <summary>A tier or cake must leave the fridge.</summary>
    LeaveFridge,

    /// <summary>A load must leave the oven.</summary>
    OvenOut,

    /// <summary>A cake is handed over.</summary>
    Handover,

    /// <summary>A cake that is still here passes a food limit. Silent while all goes as planned.</summary>
    FoodLimit,
}

/// <summary>
/// A reminder as it follows from the plan: computed, never stored; so none can ring for a plan that was withdrawn.
/// </summary>
/// <param name="Id">Kind and the step's key: "LeaveFridge:..." ; the same job keeps its id when the plan moves.</param>
/// <param name="Step">Key of the step that it calls for.</param>
/// <param name="Due">When it must ring.</param>
/// <param name="Person">Id of the person planned for it, or null.</param>
/// <param name="Verb">Two or three words for two metres: "Take out".</param>
/// <param name="Place">Where: "Fridge 1, level 3".</param>
/// <param name="PlaceId">Id of the shelf or oven, for the picture.</param>
/// <param name="What">Tier and flavour: "8 in, carrot".</param>
/// <param name="Order">Number and name: "405 Moss".</param>
/// <param name="Why">One sentence.</param>
/// <param name="SlackUntil">"+10 min" is offered while it ends before this; null if there is none.</param>
public sealed record Ring(
    string Id,
    RingKind Kind,
    string Step,
    Instant Due,
    string? Person,
    string Verb,
    string Place,
    string PlaceId,
    string What,
    string Order,
    string Why,
    Instant? SlackUntil)
{
    /// <summary>From so long after its due a ring is late and says how late.</summary>
    public static Duration LateAfter { get; } = Duration.FromSeconds(60);

    /// <summary>How much later "+10 min" is.</summary>
    public static Duration Later { get; } = Duration.FromMinutes(10);

    /// <summary>Every step that "done" ticks: all pans of a load that come out together; none for a food limit; else the one step.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [Step];

    /// <summary>When it would have rung if the shop were not quiet then; null if it was not held.</summary>
    public Instant? HeldSince { get; init; }

    /// <summary>When the cake passes a food limit if it is still here; null if none bears on it.</summary>
    public Instant? FoodEnds { get; init; }

    /// <summary>True for what rings on a day that goes as planned.</summary>
    public bool ComesByItself => Kind != RingKind.FoodLimit;

    /// <summary>How it stands at that moment.</summary>
    public RingState At(Instant now) =>
        now < Due ? RingState.Waiting : now - Due >= LateAfter ? RingState.Late : RingState.Ringing;

    /// <summary>True if "+10 min" from now still ends within the slack.</summary>
    public bool MayWait(Instant now) => SlackUntil is { } until && now + Later <= until;
}

/// <summary>How an open ring stands.</summary>
public enum RingState
{
    /// <summary>Not due yet.</summary>
    Waiting,

    /// <summary>Due: it rings on every screen.</summary>
    Ringing,

    /// <summary>Due for 60 s or more: it rings, first in the list, with how late it is.</summary>
    Late,
}

/// <summary>How somebody answered.</summary>
public enum RingAnswerKind
{
    /// <summary>Done.</summary>
    Done,

    /// <summary>Ten minutes later.</summary>
    Later,

    /// <summary>It can't be done now.</summary>
    Cannot,
}

/// <summary>What happened to a ring, stored: who answered what, when. Answered Later, it rings again at <paramref name="Until"/>.</summary>
public sealed record RingAnswer(string Ring, RingAnswerKind Kind, string Reason, string Person, Instant At, Instant? Until);
