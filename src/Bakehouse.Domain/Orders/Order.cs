namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Measures;

/// <summary>One order as agreed with a customer. Immutable; every change is a new version, none is overwritten.</summary>
/// <param name="Id">Given when the order is first written down, never changes.</param>
/// <param name="Number">The short number that people say; digits only.</param>
/// <param name="Version">1 and up; stands on every ticket.</param>
/// <param name="Tiers">All that is made and eaten: the tiers that stand on each other, bottom first, then what stands beside them.</param>
/// <param name="Inscription">Written on the cake, as spelt; may be empty.</param>
/// <param name="WiderAboveAgreed">The owner's tick that a wider tier may stand above a narrower one.</param>
/// <param name="BeyondCapAgreed">The owner's tick that it is taken although the day's cap is reached.</param>
public sealed record Order(
    Guid Id,
    int Number,
    int Version,
    Stage Stage,
    Customer Customer,
    Handover Handover,
    LocalDateTime? Cutting,
    Portions Portions,
    IReadOnlyList<CakeTier> Tiers,
    Finish Finish,
    Decoration Decoration,
    AllergyAnswer Allergies,
    string Inscription,
    string Notes,
    bool WiderAboveAgreed = false,
    bool BeyondCapAgreed = false)
{
    /// <summary>The recipes that it is made from; null as long as it is not planned, or was planned before there were any.</summary>
    public MadeFrom? MadeFrom { get; init; }

    /// <summary>Who wrote down what was said about allergies, and who read it back; null where nothing must be avoided.</summary>
    public Statement? Statement { get; init; }

    /// <summary>What was agreed with the customer; null as long as no price was.</summary>
    public AgreedPrice? Price { get; init; }

    /// <summary>Until when a kept day is kept; null for any other stage, and for a day that is kept for good.</summary>
    public Instant? KeptUntil { get; init; }

    /// <summary>Fresh flowers and things on the finished cake; null if nothing was asked for.</summary>
    public OnTop? OnTop { get; init; }

    /// <summary>Who will eat, where it makes a difference; null if nothing was told.</summary>
    public Eaters? Eaters { get; init; }

    /// <summary>Who eats, if the portions were counted from guests; null if portions were asked for.</summary>
    public Guests? Guests { get; init; }

    /// <summary>Portions short of what was asked that the customer was told of and takes; 0 as long as nobody was told.</summary>
    public int ShortTold { get; init; }

    /// <summary>The tiers that stand on each other, bottom first; empty if only cupcakes are ordered.</summary>
    public IReadOnlyList<CakeTier> Stack => [.. Tiers.Where(t => !t.StandsBeside)];

    /// <summary>Batches of cupcakes; empty if none are ordered.</summary>
    public IReadOnlyList<CakeTier> Beside => [.. Tiers.Where(t => t.StandsBeside)];

    /// <summary>"6+8+10": top first, as it is said in the shop, in inches.</summary>
    public string SizeInInches => TierNames.Build(Tiers, inches: true);

    /// <summary>For logs and faults: which one it is, and nothing that was said.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"Order {Id:N}, version {Version}, {Stage}");
}

/// <summary>A price as it was agreed, in the shop's currency.</summary>
/// <param name="Amount">Zero or more.</param>
/// <param name="Reason">Why it is under the floor; else may be empty.</param>
public sealed record AgreedPrice(decimal Amount, string Reason = "")
{
    /// <summary>Never prints what was agreed.</summary>
    public override string ToString() => "«kept out»";
}

/// <summary>Who ordered it.</summary>
/// <param name="Phone">In international form (E.164), e.g. +442079460182, or empty.</param>
public sealed record Customer(string Name, string Phone)
{
    /// <summary>Never prints who it is.</summary>
    public override string ToString() => "«kept out»";
}

/// <summary>How the cake leaves the shop.</summary>
public enum Way
{
    /// <summary>The customer comes for it.</summary>
    Collect,

    /// <summary>The shop brings it.</summary>
    Deliver,
}

/// <summary>The promise: a local date and time in the shop's zone.</summary>
/// <param name="At">When it is collected, or when it must be at the door.</param>
/// <param name="Address">For a delivery, else empty.</param>
/// <param name="RouteMinutes">Minutes on the road for a delivery, else 0.</param>
public sealed record Handover(Way Way, LocalDateTime At, string Address, int RouteMinutes)
{
    /// <summary>Never prints the address.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Way} {At:uuuu-MM-dd HH:mm}");
}

/// <summary>How a cake is cut.</summary>
public enum Cut
{
    /// <summary>Dessert slices, 1.5 x 2 in.</summary>
    Dessert,

