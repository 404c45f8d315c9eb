namespace Bakehouse.Web.TakeOrder.Messages;

using System.Text.RegularExpressions;
using Bakehouse.Domain.Allergens;

/// <summary>Words by which sponges and fillings are meant (common practice, no source).</summary>
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

    /// <summary>Ids of sponges and fillings that are named; what a filling is called is no sponge.</summary>
    public static (IReadOnlyList<string> Sponges, IReadOnlyList<string> Fillings) Find(string text)
    {
        var without = Fillings.Aggregate(text, (t, f) => Regex.Replace(t, f.Word, " ", RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1)));
        return (Named(Sponges, without), Named(Fillings, text));
    }

    /// <summary>Allergens that a sentence names, in the words of the order page. Whoever eats nothing of animals avoids egg and milk.</summary>
    public static IEnumerable<string> Allergens(string sentence, AllergenRules rules) =>
        AllergyWords.In(sentence, rules).SelectMany(s => s.Buttons).Concat(sentence.Contains("vegan", StringComparison.OrdinalIgnoreCase) ? ["egg", "milk"] : []);

    private static List<string> Named((string Word, string Id)[] words, string text) =>
        [.. words.Where(w => Regex.IsMatch(text, w.Word, RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1))).Select(w => w.Id)];
}
