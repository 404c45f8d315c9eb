namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>What the kitchen screen shows at a moment. Plain data; the components only draw it.</summary>
/// <param name="Now">Wall time in the shop.</param>
/// <param name="Bands">One or two people with the step at hand.</param>
/// <param name="Then">What follows, earliest first.</param>
/// <param name="Told">Who answered a ring just now; empty if nobody did.</param>
/// <param name="IsNight">True outside the hours of the working day: the colours of the night.</param>
public sealed record KitchenView(
    Shop Shop,
    LocalDateTime Now,
    IReadOnlyList<BandView> Bands,
    IReadOnlyList<ThenView> Then,
    IReadOnlyList<string> Told,
    IReadOnlyList<RingView> Rings,
    bool IsNight)
{
    /// <summary>True on a screen that is fixed to one person.</summary>
    public bool IsOnePersons { get; init; }

    /// <summary>Rings beyond those that are shown.</summary>
    public int MoreRings { get; init; }

    /// <summary>True if several are late, as after a time without power: then they stand in one list.</summary>
    public bool HasLateList => Rings.Count(r => r.Late is not null) > 1;

    /// <summary>The shop's way to write.</summary>
    public Words Words => Words.Of(Shop);
}

/// <summary>One person's band.</summary>
/// <param name="When">"now, 23 min left" or "at 11:30, in 48 min".</param>
/// <param name="Big">Verb and size, or what there is instead of a step.</param>
/// <param name="Second">Order and what with.</param>
/// <param name="Steps">What "Done" ticks; empty if there is nothing to tick.</param>
/// <param name="IsDue">False draws "Done" as an outline.</param>
/// <param name="IsQuiet">True if there is no step now: the big line is a sentence.</param>
/// <param name="Avoid">"Avoid nuts", or null.</param>
/// <param name="Lift">"10.6 kg: two people lift", or null.</param>
/// <param name="Order">Number of the order, for the way to its build sheet.</param>
public sealed record BandView(
    Person Person,
    string When,
    string Big,
    string Second,
    IReadOnlyList<string> Steps,
    bool IsDue,
    bool IsQuiet,
    string? Avoid,
    string? Lift,
    int? Order,
    PictureView? Picture,
    StripView? Strip)
{
    /// <summary>The step whose card the picture opens.</summary>
    public string Card { get; init; } = "";

    /// <summary>"12 min late" if its cake is, else null.</summary>
    public string? Late { get; init; }

    /// <summary>What nobody ticked before it, where it may not be guessed; else null.</summary>
    public DoubtView? Doubt { get; init; }
}

/// <summary>The one quiet question before a step that may not be guessed.</summary>
/// <param name="Words">"Wrap 8 in".</param>
/// <param name="Steps">What "Yes" ticks as planned and "Not yet" takes back.</param>
public sealed record DoubtView(string Words, IReadOnlyList<string> Steps);

/// <summary>A later stint: "11:12" or "" where nothing forces an hour, "Petra", "Fill 6+10 in"; on one person's screen a block: "", "Coat", all of it.</summary>
public sealed record ThenView(string Time, string Name, string Words)
{
    /// <summary>"11:12 Petra", or "Petra".</summary>
    public string Lead => $"{Time} {Name}".Trim();
}

/// <summary>What was ticked just now, and the steps that "Undo" takes back.</summary>
public sealed record StripView(string Text, IReadOnlyList<string> Steps);

/// <summary>What to draw beside a step.</summary>
/// <param name="Kind">bowl, oven, tiers or cupcakes.</param>
/// <param name="Tiers">Bottom first: width and height in cm and a colour.</param>
public sealed record PictureView(string Kind, IReadOnlyList<(decimal Width, decimal Height, string Colour)> Tiers)
{
    private static readonly HashSet<string> Bowls = new(StringComparer.Ordinal) { "mix", "filling", "buttercream", "colour" };
    private static readonly HashSet<string> Bare = new(StringComparer.Ordinal) { "mix", "bake", "turnout", "wrap", "fill", "crumb" };

    /// <summary>The tiers of a step, in the colour of the crumb until the final coat is on.</summary>
    public static PictureView Of(string operation, IReadOnlyList<CakeTier> tiers) => new(
        operation == "bake" ? "oven" : Bowls.Contains(operation) ? "bowl" : tiers.Count > 0 && tiers.All(t => t.StandsBeside) ? "cupcakes" : "tiers",
        [.. Drawn(operation, tiers).Select(t => (t.Shape.Wide.Centimetres, operation == "bake" ? 5 : t.Height.Centimetres, Bare.Contains(operation) ? Crumb(t) : Coat(t)))]);

    /// <summary>Cupcakes are not drawn on a cake.</summary>
    private static IEnumerable<CakeTier> Drawn(string operation, IReadOnlyList<CakeTier> tiers) =>
        operation != "bake" && tiers.Any(t => !t.StandsBeside) ? tiers.Where(t => !t.StandsBeside) : tiers;

    /// <summary>The colour that is seen most.</summary>
    public static string Coat(CakeTier tier) => tier.Colours.Count > 0 ? tier.Colours.MaxBy(c => c.Share)!.Swatch : "#F7F0E1";

    private static string Crumb(CakeTier tier) => $"var(--food-{Domain.Methods.Sponge.Of(tier.Sponge)?.Food ?? "vanilla"})";
}

/// <summary>A ring as the screen shows it.</summary>
/// <param name="Id">The ring's id.</param>
/// <param name="Name">Who is planned for it.</param>
/// <param name="Late">"due 14:10, 25 min ago", or null.</param>
/// <param name="Until">"until 07:20" where ten minutes more are possible, else null.</param>
/// <param name="Out">"out at 09:30", or "out Fri 27 Nov, 10:00" if that is not today.</param>
/// <param name="Fridge">The cupboard with its levels, or null.</param>
public sealed record RingView(
    string Id,
    string Name,
    string Time,
    string Day,
    string? Late,
    string Verb,
    string Place,
    string What,
    string Order,
    string Out,
    string Why,
    string? Until,
    string? Avoid,
    string? Lift,
    FridgeView? Fridge,
    PictureView Picture)
{
    /// <summary>So many are read and shown at once; the rest is a number.</summary>
    public const int Most = 12;

    /// <summary>What the delay means, if it is late; else null.</summary>
    public string? Delay { get; init; }

    /// <summary>"held since Fri 23 Oct, 23:00 over the quiet hours", or null.</summary>
    public string? Held { get; init; }
}

/// <summary>A fridge, freezer or cool room from the front.</summary>
/// <param name="Levels">Lowest first.</param>
public sealed record FridgeView(string Name, IReadOnlyList<LevelView> Levels);

/// <summary>One level: clear size in cm and what stands on it.</summary>
/// <param name="IsIt">True for the level that the ring is about.</param>
public sealed record LevelView(int Number, decimal Width, decimal Clear, bool IsIt, IReadOnlyList<StandingView> Things);

/// <summary>Something on a level, from the front.</summary>
/// <param name="Middle">cm from the left, as it was worked out; null where no way was found: then it is drawn in its share of the width.</param>
/// <param name="Front">cm from the front.</param>
/// <param name="IsIt">True for what the ring is about.</param>
public sealed record StandingView(decimal? Middle, decimal Front, bool IsIt, IReadOnlyList<(decimal Width, decimal Height, string Colour)> Tiers);
