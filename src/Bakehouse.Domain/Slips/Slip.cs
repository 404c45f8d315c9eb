namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Methods;

/// <summary>What can go wrong in a kitchen.</summary>
public enum SlipKind
{
    /// <summary>A sponge cracked, sank or was lost: its layers are baked again, or a spare from the freezer takes their place.</summary>
    Cracked,

    /// <summary>A coat, a filling or decor is not firm yet: what comes after it waits.</summary>
    NotSet,

    /// <summary>Something is used up: what needs it waits until it is there.</summary>
    RanOut,

    /// <summary>An oven, a bowl or a fridge can't be used for a time.</summary>
    Out,

    /// <summary>The step in hand ends later.</summary>
    Behind,

    /// <summary>Somebody is not there.</summary>
    Away,

    /// <summary>The customer comes earlier or later: the order carries the new hour, the slip that it was moved.</summary>
    Pickup,

    /// <summary>The owner begins a step before its wait is over.</summary>
    Anyway,
}

/// <summary>
/// Something went otherwise than planned: a fact, written once and never changed. What it does to the plan is computed each time
/// (<see cref="SlippedWeek"/>), so the same facts always give the same week.
/// </summary>
/// <param name="Id">128 random bits, made where it was told.</param>
/// <param name="About">
/// Cracked: keys of bakes. NotSet, Behind, Anyway: keys of steps. RanOut: batters, creams and fillings by id, or keys of steps. Out: ids of
/// ovens, bowls and shelves. Away: ids of people. Pickup: the order's id. Never empty.
/// </param>
/// <param name="Told">When somebody said so.</param>
/// <param name="Person">Id of who said so.</param>
/// <param name="From">Out and Away: since when. Behind: when the step began. Anyway: when it is to begin. Pickup: the hour agreed before. Else null.</param>
/// <param name="Until">
/// NotSet, RanOut: what waits may begin then. Out, Away: usable or back then. Behind: when the step will be done. Pickup: the new hour. Else null.
/// </param>
/// <param name="Spare">Cracked: true if spare layers of the same sponge are taken instead.</param>
public sealed record Slip(
    Guid Id, SlipKind Kind, IReadOnlyList<string> About, Instant Told, string Person, Instant? From = null, Instant? Until = null, bool Spare = false)
{
    /// <summary>Cracked, with spares: which of those counted in the freezer were taken; null if none were counted.</summary>
    public IReadOnlyList<SpareSponges>? Took { get; init; }

    /// <summary>Between the ordinal of a load and that of the one baked in its place; a tier has far fewer loads.</summary>
    internal const int Between = 100;

    /// <summary>The key of what comes in the place of a lost load.</summary>
    public static StepKey Again(StepKey load) => load with { Ordinal = load.Ordinal + Between };

    /// <summary>Which of a tier's loads a step belongs to, counted from 0, whether it is the first or comes in the place of a lost one.</summary>
    public static int LoadOf(StepKey step) => (step.Ordinal - 1) % Between;

    /// <summary>Operations after which something cools or sets.</summary>
    public static IReadOnlySet<string> Sets { get; } = new HashSet<string>(StringComparer.Ordinal) { "fill", "crumb", "coat", "cover", "drip", "decorate", "pipe", "filling", "turnout", "bake" };
}
