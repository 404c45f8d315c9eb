namespace Bakehouse.Domain.Methods;

using Bakehouse.Domain.Shops;

/// <summary>How the hands-on minutes of an operation grow with the cake.</summary>
public enum Growth
{
    /// <summary>Always the same.</summary>
    Fixed,

    /// <summary>With the outside of the tier to the power 0.8 (coats, decor).</summary>
    Outside,

    /// <summary>Splitting with the root of the outside, filling with its power 0.7 and the number of fillings.</summary>
    Filling,

    /// <summary>A base and so much more for each tier.</summary>
    Tiers,

    /// <summary>A base and so much more for each colour.</summary>
    Colours,
}

/// <summary>One kind of work: its word in a step's key, who does it, on what, how long for the reference tier.</summary>
/// <param name="Id">Lower-case word in the step's key.</param>
/// <param name="Verb">What the kitchen reads: at most 12 characters.</param>
/// <param name="Skill">Null if it needs no hands.</param>
/// <param name="Minutes">Typical minutes for a round tier of 8 in, 10 cm high; the base where the growth is by number.</param>
/// <param name="Each">Minutes for each tier or colour beyond the base.</param>
/// <param name="Tools">One piece of each while it lasts.</param>
public sealed record Operation(string Id, string Verb, string? Skill, double Minutes, Growth Growth, double Each = 0, params IReadOnlyList<string> Tools);

/// <summary>A wait from one operation to a later one of the same tier or cake, and where the thing stands meanwhile.</summary>
/// <param name="In">By kind of place (fridge, freezer, cool, rack, bench, tubs, none): least and most minutes there.</param>
/// <param name="Why">For the step card: why it waits.</param>
public sealed record Wait(string From, string To, string Why, params IReadOnlyList<WaitIn> In);

/// <summary>A kind of place with the least and most minutes there.</summary>
public sealed record WaitIn(string Kind, int Least, int Most);

/// <summary>
/// How a sponge or butter cake of n round tiers in buttercream is made: operations and waits as data. Minutes are typical for a
/// practised hand, the exponents are common practice; a shop's own learned minutes replace both later. Source of every
/// figure without another: common practice, no source.
/// </summary>
public static class Method
{
    /// <summary>Longest sitting of decor, minutes: it is work that can be divided (30 to 120, common practice, no source).</summary>
    public const int LongestDecor = 120;

    /// <summary>A coat keeps so many minutes until the handover: 48 h; a wish.</summary>
    public const int CoatKeeps = 2 * Day;

    /// <summary>A semi-naked cake dries sooner: 24 h; a wish.</summary>
    public const int SemiNakedKeeps = Day;

    /// <summary>Under sugar paste it keeps longer: 5 days; a wish.</summary>
    public const int PasteKeeps = 5 * Day;

    /// <summary>A cake is at its best if it was filled at most so many minutes before the handover: 36 h; a wish.</summary>
    public const int FreshFromFilling = 36 * 60;

    private const int Day = 1440;

    /// <summary>The operations in the order in which a cake meets them.</summary>
    public static IReadOnlyList<Operation> Operations { get; } =
    [
        new("mix", "Mix", Skills.Bake, 18, Growth.Fixed),
        new("bake", "Bake", null, 0, Growth.Fixed),
        new("turnout", "Turn out", Skills.Bake, 5, Growth.Fixed, Tools: ["bench"]),
        new("wrap", "Wrap", Skills.Box, 5, Growth.Fixed),
        new("filling", "Cook filling", Skills.Bake, 20, Growth.Fixed),
        new("buttercream", "Whip cream", Skills.Coat, 20, Growth.Fixed),
        new("colour", "Colour cream", Skills.Coat, 5, Growth.Colours, 5),
        new("fill", "Fill", Skills.Coat, 14, Growth.Filling, Tools: ["turntable"]),
        new("crumb", "Crumb coat", Skills.Coat, 7, Growth.Outside, Tools: ["turntable"]),
        new("coat", "Final coat", Skills.Coat, 20, Growth.Outside, Tools: ["turntable"]),
        new("cover", "Cover", Skills.Coat, 25, Growth.Outside, Tools: ["bench"]),
        new("drip", "Drip", Skills.Decorate, 15, Growth.Outside, Tools: ["turntable"]),
        new("stack", "Stack", Skills.Coat, 0, Growth.Tiers, 20, Tools: ["bench"]),
        new("decorate", "Décor", Skills.Decorate, 15, Growth.Outside, Tools: ["turntable"]),
        new("pipe", "Pipe", Skills.Decorate, 0, Growth.Fixed, PipeMinutes(Orders.Decoration.Simple), Tools: ["bench"]),
        new("box", "Box", Skills.Box, 18, Growth.Fixed, Tools: ["bench"]),
        new("leavefridge", "Take out", Skills.Box, 5, Growth.Fixed),
        new("handover", "Hand over", Skills.Counter, 8, Growth.Fixed),
        new("deliver", "Deliver", Skills.Drive, 15, Growth.Tiers, Tools: ["van"]),
        new("return", "Drive back", Skills.Drive, 0, Growth.Fixed, Tools: ["van"]),
        new("wait", "Wait", null, 0, Growth.Fixed),
    ];

