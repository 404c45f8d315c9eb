namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Slips;

/// <summary>What somebody has set or told by hand and the planner plans around.</summary>
/// <param name="Pins">Steps held where they were put; one a step at most.</param>
/// <param name="Chores">Newest versions of the work that is no order.</param>
public sealed record ByHand(IReadOnlyList<Pin> Pins, IReadOnlyList<Chore> Chores)
{
    /// <summary>Nothing was set by hand.</summary>
    public static ByHand Nothing { get; } = new([], []);

    /// <summary>What went wrong, as told; without what was taken back.</summary>
    public IReadOnlyList<Slip> Slips { get; init; } = [];

    /// <summary>When somebody last said of a step that it is not done: it is not assumed by what was planned until then.</summary>
    public IReadOnlyDictionary<string, Instant> NotDone { get; init; } = new Dictionary<string, Instant>();

    /// <summary>The recipes that an order is made from: what they contain goes into its bowls and pans. Nothing is known of them unless told.</summary>
    public Func<Order, Cookbook> RecipesOf { get; init; } = _ => Cookbook.Empty;

    /// <summary>The same with this pin in the place of an earlier one of its step.</summary>
    public ByHand With(Pin pin) => this with { Pins = [.. Pins.Where(p => p.Step != pin.Step), pin] };
}

/// <summary>
/// A step stays at that time with those people and on that machine until it is unpinned. It counts while the wall has it there; where
/// what happened leaves no room for it, the plan goes on without it.
/// </summary>
/// <param name="Step">The step's key as text.</param>
/// <param name="Start">When it begins.</param>
/// <param name="People">Ids; empty if it needs no hands.</param>
/// <param name="Machine">Oven or bowl, or null.</param>
public sealed record Pin(string Step, Instant Start, IReadOnlyList<string> People, string? Machine)
{
    /// <summary>True if that row has the step as pinned.</summary>
    /// <param name="epoch">Minute 0 of the row.</param>
    public bool Is(StepRow row, Instant epoch) => row.Step == Step && epoch + Duration.FromMinutes(row.Start) == Start
        && row.Machine == Machine && row.People.ToHashSet().SetEquals(People);
}
