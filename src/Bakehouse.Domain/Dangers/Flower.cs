namespace Bakehouse.Domain.Dangers;

using System.Text;

/// <summary>What is known of a fresh flower, the worst first.</summary>
public enum FlowerKnown
{
    /// <summary>A list of poisonous plants has it.</summary>
    Poisonous,

    /// <summary>Lists disagree, or it only irritates.</summary>
    Doubtful,

    /// <summary>Eaten, if it was grown for that.</summary>
    GrownToEat,
}

/// <summary>A flower that people ask for on a cake.</summary>
/// <param name="Botanical">Genus or species.</param>
/// <param name="Name">Its everyday name.</param>
/// <param name="Source">Which list says so, and which one says otherwise.</param>
/// <param name="AlsoCalled">Other everyday names, small letters.</param>
public sealed record Flower(string Botanical, string Name, FlowerKnown Known, string Source, params IReadOnlyList<string> AlsoCalled)
{
    /// <summary>Stands beside everything that is said about a flower.</summary>
    public const string Caution = "Lists of poisonous plants disagree and none is whole. Ask your poison centre or extension office about the very plant.";

    /// <summary>Words that say how it looks and leave open which one it is.</summary>
    private static readonly HashSet<string> Looks = new(StringComparer.Ordinal)
    {
        "white", "cream", "ivory", "yellow", "orange", "peach", "pink", "red", "burgundy", "purple", "blue", "fresh", "small", "large", "mini", "spray", "open",
    };

    /// <summary>
    /// The flower that somebody means, or null if none of the list is meant. A poisonous or doubtful one is found in any words that hold its name; one that is
    /// eaten only by its bare name with a colour or a size: a desert rose is no rose.
    /// </summary>
    public static Flower? Named(string typed)
    {
        var words = Words(typed);
        return FlowerList.All
            .SelectMany(f => f.Names.Select(n => (Flower: f, Name: n)))
            .Where(m => m.Flower.Known == FlowerKnown.GrownToEat ? words.Where(w => !Looks.Contains(w)).SequenceEqual(m.Name, StringComparer.Ordinal) : Holds(words, m.Name))
            .OrderByDescending(m => m.Name.Count).ThenBy(m => m.Flower.Known)
            .Select(m => m.Flower).FirstOrDefault();
    }

    /// <summary>"Foxglove (Digitalis)".</summary>
    public override string ToString() => $"{Name} ({Botanical})";

    private IEnumerable<IReadOnlyList<string>> Names => AlsoCalled.Append(Name).Append(Botanical).Select(Words);

    private static bool Holds(IReadOnlyList<string> words, IReadOnlyList<string> name) =>
        Enumerable.Range(0, Math.Max(0, words.Count - name.Count + 1)).Any(at => words.Skip(at).Take(name.Count).SequenceEqual(name, StringComparer.Ordinal));

    /// <summary>Small letters, one for many: "Pansies" is "pansy", "baby's breath" is "baby breath".</summary>
    private static IReadOnlyList<string> Words(string text)
    {
        var letters = new StringBuilder();
        foreach (var c in text.Replace("'s", "", StringComparison.Ordinal).Replace("’s", "", StringComparison.Ordinal).ToLowerInvariant())
        {
            letters.Append(char.IsLetter(c) ? c : ' ');
        }

        return [.. letters.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(One)];
    }

    private static string One(string word) => word.EndsWith("ies", StringComparison.Ordinal) ? word[..^3] + "y"
        : word.Length > 4 && word[^1] == 's' && word[^2] is not 's' and not 'u' and not 'i' ? word[..^1]
        : word;
}