    /// <summary>Minutes of decor on the reference tier by how much there is: 15, 45, 150.</summary>
    public static double DecorMinutes(Orders.Decoration decoration) => decoration switch
    {
        Orders.Decoration.Simple => 15,
        Orders.Decoration.Medium => 45,
        Orders.Decoration.Rich => 150,
        _ => throw new ArgumentOutOfRangeException(nameof(decoration), decoration, "Unknown decoration."),
    };

    /// <summary>
    /// Minutes in the oven of a tin of cupcakes: 20, whatever butter sponge (18 to 22 at 177 degrees are published with the yields of round layers); a
    /// foam is looked at sooner.
    /// </summary>
    public const int CupcakeBakeMinutes = 20;

    /// <summary>Least minutes on the rack before a cupcake is piped: 60, until it is cold to the middle (common practice, no source; 30 to 60 in use).</summary>
    public const int CupcakesCool = 60;

    /// <summary>Piped cupcakes are at their best for a day: the swirl gets a crust and the crumb dries from the case (common practice, no source); a wish.</summary>
    public const int PipedKeeps = Day;

    /// <summary>Minutes to box a dozen, with insert and label: 5 (common practice, no source).</summary>
    public const double BoxCupcakesMinutes = 5;

    /// <summary>Minutes to pipe one cupcake by how much there is: a swirl 0.5, with something on it 1.5, a flower 4 (common practice, no source).</summary>
    public static double PipeMinutes(Orders.Decoration decoration) => decoration switch
    {
        Orders.Decoration.Simple => 0.5,
        Orders.Decoration.Medium => 1.5,
        Orders.Decoration.Rich => 4,
        _ => throw new ArgumentOutOfRangeException(nameof(decoration), decoration, "Unknown decoration."),
    };

    /// <summary>True for what is done to cupcakes tray by tray (<see cref="Cakes.Cupcakes.OnTray"/>), so that its ordinal is the tray's.</summary>
    public static bool IsByTray(string operation) => operation is "pipe" or "box";

    /// <summary>True for what is done to the stacked cake as a whole and never to cupcakes.</summary>
    public static bool IsOfStack(string operation) => operation is "stack" or "decorate" or "filling" or "box";

    /// <summary>The waits. Those that depend on sponge, filling or layer are adjusted where the steps are made.</summary>
    public static IReadOnlyList<Wait> Waits { get; } =
    [
        new("mix", "bake", "Batter waits badly: raising begins in the bowl.", new WaitIn("none", 0, 30)),
        new("bake", "turnout", "Ten minutes in the pan, then it lets go; after twenty it sticks.", new WaitIn("rack", 10, 20)),
        new("turnout", "wrap", "On the rack until the base is no longer warm.", new WaitIn("rack", 150, 300)),
        new("wrap", "fill", "Cold layers cut clean and do not slide.", new WaitIn("fridge", 60, 3 * Day), new WaitIn("freezer", 30, 60)),
        new("filling", "fill", "It must be cold before it goes between layers.", new WaitIn("tubs", 120, 3 * Day)),
        new("buttercream", "colour", "Buttercream is coloured while it is soft.", new WaitIn("none", 0, 60), new WaitIn("tubs", 0, 2 * Day)),
        new("colour", "fill", "Cream stands covered until it is used.", new WaitIn("none", 0, 120), new WaitIn("tubs", 0, 3 * Day)),
        new("colour", "crumb", "Cream stands covered until it is used.", new WaitIn("none", 0, 120), new WaitIn("tubs", 0, 3 * Day)),
        new("turnout", "pipe", "Cold to the middle, or the swirl melts off; covered loosely, or they dry.", new WaitIn("rack", CupcakesCool, 360)),
        new("colour", "pipe", "Cream stands covered until it is used.", new WaitIn("none", 0, 120), new WaitIn("tubs", 0, 3 * Day)),
        new("pipe", "box", "The swirl sets before it is boxed.", new WaitIn("fridge", 15, Day), new WaitIn("cool", 15, Day), new WaitIn("bench", 15, 60)),
        new("fill", "crumb", "It settles, so that no air pushes the coat off later.", new WaitIn("fridge", 30, Day)),
        new("crumb", "coat", "The crumb coat must be set, or crumbs come through.", new WaitIn("fridge", 30, Day), new WaitIn("freezer", 15, 60)),
        new("crumb", "cover", "The coat under it must be set, or the paste bulges.", new WaitIn("fridge", 30, Day), new WaitIn("freezer", 15, 60)),
        new("cover", "stack", "The paste needs a skin, or every finger shows.", new WaitIn("cool", 120, 2 * Day), new WaitIn("fridge", 120, 2 * Day)),
        new("cover", "decorate", "The paste needs a skin, or every finger shows.", new WaitIn("cool", 120, 2 * Day), new WaitIn("fridge", 120, 2 * Day)),
        new("cover", "drip", "The paste needs a skin, or every finger shows.", new WaitIn("cool", 120, 2 * Day), new WaitIn("fridge", 120, 2 * Day)),
        new("coat", "drip", "On a cold coat the drip stops where it should.", new WaitIn("fridge", 30, Day), new WaitIn("freezer", 15, 60)),
        new("crumb", "drip", "On a cold coat the drip stops where it should.", new WaitIn("fridge", 30, Day), new WaitIn("freezer", 15, 60)),
        new("drip", "stack", "The drip sets, and the tier is cold through before it carries anything.", new WaitIn("fridge", 120, 2 * Day)),
        new("drip", "decorate", "The drip sets before hands touch it.", new WaitIn("fridge", 120, 2 * Day)),
        new("coat", "stack", "At least two hours cold before it carries anything.", new WaitIn("fridge", 120, 2 * Day)),
        new("coat", "decorate", "At least two hours cold before hands touch it.", new WaitIn("fridge", 120, 2 * Day)),
        new("stack", "decorate", "Decor comes after stacking: nothing is spoilt by it.", new WaitIn("fridge", 0, Day), new WaitIn("bench", 0, 30)),
        new("decorate", "decorate", "The next sitting.", new WaitIn("fridge", 0, Day), new WaitIn("bench", 0, 30)),
        new("decorate", "box", "Decor sets before it is boxed.", new WaitIn("fridge", 15, 2 * Day), new WaitIn("bench", 15, 60)),
        new("box", "leavefridge", "Boxed and cold until it goes.", new WaitIn("fridge", 0, 2 * Day)),
        new("leavefridge", "handover", "Handed over cold; the customer is told when to take it out.", new WaitIn("bench", 0, 15)),
        new("leavefridge", "deliver", "Loaded cold.", new WaitIn("bench", 0, 15)),
        new("deliver", "return", "The van comes back.", new WaitIn("none", 0, 0)),
    ];

