namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using static Bakehouse.Domain.Recipes.RecipeLine;

/// <summary>
/// Recipes to start from: the sponges, fillings, coat and decorations that orders name. The formulas are our own, in the proportions
/// of the trade (common practice, no source). Keeping times: plain cake in the room 3 to 4 days wrapped and 28 days frozen; buttercream
/// 1 to 2 days in the room and 1 to 2 weeks cold, the shorter taken; curd 3 to 4 days cold, ganache 3 to 5 days in the room if firm, cream
/// cheese 3 days cold (common practice, no source). Local rules come first.
/// </summary>
internal static class StarterRecipes
{
    public static IReadOnlyList<Recipe> All { get; } =
    [
        Sponge("vanilla", [Kitchen("butter", 1, "cup"), Kitchen("sugar", 1.5m, "cup"), Kitchen("egg", 4, "large"), Kitchen("cake-flour", 2, "cup"), Kitchen("baking-powder", 2.5m, "tsp"), Kitchen("salt", 0.5m, "tsp"), Kitchen("milk", 0.75m, "cup"), Kitchen("vanilla", 2, "tsp")]),
        Sponge("lemon", [Kitchen("butter", 1, "cup"), Kitchen("sugar", 1.5m, "cup"), Kitchen("egg", 4, "large"), Kitchen("cake-flour", 2, "cup"), Kitchen("baking-powder", 2.5m, "tsp"), Kitchen("salt", 0.5m, "tsp"), Kitchen("milk", 0.5m, "cup"), Grams("lemon-juice", 45), Grams("lemon-zest", 12)]),
        Sponge("chocolate", [Kitchen("butter", 1, "cup"), Kitchen("brown-sugar", 1.5m, "cup, packed"), Kitchen("egg", 3, "large"), Kitchen("plain-flour", 2, "cup"), Kitchen("cocoa", 0.75m, "cup"), Kitchen("baking-powder", 2, "tsp"), Kitchen("baking-soda", 0.5m, "tsp"), Kitchen("salt", 0.5m, "tsp"), Kitchen("buttermilk", 1.25m, "cup")]),
        Sponge("carrot", [Kitchen("rapeseed-oil", 1, "cup"), Kitchen("brown-sugar", 1.25m, "cup, packed"), Kitchen("egg", 4, "large"), Kitchen("plain-flour", 2, "cup"), Kitchen("baking-powder", 2, "tsp"), Kitchen("baking-soda", 0.5m, "tsp"), Kitchen("salt", 0.5m, "tsp"), Grams("cinnamon", 6), Grams("carrots", 340), Part("toasted-walnuts", 110)]),
        Sponge("genoise", [Kitchen("egg", 6, "large"), Grams("sugar", 180), Grams("cake-flour", 180)]),
        new("toasted-walnuts", 1, "Toasted walnuts", RecipeKind.Part, [Grams("walnuts", 500)], EggMethod.None, null, [Kept(KeepPlace.Room, 7)], 4),
        new(CakeParts.Coat, 1, "Buttercream", RecipeKind.Filling, [Kitchen("butter", 2, "stick"), Kitchen("icing-sugar", 4, "cup, unsifted"), Grams("cream", 45)], EggMethod.None, null, [Kept(KeepPlace.Room, 1), Kept(KeepPlace.Fridge, 7), Kept(KeepPlace.Freezer, 90)]),
        new("raspberry-jam", 1, "Raspberry jam", RecipeKind.Filling, [Grams("raspberries", 1000), Grams("sugar", 900), Grams("lemon-juice", 40)], EggMethod.None, null, [Kept(KeepPlace.Fridge, 28)], 30),
        new("lemon-curd", 1, "Lemon curd", RecipeKind.Filling, [Grams("lemon-juice", 240), Grams("lemon-zest", 15), Grams("sugar", 300), Kitchen("egg", 4, "large"), Kitchen("egg-yolk", 4, "large"), Kitchen("butter", 1.5m, "stick")], EggMethod.Cooked, null, [Kept(KeepPlace.Fridge, 3)], 5),
        new("ganache", 1, "Chocolate ganache", RecipeKind.Filling, [Grams("dark-chocolate", 600), Grams("cream", 300)], EggMethod.None, null, [Kept(KeepPlace.Room, 3), Kept(KeepPlace.Fridge, 5)]),
        new("cream-cheese", 1, "Cream cheese", RecipeKind.Filling, [Kitchen("cream-cheese-block", 2, "cup"), Kitchen("butter", 1, "stick"), Kitchen("icing-sugar", 2, "cup, sifted")], EggMethod.None, null, [Kept(KeepPlace.Fridge, 3)]),
        new(CakeParts.Colour, 1, "Colour of the coat", RecipeKind.Colour, [Grams("colour-gel", 20)], EggMethod.None, null, [Kept(KeepPlace.Room, 365)]),
        new(CakeParts.Paste, 1, "Sugar paste", RecipeKind.Decoration, [Kitchen("icing-sugar", 8, "cup, unsifted"), Kitchen("corn-syrup", 0.5m, "cup"), Kitchen("shortening", 0.25m, "cup"), Kitchen("gelatine", 2, "envelope, 1 tbsp"), Grams("water", 60)], EggMethod.None, null, [Kept(KeepPlace.Room, 30)]),
        new(CakeParts.Drip, 1, "Chocolate drip", RecipeKind.Decoration, [Kitchen("dark-chocolate", 1.5m, "cup"), Kitchen("cream", 1, "cup")], EggMethod.None, null, [Kept(KeepPlace.Fridge, 5)]),
        new("decoration-simple", 1, "Simple decoration", RecipeKind.Decoration, [Part(CakeParts.Coat, 80)], EggMethod.None, null, [Kept(KeepPlace.Fridge, 3)]),
        new("decoration-medium", 1, "Medium decoration", RecipeKind.Decoration, [Part(CakeParts.Coat, 150), Grams("sugar-pearls", 10)], EggMethod.None, null, [Kept(KeepPlace.Fridge, 3)]),
        new("decoration-rich", 1, "Rich decoration", RecipeKind.Decoration, [Part(CakeParts.Coat, 200), Grams("sugar-paste", 120), Grams("sugar-pearls", 15)], EggMethod.None, null, [Kept(KeepPlace.Fridge, 3)]),
        OnTop("sugar-pearls", Grams("sugar-pearls", 30)),
        OnTop("marshmallows", Grams("marshmallows", 60)),
        OnTop("hard-sweets", Grams("boiled-sweets", 60)),
        OnTop("popcorn", Grams("popcorn", 20)),
        .. Dangers.Topping.All.Where(t => t.KindOf == Dangers.Topping.WholeNuts).Select(t => OnTop(t.Id, Grams(t.Id, 60))),
        OnTop("whole-grapes-or-cherries", Grams("grapes", 150)),
        OnTop("fresh-strawberries", Grams("strawberries", 150)),
        OnTop("glitter-sold-as-food", Grams("food-glitter", 1)),
        OnTop("gold-leaf-sold-as-food", Grams("gold-leaf", 0.1m)),
        new(CakeParts.Tins, 1, "Grease for tins", RecipeKind.Kit, [Grams("rapeseed-oil", 60), Grams("plain-flour", 40)], EggMethod.None, null, [Kept(KeepPlace.Room, 14)]),
    ];

