namespace Bakehouse.Web.SetUpShop;

using Bakehouse.Domain;
using Bakehouse.Domain.FoodClocks;

/// <summary>Words for the ids of the shop page's fields.</summary>
public static class ShopFields
{
    /// <summary>"oven-1-decks" is said "Oven 1, decks".</summary>
    public static string Say(string field) => field switch
    {
        "last-hands" => "Nobody works after",
        "caps" => "Tiered cakes a day",
        "small-cakes" => "Small cakes a week",
        "keep-hours" => "A day is kept for",
        "quiet" => "The bell is quiet",
        "cold-words" => "In your words",
        "yearly-cap" => "Sold in a year at most",
        "label" => "Your sentence on every label",
        "fill" => "Batter, % of the baked height",
        "filling" => "One filling",
        "two-lower" => "Two lower a tier from",
        "cut-short" => "Supports cut short",
        "dessert-slice" => "A dessert portion",
        "coffee-slice" => "A portion with coffee",
        "law" => "List that must be known",
        "traces" => "Your sentence about this kitchen",
        "other-allergens" => "Others to look for",
        "kitchen-rules" => "Used here, though not in the cake",
        "hours" => "Open",
        "house-cakes" => "House cakes",
        "wage" => "An hour of hands",
        "orders-a-year" => "Orders a year",
        "mark-up" => "Mark-up on cost",
        "least-mark-up" => "Least mark-up",
        "price-step" => "Prices end on steps of",
        "support-price" => "A dowel, tube or straw",
        "supports" => "Tiers stand on",
        "tier-board" => "Board under a tier",
        "underlay" => "Under the box in the van",
        "rod-price" => "A centre rod",
        "paste-share" => "Sugar paste adds",
        "false-tier-price" => "A false tier",
        "drip-price" => "A drip",
        "cupcake-price" => "A cupcake, simple swirl",
        "cupcake-pack" => "Case and box, each cupcake",
        "least-price" => "No order under",
        "kitchen-celsius" => "Kitchen, °C",
        "humidity" => "Humidity there",
        "food-rules" => "Whose rules you go by",
        _ when field.StartsWith("unit-", StringComparison.Ordinal) => $"{Capital(field[5..].Replace('-', ' '))}, °C",
        _ when field.StartsWith("family-", StringComparison.Ordinal) => FillingFamily.All.FirstOrDefault(f => f.Id == field[7..])?.Name ?? field[7..],
        _ when field.StartsWith("pack-", StringComparison.Ordinal) => $"Pack of {field[5..].Replace('-', ' ')}",
        _ when field.StartsWith("portion-", StringComparison.Ordinal) => $"A portion, {field[8..]}",
        _ when field.StartsWith("decoration-", StringComparison.Ordinal) => $"Decoration, {field[11..]}",
        _ => Capital(field.Split('-') is [var kind, [>= '0' and <= '9', ..] at, var what] ? $"{kind} {at}, {what}" : field.Replace('-', ' ')),
    };

    /// <summary>The same problem with the field of this page: the domain names it by the trade's word.</summary>
    public static Problem OnPage(Problem problem) => problem with
    {
        Where = problem.Where switch
        {
            "last hands" => "last-hands",
            "house cakes" => "house-cakes",
            "Wage" or "Overhead" or "Mark-up" or "Least mark-up" or "Orders a year" => problem.Where.ToLowerInvariant().Replace(' ', '-'),
            "Rounding" or "Support" or "Rod" or "Packs" or "Price list" or "Board or box" => "prices",
            "small cakes" => "small-cakes",
            "keep hours" => "keep-hours",
            "cold words" => "cold-words",
            "yearly cap" => "yearly-cap",
            "the kitchen" => "kitchen-celsius",
            "the kitchen, humidity" => "humidity",
            "food rules" => "food-rules",
            _ when problem.Where.StartsWith("unit ", StringComparison.Ordinal) => ColdForm.FieldOf(problem.Where[5..]),
            _ when FillingFamily.All.Any(f => f.Id == problem.Where) => $"family-{problem.Where}",
            "other allergens" or "kitchen rules" or "crumb coat" or "final coat" or "kept back" or "cut short" or "two lower" or "sponge density" or "buttercream density" or "dessert slice" or "coffee slice" => problem.Where.Replace(' ', '-'),
            _ when problem.Where.StartsWith("cap", StringComparison.Ordinal) => "caps",
            _ => problem.Where,
        },
    };

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
