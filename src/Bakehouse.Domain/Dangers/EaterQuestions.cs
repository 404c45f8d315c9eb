namespace Bakehouse.Domain.Dangers;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>
/// What is to be asked because small children, or somebody pregnant, old or ill, will eat: what can choke, alcohol, raw egg. It is worked out from the
/// recipes and from what goes on top; what nobody wrote down is not found.
/// </summary>
/// <param name="Chokes">Names of what a child under five can choke on; empty where no small children eat.</param>
/// <param name="Alcohol">Names of the ingredients with alcohol; baked or not, some is left.</param>
/// <param name="RawEgg">Names of the recipes with raw egg: neither heated through nor pasteurised.</param>
/// <param name="Unread">True if there are no recipes to look at.</param>
public sealed record EaterQuestions(IReadOnlyList<string> Chokes, IReadOnlyList<string> Alcohol, IReadOnlyList<string> RawEgg, bool Unread)
{
    /// <summary>Words in an ingredient's name that say that it is whole or hard (see <see cref="Topping.All"/> for whose list that is).</summary>
    private static readonly string[] Hard =
        ["nuts", "almond", "hazelnut", "walnut", "pecan", "pistachio", "cashew", "macadamia", "peanut", "pearl", "dragee", "marshmallow", "popcorn", "hard sweet", "boiled sweet", "hard candy", "gum drop", "jelly bean", "grape", "cherries", "raisin"];

    /// <summary>Words that say that nothing whole is left of it.</summary>
    private static readonly string[] Fine = ["ground", "flour", "butter", "paste", "oil", "milk", "extract", "syrup", "jam", "essence", "powder", "nutmeg"];

    /// <summary>In the words of the counter, one after the other; "" if there is nothing to ask.</summary>
    public string Words => string.Join(" ", new[]
    {
        Chokes.Count == 0 ? "" : $"A small child can choke on: {string.Join(", ", Chokes)}.",
        Alcohol.Count == 0 ? "" : $"Alcohol goes in, baked or not: {string.Join(", ", Alcohol)}.",
        RawEgg.Count == 0 ? "" : $"Raw egg: {string.Join(", ", RawEgg)}.",
        Unread ? "No recipes are written: look yourself for nuts, alcohol and raw egg." : "",
    }.Where(w => w.Length > 0));

    /// <summary>The questions of an order; null if nobody is named of whom it asks.</summary>
    /// <param name="cake">What it contains; null where no recipes are written.</param>
    public static EaterQuestions? Of(Order order, CakeContents? cake, Cookbook recipes)
    {
        if (order.Eaters is not { } eaters || !(eaters.SmallChildren || eaters.Vulnerable))
        {
            return null;
        }

        var things = (order.OnTop?.Toppings ?? []).Select(t => Topping.Of(t.Topping)).OfType<Topping>().Where(t => t.Chokes).Select(t => TakeOff.Lower(t.Name));
        var picks = order.OnTop?.Flowers?.Kinds.Any(k => k.Put == FlowerPut.Pick) == true ? ["flower picks"] : Array.Empty<string>();
        var eaten = cake?.Uses(recipes).Select(recipes.Ingredient).OfType<Ingredient>().Where(IsHard).Select(i => TakeOff.Lower(i.Name)) ?? [];
        return new EaterQuestions(
            eaters.SmallChildren ? [.. things.Concat(picks).Concat(eaten).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)] : [],
            [.. cake?.Tiers.SelectMany(t => t.Alcohol).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal) ?? Enumerable.Empty<string>()],
            [.. cake?.Tiers.SelectMany(t => t.RawEgg).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal) ?? Enumerable.Empty<string>()],
            cake is null || recipes.Version == 0);
    }

    /// <summary>Why it can't be taken yet: raw egg without the owner's word, or questions that nobody has asked.</summary>
    /// <param name="owner">True if the owner writes it.</param>
    public IReadOnlyList<Problem> Stops(Eaters eaters, bool owner) =>
    [
        .. RawEgg.Count > 0 && !(eaters.RawEggAgreed && owner)
            ? [new Problem("Eaters", Problem.Shown(string.Join(", ", RawEgg)), "There is raw egg in it, and somebody eats who should not have it.", "Take another filling, or make it with egg at 71 °C or pasteurised and write that into the recipe. Only the owner serves it all the same, by her local rules.")]
            : (Problem[])[],
        .. Words.Length > 0 && eaters.Asked != Words
            ? [new Problem("Eaters", Problem.Shown(Words), $"{Who(eaters)} Nobody has asked yet.", "Ask about what is named under Who eats, change what is not wanted, and tick that it was asked.")]
            : (Problem[])[],
    ];

    /// <summary>What stops an order that is taken.</summary>
    public static IEnumerable<Problem> Problems(Order order, Shop shop, bool owner, Cookbook recipes) =>
        order.Eaters is { } eaters && Stages.IsTaken(order.Stage) && Of(order, Contents(order, shop, recipes), recipes) is { } questions ? questions.Stops(eaters, owner) : [];

    /// <summary>"Children under 5 eat this."</summary>
    internal static string Who(Eaters eaters) => !eaters.SmallChildren ? "Somebody pregnant, old or ill eats this."
        : eaters.Vulnerable ? "Children under 5, and somebody pregnant, old or ill, eat this."
        : "Children under 5 eat this.";

    internal static CakeContents? Contents(Order order, Shop shop, Cookbook recipes) =>
        recipes.Version == 0 ? null : CakeContents.Of(order, recipes, shop.Allergens, CakeFigures.Of(shop));

    private static bool IsHard(Ingredient ingredient) =>
        Hard.Any(w => ingredient.Name.Contains(w, StringComparison.OrdinalIgnoreCase)) && !Fine.Any(w => ingredient.Name.Contains(w, StringComparison.OrdinalIgnoreCase));
}