    /// <summary>A thing on top, as much as usually goes on one tier.</summary>
    private static Recipe OnTop(string id, RecipeLine line) =>
        new(id, 1, Dangers.Topping.Of(id)?.Name ?? throw new InvalidOperationException($"Nobody can choose {id}."), RecipeKind.Decoration, [line], EggMethod.None, null, [Kept(KeepPlace.Room, 1)]);

    private static KeepTime Kept(KeepPlace place, int days) => new(place, days * 24);

    /// <summary>A sponge that the methods know: their name, heat and minutes. It loses about a tenth in the oven (from memory: 8 to 12 %).</summary>
    private static Recipe Sponge(string id, IReadOnlyList<RecipeLine> lines)
    {
        var known = Methods.Sponge.Of(id) ?? throw new InvalidOperationException($"No method bakes {id}.");
        return new Recipe(id, 1, known.Name, RecipeKind.Sponge, lines, EggMethod.Cooked, new Baking(known.Heat, known.Bakes), [Kept(KeepPlace.Room, id == "genoise" ? 1 : 3), Kept(KeepPlace.Freezer, 28)], 10);
    }
}

/// <summary>Our own recipes, for a shop to begin with.</summary>
public static class Starter
{
    /// <summary>As the sample bakery has them: every pack read (invented).</summary>
    public static Cookbook Sample { get; } = new(1, StarterIngredients.All, StarterRecipes.All);

    /// <summary>
    /// As a real shop gets them: flour has wheat and butter has milk, but what else is in its own packs nobody has read yet.
    /// </summary>
    public static Cookbook ToBeRead { get; } = new(
        1,
        [.. StarterIngredients.All.Select(i => i with { Packs = [new Pack("", new AllergenFacts(i.InUse!.Facts!.Has, [], [], null))] })],
        StarterRecipes.All);
}
