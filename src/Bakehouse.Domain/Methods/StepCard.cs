namespace Bakehouse.Domain.Methods;

/// <summary>
/// What whoever does a step looks for: when it is right, why it is done so, what to do if it is not, how warm things are, and what can
/// hurt. Common practice, no source, except where a figure names one.
/// </summary>
/// <param name="Operation">Word of the method.</param>
/// <param name="Warmth">Temperatures to keep to; "" where none matters.</param>
/// <param name="Cautions">What can hurt somebody; empty where nothing does.</param>
public sealed record StepCard(string Operation, string Right, string Why, string IfNot, string Warmth, params IReadOnlyList<string> Cautions)
{
    private const string Flour = "Flour dust harms lungs: start the mixer slowly, don't clap bags. Your country's limits for dust come first.";
    private const string Hot = "Oven, trays and pans burn: dry cloths, both hands, say “hot” behind people.";
    private const string Sugar = "Hot syrup sticks and burns deep: nobody else's work meanwhile, cold water ready.";
    private const string Egg = "Raw egg: no tasting, wash hands and kit. What may be served raw, and to whom, your local rules decide.";
    private const string Knife = "Long serrated knife: cut away from the hand that turns the cake.";
    /// <summary>Only for a cake that two carry.</summary>
    private const string Lift = "Heavy: from the shop's limit on two people or a trolley, and look at the way first.";
    /// <summary>Only for a cake with something hidden in it.</summary>
    private const string CountIn = "Count dowels, rods and boards in, and write the number down: whoever cuts the cake is told.", Tell = "Tell how many dowels and boards are inside.";
    private const string Cold = "Perishable fillings may be out of the fridge only so long. The rules of your place decide how long.";

