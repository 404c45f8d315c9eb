namespace Bakehouse.Domain.Allergens;

/// <summary>An everyday word for something on the lists, as a customer said it.</summary>
/// <param name="Said">The word, in lower case.</param>
/// <param name="Buttons">Words of the counter that cover it; never empty.</param>
public sealed record SaidAllergen(string Said, IReadOnlyList<string> Buttons);

/// <summary>
/// Everyday words for what the lists name, so that a customer's own words lead to what is ticked. They lead and decide nothing: whether
/// the words name something more, a person judges. What falls under each entry: Regulation (EU) No 1169/2011, annex II, and 21 USC 321(qq);
/// everyday words and dishes: common practice, no source.
/// </summary>
public static class AllergyWords
{
    private const int LongestPhrase = 2;

    /// <summary>Ids of the allergens, then the words for them.</summary>
    private static readonly (string Allergens, string Words)[] Table =
    [
        ("wheat rye barley oats", "gluten, glutens, coeliac, celiac, coeliacs, celiacs, cereal, cereals"),
        ("wheat", "wheat, flour, spelt, khorasan, durum, semolina, couscous, bulgur, farro, einkorn, emmer"),
        ("rye", "rye"), ("barley", "barley, malt, malted"), ("oats", "oat, oats, oatmeal"),
        ("milk", "milk, dairy, lactose, casein, whey, butter, buttermilk, cream, cheese, yoghurt, yogurt, ghee"),
        ("egg", "egg, eggs, albumen, albumin, meringue, meringues, mayonnaise"),
        ("almonds hazelnuts walnuts cashews pecans brazil-nuts pistachios macadamias", "nut, nuts, tree nut, tree nuts"),
        ("almonds", "almond, almonds, marzipan, frangipane"), ("hazelnuts", "hazelnut, hazelnuts, filbert, filberts, praline, gianduja"),
        ("walnuts", "walnut, walnuts"), ("cashews", "cashew, cashews, cashew nut, cashew nuts"), ("pecans", "pecan, pecans, pecan nut, pecan nuts"),
        ("brazil-nuts", "brazil nut, brazil nuts, brazils"), ("pistachios", "pistachio, pistachios, pistachio nut, pistachio nuts"),
        ("macadamias", "macadamia, macadamias, macadamia nut, macadamia nuts, queensland nut, queensland nuts"), ("pine-nuts", "pine nut, pine nuts, pine kernel, pine kernels"),
        ("peanuts", "peanut, peanuts, pea nut, pea nuts, groundnut, groundnuts, ground nut, ground nuts, monkey nut, monkey nuts"),
        ("soya", "soya, soy, soybean, soybeans, soya bean, soya beans, tofu, edamame, tempeh, miso"),
        ("sesame", "sesame, tahini, halva, halwa"), ("mustard", "mustard"), ("celery", "celery, celeriac"), ("lupin", "lupin, lupin flour, lupins, lupine, lupini"),
        ("fish", "fish, anchovy, anchovies, salmon, tuna, cod"),
        ("crustaceans", "crustacean, crustaceans, prawn, prawns, shrimp, shrimps, crab, crabs, lobster, lobsters, crayfish, scampi, langoustine, langoustines"),
        ("molluscs", "mollusc, molluscs, mollusk, mollusks, mussel, mussels, oyster, oysters, clam, clams, scallop, scallops, squid, octopus, snail, snails"),
        ("crustaceans molluscs", "shellfish"), ("fish crustaceans molluscs", "seafood"),
        ("sulphites", "sulphite, sulphites, sulfite, sulfites, sulphur dioxide, sulfur dioxide, so2, e220, e221, e222, e223, e224, e226, e227, e228"),
    ];

    private static readonly Dictionary<string, string[]> Known = Table
        .SelectMany(row => row.Words.Split(", ").Select(word => (Word: word, Ids: row.Allergens.Split(' '))))
        .ToDictionary(row => row.Word, row => row.Ids, StringComparer.Ordinal);

    /// <summary>What a customer's words name of what can be ticked here, each once, in the order in which it was said; empty where nothing is known.</summary>
    public static IReadOnlyList<SaidAllergen> In(string words, AllergenRules rules)
    {
        var said = words.ToLowerInvariant().Split([.. words.ToLowerInvariant().Where(c => !char.IsLetterOrDigit(c)).Distinct()], StringSplitOptions.RemoveEmptyEntries);
        List<SaidAllergen> found = [];
        for (var at = 0; at < said.Length;)
        {
            var (phrase, ids, length) = At(said, at, rules);
            at += length;
            if (ids.Count > 0 && Buttons(ids, rules) is { Count: > 0 } buttons && found.All(f => f.Said != phrase))
            {
                found.Add(new SaidAllergen(phrase, buttons));
            }
        }

        return found;
    }

    /// <summary>The longest phrase that begins there and is known; else the one word, with nothing.</summary>
    private static (string Phrase, IReadOnlyList<string> Ids, int Length) At(string[] said, int at, AllergenRules rules)
    {
        for (var length = Math.Min(LongestPhrase, said.Length - at); length > 0; length--)
        {
            var phrase = string.Join(' ', said[at..(at + length)]);
            if (rules.Others.FirstOrDefault(o => o.Words.Append(o.Name).Append(o.Id).Contains(phrase, StringComparer.OrdinalIgnoreCase)) is { } own)
            {
                return (phrase, [own.Id], length);
            }

            if (Known.TryGetValue(phrase, out var ids))
            {
                return (phrase, ids, length);
            }
        }

        return (said[at], [], 1);
    }

    /// <summary>The narrowest button that covers all of it; else every button that covers some of it.</summary>
    private static IReadOnlyList<string> Buttons(IReadOnlyList<string> ids, AllergenRules rules)
    {
        var covers = rules.AtCounter.Select(b => (Button: b, Ids: rules.Covered(b))).Where(c => c.Ids.Any(ids.Contains)).ToList();
        return [.. covers.Where(c => ids.All(c.Ids.Contains)).OrderBy(c => c.Ids.Count).Take(1).DefaultIfEmpty().SelectMany(c => c.Button is null ? covers : [c]).Select(c => c.Button)];
    }
}
