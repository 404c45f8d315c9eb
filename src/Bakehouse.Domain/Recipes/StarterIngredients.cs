namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Allergens;

/// <summary>
/// Ingredients to start from. Weights of kitchen measures: USDA National Nutrient Database SR28, weight file, by the number beside
/// each. What the packs contain is invented for the sample; a real shop reads its own.
/// </summary>
internal static class StarterIngredients
{
    public static IReadOnlyList<Ingredient> All { get; } =
    [
        Of("plain-flour", "Plain flour", "wheat flour", IngredientKind.Flour, "20081", ["wheat"], ("cup", 125)),
        Of("cake-flour", "Cake flour, unsifted", "wheat flour", IngredientKind.Flour, "20084", ["wheat"], ("cup", 137)),
        Of("bread-flour", "Bread flour", "wheat flour", IngredientKind.Flour, "20083", ["wheat"], ("cup", 137)),
        Of("whole-flour", "Whole-grain flour", "whole wheat flour", IngredientKind.Flour, "20080", ["wheat"], ("cup", 120)),
        Of("sugar", "Sugar, granulated", "sugar", IngredientKind.Sugar, "19335", [], ("cup", 200), ("tsp", 4.2m)),
        Of("icing-sugar", "Icing sugar", "sugar", IngredientKind.Sugar, "19336", [], ("cup, unsifted", 120), ("cup, sifted", 100), ("tbsp", 8)),
        Of("brown-sugar", "Brown sugar", "brown sugar", IngredientKind.Sugar, "19334", [], ("cup, packed", 220), ("cup, loose", 145)),
        Of("honey", "Honey", "honey", IngredientKind.Sugar, "19296", [], ("cup", 339)),
        Of("maple-syrup", "Maple syrup", "maple syrup", IngredientKind.Sugar, "19353", [], ("cup", 315)),
        Of("corn-syrup", "Corn syrup, light", "glucose syrup (maize)", IngredientKind.Sugar, "19350", [], ("cup", 341), ("tbsp", 22)),
        Of("gelatine", "Gelatine, powdered", "beef gelatine", IngredientKind.Other, "19177", [], ("envelope, 1 tbsp", 7)),
        Of("butter", "Butter, unsalted", "butter", IngredientKind.Fat, "01145", ["milk"], ("cup", 227), ("tbsp", 14.2m), ("stick", 113)),
        Of("rapeseed-oil", "Rapeseed oil", "rapeseed oil", IngredientKind.Fat, "04582", [], ("cup", 218)),
        Of("shortening", "Shortening", "vegetable fat", IngredientKind.Fat, "04615", [], ("cup", 205)),
        Of("milk", "Milk, whole", "whole milk", IngredientKind.Liquid, "01077", ["milk"], ("cup", 244)),
        Of("buttermilk", "Buttermilk", "buttermilk", IngredientKind.Liquid, "01088", ["milk"], ("cup", 245)),
        Of("cream", "Cream, heavy", "cream", IngredientKind.Liquid, "01053", ["milk"], ("cup", 238), ("cup, whipped", 120)),
        Of("sour-cream", "Sour cream", "sour cream", IngredientKind.Liquid, "01056", ["milk"], ("cup", 230), ("tbsp", 12)),
        Of("cream-cheese-block", "Cream cheese, block", "cream cheese", IngredientKind.Other, "01017", ["milk"], ("cup", 232), ("3 oz pack", 85)),
        Of("egg", "Egg, whole", "egg", IngredientKind.Egg, "01123", ["egg"], [.. Eggs.Sizes.Select(s => (s.Measure, s.Grams)), ("cup", 243)]),
        Of("egg-white", "Egg white", "egg white", IngredientKind.Egg, "01124", ["egg"], ("large", 33)),
        Of("egg-yolk", "Egg yolk", "egg yolk", IngredientKind.Egg, "01125", ["egg"], ("large", 17)),
        Of("baking-powder", "Baking powder", "raising agents", IngredientKind.BakingPowder, "18369", [], ("tsp", 4.6m)),
        Of("baking-soda", "Baking soda", "raising agent: sodium bicarbonate", IngredientKind.BakingSoda, "18372", [], ("tsp", 4.6m)),
        Of("cream-of-tartar", "Cream of tartar", "acid: potassium tartrate", IngredientKind.Other, "18373", [], ("tsp", 3)),
        Of("salt", "Salt", "salt", IngredientKind.Other, "02047", [], ("tsp", 6)),
        Of("vanilla", "Vanilla extract", "vanilla extract", IngredientKind.Other, "02050", [], ("tsp", 4.2m)) with { AlcoholPercent = 35 },
        Of("cocoa", "Cocoa, unsweetened", "cocoa powder", IngredientKind.Other, "19165", [], ("cup", 86), ("tbsp", 5.4m)),
        Of("cornstarch", "Cornflour (starch)", "maize starch", IngredientKind.Other, "20027", [], ("cup", 128)),
        Of("dark-chocolate", "Dark chocolate chips", "dark chocolate", IngredientKind.Other, "19080", ["milk"], ("cup", 168)) with
        {
            MadeOf = [new("cocoa mass", []), new("sugar", []), new("cocoa butter", []), new("butter oil", ["milk"]), new("emulsifier: sunflower lecithin", [])],
        },
        Of("ground-almonds", "Almonds, ground", "almonds", IngredientKind.Other, "12061", ["almonds"], ("cup", 95)),
        Of("ground-hazelnuts", "Hazelnuts, ground", "hazelnuts", IngredientKind.Other, "12120", ["hazelnuts"], ("cup", 75)),
        Of("pecans", "Pecans, chopped", "pecans", IngredientKind.Other, "12142", ["pecans"], ("cup", 109)),
        Of("walnuts", "Walnuts, chopped", "walnuts", IngredientKind.Other, "12155", ["walnuts"], ("cup", 117)),
        Of("raspberries", "Raspberries", "raspberries", IngredientKind.Other, "09302", [], ("cup", 123)),
        Own("carrots", "Carrots, grated", "carrots"),
        Own("lemon-juice", "Lemon juice", "lemon juice", IngredientKind.Liquid),
        Own("lemon-zest", "Lemon zest", "lemon zest"),
        Own("cinnamon", "Cinnamon", "cinnamon"),
        Own("water", "Water", "water", IngredientKind.Liquid),
        Own("colour-gel", "Food colour, gel", "colour gel") with { MadeOf = [new("glucose syrup", []), new("colours: E100, E120, E133", []), new("water", [])] },
        Own("marshmallows", "Marshmallows", "marshmallows") with { MadeOf = [new("glucose syrup", []), new("sugar", []), new("beef gelatine", []), new("water", [])] },
        Own("boiled-sweets", "Boiled sweets", "boiled sweets") with { MadeOf = [new("sugar", []), new("glucose syrup", [])] },
        Own("popcorn", "Popcorn", "popped maize"),
        Of("whole-almonds", "Almonds, whole", "almonds", IngredientKind.Other, "12061", ["almonds"], ("cup", 143)),
        Of("whole-hazelnuts", "Hazelnuts, whole", "hazelnuts", IngredientKind.Other, "12120", ["hazelnuts"], ("cup", 135)),
        Of("whole-walnuts", "Walnut halves", "walnuts", IngredientKind.Other, "12155", ["walnuts"], ("cup", 100)),
        Of("whole-pecans", "Pecan halves", "pecans", IngredientKind.Other, "12142", ["pecans"], ("cup", 99)),
        Of("whole-cashews", "Cashews, whole, roasted", "cashews", IngredientKind.Other, "12586", ["cashews"], ("cup", 129)),
        Of("whole-brazil-nuts", "Brazil nuts, whole", "Brazil nuts", IngredientKind.Other, "12078", ["brazil-nuts"], ("cup", 133)),
        Of("whole-pistachios", "Pistachios, shelled", "pistachios", IngredientKind.Other, "12151", ["pistachios"], ("cup", 123)),
        Of("whole-macadamias", "Macadamias, whole", "macadamias", IngredientKind.Other, "12131", ["macadamias"], ("cup", 134)),
        Own("whole-peanuts", "Peanuts, whole", "peanuts", has: ["peanuts"]),
        Own("grapes", "Grapes, whole", "grapes"),
        Own("strawberries", "Strawberries", "strawberries"),
        Own("food-glitter", "Glitter, sold as food", "edible glitter") with { MadeOf = [new("acacia gum", []), new("colours: E555, E172", [])] },
        Own("gold-leaf", "Gold leaf, sold as food", "gold: E175"),
        Own("sugar-pearls", "Sugar pearls", "sugar pearls") with { MadeOf = [new("sugar", []), new("maize starch", []), new("glazing agent: E903", [])] },
        Own("sugar-paste", "Sugar paste", "sugar paste", sulphites: 6) with { MadeOf = [new("sugar", []), new("glucose syrup", []), new("palm fat", []), new("stabiliser: E466", [])] },
    ];

    private static Ingredient Of(string id, string name, string label, IngredientKind kind, string ndb, IReadOnlyList<string> has, params IReadOnlyList<(string Measure, decimal Grams)> weights) =>
        new(id, 1, name, label, kind, [.. weights.Select(w => new KitchenWeight(w.Measure, w.Grams))], $"USDA SR28, NDB {ndb}", [new Pack("sample", AllergenFacts.Only(has))]);

    private static Ingredient Own(string id, string name, string label, IngredientKind kind = IngredientKind.Other, decimal sulphites = 0, IReadOnlyList<string>? has = null) =>
        new(id, 1, name, label, kind, [], "", [new Pack("sample", AllergenFacts.Only([.. has ?? []]) with { SulphitesMgPerKg = sulphites })]);
}
