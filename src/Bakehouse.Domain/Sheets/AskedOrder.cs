namespace Bakehouse.Domain.Sheets;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>Reads what a sheet needs of an order.</summary>
internal sealed class AskedOrder(JsonRow file)
{
    /// <summary>The lowest and the highest tier that is built, millimetres.</summary>
    private static readonly (decimal Least, decimal Most) High = (30, 250);

    public Order Order()
    {
        var rows = file.Counted("tiers", "Tier", needed: true);
        List<CakeTier> tiers = [.. rows.Take(OrderChecks.MostTiers + Cupcakes.MostBatches).Select(Tier)];
        if (file.Has("tiers") && (rows.Count == 0 || rows.Count > tiers.Count || !OrderChecks.IsCounted(tiers)))
        {
            file.Say("tiers", $"{rows.Count}", $"A cake has 1 to {OrderChecks.MostTiers} tiers, and at most {Cupcakes.MostBatches} batches of cupcakes beside them.", rows.Count < 1 ? "Add a tier." : "Make two cakes.");
        }

        return new Order(
            default,
            file.Number("number", 0),
            file.Number("version", 1),
            Stage.Booked,
            new Customer("", ""),
            new Handover(Way.Collect, default, "", Math.Max(0, (file.Below("handover") ?? file).Number("routeMinutes", 0))),
            null,
            new Portions(1, Cut.Dessert),
            tiers,
            file.OneOf("finish", Finish.Smooth),
            Decoration.Simple,
            AllergyAnswer.NotAsked,
            "",
            "");
    }

    private static CakeTier Tier(JsonRow row)
    {
        var special = row.Below("special") is { } own ? Special(own) : null;
        if (special?.Cupcakes is not null)
        {
            return Batch(row, special);
        }

        var (least, most) = special?.Outline is null ? (Length.FromInches(3), Length.FromInches(18)) : OutlineChecks.Sizes;
        var diameter = Length.FromMillimetres(row.Decimal("diameter", least.Millimetres, most.Millimetres, "mm"));
        var layers = row.Number("layers");
        if (row.Has("layers") && layers is < 1 or > 8)
        {
            row.Say("layers", $"{layers}", "A tier has 1 to 8 layers.", "Choose a number between.");
        }

        var eaten = special?.IsFalse != true;
        return new CakeTier(
            default,
            diameter,
            Length.FromMillimetres(row.Decimal("height", High.Least, High.Most, "mm")),
            layers,
            Known(row, "sponge", [.. Sponge.All.Select(s => s.Id)], eaten),
            Known(row, "filling", [.. Filling.All.Select(f => f.Id)], eaten && layers > 1),
            [.. row.Counted("colours", $"{row.Path}, colour", needed: true).Select(Colour)])
        {
            Special = special,
        };
    }

    /// <summary>Sizes, layers and filling of cupcakes may be left out: they are as of every cupcake.</summary>
    private static CakeTier Batch(JsonRow row, TierSpecial special) => Cupcakes.Batch(
        default, special.Cupcakes!.Count, Known(row, "sponge", [.. Sponge.All.Select(s => s.Id)], needed: true), [.. row.Counted("colours", $"{row.Path}, colour", needed: true).Select(Colour)]) with
    {
        Special = special,
    };

    private static string Known(JsonRow row, string name, IReadOnlyList<string> ids, bool needed)
    {
        var given = row.Text(name, needed ? null : "");
        if (given.Length > 0 && !ids.Contains(given, StringComparer.Ordinal))
        {
            row.Say(name, Problem.Shown(given), $"This {name} is not known.", $"Write one of {string.Join(", ", ids)}.");
        }

        return given;
    }

    private static CoatColour Colour(JsonRow row) => new(row.Text("name"), row.Text("swatch", "#FFFFFF"), row.Decimal("share", 0, 1, ""));

    private static TierSpecial Special(JsonRow row)
    {
        row.OnlyKnows("outline", "layerHeights", "isFalse", "separator", "dam", "paste", "footBead", "topBead", "drip", "cupcakes");
        return new TierSpecial
        {
            Outline = row.Below("outline") is { } outline ? OutlineOf(outline) : null,
            LayerHeights = row.MillimetresEach("layerHeights", 0, High.Most),
            IsFalse = row.Flag("isFalse"),
            Separator = row.Millimetres("separator", 0, 500) ?? default,
            Dam = row.Millimetres("dam", 0, 100) ?? default,
            Paste = row.Millimetres("paste", 0, 10),
            FootBead = row.Millimetres("footBead", 0, 50) ?? default,
            TopBead = row.Millimetres("topBead", 0, 50) ?? default,
            Drip = row.Millimetres("drip", 0, High.Most) ?? default,
            Cupcakes = row.Below("cupcakes") is { } cupcakes ? CupcakesOf(cupcakes) : null,
        };
    }

    private static Cupcakes CupcakesOf(JsonRow row)
    {
        row.OnlyKnows("count");
        return new Cupcakes(row.Number("count"));
    }

    private static Outline OutlineOf(JsonRow row)
    {
        row.OnlyKnows("kind", "wide", "deep", "lobes", "sign");
        if (!row.Has("kind"))
        {
            _ = row.Text("kind");
        }

        return new Outline(
            row.OneOf("kind", OutlineKind.Round),
            Length.FromMillimetres(row.Decimal("wide", 0, 10_000, "mm")),
            row.Millimetres("deep", 0, 10_000),
            row.Number("lobes", Petal.UsualLobes),
            row.Text("sign", ""));
    }
}
