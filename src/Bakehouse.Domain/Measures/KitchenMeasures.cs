namespace Bakehouse.Domain.Measures;

/// <summary>
/// The volumes behind the words of the kitchen. Three different cups go by one name: the customary cup,
/// the nutrition label's cup and the metric cup.
/// </summary>
public static class KitchenMeasures
{
    /// <summary>US customary cup, 236.5882365 mL: a sixteenth of a gallon of 231 in³ (NIST Handbook 44, appendix C).</summary>
    public static Volume UsCup { get; } = Volume.FromCubicInches(231 / 16.0);

    /// <summary>US customary tablespoon: a sixteenth of the customary cup.</summary>
    public static Volume UsTablespoon { get; } = UsCup * (1 / 16.0);

    /// <summary>US customary teaspoon: a third of the tablespoon.</summary>
    public static Volume UsTeaspoon { get; } = UsCup * (1 / 48.0);

    /// <summary>Cup of the US nutrition label, 240 mL (21 CFR 101.9(b)(5)(viii)).</summary>
    public static Volume LabelCup { get; } = Volume.FromMillilitres(240);

    /// <summary>Metric cup, 250 mL (common practice, no source).</summary>
    public static Volume MetricCup { get; } = Volume.FromMillilitres(250);

    /// <summary>Tablespoon, teaspoon and fluid ounce of the US nutrition label: 15, 5, 30 mL (21 CFR 101.9(b)(5)(viii)).</summary>
    public static readonly (Volume Tablespoon, Volume Teaspoon, Volume FluidOunce) Label = (Volume.FromMillilitres(15), Volume.FromMillilitres(5), Volume.FromMillilitres(30));

    /// <summary>Imperial fluid ounce, 28.4130625 mL: a hundred-and-sixtieth of a gallon of 4.54609 L (Weights and Measures Act 1985, from memory).</summary>
    public static Volume ImperialFluidOunce { get; } = Volume.FromLitres(4.54609 / 160);
}
