namespace Bakehouse.Web.TakeOrder;

/// <summary>Words for the ids of the order page's fields.</summary>
public static class FieldNames
{
    /// <summary>"tier-2" is said "Tier 2 from the top".</summary>
    public static string Say(string field) => field switch
    {
        "day" => "Day",
        "hour" => "Hour",
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
        "order" => "Order",
        "wider" => "Wider above",
        _ when field.StartsWith("tier-", StringComparison.Ordinal) => $"Tier {field[5..]} from the top",
        _ => field,
    };
}
