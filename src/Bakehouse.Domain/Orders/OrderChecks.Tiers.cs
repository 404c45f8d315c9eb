namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using static System.FormattableString;

/// <content>The tiers: what can be built, and what the shop can bake and stand.</content>
public static partial class OrderChecks
{
    /// <summary>True if there are as many tiers and batches of cupcakes as one order may have.</summary>
    internal static bool IsCounted(IReadOnlyList<CakeTier> tiers) => tiers.Count >= 1 && tiers.Count(t => t.StandsBeside) is var beside && beside <= Cupcakes.MostBatches && tiers.Count - beside <= MostTiers;

    /// <summary>True if diameter, height and number of layers are within what a tier may have.</summary>
    internal static bool HasSize(CakeTier tier) => tier.StandsBeside || WidthFits(tier) && HeightFits(tier) && LayersFit(tier);

    // What is not round says its own limits.
    private static bool WidthFits(CakeTier tier) => tier.Special?.Outline is not null || tier.Diameter.Inches is >= 3 and <= 18;

    /// <summary>True if the upper tier reaches over the lower one.</summary>
    public static bool IsWider(CakeTier above, CakeTier below) => above.Special?.Outline is null && below.Special?.Outline is null
        ? above.Diameter > below.Diameter
        : Outlined(above) && Outlined(below) && (above.Shape.Wide > below.Shape.Wide || above.Shape.Deep > below.Shape.Deep);

    private static bool Outlined(CakeTier tier) => tier.Special?.Outline is not { } outline || !OutlineChecks.Of(outline, "").Any();

    private static bool HeightFits(CakeTier tier) => tier.Height.Centimetres is >= 3 and <= 25;

    private static bool LayersFit(CakeTier tier) => tier.Layers is >= 1 and <= 8;

    private static IEnumerable<Problem> TierCount(Order order)
    {
        var (stack, beside) = (order.Stack.Count, order.Beside.Count);
        if (order.Tiers.Count == 0 || stack > MostTiers)
        {
            yield return new Problem("Tiers", Text(stack), $"A cake has 1 to {MostTiers} tiers.", order.Tiers.Count == 0 ? "Add a tier." : "Make two cakes.");
        }

        if (beside > Cupcakes.MostBatches)
        {
            yield return new Problem("Cupcakes", Text(beside), $"One order has at most {Cupcakes.MostBatches} batches of cupcakes.", "Put the same kinds together, or write two orders.");
        }

        foreach (var problem in CupcakeProblems.Order(order.Tiers))
        {
            yield return problem;
        }

        if (order.Tiers.Select(t => t.Id).Distinct().Count() < order.Tiers.Count)
        {
            yield return new Problem("Tiers", Text(order.Tiers.Count), "Two tiers have the same identity.", "Take one away and add it again.");
        }
    }

    private static IEnumerable<Problem> Tier(CakeTier tier, int index, Order order, Shop shop) =>
        (tier.Special?.Cupcakes is { } cupcakes ? Batch(tier, cupcakes, $"Tier {Text(index + 1)}", shop) : Sized(tier, index, order, shop)).Concat(Made(tier, $"Tier {Text(index + 1)}"));

    /// <summary>Cupcakes: how many, and whether a tin of them can be baked and a tray of them stood.</summary>
    private static IEnumerable<Problem> Batch(CakeTier tier, Cupcakes cupcakes, string field, Shop shop)
    {
        List<Problem> problems = [.. CupcakeProblems.Of(tier, cupcakes, field)];
        if (!shop.Ovens.Any(o => DeckFit.Pans(o, PanCode.Of(Cupcakes.Tin)) > 0))
        {
            problems.Add(new Problem(field, cupcakes.ToString(), $"No oven takes a tin of {TierNames.Of(Cupcakes.Tin)}.", "Bake no cupcakes, or write an oven that takes one under Shop."));
        }

        var (tray, box) = (ShelfRoom.OnTray(cupcakes.Count), ShelfRoom.InBoxes(Math.Max(1, cupcakes.Count)));
        if (!shop.Shelves.Any(s => s.Kind == ShelfKind.Fridge && ShelfRoom.Holds(s, tray, ShelfRoom.TrayHeightCm) && ShelfRoom.Holds(s, box, ShelfRoom.CupcakeBoxHeightCm)))
        {
            problems.Add(new Problem(field, cupcakes.ToString(), Invariant($"No fridge shelf takes a tray of {tray.Wide / 10:0.#} × {tray.Deep / 10:0.#} cm and a box {ShelfRoom.CupcakeBoxHeightCm} cm high."), Invariant($"Take {Cupcakes.InTin} at most, or write a wider shelf under Shop.")));
        }

        return problems;
    }

    private static IEnumerable<Problem> Sized(CakeTier tier, int index, Order order, Shop shop)
    {
        var field = $"Tier {Text(index + 1)}";
        var size = TierNames.Of(tier, inches: true);
        var outline = tier.Special is { } special ? SpecialProblems.Of(tier, special, field, CakeFigures.Of(shop)).ToList() : [];
        foreach (var problem in outline)
        {
            yield return problem;
        }

        if (outline.Count > 0)
        {
            yield break;
        }

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

        foreach (var problem in Heights(tier, field, CakeFigures.Of(shop)))
        {
            yield return problem;
        }
    }

