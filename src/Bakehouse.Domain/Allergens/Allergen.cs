namespace Bakehouse.Domain.Allergens;

/// <summary>One thing that people must avoid, as small as a label must name it: almonds, not nuts.</summary>
/// <param name="Id">Short, lower case.</param>
/// <param name="Name">As it is said: "contains walnuts".</param>
/// <param name="Words">Words in a list of ingredients by which it is named already, e.g. "milk" in "whole milk".</param>
public sealed record Allergen(string Id, string Name, params IReadOnlyList<string> Words);

/// <summary>One entry of a legal list, with what it covers.</summary>
/// <param name="Word">How it is chosen at the counter: "nuts".</param>
/// <param name="Name">What the entry is about.</param>
/// <param name="Covers">Ids of the allergens.</param>
public sealed record ListedAllergen(string Word, string Name, params IReadOnlyList<string> Covers);

/// <summary>A list that a law gives. Which law counts, the shop's owner says; local rules come first.</summary>
/// <param name="Source">Where the list stands.</param>
public sealed record LegalList(string Id, string Name, string Source, IReadOnlyList<ListedAllergen> Entries);

/// <summary>The allergens that are known from the start, and the lists of two laws. A shop may add others.</summary>
public static class KnownAllergens
{
    /// <summary>Sulphites are told from 10 mg/kg of SO2 on in what is eaten (21 CFR 101.100(a)(4): 10 parts per million or more; Regulation (EU) 1169/2011, annex II, entry 12: more than 10).</summary>
    public const decimal SulphitesFrom = 10;

    /// <summary>The id of sulphites: the only one that goes by an amount.</summary>
    public const string Sulphites = "sulphites";

    private static readonly string[] Cereals = ["wheat", "rye", "barley", "oats"];
    private static readonly string[] EuNuts = ["almonds", "hazelnuts", "walnuts", "cashews", "pecans", "brazil-nuts", "pistachios", "macadamias"];

    /// <summary>Everything that a list below covers.</summary>
    public static IReadOnlyList<Allergen> All { get; } =
    [
        new("wheat", "wheat", "wheat", "spelt", "khorasan"), new("rye", "rye", "rye"), new("barley", "barley", "barley"), new("oats", "oats", "oat", "oats"),
        new("crustaceans", "crustaceans", "crab", "prawn", "lobster", "crustaceans"), new("egg", "egg", "egg", "eggs"), new("fish", "fish", "fish"),
        new("peanuts", "peanuts", "peanut", "peanuts"), new("soya", "soya", "soya", "soy", "soybean", "soybeans"), new("milk", "milk", "milk"),
        new("almonds", "almonds", "almond", "almonds"), new("hazelnuts", "hazelnuts", "hazelnut", "hazelnuts"), new("walnuts", "walnuts", "walnut", "walnuts"),
        new("cashews", "cashews", "cashew", "cashews"), new("pecans", "pecans", "pecan", "pecans"), new("brazil-nuts", "Brazil nuts", "Brazil nut", "Brazil nuts"),
        new("pistachios", "pistachios", "pistachio", "pistachios"), new("macadamias", "macadamias", "macadamia", "macadamias"), new("pine-nuts", "pine nuts", "pine nut", "pine nuts"),
        new("celery", "celery", "celery"), new("mustard", "mustard", "mustard"), new("sesame", "sesame", "sesame"),
        new(Sulphites, "sulphites", "sulphite", "sulphites", "sulphur dioxide"), new("lupin", "lupin", "lupin"), new("molluscs", "molluscs", "mussel", "oyster", "squid", "molluscs"),
    ];

    /// <summary>The fourteen of the European Union and the United Kingdom.</summary>
    public static LegalList Eu { get; } = new("eu", "EU and UK, 14", "Regulation (EU) No 1169/2011, annex II", [
        new("gluten", "Cereals containing gluten", Cereals), new("crustaceans", "Crustaceans", "crustaceans"), new("egg", "Eggs", "egg"), new("fish", "Fish", "fish"),
        new("peanuts", "Peanuts", "peanuts"), new("soya", "Soybeans", "soya"), new("milk", "Milk", "milk"), new("nuts", "Nuts", EuNuts), new("celery", "Celery", "celery"),
        new("mustard", "Mustard", "mustard"), new("sesame", "Sesame seeds", "sesame"), new(Sulphites, "Sulphur dioxide and sulphites", Sulphites), new("lupin", "Lupin", "lupin"),
        new("molluscs", "Molluscs", "molluscs"),
    ]);

    /// <summary>
    /// The nine of the United States. Its tree nuts are named by kind; the kinds beyond the European eight are the owner's to add, pine
    /// nuts are there.
    /// </summary>
    public static LegalList Us { get; } = new("us", "USA, 9", "21 USC 321(qq): Food Allergen Labeling and Consumer Protection Act of 2004, FASTER Act of 2021", [
        new("milk", "Milk", "milk"), new("egg", "Eggs", "egg"), new("fish", "Fish", "fish"), new("crustaceans", "Crustacean shellfish", "crustaceans"),
        new("nuts", "Tree nuts", [.. EuNuts, "pine-nuts"]), new("wheat", "Wheat", "wheat"), new("peanuts", "Peanuts", "peanuts"), new("soya", "Soybeans", "soya"), new("sesame", "Sesame", "sesame"),
    ]);

    /// <summary>Both lists.</summary>
    public static IReadOnlyList<LegalList> Lists { get; } = [Eu, Us];

    /// <summary>Ids covered by a word of the counter: of an entry of either list, or of an allergen itself. Empty for a word that is none.</summary>
    public static IReadOnlyList<string> Covered(string word) =>
        [.. Lists.SelectMany(l => l.Entries).Where(e => Same(e.Word, word)).SelectMany(e => e.Covers)
            .Concat(All.Where(a => Same(a.Id, word) || Same(a.Name, word)).Select(a => a.Id)).Distinct(StringComparer.Ordinal)];

    private static bool Same(string a, string b) => string.Equals(a, b.Trim(), StringComparison.OrdinalIgnoreCase);
}
