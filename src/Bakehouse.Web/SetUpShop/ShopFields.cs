namespace Bakehouse.Web.SetUpShop;

/// <summary>Words for the ids of the shop page's fields.</summary>
public static class ShopFields
{
    /// <summary>"shelf-2" is said "Shelf 2".</summary>
    public static string Say(string field)
    {
        var words = field.Replace('-', ' ');
        return words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
