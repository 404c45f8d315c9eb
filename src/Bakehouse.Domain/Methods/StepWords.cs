namespace Bakehouse.Domain.Methods;

using System.Globalization;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>How a step is called in the kitchen: a big line that is read from two metres and a second one from one metre.</summary>
public static class StepWords
{
    /// <summary>
    /// Characters that the big line takes: capitals of 12.8 mm (22 minutes of arc at 2 m, ISO 9241-303) on a screen 217 mm wide.
    /// </summary>
    public const int Longest = 16;

    /// <summary>"Final coat 8 in"; without the unit, then without the size, where it would be longer than <see cref="Longest"/>.</summary>
    /// <param name="tiers">Bottom first.</param>
    public static string Big(string operation, IReadOnlyList<CakeTier> tiers, Shop shop)
    {
        var verb = Method.OperationOf(operation).Verb;
        string[] ways = [$"{verb} {Size(tiers, shop)}", $"{verb} {Figures(tiers, shop)}", operation is "buttercream" or "colour" && tiers.All(t => t.StandsBeside) ? verb : $"{verb} {HowMany(tiers)}", verb];
        return ways.First(w => w.Length <= Longest || w == verb);
    }

    /// <summary>"3 tiers", "24" of cupcakes alone, "all" of both together.</summary>
    private static string HowMany(IReadOnlyList<CakeTier> tiers) => tiers.Count(t => t.StandsBeside) switch
    {
        0 => Count(tiers.Count, "tier"),
        var beside when beside == tiers.Count => tiers.Sum(t => t.Special!.Cupcakes!.Count).ToString(CultureInfo.InvariantCulture),
        _ => "all",
    };

    /// <summary>What it is made with, without the order's name: "Ivory", "Vanilla 1850 g", "Lemon curd 0.4 L"; may be empty.</summary>
    /// <param name="steps">The step, or all of a batch.</param>
    public static string Detail(IReadOnlyList<Step> steps, IReadOnlyList<CakeTier> tiers, Order order)
    {
        var size = steps.Sum(s => s.Mix?.Size ?? 0);
        return steps[0].Name switch
        {
            "mix" => $"{Capital(steps[0].Mix!.Family)} {size.ToString(CultureInfo.InvariantCulture)} g",
            "filling" => $"{FillingOf(steps[0].Mix!.Family)} {Litres(size)}",
            "buttercream" => $"Buttercream {Litres(size)}",
            "turnout" or "wrap" => tiers[0].StandsBeside ? Capital(tiers[0].Sponge) : $"{Capital(tiers[0].Sponge)}, {Count(tiers.Sum(t => t.Layers), "layer")}",
            "fill" => Joined(tiers.Select(t => FillingOf(t.Filling))),
            "coat" or "colour" or "cover" or "pipe" => Joined(tiers.SelectMany(t => t.Colours.Select(c => c.Name))),
            "stack" => Count(tiers.Count, "tier"),
            "decorate" => order.Inscription.Length > 0 ? $"“{order.Inscription}”" : $"{order.Decoration} décor",
            "box" when tiers.Count > 0 && tiers[0].Special?.Cupcakes is { } cupcakes => $"Boxes {Cakes.CupcakeBox.Said(Cakes.CupcakeBox.For(cupcakes.Count))}",
            _ => "",
        };
    }

    /// <summary>
    /// The tiers that a step is about: its own, or all that the order is made of. Bottom first. Of cupcakes that are piped and boxed tray by tray, so
    /// many as the step is about.
    /// </summary>
    public static IReadOnlyList<CakeTier> TiersOf(string step, Order order) => StepKey.Parse(step) switch
    {
        { Tier: { } tier } key => [.. order.Tiers.Where(t => t.Id == tier).Select(t => OnTray(t, key))],
        { Operation: var operation } when Method.IsOfStack(operation) => order.Stack,
        _ => order.Tiers,
    };

    /// <summary>Tiers of several steps, each once; trays of one batch are counted together.</summary>
    public static IReadOnlyList<CakeTier> Together(IEnumerable<CakeTier> tiers) =>
        [.. tiers.GroupBy(t => t.Id).Select(g => g.First().Special is { Cupcakes: not null } special && g.Count() > 1 ? g.First() with { Special = special with { Cupcakes = new Cakes.Cupcakes(g.Sum(t => t.Special!.Cupcakes!.Count)) } } : g.First())];

    private static CakeTier OnTray(CakeTier tier, StepKey key) =>
        tier.Special is { Cupcakes: { } cupcakes } special && Method.IsByTray(key.Operation) && key.Ordinal >= 1 && key.Ordinal <= cupcakes.EachTray.Count
            ? tier with { Special = special with { Cupcakes = new Cakes.Cupcakes(cupcakes.EachTray[key.Ordinal - 1]) } }
            : tier;

    /// <summary>"6+8+10 in", top first as it is said, or "15+20 cm" rounded to whole centimetres, by the shop's habit.</summary>
    public static string Size(IReadOnlyList<CakeTier> tiers, Shop shop) =>
        Cakes.TierNames.Build(tiers, stack => $"{Stacked(stack, shop)} {(shop.Settings.Inches ? "in" : "cm")}");

    private static string Figures(IReadOnlyList<CakeTier> tiers, Shop shop) => Cakes.TierNames.Build(tiers, stack => Stacked(stack, shop));

    private static string Stacked(IReadOnlyList<CakeTier> tiers, Shop shop) => tiers.Any(t => t.Special?.Outline is not null) ? Cakes.TierNames.Build(tiers, shop.Settings.Inches) : string.Join('+', tiers
        .Select(t => shop.Settings.Inches ? t.Diameter.Inches : Math.Round(t.Diameter.Centimetres))
        .Distinct().Order().Select(n => n.ToString("0.#", CultureInfo.InvariantCulture)));

    private static string FillingOf(string id) => Filling.Of(id)?.Name ?? Capital(id);

    private static string Litres(int millilitres) => (millilitres / 1000m).ToString("0.0#", CultureInfo.InvariantCulture) + " L";

    private static string Joined(IEnumerable<string> names) => string.Join(", ", names.Distinct(StringComparer.OrdinalIgnoreCase));

    private static string Count(int number, string word) => $"{number.ToString(CultureInfo.InvariantCulture)} {word}{(number == 1 ? "" : "s")}";

    private static string Capital(string word) => word.Length == 0 ? "" : char.ToUpperInvariant(word[0]) + word[1..];
}