    /// <summary>What it is made of.</summary>
    private static IEnumerable<Problem> Made(CakeTier tier, string field)
    {
        if (Sponge.Of(tier.Sponge) is null)
        {
            yield return new Problem(field, Problem.Shown(tier.Sponge), "This sponge is not known.", $"Choose one of {string.Join(", ", Sponge.All.Select(s => s.Name))}.");
        }

        if (Filling.Of(tier.Filling) is null)
        {
            yield return new Problem(field, Problem.Shown(tier.Filling), "This filling is not known.", $"Choose one of {string.Join(", ", Filling.All.Select(f => f.Name))}.");
        }

        var shares = tier.Colours.Sum(c => c.Share);
        if (shares != 1 || tier.Colours.Any(c => c.Share is <= 0 or > 1))
        {
            yield return new Problem(field, Invariant($"{shares * 100:0.#} %"), "The colours of a coat make 100 % together, each above 0.", "Change the shares.");
        }
    }

    private static IEnumerable<Problem> Heights(CakeTier tier, string field, CakeFigures figures)
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
        else if (layers && tier.Height < BuildProblems.Least(tier, figures))
        {
            yield return new Problem(field, height, Invariant($"{tier.Layers} layers with their fillings need {BuildProblems.Least(tier, figures).Centimetres:0.#} cm."), "Take fewer layers or more height.");
        }
        else if (layers && !tier.IsFalse && tier.Height.Millimetres / tier.Layers > figures.PanDepths.Max().Millimetres + 0.5m)
        {
            yield return new Problem(field, height, Invariant($"A layer would be {tier.Height.Centimetres / tier.Layers:0.#} cm; the deepest pan is {figures.PanDepths.Max().Centimetres:0.#} cm."), "Take more layers or less height.");
        }
    }

    private static IEnumerable<Problem> Fits(CakeTier tier, int index, Order order, Shop shop, string field, string size)
    {
        var pan = PanCode.Of(TierPans.PanOf(tier.Shape, CakeFigures.Of(shop)));
        if (tier.IsFalse)
        {
            // Foam sees no oven.
        }
        else if (tier.Shape is not Round && !shop.Ovens.Any(o => DeckFit.Pans(o, pan) > 0))
        {
            yield return new Problem(field, size, $"No oven takes a pan of {TierNames.Of(tier.Shape)}.", "Choose a smaller tier, or bake it in parts and write that into Notes.");
        }
        else if (!shop.Ovens.Any(o => DeckFit.Pans(o, pan) > 0))
        {
            var widest = Enumerable.Range(3, 16).LastOrDefault(d => shop.Ovens.Any(o => DeckFit.Pans(o, d) > 0));
            yield return new Problem(field, size, $"No oven takes a pan that wide, nor half of it; the widest is {Text(widest)} in.", "Choose a smaller tier.");
        }

        foreach (var problem in Stands(tier, index == 0 && (shop.Settings.OnDrum || order.Stack.Count == 1), shop, field, size))
        {
            yield return problem;
        }
    }

    /// <summary>A tier on a fridge shelf: what is missing in centimetres, and which shelf to pull out.</summary>
    private static IEnumerable<Problem> Stands(CakeTier tier, bool onDrum, Shop shop, string field, string value)
    {
        var (piece, height) = (ShelfRoom.OnBoard(tier, onDrum), ShelfRoom.HeightCm([tier]));
        var fridges = shop.Shelves.Where(s => s.Kind == ShelfKind.Fridge).ToList();
        if (fridges.Exists(s => ShelfRoom.Holds(s, piece, height)))
        {
            yield break;
        }

        var wide = fridges.Where(s => Room.Of(s).Takes(piece)).ToList();
        const string smaller = "Choose a smaller tier.";
        yield return wide.Count == 0
            ? new Problem(field, value, NotWide(fridges, piece), smaller)
            : new Problem(field, value, Invariant($"On its board it needs {height} cm of height; the highest fridge shelf that is wide enough has {wide.Max(s => s.Clear.Centimetres):0.#} cm."), Pull(shop, piece, height) + smaller);
    }

    private static string NotWide(List<Shelf> fridges, Piece piece)
    {
        var widest = fridges.Count == 0 ? 0 : fridges.Max(s => Math.Min(s.Width.Centimetres, s.Depth.Centimetres));
        return Invariant($"On its board it needs {piece.Wide / 10:0.#} cm of shelf both ways; the largest fridge shelf has {widest:0.#} cm one way.");
    }

    /// <summary>The height is written on the Shop page, too, as the plan goes by that.</summary>
    private static string Pull(Shop shop, Piece piece, int height) =>
        PulledShelf.For(shop, ShelfKind.Fridge, piece, height) is { } pulled ? $"{pulled.Sentence} Write that height under Shop, and take level {Text(pulled.Out.Level)} out there. Or: "
        : PulledShelf.For(shop, ShelfKind.Fridge, piece, height, allowed: false) is { } asked ? $"If level {Text(asked.Out.Level)} of {asked.Out.Unit} can be pulled out, say so under Shop. Or: "
        : "";

    private static IEnumerable<Problem> WiderAbove(Order order, bool owner)
    {
        var stack = order.Stack;
        for (var i = 1; i < stack.Count && !(order.WiderAboveAgreed && owner); i++)
        {
            var (below, above) = (stack[i - 1], stack[i]);
            if (IsWider(above, below))
            {
                yield return new Problem($"Tier {Text(i + 1)}", TierNames.Of(above, inches: true), $"It stands on a narrower one ({TierNames.Of(below, inches: true)}).", "Change the order of the tiers, or let the owner agree to it.");
            }
        }
    }
}
