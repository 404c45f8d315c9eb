namespace Bakehouse.Domain.Heat.Foods;

using static System.FormattableString;

/// <summary>What a food is made of: shares of its mass, 0 to 1, together 1 (0.98 to 1.02: labels are rounded).</summary>
/// <param name="Melts">The share of the fat that melts like butter, 0 to 1; oil is 0.</param>
/// <param name="FreezesAt">°C at which ice begins, below 0; null if it does not freeze in a kitchen's freezer.</param>
public sealed record Composition(
    double Water, double Protein, double Fat, double Carbohydrate, double Fibre = 0, double Ash = 0, double Melts = 0, double? FreezesAt = null)
{
    /// <summary>The parts with their shares.</summary>
    internal IEnumerable<(FoodPart Part, double Share)> Parts =>
    [
        (FoodPart.Water, Water), (FoodPart.Protein, Protein), (FoodPart.Fat, Fat), (FoodPart.Carbohydrate, Carbohydrate), (FoodPart.Fibre, Fibre), (FoodPart.Ash, Ash),
    ];

    /// <summary>Everything wrong with it, in one list; empty if properties can be worked out.</summary>
    public IReadOnlyList<Problem> Problems(string name) =>
    [
        .. Parts.SelectMany(p => HeatChecks.Between($"{name}, {p.Part} share", p.Share, 0, 1, "", "Give a share from 0 to 1.")),
        .. HeatChecks.Between($"{name}, melting fat", Melts, 0, 1, "", "Butter is 1, oil 0."),
        .. FreezesAt is { } f ? HeatChecks.Between($"{name}, freezing point", f, -30, -0.01, " °C", "Cake begins to freeze between -5 and -12 °C.") : [],
        .. Parts.Sum(p => p.Share) is var sum && sum is >= 0.98 and <= 1.02 ? []
            : new[] { new Problem(name, Invariant($"{sum:0.###}"), "What it is made of adds up to 1, within 0.02.", "Look for what is missing: water, most often.") },
    ];
}

/// <summary>What foods are made of, as far as heat is concerned.</summary>
public enum FoodPart
{
    /// <summary>Water.</summary>
    Water,

    /// <summary>Protein.</summary>
    Protein,

    /// <summary>Fat, melted.</summary>
    Fat,

    /// <summary>Sugar and starch.</summary>
    Carbohydrate,

    /// <summary>Fibre.</summary>
    Fibre,

    /// <summary>Ash: salt and minerals.</summary>
    Ash,

    /// <summary>Ice.</summary>
    Ice,
}