    /// <summary>With coffee: fingers, 1 x 2 in.</summary>
    Coffee,
}

/// <summary>How many portions the customer wants and how they are cut.</summary>
public sealed record Portions(int Count, Cut Cut);

/// <summary>One tier, or a batch of cupcakes beside the tiers.</summary>
/// <param name="Id">Given at birth; survives reordering and every edit. Steps are known by it.</param>
/// <param name="Diameter">Of the bare tier (the pan).</param>
/// <param name="Height">Of the bare tier.</param>
/// <param name="Layers">Sponge layers, 1 to 8; there is one filling fewer.</param>
/// <param name="Sponge">Id of a sponge of the methods, e.g. vanilla.</param>
/// <param name="Filling">Id of a filling of the methods, e.g. raspberry-jam.</param>
/// <param name="Colours">Colours of the final coat; the shares add up to 1.</param>
public sealed record CakeTier(
    Guid Id, Length Diameter, Length Height, int Layers, string Sponge, string Filling, IReadOnlyList<CoatColour> Colours)
{
    /// <summary>What makes it other than a plain round tier of equal layers; null if nothing does.</summary>
    public TierSpecial? Special { get; init; }

    /// <summary>Its outline without coats; of cupcakes that of a tin. Throws where <see cref="BuildProblems"/> names a problem of it.</summary>
    public Shape Shape => StandsBeside ? Cupcakes.Tin : Special?.Outline?.ToShape() ?? new Round(Diameter);

    /// <summary>True for cupcakes: they stand beside the tiers, which are on each other.</summary>
    public bool StandsBeside => Cupcakes.Are(this);

    /// <summary>True for foam: it takes no batter, and nobody eats it.</summary>
    public bool IsFalse => Special?.IsFalse == true;
}

/// <summary>A colour of the coat, its swatch as #RRGGBB and its share of that coat, 0 to 1.</summary>
public sealed record CoatColour(string Name, string Swatch, decimal Share);

/// <summary>How the outside is finished in buttercream.</summary>
public enum Finish
{
    /// <summary>Smooth, sharp or rounded.</summary>
    Smooth,

    /// <summary>Swirled or combed.</summary>
    Textured,

    /// <summary>Thin, the layers show through.</summary>
    SemiNaked,
}

/// <summary>How much decoration each tier gets.</summary>
public enum Decoration
{
    /// <summary>Border and little else.</summary>
    Simple,

    /// <summary>Three quarters of an hour on the reference tier.</summary>
    Medium,

    /// <summary>Rich piping or flowers.</summary>
    Rich,
}

/// <summary>What the customer said when asked about allergies. It must be asked; the words are kept as said.</summary>
/// <param name="Avoid">Allergens as the planner knows them: wheat, egg, milk, nuts, peanuts, sesame, soya ...</param>
public sealed record AllergyAnswer(AllergyKind Kind, IReadOnlyList<string> Avoid, string Words)
{
    /// <summary>How hard it is, in the customer's word; the careful one as long as nobody has asked.</summary>
    public CustomersWord Told { get; init; }

    /// <summary>The words that somebody has judged: everything in them that must be avoided is ticked. Other words are to be judged anew.</summary>
    public string Judged { get; init; } = "";

    /// <summary>True if the customer's own words stand beside what is ticked and nobody has judged them yet: they may name something more.</summary>
    public bool MustBeJudged => Kind == AllergyKind.Avoid && Told != CustomersWord.Dislike && Avoid.Count > 0 && Words.Trim() is { Length: > 0 } words && words != Judged.Trim();

    /// <summary>Never prints what was said.</summary>
    public override string ToString() => Kind.ToString();

    /// <summary>Nobody has asked yet.</summary>
    public static AllergyAnswer NotAsked { get; } = new(AllergyKind.NotAsked, [], "");

    /// <summary>Asked; none told.</summary>
    public static AllergyAnswer NoneTold { get; } = new(AllergyKind.NoneTold, [], "");
}

/// <summary>The answer about allergies.</summary>
public enum AllergyKind
{
    /// <summary>Not asked yet: the order can't be taken.</summary>
    NotAsked,

    /// <summary>Asked, and none was told.</summary>
    NoneTold,

    /// <summary>Something must be avoided.</summary>
    Avoid,
}

/// <summary>How hard something must be avoided, in the customer's word.</summary>
public enum CustomersWord
{
    /// <summary>An allergy.</summary>
    Allergy,

    /// <summary>An allergy that can kill.</summary>
    Anaphylaxis,

    /// <summary>It is borne badly.</summary>
    Intolerance,

    /// <summary>Not liked, not wanted.</summary>
    Dislike,
}