    /// <summary>The operation of that word. Throws for a word that is none.</summary>
    public static Operation OperationOf(string id) =>
        Operations.FirstOrDefault(o => o.Id == id) ?? throw new ArgumentOutOfRangeException(nameof(id), id, "No such operation.");

    /// <summary>The wait between two operations. Throws if the method has none.</summary>
    public static Wait WaitOf(string from, string to) =>
        Waits.FirstOrDefault(w => w.From == from && w.To == to) ?? throw new ArgumentOutOfRangeException(nameof(to), $"{from} > {to}", "No such wait.");

    /// <summary>Minutes on a rack until the base is no longer warm, by the height baked: 5 cm 150, 4 cm 120, 2.5 cm 80. Hardly by diameter.</summary>
    public static int CoolMinutes(Measures.Length height) => height.Centimetres switch { >= 4.5m => 150, >= 3 => 120, _ => 80 };

    /// <summary>Minutes on the road one way: a quarter more than the route says.</summary>
    public static double RoadMinutes(Orders.Order order) => order.Handover.RouteMinutes * 1.25;

    /// <summary>Loading 15, the road, and setting up: cupcakes alone 5, one tier 10, two 20, three 40, four 60, more 75.</summary>
    public static double DeliverMinutes(Orders.Order order) =>
        OperationOf("deliver").Minutes + RoadMinutes(order) + order.Stack.Count switch { 0 => 5, 1 => 10, 2 => 20, 3 => 40, 4 => 60, _ => 75 };

    /// <summary>Rounds a sitting up to whole 5 minutes; a sitting is rounded once, never each small step in it.</summary>
    public static int Sitting(double minutes) => (int)Math.Ceiling(minutes / 5 - 1e-9) * 5;

    /// <summary>
    /// Outside of a tier against the reference (962 cm2, 8 in by 10 cm): round 6 in 0.69, 9 in 1.17, 10 in 1.36, 12 in 1.75.
    /// </summary>
    public static double Outside(Orders.CakeTier tier)
    {
        if (tier.Shape is not Cakes.Round)
        {
            return tier.Shape.Outside(tier.Height).SquareMillimetres / 100 / (Math.PI * ((ReferenceRadius * ReferenceRadius) + (2 * ReferenceRadius * ReferenceHeight)));
        }

        var (r, h) = ((double)tier.Diameter.Centimetres / 2, (double)tier.Height.Centimetres);
        return ((r * r) + (2 * r * h)) / ((ReferenceRadius * ReferenceRadius) + (2 * ReferenceRadius * ReferenceHeight));
    }

    // 8 in across and 10 cm high, in centimetres.
    private const double ReferenceRadius = 10.16, ReferenceHeight = 10;
}
