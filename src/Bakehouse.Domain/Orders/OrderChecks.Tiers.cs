namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using static System.FormattableString;

/// <content>The tiers: what can be built, and what the shop can bake and stand.</content>
public static partial class OrderChecks
{
    /// <summary>True if diameter, height and number of layers are within what a tier may have.</summary>
    internal static bool HasSize(CakeTier tier) => WidthFits(tier) && HeightFits(tier) && LayersFit(tier);

    private static bool WidthFits(CakeTier tier) => tier.Diameter.Inches is >= 3 and <= 18;

    private static bool HeightFits(CakeTier tier) => tier.Height.Centimetres is >= 3 and <= 25;

    private static bool LayersFit(CakeTier tier) => tier.Layers is >= 1 and <= 8;

    private static IEnumerable<Problem> TierCount(Order order)
    {
        if (order.Tiers.Count is < 1 or > MostTiers)
        {
            yield return new Problem("Tiers", Text(order.Tiers.Count), $"A cake has 1 to {MostTiers} tiers.", order.Tiers.Count == 0 ? "Add a tier." : "Make two cakes.");
        }

        if (order.Tiers.Select(t => t.Id).Distinct().Count() < order.Tiers.Count)
        {
            yield return new Problem("Tiers", Text(order.Tiers.Count), "Two tiers have the same identity.", "Take one away and add it again.");
        }
    }

    private static IEnumerable<Problem> Tier(CakeTier tier, int index, Order order, Shop shop)
    {
        var field = $"Tier {Text(index + 1)}";
        var size = Invariant($"{tier.Diameter.Inches:0.##} in");
        if (!WidthFits(tier))
        {
            yield return new Problem(field, size, "A tier is 3 to 18 in wide.", "Choose a size of your pans.");
        }
        else
        {
            foreach (var problem in Fits(tier, index, order, shop, field, size))
            {
                yield return problem;
            }
        }

        foreach (var problem in Heights(tier, field))
        {
            yield return problem;
        }

        if (Sponge.Of(tier.Sponge) is null)
        {
            yield return new Problem(field, Short(tier.Sponge), "This sponge is not known.", $"Choose one of {string.Join(", ", Sponge.All.Select(s => s.Name))}.");
        }

        if (Filling.Of(tier.Filling) is null)
        {
            yield return new Problem(field, Short(tier.Filling), "This filling is not known.", $"Choose one of {string.Join(", ", Filling.All.Select(f => f.Name))}.");
        }

        var shares = tier.Colours.Sum(c => c.Share);
        if (shares != 1 || tier.Colours.Any(c => c.Share is <= 0 or > 1))
        {
            yield return new Problem(field, Invariant($"{shares * 100:0.#} %"), "The colours of a coat make 100 % together, each above 0.", "Change the shares.");
        }
    }

    private static IEnumerable<Problem> Heights(CakeTier tier, string field)
    {
        var height = Invariant($"{tier.Height.Centimetres:0.#} cm");
        var layers = LayersFit(tier);
        if (!layers)
        {
            yield return new Problem(field, $"{Text(tier.Layers)} layers", "A tier has 1 to 8 layers.", "Choose a number between.");
        }

        if (!HeightFits(tier))
        {
            yield return new Problem(field, height, "A tier is 3 to 25 cm high.", "Choose a height between.");
        }
        else if (layers && tier.Height < BuildProblems.Least(tier, CakeFigures.Usual))
        {
            yield return new Problem(field, height, Invariant($"{tier.Layers} layers with their fillings need {BuildProblems.Least(tier, CakeFigures.Usual).Centimetres:0.#} cm."), "Take fewer layers or more height.");
        }
        else if (layers && tier.Height.Millimetres / tier.Layers > CakeFigures.Usual.PanDepths.Max().Millimetres + 0.5m)
        {
            yield return new Problem(field, height, Invariant($"A layer would be {tier.Height.Centimetres / tier.Layers:0.#} cm; the deepest pan is {CakeFigures.Usual.PanDepths.Max().Centimetres:0.#} cm."), "Take more layers or less height.");
        }
    }

    private static IEnumerable<Problem> Fits(CakeTier tier, int index, Order order, Shop shop, string field, string size)
    {
        var inches = (int)Math.Ceiling(tier.Diameter.Inches);
        if (!shop.Ovens.Any(o => DeckFit.Pans(o, inches) > 0))
        {
            var widest = Enumerable.Range(3, 16).LastOrDefault(d => shop.Ovens.Any(o => DeckFit.Pans(o, d) > 0));
            yield return new Problem(field, size, $"No oven takes a pan that wide; the widest is {Text(widest)} in.", "Choose a smaller tier, or bake it in two halves and write that into Notes.");
        }

        var footprint = ShelfRoom.Footprint(tier, index == 0 && (shop.Settings.OnDrum || order.Tiers.Count == 1));
        var fridges = shop.Shelves.Where(s => s.Kind == ShelfKind.Fridge).ToList();
        if (!fridges.Exists(s => ShelfRoom.Holds(s, footprint, ShelfRoom.HeightCm([tier]))))
        {
            yield return new Problem(field, size, NoShelf(fridges, footprint, ShelfRoom.HeightCm([tier])), "Choose a smaller tier.");
        }
    }

    /// <summary>What no shelf has enough of: width, height, or rows behind each other, in which shelves are counted.</summary>
    private static string NoShelf(List<Shelf> fridges, Length footprint, int height)
    {
        var wide = fridges.Where(s => footprint <= s.Width && footprint <= s.Depth).ToList();
        var widest = fridges.Count == 0 ? 0 : fridges.Max(s => Math.Min(s.Width.Centimetres, s.Depth.Centimetres));
        return wide.Count == 0 ? Invariant($"On its board it needs {footprint.Centimetres:0.#} cm of shelf; the widest fridge shelf has {widest:0.#} cm.")
            : wide.TrueForAll(s => s.Clear.Centimetres < height) ? Invariant($"On its board it needs {height} cm of height; the highest fridge shelf that is wide enough has {wide.Max(s => s.Clear.Centimetres):0.#} cm.")
            : Invariant($"On its board it is {footprint.Centimetres:0.#} cm deep. Shelves are counted in rows of 30 cm, and no fridge shelf has two behind each other.");
    }

    private static IEnumerable<Problem> WiderAbove(Order order, bool owner)
    {
        for (var i = 1; i < order.Tiers.Count && !(order.WiderAboveAgreed && owner); i++)
        {
            var (below, above) = (order.Tiers[i - 1].Diameter, order.Tiers[i].Diameter);
            if (above > below)
            {
                yield return new Problem($"Tier {Text(i + 1)}", Invariant($"{above.Inches:0.##} in"), Invariant($"It stands on a narrower one ({below.Inches:0.##} in)."), "Change the order of the tiers, or let the owner agree to it.");
            }
        }
    }
}
