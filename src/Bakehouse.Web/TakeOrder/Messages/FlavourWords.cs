namespace Bakehouse.Web.TakeOrder.Messages;

using System.Text.RegularExpressions;

/// <summary>Words by which sponges, fillings and allergens are meant (common practice, no source).</summary>
internal static class FlavourWords
{
    private static readonly (string Word, string Id)[] Fillings =
    [
        (@"raspberry(?:\s+jam)?|\bjam\b", "raspberry-jam"), (@"lemon\s+curd", "lemon-curd"), ("ganache", "ganache"), (@"cream\s+cheese", "cream-cheese"), (@"butter\s?cream", "buttercream"),
    ];

    private static readonly (string Word, string Id)[] Sponges =
    [
        (@"\bvanilla\b|\bvictoria\b", "vanilla"), (@"\blemon\b", "lemon"), (@"\bchocolate\b", "chocolate"), (@"\bcarrot\b", "carrot"), (@"\bgenoise\b", "genoise"),
    ];

    private static readonly (string Word, string Allergen)[] Told =
    [
        (@"\bpea\s?nuts?\b", "peanuts"), (@"(?<!pea\s?)\bnuts?\b|almond|hazelnut|walnut|pistachio|cashew|pecan|brazil\s+nut|macadamia", "nuts"), (@"gluten|wheat|co?eliac", "wheat"),
        (@"\beggs?\b|vegan", "egg"), (@"\bdairy\b|\bmilk\b|lactose|vegan", "milk"), ("sesame", "sesame"), (@"\bsoya?\b", "soya"), ("sul(?:ph|f)ite", "sulphites"),
    ];

    /// <summary>Ids of sponges and fillings that are named; what a filling is called is no sponge.</summary>
    public static (IReadOnlyList<string> Sponges, IReadOnlyList<string> Fillings) Find(string text)
    {
        var without = Fillings.Aggregate(text, (t, f) => Regex.Replace(t, f.Word, " ", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)));
        return (Named(Sponges, without), Named(Fillings, text));
    }

    /// <summary>Allergens that a sentence names, in the words of the order page.</summary>
    public static IEnumerable<string> Allergens(string sentence) => Named(Told, sentence);

    private static List<string> Named((string Word, string Id)[] words, string text) =>
        [.. words.Where(w => Regex.IsMatch(text, w.Word, RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1))).Select(w => w.Id)];
}
