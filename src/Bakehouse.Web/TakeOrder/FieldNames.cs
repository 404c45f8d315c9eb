namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain;

/// <summary>The ids of the order page's fields: their words, and which field a problem of an order leads to.</summary>
public static class FieldNames
{
    /// <summary>"tier-2" is said "Tier 2 from the top".</summary>
    public static string Say(string field) => field switch
    {
        "day" => "Day",
        "hour" => "Hour",
        "when" => "When",
        "cut-day" => "Cut on",
        "cut-hour" => "Cut at",
        "address" => "Address",
        "route" => "Minutes on the road",
        "count" => "How many",
        "tiers" => "Tiers",
        "allergies" => "Allergies",
        "name" => "Name",
        "phone" => "Telephone",
        "inscription" => "On the cake",
        "notes" => "Notes",
        "price" => "Price",
        "on-top" => "On top",
        "eaters" => "Who eats",
        "own-limits" => "The owner's limits",
        "order" => "Order",
        "stage" => "Stage",
        "plan" => "The plan",
        "cupcakes" => "Cupcakes",
        _ when field.StartsWith("cupcakes-", StringComparison.Ordinal) => $"Cupcakes {field[9..]}",
        _ when field.StartsWith("tier-", StringComparison.Ordinal) => $"Tier {field[5..]} from the top",
        _ => field,
    };

    /// <summary>The element that a link to the field jumps to. What concerns the plan is mended by another day; the rest by the order's head.</summary>
    public static string Anchor(string field) => field switch
    {
        "when" or "plan" => "day",
        "order" or "stage" => "order-head",
        "own-limits" => "tiers",
        _ => field,
    };

    /// <summary>The same problem with the field of this page: domain and book name it by the trade's word, tiers from below.</summary>
    /// <param name="tiers">How many tiers the page shows; it counts them from the top. What comes after them stands beside.</param>
    public static Problem OnPage(Problem problem, int tiers) => problem with { Where = IdOf(problem.Where, tiers) };

    private static string IdOf(string where, int tiers) => where switch
    {
        "When" => "when",
        "Cutting" => "cut-hour",
        "Address" => "address",
        "Route" => "route",
        "Who" => "name",
        "How many" => "count",
        "Tiers" => "tiers",
        "Cupcakes" => "cupcakes",
        "Allergies" => "allergies",
        "Inscription" => "inscription",
        "Notes" => "notes",
        "Price" => "price",
        "On top" => "on-top",
        "Eaters" => "eaters",
        "Own limits" => "own-limits",
        _ when where.StartsWith("Tier ", StringComparison.Ordinal)
            && int.TryParse(where.AsSpan(5), NumberStyles.None, CultureInfo.InvariantCulture, out var fromBelow) => fromBelow > tiers ? CupcakesAt(fromBelow - tiers) : TierAt(tiers + 1 - fromBelow),
        _ => where,
    };

    /// <summary>True for a field of a tier or of a batch of cupcakes.</summary>
    public static bool IsBuild(string field) => field.StartsWith("tier-", StringComparison.Ordinal) || field.StartsWith("cupcakes-", StringComparison.Ordinal);

    /// <summary>The id of the fields of a batch of cupcakes, 1 and up.</summary>
    public static string CupcakesAt(int batch) => string.Create(CultureInfo.InvariantCulture, $"cupcakes-{batch}");

    /// <summary>The id of a tier's fields, counted from the top.</summary>
    public static string TierAt(int fromTop) => string.Create(CultureInfo.InvariantCulture, $"tier-{fromTop}");
}
