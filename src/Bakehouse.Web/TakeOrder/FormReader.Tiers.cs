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
        return new CakeTier(tier.Id, wide, Length.FromCentimetres(height), layers, tier.Sponge, tier.Filling, colours) { Special = Special(tier, wide, field) };
    }

    /// <summary>The outline as typed; what else is special about a tier that stands in the book stays.</summary>
    private TierSpecial? Special(TierForm tier, Length wide, string field)
    {
        var kept = orders?.SelectMany(o => o.Tiers).FirstOrDefault(t => t.Id == tier.Id)?.Special;
        var special = (kept ?? Plain) with
        {
            Outline = null,
            IsFalse = tier.IsFalse,
            LayerHeights = tier.IsFalse ? [] : LayerHeights(tier.LayerHeights, field),
            Separator = Centimetres(field, tier.Apart, "cm on pillars"),
            Dam = tier.IsFalse ? default : Centimetres(field, tier.Dam, "cm for the ring around the filling"),
            FootBead = Centimetres(field, tier.FootBead, "cm for the bead at the foot"),
            TopBead = Centimetres(field, tier.TopBead, "cm for the bead on top"),
        };
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

    /// <summary>Nothing where nothing is typed.</summary>
    private Length Centimetres(string field, string text, string what) => text.Trim().Length == 0 ? default : Length.FromCentimetres(Figure(field, text, 0, what));

    /// <summary>Figures with spaces, plus signs or semicolons between them, from the foot up; a comma after one counts as a space, within one as a point.</summary>
    private IReadOnlyList<Length> LayerHeights(string text, string field) => text.Trim().Length == 0 ? [] :
    [
        .. text.Split([' ', ';', '+', '\t', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(t => t.TrimEnd(',')).Where(t => t.Length > 0)
            .Select(t => Length.FromCentimetres(Figure(field, t, 2, "cm for each layer"))),
    ];
}
