namespace Bakehouse.Web.TheKitchen.Wrong;

/// <summary>One big button: what it says, a second line, and where it leads.</summary>
public sealed record Pick(string Words, string Second, string Href);

/// <summary>What the page asks, or shows, at this point.</summary>
/// <param name="Title">"Something’s wrong", then what was picked.</param>
/// <param name="Picks">What may be picked next; empty if nothing is left to ask.</param>
public sealed record WrongView(string Title, IReadOnlyList<Pick> Picks)
{
    /// <summary>What to do where there is nothing to pick; else empty.</summary>
    public string Nothing { get; init; } = "";

    /// <summary>Also a from and until by the clock may be written.</summary>
    public HoursAsked? Hours { get; init; }

    /// <summary>What would happen; null until all is picked.</summary>
    public ForetoldView? Foretold { get; init; }

    /// <summary>What stands, newest first; shown on the first page.</summary>
    public IReadOnlyList<ToldSlip> Told { get; init; } = [];
}

/// <summary>Hours to write, as a browser's own field has them.</summary>
/// <param name="Kind">What went wrong.</param>
/// <param name="About">What it is about.</param>
/// <param name="From">Null if it is now.</param>
public sealed record HoursAsked(string Kind, string About, string? From, string Until);

/// <summary>What would happen before it counts.</summary>
/// <param name="Says">One sentence: what is told.</param>
/// <param name="Refusals">Why it can't be told; empty if it can.</param>
/// <param name="Moves">Each step that moves, in a line.</param>
/// <param name="Red">Each cake that turns late, or finds no room.</param>
/// <param name="Tight">Each cake that has little to spare then.</param>
/// <param name="People">Who of the shop must be told.</param>
/// <param name="Customers">Which customers must be told, with their phone.</param>
/// <param name="Send">What "Do it" sends.</param>
/// <param name="Instead">The same another way: spare layers instead of baking, and back.</param>
public sealed record ForetoldView(
    string Says,
    IReadOnlyList<string> Refusals,
    IReadOnlyList<string> Moves,
    IReadOnlyList<string> Red,
    IReadOnlyList<string> Tight,
    IReadOnlyList<string> People,
    IReadOnlyList<string> Customers,
    Telling Send,
    Pick? Instead)
{
    /// <summary>Ids of the people and orders to be told, with commas between: shown again when it is done.</summary>
    public string Tell { get; init; } = "";

    /// <summary>Which spare sponges are taken, or that none are counted; empty where none are wanted.</summary>
    public string Freezer { get; init; } = "";

    /// <summary>What else the book says to it.</summary>
    public string Message { get; init; } = "";
}

/// <summary>A slip that stands.</summary>
/// <param name="Fresh">True if it was told just now on this screen.</param>
/// <param name="Tell">Who must hear of it, if it is fresh: "Ines, Petra, 402 Moss +44…"; else empty.</param>
public sealed record ToldSlip(Guid Id, string Says, string When, bool Fresh, string Tell);

/// <summary>What a screen sends: the slip in words, or the one to take back.</summary>
/// <param name="Id">Made on the screen; sent twice it counts once.</param>
/// <param name="Kind">The kind's name.</param>
/// <param name="About">Keys and ids.</param>
/// <param name="From">ISO 8601, UTC; null where there is none.</param>
/// <param name="Until">The same.</param>
/// <param name="Back">Id of the slip to take back; then nothing else counts.</param>
public sealed record Telling(Guid Id, string? Kind, IReadOnlyList<string>? About, string? From, string? Until, bool Spare, Guid? Back);
