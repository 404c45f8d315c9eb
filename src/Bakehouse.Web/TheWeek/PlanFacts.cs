namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>What the plan on the wall says, as instants and names: drawing, table, tray and list all read this.</summary>
/// <param name="Cakes">By the time on their flag.</param>
/// <param name="Cleans">Wet clean-downs; their cake is empty.</param>
public sealed record PlanFacts(
    Instant Now,
    Shop Shop,
    IReadOnlyList<CakeFacts> Cakes,
    IReadOnlyList<StepFacts> Cleans,
    IReadOnlyList<PersonFacts> People,
    IReadOnlyList<MachineFacts> Machines,
    IReadOnlyList<StoreFacts> Stores)
{
    /// <summary>Facts of the book at that instant; null if there is no shop. No cakes if nothing is planned.</summary>
    public static PlanFacts? Of(BookState state, Instant now) => state switch
    {
        { Shop: null } => null,
        { Week: { } week, Wall: { } wall } => new FactsReader(state, week, wall.From(week.Epoch)).Read(now),
        _ => new PlanFacts(now, state.Shop, [], [], [], [], []),
    };

    /// <summary>Work that is no order, as it comes.</summary>
    public IReadOnlyList<ChoreFacts> Chores { get; init; } = [];

    /// <summary>Every step of every cake and every clean-down.</summary>
    public IEnumerable<StepFacts> Work => Cakes.SelectMany(c => c.Steps).Concat(Cleans);

    /// <summary>Name of a person as known to the plan.</summary>
    public string NameOf(string person) => People.FirstOrDefault(p => p.Id == person)?.Name ?? person;

    /// <summary>Name of a store or machine.</summary>
    public string PlaceOf(string id) =>
        Stores.FirstOrDefault(s => s.Id == id)?.Name ?? Machines.FirstOrDefault(m => m.Id == id)?.Name ?? id;
}

/// <summary>One cake of the plan.</summary>
/// <param name="Order">The order in the book, or null if the plan knows it by name only.</param>
/// <param name="Steps">By start; the handover itself is among them.</param>
/// <param name="Door">When it must be at the door, for a delivery.</param>
public sealed record CakeFacts(
    string Id,
    Order? Order,
    string Number,
    string Name,
    string Build,
    IReadOnlyList<StepFacts> Steps,
    IReadOnlyList<WaitFacts> Waits,
    string Out,
    Standing Standing,
    Instant? Door)
{
    /// <summary>When it must leave.</summary>
    public Instant Flag => Standing.Flag;

    /// <summary>Minutes by which the promise is missed.</summary>
    public int Late => Standing.Late;

    /// <summary>In time, tight (under the shop's buffer) or late.</summary>
    public MarkKind State => Standing.Mark;

    /// <summary>End of the last step before it leaves; the flag if there is none.</summary>
    public Instant Last => Steps.Where(s => s.Id != Out && s.Operation != "return").Select(s => s.To).DefaultIfEmpty(Flag).Max();

    /// <summary>"409 Lindqvist".</summary>
    public string Title => Name.Length == 0 ? Number : $"{Number} {Name}";

    /// <summary>"1 h 40 late" or "20 min".</summary>
    public string Says => Late > 0 ? $"{Words.Late(Late)} late" : Words.Minutes(Math.Max(0, Standing.Spare));
}

/// <summary>How a step is drawn.</summary>
public enum StepLook
{
    /// <summary>Somebody's hands.</summary>
    Hands,

    /// <summary>In the oven.</summary>
    Oven,

    /// <summary>In a bowl.</summary>
    Mixer,

    /// <summary>A wet clean-down.</summary>
    Clean,
}

/// <summary>One step of the plan.</summary>
/// <param name="Cake">Id of its cake, "" for a clean-down.</param>
/// <param name="What">"Final coat, 8 in".</param>
/// <param name="Operation">Word of the method: bake, coat ...</param>
/// <param name="Verb">The first words of it: "Final coat".</param>
/// <param name="Pinned">True if it stays there until it is unpinned.</param>
public sealed record StepFacts(
    string Id,
    string Cake,
    string Operation,
    string Verb,
    string What,
    Instant From,
    Instant To,
    IReadOnlyList<string> People,
    string? Machine,
    string? Batch,
    StepLook Look,
    bool Done,
    bool Pinned = false);

/// <summary>Something waits between two steps.</summary>
/// <param name="Kind">fridge, freezer, cool, rack, bench, van, tubs or none.</param>
/// <param name="Least">Least minutes there.</param>
/// <param name="Most">Most minutes there.</param>
public sealed record WaitFacts(
    string Id, string Cake, string FromStep, string ToStep, string Store, string Kind, Instant From, Instant To, int Places, int Least, int Most);

/// <summary>Work that is no order, once.</summary>
/// <param name="People">Ids of who is taken.</param>
/// <param name="Machines">Ids of ovens and bowls.</param>
/// <param name="Shelves">Ids of shelves that are full meanwhile.</param>
public sealed record ChoreFacts(
    string Name, Instant From, Instant To, IReadOnlyList<string> People, IReadOnlyList<string> Machines, IReadOnlyList<string> Shelves);

/// <summary>Somebody and the hours at work.</summary>
public sealed record PersonFacts(string Id, string Name, IReadOnlyList<Interval> Shifts);

/// <summary>An oven or a bowl.</summary>
public sealed record MachineFacts(string Id, string Name, bool IsOven);

/// <summary>Somewhere to stand.</summary>
public sealed record StoreFacts(string Id, string Name, string Kind, int Places);
