namespace Bakehouse.Domain.Cakes;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>What keeps tiers from being built at all. Whether the shop can make them is asked elsewhere.</summary>
public static class BuildProblems
{
    /// <summary>The thinnest layer that can be cut: 5 mm (common practice, no source).</summary>
    public static Length ThinnestLayer { get; } = Length.FromMillimetres(5);

    /// <summary>Every problem; empty if a sheet can be worked out.</summary>
    public static IReadOnlyList<Problem> Of(IReadOnlyList<CakeTier> tiers, CakeFigures figures) => tiers.Count == 0
        ? [new Problem("Tiers", "0", "A cake has at least one tier.", "Add a tier.")]
        : [.. FigureChecks.Of(figures), .. CupcakeProblems.Order(tiers), .. tiers.SelectMany((tier, i) => Of(tier, $"Tier {(i + 1).ToString(CultureInfo.InvariantCulture)}", figures))];

    private static IEnumerable<Problem> Of(CakeTier tier, string where, CakeFigures figures) =>
        (tier.Special?.Cupcakes is { } cupcakes ? CupcakeProblems.Of(tier, cupcakes, where) : Sized(tier, where, figures)).Concat(Coloured(tier, where));

    private static IEnumerable<Problem> Sized(CakeTier tier, string where, CakeFigures figures)
    {
        if (tier.Diameter.Millimetres == 0)
        {
            yield return new Problem(where, "0 in", "A tier is wider than nothing.", "Give its diameter.");
        }

        if (tier.Layers < 1)
        {
            yield return new Problem(where, Text(tier.Layers), "A tier has at least one layer.", "Give its layers.");
        }
        else if (Least(tier, figures) is var least && tier.Height < least)
        {
            yield return new Problem(
                where,
                $"{Text(tier.Height.Centimetres)} cm",
                $"{Text(tier.Layers)} layers of {Text(ThinnestLayer.Millimetres)} mm and their fillings need {Text(least.Centimetres)} cm of height.",
                "Take fewer layers or more height.");
        }

        foreach (var problem in tier.Special is { } special ? SpecialProblems.Of(tier, special, where, figures) : [])
        {
            yield return problem;
        }
    }

    private static IEnumerable<Problem> Coloured(CakeTier tier, string where)
    {
        var shares = tier.Colours.Sum(c => c.Share);
        if (shares != 1 || tier.Colours.Any(c => c.Share < 0))
        {
            yield return new Problem(where, $"{Text(shares * 100)} %", "The colours of a coat make 100 % together.", "Change the shares.");
        }
    }

    /// <summary>The least height for a number of layers.</summary>
    internal static Length Least(CakeTier tier, CakeFigures figures) =>
        (ThinnestLayer * tier.Layers) + (figures.FillingThickness * (tier.Layers - 1));

    internal static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
