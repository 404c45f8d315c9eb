namespace Bakehouse.Domain.Dangers;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>Something about one cake that can hurt somebody, in the same words on its page and on every card that it concerns.</summary>
/// <param name="First">What the danger is.</param>
/// <param name="Says">The rest of the sentence.</param>
/// <param name="Steps">Operations on whose cards it stands.</param>
public sealed record Caution(string First, string Says, params IReadOnlyList<string> Steps)
{
    private static readonly string[] Out = ["decorate", "pipe", "box", "leavefridge", "handover", "deliver"];
    private static readonly string[] Built = ["stack", .. Out];

    /// <summary>All of a cake, the nearest danger first.</summary>
    /// <param name="sheet">Its build; null if that can't be worked out.</param>
    public static IReadOnlyList<Caution> Of(Order order, BuildSheet? sheet, Shop shop, Cookbook recipes) =>
    [
        .. Off(order), .. Foam(order, shop), .. Kitchen(order, shop, recipes), .. Flowers(order), .. Dusts(order), .. Eaters(order, shop, recipes), .. sheet is null ? [] : Hidden(order, sheet), .. Label(shop),
    ];

    /// <summary>The line that whoever cuts must have heard, on page, card, box and label; null if everything on it is eaten.</summary>
    public static string? TakenOff(Order order) => TakeOff.Of(order) is { Count: > 0 } off ? $"{string.Join(", ", off)}." : null;

    /// <summary>Where it comes from; stands on the page, not on a card. May be empty.</summary>
    public string Source { get; init; } = "";

    /// <summary>True if whoever takes the cake is told, too.</summary>
    public bool IsTold => Steps.Contains("handover");

    /// <inheritdoc/>
    public override string ToString() => $"{First} {Says}";

    private static IEnumerable<Caution> Off(Order order) => TakenOff(order) is { } off ? [new Caution("Take off before cutting:", off, Built)] : [];

    private static IEnumerable<Caution> Foam(Order order, Shop shop) => order.Tiers.Where(t => t.IsFalse).Select(t => new Caution(
        "Foam, no cake:", $"the {TierNames.Of(t, shop.Settings.Inches)} tier. Nobody cuts or eats it; tell whoever cuts.", Built));

    /// <summary>What no recipe lists can still come from the kitchen: said until the cake is handed over. What the cake contains stops it elsewhere.</summary>
    private static IEnumerable<Caution> Kitchen(Order order, Shop shop, Cookbook recipes) =>
        BeforeWork.MustBeReadBack(order) && EaterQuestions.Contents(order, shop, recipes) is { } cake
            ? Weighing.Of(order.Allergies, cake, shop.Allergens).Where(w => w.Verdict is Verdict.Note or Verdict.WithControls)
                .Select(w => new Caution($"Avoid {w.Told}:", $"{w.Reason} {w.Try}", ["mix", "filling", "buttercream", "colour", "fill", "crumb", "coat", "cover", "drip", .. Built]))
            : [];

    private static IEnumerable<Caution> Flowers(Order order) => order.OnTop?.Flowers is not { } flowers ? []
        : [.. flowers.Kinds.Where(k => k.Put != FlowerPut.LeftOff && k.Species.Trim().Length > 0)
                .Select(k => new Caution($"{Capital(k.Species.Trim())}:", $"{About(k)}{How(k)}{From(flowers)}", "stack", "decorate", "pipe") { Source = Flower.Named(k.Species)?.Source ?? "" }),
            new Caution("Fresh flowers:", Flower.Caution)];

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string From(FreshFlowers flowers) => flowers.Florist.Trim().Length == 0 ? "" : $" From {flowers.Florist.Trim()}.";

    private static string About(OrderedFlower kind) => Flower.Named(kind.Species) switch
    {
        null => "on none of our lists, ",
        { Known: FlowerKnown.Poisonous } => "listed as poisonous, ",
        { Known: FlowerKnown.Doubtful } => "lists disagree about it, ",
        _ => kind.GrownToEat ? "grown to eat by what was told, " : "",
    };

    private static string How(OrderedFlower kind) => kind.Put switch
    {
        FlowerPut.Beside => "beside the cake, touching nothing of it.",
        FlowerPut.Pick => "each stem in a pick, none in cake.",
        FlowerPut.Tape => "each stem sealed with tape, none in cake.",
        FlowerPut.Disc => "on a disc of board, petals off the coat.",
        FlowerPut.Touches => "may touch the coat.",
        _ => "not on the cake before somebody has said how.",
    };

    private static IEnumerable<Caution> Dusts(Order order) =>
        order.OnTop?.Toppings.Any(t => t.Topping.Contains("glitter", StringComparison.Ordinal) || t.Topping.StartsWith("gold", StringComparison.Ordinal)) == true
            ? [new Caution("Read the pack:", Topping.Caution, "decorate", "pipe")]
            : [];

    private static IEnumerable<Caution> Eaters(Order order, Shop shop, Cookbook recipes)
    {
        if (EaterQuestions.Of(order, EaterQuestions.Contents(order, shop, recipes), recipes) is not { } questions)
        {
            yield break;
        }

        yield return new Caution(EaterQuestions.Who(order.Eaters!), questions.Words.Length > 0 ? questions.Words : "Nothing was found to ask about; look yourself.", ["filling", "buttercream", .. Out]);
    }

    private static IEnumerable<Caution> Hidden(Order order, BuildSheet sheet) => HiddenParts.Of(order, sheet) is { Total: > 0 } parts
        ? [new Caution("Hidden inside:", $"{parts}. {(parts.Parts.Count > 1 ? $"{parts.Total} parts in all: count" : "Count")} them in, and tell whoever cuts it the same count.", [.. Built.Where(b => b != "pipe")])]
        : [];

    private static IEnumerable<Caution> Label(Shop shop) => shop.Limits?.Label.Trim() is { Length: > 0 } label ? [new Caution("On the label:", $"“{label}”", "box")] : [];
}
