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
}
