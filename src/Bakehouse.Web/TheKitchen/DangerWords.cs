namespace Bakehouse.Web.TheKitchen;

using System.Globalization;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>What can hurt somebody, from the order and its build, in the words of the strips.</summary>
internal static class DangerWords
{
    /// <summary>Steps in which the whole cake is lifted.</summary>
    private static readonly HashSet<string> Lifted = new(StringComparer.Ordinal) { "stack", "decorate", "box", "leavefridge", "handover", "deliver" };

    /// <summary>"Avoid nuts" for what the customer told; null if nothing was told.</summary>
    public static string? Avoid(IEnumerable<Order> orders)
    {
        var told = orders.Where(o => o.Allergies.Kind == AllergyKind.Avoid)
            .SelectMany(o => o.Allergies.Avoid.Count > 0 ? o.Allergies.Avoid : [$"“{o.Allergies.Words}”"])
            .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return told.Count == 0 ? null : $"Avoid {string.Join(", ", told)}";
    }

    /// <summary>The stop signs of those tiers: what to avoid and what each contains; for a step of the whole cake those of all its tiers.</summary>
    public static IReadOnlyList<string> Signs(BookState book, Order order, IReadOnlyList<CakeTier> tiers)
    {
        if (book.Shop is not { } shop || book.CookbookOf(order) is not { Version: > 0 } recipes || CakeContents.Of(order, recipes, shop.Allergens, CakeFigures.Of(shop)) is not { } cake)
        {
            return Avoid([order]) is { } told ? [told] : [];
        }

        var signs = StopSign.Of(order, cake, shop.Allergens).Where(s => tiers.Count == 0 || tiers.Any(t => t.Id == s.Tier)).ToList();
        return [.. signs.Select(s => $"{(s.Met ? "Stop. " : "")}{s.Avoid}. {s.Contains}").Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Why the step waits, for a step of making; empty if nothing stops it.</summary>
    public static IReadOnlyList<string> Stops(BookState book, Order order, string operation) => BeforeWork.IsMaking(operation)
        ? [.. book.StopsOf(order).Select(p => $"Stop. {p.Sentence} {p.Try}").Distinct(StringComparer.Ordinal)]
        : [];

    /// <summary>What else can hurt somebody in that step: flowers, what comes off, who eats, hidden parts; the words of the cake's own page.</summary>
    public static IReadOnlyList<string> Told(BookState book, Order order, string operation, Shop shop) =>
        [.. Caution.Of(order, BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop)), shop, book.CookbookOf(order)).Where(c => c.Steps.Contains(operation)).Select(c => c.ToString())];

    /// <summary>"Clean 20 L bowl down wet first: nuts were in it" for a batter or cream whose bowl met what the cake must be kept from; null if none did.</summary>
    public static string? Clean(BookState book, IEnumerable<string> steps)
    {
        if (book is not { Shop: { } shop, Week: { } week, Wall: { } wall })
        {
            return null;
        }

        var plan = wall.From(week.Epoch);
        var said = steps.Select(s => BowlMet.Before(week, plan, s)).OfType<BowlMet>().GroupBy(b => b.Bowl)
            .Select(b => $"Clean {NameOf(b.Key, shop)} down wet first: {string.Join(", ", b.SelectMany(m => m.Of).Distinct(StringComparer.Ordinal))} went into it").ToList();
        return said.Count == 0 ? null : string.Join(". ", said);
    }

    /// <summary>A bowl by its name in the shop.</summary>
    public static string NameOf(string bowl, Shop shop) => shop.Bowls.FirstOrDefault(b => b.Id == bowl)?.Name ?? bowl;

    /// <summary>What to avoid in these steps, whether a bowl is to be cleaned down before, and whether something must be answered before they are made; null if neither.</summary>
    public static string? Band(BookState book, IReadOnlyList<string> steps)
    {
        var mine = steps.Select(s => StepKey.Parse(s)).OfType<StepKey>().Select(k => (k.Operation, Order: book.Orders.First(o => o.Id == k.Order))).ToList();
        var stopped = mine.Where(m => Stops(book, m.Order, m.Operation).Count > 0).Select(m => m.Order.Number).Distinct().Order().ToList();
        string?[] said = [Clean(book, steps), stopped.Count == 0 ? null : $"Stop: look at cake {string.Join(", ", stopped.Select(n => n.ToString(CultureInfo.InvariantCulture)))} first", Avoid(mine.Select(m => m.Order))];
        return said.Any(s => s is not null) ? string.Join(". ", said.OfType<string>()) : null;
    }

    /// <summary>"10.6 kg: two people lift" from the shop's limit on; null below it, or where the whole cake is not lifted.</summary>
    public static string? Lift(string operation, Order order, Shop shop)
    {
        if (!Lifted.Contains(operation) || Sheet(order, shop) is not { } sheet || sheet.Mass.Kilograms < shop.Settings.TwoPeopleFromKg)
        {
            return null;
        }

        return string.Create(CultureInfo.InvariantCulture, $"{sheet.Mass.Kilograms:0.0} kg: two people lift");
    }

    /// <summary>"Ivory 0.4 L" for the coat of these tiers; null if the build can't be worked out.</summary>
    public static string? Coat(IReadOnlyList<string> steps, Order order, Shop shop)
    {
        var tiers = steps.SelectMany(s => StepWords.TiersOf(s, order)).Select(t => t.Id).ToHashSet();
        var colours = Sheet(order, shop)?.Tiers.Where(t => tiers.Contains(t.Tier.Id)).SelectMany(t => t.Colours).ToList();
        return colours is { Count: > 0 }
            ? string.Join(", ", colours.GroupBy(c => c.Name, StringComparer.OrdinalIgnoreCase).Select(g =>
                string.Create(CultureInfo.InvariantCulture, $"{g.Key} {g.Sum(c => c.Needed.Litres):0.0#} L")))
            : null;
    }

    private static BuildSheet? Sheet(Order order, Shop shop) => BuildProblems.Of(order.Tiers, CakeFigures.Of(shop)).Count == 0 ? BuildSheet.Of(order, CakeFigures.Of(shop)) : null;
}
