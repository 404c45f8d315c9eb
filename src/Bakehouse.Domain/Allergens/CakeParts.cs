namespace Bakehouse.Domain.Allergens;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;

/// <summary>Something that goes into a tier: by which recipe, and how much of it.</summary>
/// <param name="Recipe">Id of the recipe.</param>
/// <param name="Name">What it is called if there is no such recipe.</param>
/// <param name="Mass">Of what ends in the tier, at the mixing bowl; zero if it is not known how much, then as much as the recipe makes. Labels go by it.</param>
public sealed record CakePart(string Recipe, string Name, Mass Mass)
{
    /// <summary>All that is made for it at the mixing bowl, with what is cut off or kept back. What is weighed out and what it costs go by it.</summary>
    public Mass Made { get; init; } = Mass;
}

/// <summary>
/// Everything that ends in or on a tier: sponge, filling, coats, colour, decoration, and the kit that touches it. What no recipe
/// describes is a part all the same, and then nothing is known about it.
/// </summary>
public static class CakeParts
{
    /// <summary>The recipe that is both coats.</summary>
    public const string Coat = "buttercream";

    /// <summary>The recipe of what colours a coat.</summary>
    public const string Colour = "colour";

    /// <summary>The recipe of what tins are greased and dusted with.</summary>
    public const string Tins = "tin-grease";

    /// <summary>The recipe of rolled sugar paste.</summary>
    public const string Paste = "paste";

    /// <summary>The recipe of what runs down from the edge.</summary>
    public const string Drip = "drip";

    /// <summary>Grams of colour for a kilogram of coat (common practice, no source: 1 to 10 in use).</summary>
    private const decimal ColourPerKilogram = 5;

    /// <summary>Grams of grease for a tin (common practice, no source).</summary>
    private const decimal GreasePerTin = 5;

    /// <summary>The recipe of a decoration, as much as goes on one tier.</summary>
    public static string Of(Decoration decoration) => $"decoration-{decoration.ToString().ToLowerInvariant()}";

    /// <summary>Parts of each tier, by tier id. The order must have a build sheet.</summary>
    public static IReadOnlyDictionary<Guid, IReadOnlyList<CakePart>> Of(Order order, BuildSheet sheet) =>
        sheet.Tiers.ToDictionary(t => t.Tier.Id, t => (IReadOnlyList<CakePart>)[.. Of(t, order.Decoration, sheet), .. OnTop(order)]);

    /// <summary>What is eaten of the things on top; where on the cake they lie nobody has said, so they count for each tier.</summary>
    private static IEnumerable<CakePart> OnTop(Order order) => (order.OnTop?.Toppings ?? [])
        .Select(t => Topping.Of(t.Topping)).OfType<Topping>().Where(t => t.Use == ToppingUse.Edible)
        .Select(t => new CakePart(t.Id, t.Kinds.Count > 0 ? $"{t.Name}, not said which" : $"{t.Name} (recipe {t.Id})", Mass.FromGrams(0)));

    private static IReadOnlyList<CakePart> Of(TierBuild build, Decoration decoration, BuildSheet whole)
    {
        var (figures, spread) = (whole.Figures, build.Crumb + build.Coat + build.Dam + build.Beads);
        var (coat, made) = (figures.IcingDensity * (spread + build.Seam), figures.IcingDensity * (spread + KeptBack(build, whole)));
        List<CakePart> parts =
        [
            .. build.Tier.IsFalse ? [] : Inside(build, figures),
            new(Coat, "Coat", coat) { Made = made },
            new(Of(decoration), $"{decoration} decoration", Mass.FromGrams(0)),
        ];
        if (build.Tier.Colours.Count > 0)
        {
            parts.Add(new CakePart(Colour, "Colour of the coat", coat * (ColourPerKilogram / 1000)) { Made = made * (ColourPerKilogram / 1000) });
        }

        if (build.Paste is { } sheet)
        {
            parts.Add(new CakePart(Paste, $"Sugar paste (recipe {Paste})", sheet.OnCake));
        }

        if (build.Drip > Volume.Zero)
        {
            parts.Add(new CakePart(Drip, $"Drip (recipe {Drip})", figures.DripDensity * build.Drip));
        }

        return parts;
    }

    /// <summary>Of what is kept back of each colour as much as falls to this tier by what it takes of the batch; the seams come out of it.</summary>
    private static Volume KeptBack(TierBuild build, BuildSheet whole) => Volume.Sum(
        from batch in whole.Colours
        from colour in build.Colours
        where batch.Is(colour)
        select batch.KeptBack * ((colour.Needed + colour.Seams) / (batch.Needed + batch.Seams)));

    /// <summary>Sponge, filling, and what its tins are greased with; a false tier has none of them.</summary>
    private static List<CakePart> Inside(TierBuild build, CakeFigures figures)
    {
        var tier = build.Tier;
        var density = Density.FromGramsPerMillilitre((double)(Sponge.Of(tier.Sponge)?.BatterDensity ?? 1));
        var made = density * build.Pans.AllBatter;
        var eaten = build.LeftOver > Volume.Zero ? made * (decimal)(build.Sponge / (build.Sponge + build.LeftOver)) : made;
        List<CakePart> parts =
        [
            new(tier.Sponge, Sponge.Of(tier.Sponge)?.Name ?? tier.Sponge, eaten) { Made = made },
            new(Tins, "Grease for tins", Mass.FromGrams(GreasePerTin * build.Pans.Count)),
        ];
        if (build.Fillings > 0)
        {
            parts.Add(new CakePart(tier.Filling, Filling.Of(tier.Filling)?.Name ?? tier.Filling, figures.Filling(tier.Filling) * build.Filling));
        }

        return parts;
    }
}
