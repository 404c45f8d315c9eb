namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <content>The tiers as typed.</content>
public sealed partial class FormReader
{
    private static readonly TierSpecial Plain = new();

    private IReadOnlyList<CakeTier> Tiers(OrderForm form) => [.. form.Tiers.Select((t, i) => Dressed(Tier(t, FieldNames.TierAt(i + 1)), form, i == 0)).Reverse(), .. form.Cupcakes.Select((c, i) => Batch(c, FieldNames.CupcakesAt(i + 1)))];

    private CakeTier Batch(CupcakeForm batch, string field) => Cupcakes.Batch(
        batch.Id, Whole(field, batch.Count, 1, "cupcakes"), batch.Sponge, [.. batch.Colours.Select(c => new CoatColour(c.Name.Trim(), c.Swatch, Figure(field, c.Share, 100, "% of the swirls") / 100))]);

    /// <summary>With sugar paste and drip as chosen for the cake; a tier that has its own keeps how thick it is and how far it runs.</summary>
    private static CakeTier Dressed(CakeTier tier, OrderForm form, bool top)
    {
        if (tier.StandsBeside)
        {
            return tier;
        }

        var was = tier.Special ?? Plain;
        var drips = form.Drip == Dripping.All || (form.Drip == Dripping.Top && top);
        var special = was with { Paste = form.Paste ? was.Paste ?? Thick : null, Drip = !drips ? default : was.Drip > default(Length) ? was.Drip : Runs };
        return special == Plain ? tier with { Special = null } : tier with { Special = special };
    }

    // 3 to 5 mm of paste are usual; a drip of about 4 cm looks like one on 10 cm (both common practice, no source).
    private static readonly Length Thick = Length.FromMillimetres(4), Runs = Length.FromCentimetres(4);

    private CakeTier Tier(TierForm tier, string field)
    {
        var inches = shop.Settings.Inches;
        var diameter = Figure(field, tier.Diameter, inches ? 8 : 20, inches ? "inches across" : "cm across");
        var height = Figure(field, tier.Height, 10, "cm of height");
        var layers = Whole(field, tier.Layers, 1, "layers");
        var colours = tier.Colours
            .Select(c => new CoatColour(c.Name.Trim(), c.Swatch, Figure(field, c.Share, 100, "% of the coat") / 100))
            .ToList();
        var wide = inches ? Length.FromInches(diameter) : Length.FromCentimetres(diameter);
        return new CakeTier(tier.Id, wide, Length.FromCentimetres(height), layers, tier.Sponge, tier.Filling, colours) { Special = Special(tier, wide, Length.FromCentimetres(height), layers, field) };
    }

    /// <summary>The outline as typed; what else is special about a tier that stands in the book stays.</summary>
    private TierSpecial? Special(TierForm tier, Length wide, Length height, int layers, string field)
    {
        var stands = orders?.SelectMany(o => o.Tiers).FirstOrDefault(t => t.Id == tier.Id);
        var kept = stands?.Special is { } s ? s with { LayerHeights = stands.Height == height && stands.Layers == layers ? s.LayerHeights : [] } : null;
        var apart = tier.Apart.Trim().Length == 0 ? 0 : Figure(field, tier.Apart, 0, "cm on pillars");
        var special = (kept ?? Plain) with { Outline = null, IsFalse = tier.IsFalse, Separator = Length.FromCentimetres(apart) };
        if (tier.Outline == OutlineKind.Round)
        {
            return special == Plain ? null : special;
        }

        Length? deep = null;
        if (tier.Outline == OutlineKind.Rectangle)
        {
            var figure = Figure(field, tier.Deep, shop.Settings.Inches ? 8 : 20, shop.Settings.Inches ? "inches deep" : "cm deep");
            deep = shop.Settings.Inches ? Length.FromInches(figure) : Length.FromCentimetres(figure);
        }

        return special with { Outline = new Outline(tier.Outline, wide, deep, kept?.Outline?.Lobes ?? Petal.UsualLobes, tier.Outline == OutlineKind.Sign ? tier.Sign.Trim().ToUpperInvariant() : "") };
    }
}
