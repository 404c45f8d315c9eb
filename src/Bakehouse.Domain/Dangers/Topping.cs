namespace Bakehouse.Domain.Dangers;

/// <summary>Whether something on a cake may be eaten.</summary>
public enum ToppingUse
{
    /// <summary>Sold as food.</summary>
    Edible,

    /// <summary>It may touch the cake and must come off before anybody eats.</summary>
    ContactOnly,

    /// <summary>It never goes on food.</summary>
    Never,
}

/// <summary>Something that is put on a finished cake.</summary>
/// <param name="Id">Of an edible one also the id of its recipe: without one nobody knows what it contains.</param>
/// <param name="Chokes">A child under five can choke on it.</param>
/// <param name="NeedsFridge">It needs the fridge.</param>
/// <param name="Picks">Picks that go into the cake with one piece.</param>
/// <param name="Wires">Wires in one piece.</param>
/// <param name="Why">For what never goes on food: why.</param>
/// <param name="KindOf">Id of what it is one kind of; "" for what is chosen by itself.</param>
public sealed record Topping(string Id, string Name, ToppingUse Use, bool Chokes = false, bool NeedsFridge = false, int Picks = 0, int Wires = 0, string Why = "", string KindOf = "")
{
    /// <summary>The id of whole nuts of which nobody has said the kind: each kind is an allergen of its own, so none is ever assumed.</summary>
    public const string WholeNuts = "whole-nuts";

    /// <summary>What can be chosen of it once it is chosen; empty if it is one thing only.</summary>
    public IReadOnlyList<Topping> Kinds => [.. All.Where(t => t.KindOf == Id)];

    /// <summary>What is told of glitters and dusts.</summary>
    public const string Caution = "“Non-toxic” and “for decoration only” are not food: only what is sold as food, with a list of ingredients on its pack, goes on.";

    private const string NotFood =
        "A pack that says only “non-toxic” or “for decoration” is not sold as food (US Food and Drug Administration). In 2018 six children fell ill from such a dust, 22.1 mg of copper in a gram of icing (CDC, MMWR 70(43), 2021).";

    /// <summary>
    /// What can be chosen. What chokes a child under 4 to 5: whole nuts, popcorn, hard and sticky sweets, marshmallows, whole grapes and cherries (American Academy of
    /// Pediatrics, as quoted; Illinois Extension); pearls, picks and small toppers as small hard things (common practice, no source).
    /// </summary>
    public static IReadOnlyList<Topping> All { get; } =
    [
        new("sugar-pearls", "Sugar pearls", ToppingUse.Edible, Chokes: true),
        new("marshmallows", "Marshmallows", ToppingUse.Edible, Chokes: true),
        new("hard-sweets", "Hard sweets", ToppingUse.Edible, Chokes: true),
        new("popcorn", "Popcorn", ToppingUse.Edible, Chokes: true),
        new(WholeNuts, "Whole nuts", ToppingUse.Edible, Chokes: true),
        Nut("whole-almonds", "Whole almonds"), Nut("whole-hazelnuts", "Whole hazelnuts"), Nut("whole-walnuts", "Walnut halves"), Nut("whole-pecans", "Pecan halves"),
        Nut("whole-cashews", "Whole cashews"), Nut("whole-brazil-nuts", "Whole Brazil nuts"), Nut("whole-pistachios", "Whole pistachios"), Nut("whole-macadamias", "Whole macadamias"),
        Nut("whole-peanuts", "Whole peanuts"),
        new("whole-grapes-or-cherries", "Whole grapes or cherries", ToppingUse.Edible, Chokes: true),
        new("fresh-strawberries", "Fresh strawberries", ToppingUse.Edible, NeedsFridge: true),
        new("glitter-sold-as-food", "Glitter sold as food", ToppingUse.Edible),
        new("gold-leaf-sold-as-food", "Gold leaf sold as food", ToppingUse.Edible),
        new("topper", "Acrylic or wooden topper", ToppingUse.ContactOnly),
        new("small-toppers", "Small toppers, figures", ToppingUse.ContactOnly, Chokes: true),
        new("flags", "Flags on picks", ToppingUse.ContactOnly, Chokes: true, Picks: 1),
        new("wired-sugar-flowers", "Sugar flowers on wire", ToppingUse.ContactOnly, Picks: 1, Wires: 1),
        new("cocktail-sticks", "Cocktail sticks", ToppingUse.ContactOnly, Chokes: true, Picks: 1),
        new("candles", "Candles", ToppingUse.ContactOnly),
        new("ribbon", "Ribbon", ToppingUse.ContactOnly),
        new("craft-glitter", "Glitter or dust not sold as food", ToppingUse.Never, Why: NotFood),
        new("craft-paint", "Craft paint or metal spray", ToppingUse.Never, Why: NotFood),
        new("glass", "Glass beads or gems", ToppingUse.Never, Why: "Glass breaks, and splinters can't be seen in a cake (common practice, no source)."),
    ];

    /// <summary>The thing of that id, or null.</summary>
    public static Topping? Of(string id) => All.FirstOrDefault(t => t.Id == id);

    private static Topping Nut(string id, string name) => new(id, name, ToppingUse.Edible, Chokes: true, KindOf: WholeNuts);
}