    /// <summary>One card for each operation of the method.</summary>
    public static IReadOnlyList<StepCard> All { get; } =
    [
        new("mix", "Even and pale, no streak of flour, and it falls from the beater in a thick ribbon.",
            "The raising begins when it is wet; beaten on after the flour, it gets tough.",
            "Split: a spoon of flour, then on. Lumps: fold by hand, don't beat. Forgot something: ask before it is in the pan.",
            "Butter and eggs 18–21 °C; batter 20–24 °C.", Flour, Egg),
        new("bake", "It springs back in the middle, a pick comes out clean, the edge has let go of the pan. Probe in the core: 96–99 °C for butter cake.",
            "The middle of a wide pan is done last; opened early, it sinks.",
            "Pale and wet in the middle: five minutes more, then look again. Dark on top: cover it. Sunk: tell “Something’s wrong”.",
            "Look at the shortest time of its size.", Hot),
        new("turnout", "It slides out whole, paper comes off clean, the base is firm.",
            "Ten minutes let it shrink from the pan; after twenty, steam glues it there.",
            "It sticks: a hot cloth round the pan for a minute, then a knife along the edge. Torn: keep it for a lower layer, and say so.",
            "", Hot),
        new("wrap", "The base is no longer warm to the hand; wrapped airtight; the label says what, when and for which order.",
            "Wrapped warm it sweats and gets sticky; bare it dries out within hours.",
            "Still warm below: back on the rack. Base wet: rack, and fresh film.",
            "At most 25 °C at the base.", "The label carries what it contains. Take what stands under Contains on the cake's page, and read the packs."),
        new("filling", "It coats the spoon, a line drawn through it stays, nothing has caught at the bottom.",
            "It thickens only near the boil, and must be cold before it goes between layers.",
            "Lumps: sieve while hot. Thin: back on low heat, stirring. Caught: don't scrape the bottom, begin again.",
            "Egg to 82 °C for curd and custard; then cold within the time that your rules give.", Sugar, Egg, Cold),
        new("buttercream", "Smooth, light, and a peak stands with a soft tip.",
            "Air makes it spread; too warm it runs, too cold it tears the crumb.",
            "Curdled: warm the bowl a little and beat on. Soup: ten minutes in the fridge, then beat.",
            "20–23 °C to spread. Egg whites cooked to 71 °C, or pasteurised.", Sugar, Egg),
        new("colour", "One tone without streaks, looked at by daylight beside the sample.",
            "Dark colours deepen over hours; a second batch never matches the first.",
            "Too light: wait twenty minutes before adding. Too dark: let it down with white from the same batch.",
            "20–23 °C.", "Only colours that are sold as food go in; “non-toxic” is not food."),
        new("fill", "Layers cold and level, sides in one line, a dam round every soft filling, the top flat.",
            "Warm layers slide and soft fillings run; what leans here leans more when stacked.",
            "It slides: stop, chill half an hour, straighten. A bulge: press and scrape before the crumb coat.",
            "Cake 4–15 °C, filling 15–22 °C.", Knife, Cold),
        new("crumb", "Thin, every crumb held, no cake to be seen, the top level. It need not be smooth.",
            "Crumbs that are loose now show in the final coat.",
            "Crumbs in the bowl: a clean bowl for the final coat. It tears: the cream is too cold.",
            "Cake at most 15 °C, cream 20–23 °C."),
        new("coat", "Sides upright, edge sharp, top level, no line where the scraper stopped.",
            "The crumb coat must be set, or it comes off on the scraper.",
            "Air holes: warm the scraper. Streaks: wipe it at each turn. Crumbs: chill, lift them out, go over it once.",
            "Coat 20–23 °C on a cold cake."),
        new("cover", "Smooth down to the foot, no fold, no crack at the edge, no air under it.",
            "It dries from the first minute: rolled once, laid on at once, smoothed from the top down.",
            "Crack at the edge: rub it with a warm hand. Air: a fine pin from the side, then smooth. Torn: off again, knead, roll anew.",
            "Cake 10–20 °C and dry outside; paste 20–24 °C.", "Count the pins in and out. Read the pack of the paste against the allergy line.", "In a fridge only boxed and wrapped, or it gets wet."),
        new("drip", "Thin and even, the ends rounded, none of them down to the board.",
            "Too warm it runs to the foot, too cold it stops at the edge: try one at the back first.",
            "It runs too far: cool it two minutes, chill the cake. It stops short: warm it a little. A slip: let it set, then lift it off cold.",
            "Drip 29–35 °C; cake half an hour in the fridge.", "Melted chocolate and the steam under it burn: dry cloths, nothing wet in the bowl."),
        new("stack", "Dowels all one length and flush; each tier in the middle and level; the seams closed.",
            "A soft coat or short dowel makes it lean on the road.",
            "It leans: stop, lift off while it is cold, cut all dowels of that tier new to one length.",
            "Coat cold and firm: at least two hours in the fridge.",
            CountIn, Lift),
        new("decorate", "As on the order, the spelling read letter by letter, nothing inedible touching cake.",
            "It is what the customer sees first.",
            "A letter wrong: chill, lift off, smooth, write again. Colour runs: it sweats, let it dry in the cool.",
            "Cold cake, cool room; dry before it is boxed.",
            "Fresh flowers: only with the species known, with a barrier, never stems in cake. Wire and picks are counted and told.",
            "Glitter and metal colours: only what is sold as food."),
        new("pipe", "Every swirl as high as the next, closed down to the case, nothing between the cases.",
            "On a warm cupcake it melts and slides off; bare crumb beside it dries within hours.",
            "It sinks: stop, the cream ten minutes into the fridge, the cupcakes back on the rack. A torn case: a new one over it.",
            "Cupcakes at most 22 °C in the middle, cream 20–23 °C.", "Another bag and nozzle for whatever must avoid something; wash hands first."),
        new("box", "It stands firm, the board fits the box with room above, the label is on.",
            "A cake that can move will.",
            "It touches: the next box. It sweats: leave the lid open in the fridge.",
            "", Lift, "Read the allergy line on the order again, and the label."),
        new("leavefridge", "The right cake: number and name read aloud, cold all through.",
            "Handed over cold it rides firm; the customer is told when to take it out.",
            "Soft at the edge: back for half an hour and call the driver or customer.",
            "", Lift, Cold),
        new("handover", "Looked into the box together, name and number agree, allergy line and hidden parts told, when to take it out told.",
            "Afterwards nobody can put it right.",
            "A mark on the coat: mend it now, in front of them. Not theirs: stop, find the other one.",
            "", Lift, Tell),
        new("deliver", "Flat floor, non-slip mat, cabin cool, address and telephone at hand.",
            "Braking and heat spoil more cakes than stairs.",
            "It slips: stop, mat under it. Held up: call the customer, then the shop.",
            "Cabin at most 20 °C.", Lift, Cold),
        new("return", "Van emptied and wiped, stands and boards counted back in.",
            "What is left in the van is missing on Saturday.",
            "A stand is missing: write it on the order.",
            ""),
        new("wait", "What was short has come, or what was soft is firm: looked at, touched, and read on the label.",
            "Somebody told that it is not ready; what follows was moved for it.",
            "Not there at the hour: tell “Something’s wrong” again with a later one.",
            ""),
    ];

    /// <summary>Cautions that hold for every cake. Weight and hidden parts are told by the cake itself, with its own figures, where it has them.</summary>
    public IEnumerable<string> OfAnyCake => Cautions.Where(c => c is not (Lift or CountIn or Tell));

    /// <summary>The card of that operation. Throws for a word that is none.</summary>
    public static StepCard Of(string operation) =>
        All.FirstOrDefault(c => c.Operation == operation) ?? throw new ArgumentOutOfRangeException(nameof(operation), operation, "No such operation.");
}
