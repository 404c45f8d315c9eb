namespace Bakehouse.Domain.Shops;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Everything that may be wrong with a shop as it was set up, in one list.</summary>
public static class ShopChecks
{
    private const int LongestName = 80;

    /// <summary>Each problem with its value, the limit and what to try; empty if the shop can work.</summary>
    public static IReadOnlyList<Problem> Problems(Shop shop)
    {
        // No cake can be reckoned with things that nobody knows or figures that can't be: the rest is looked at with the usual ones.
        var (unknown, wrong) = (shop.Stacking?.Problems() ?? [], shop.Figures?.Problems() ?? []);
        return [.. Others(shop with { Stacking = unknown.Count > 0 ? null : shop.Stacking, Figures = wrong.Count > 0 ? null : shop.Figures }), .. unknown, .. wrong];
    }

    private static IReadOnlyList<Problem> Others(Shop shop) =>
    [
        .. Named("name", shop.Name),
        .. Zone(shop),
        .. Hours(shop),
        .. PeopleChecks.Problems(shop.People),
        .. EquipmentChecks.Problems(shop),
        .. Settings(shop.Settings),
        .. LastHands(shop),
        .. Caps(shop.Settings.Caps ?? []),
        .. HouseCakeChecks.Problems(shop),
        .. shop.Allergens.Problems(),
        .. shop.Prices?.Problems() ?? [],
        .. shop.Limits?.Problems() ?? [],
        .. shop.Cold?.Problems(shop) ?? [],
    ];

    /// <summary>A name is there and no longer than 80 characters.</summary>
    internal static IEnumerable<Problem> Named(string where, string name)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            yield return new Problem(where, "", "A name is missing.", "Give a name.");
        }
        else if (name.Length > LongestName)
        {
            yield return new Problem(where, name[..(LongestName - 1)] + "…", $"The name has {name.Length} characters; at most {LongestName} fit.", "Shorten it.");
        }
        else if (name.Any(char.IsControl))
        {
            yield return new Problem(where, name, "The name holds signs that can't be printed.", "Type it again.");
        }
    }

    /// <summary>A whole number within its limits, both included.</summary>
    internal static IEnumerable<Problem> Between(string where, decimal value, decimal least, decimal most, string unit)
    {
        if (value < least || value > most)
        {
            yield return new Problem(where, Text(value), $"This is {Text(value)}{unit}; from {Text(least)} to {Text(most)}{unit} can be.", "Measure again, or count again.");
        }
    }

    internal static IEnumerable<Problem> Inside(string where, Length length, decimal least, decimal most) =>
        Between(where, length.Centimetres, least, most, " cm");

    /// <summary>Ids that stand for two things.</summary>
    internal static IEnumerable<Problem> Twice(string where, IEnumerable<string> ids) =>
        ids.GroupBy(i => i, StringComparer.Ordinal).Where(g => g.Count() > 1)
            .Select(g => new Problem(where, g.Key, $"{g.Count()} of them have the id {g.Key}.", "Give each its own."));

    /// <summary>An id is short, lower case, letters, digits and hyphens.</summary>
    internal static IEnumerable<Problem> Id(string where, string id)
    {
        if (id.Length is 0 or > 40 || !id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-'))
        {
            yield return new Problem(where, id, "An id is 1 to 40 lower-case letters, digits or hyphens.", "Give another id.");
        }
    }

    internal static string Text(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private static IEnumerable<Problem> Zone(Shop shop)
    {
        if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(shop.Zone) is null)
        {
            yield return new Problem("zone", shop.Zone, "This time zone is not known.", "Use a name such as Europe/London.");
        }
    }

    private static IEnumerable<Problem> Hours(Shop shop)
    {
        if (shop.Hours.Count == 0)
        {
            yield return new Problem("hours", "", "The shop is never open, so nobody can collect.", "Give at least one day with hours.");
        }

        foreach (var row in shop.Hours.Where(h => h.From >= h.To))
        {
            yield return new Problem("hours", $"{row.Day} {Clock(row.From)} to {Clock(row.To)}", "The shop shuts before it opens.", "Turn the two times round, or use two rows for hours past midnight.");
        }
    }

    private static IEnumerable<Problem> Settings(ShopSettings settings) =>
    [
        .. Between("buffer", settings.BufferMinutes, 0, 1440, " min"),
        .. Between("frozen", settings.FrozenMinutes, 0, 1440, " min"),
        .. Between("keep hours", settings.KeepHours, 1, 720, " h"),
        .. Between("plan days", settings.PlanDays, 1, 60, " days"),
        .. Between("notice", settings.NoticeHours, 0, 24 * 60, " h"),
        .. Between("food clock", settings.FoodClockMinutes, 30, 600, " min"),
        .. Between("two people from", settings.TwoPeopleFromKg, 1, 50, " kg"),
        .. Between("day starts", settings.DayStarts, 0, 23, " h"),
        .. Between("day ends", settings.DayEnds, settings.DayStarts + 1, 24, " h"),
        .. Quiet(settings),
        .. SmallCakes(settings.SmallCakes),
    ];

    private static IEnumerable<Problem> SmallCakes(IReadOnlyList<int>? byMonth) => byMonth is null ? []
        : byMonth.Count != 12
            ? [new Problem("small cakes", Text(byMonth.Count), "Small cakes are counted for twelve months.", "Give one number for each month, or none at all.")]
            : byMonth.SelectMany(n => Between("small cakes", n, 0, 200, " a week"));

    private static IEnumerable<Problem> Quiet(ShopSettings settings)
    {
        if (settings.QuietFrom is null != settings.QuietTo is null || (settings.QuietFrom is { } from && from == settings.QuietTo))
        {
            var told = $"{(settings.QuietFrom is { } f ? Clock(f) : "?")} to {(settings.QuietTo is { } t ? Clock(t) : "?")}";
            yield return new Problem("quiet", told, "The quiet hours need a beginning and another end.", "Give both, or neither.");
        }
    }

    private static IEnumerable<Problem> LastHands(Shop shop)
    {
        if (shop.Settings.LastHands is not { } last)
        {
            yield break;
        }

        if (shop.Hours.Count > 0 && shop.Hours.Max(h => h.To) is var shut && last < shut)
        {
            yield return new Problem("last hands", Clock(last), $"Customers may come until {Clock(shut)}, and nobody would be there to hand over.", $"Give {Clock(shut)} or later, or shut earlier.");
        }
    }

    private static IEnumerable<Problem> Caps(IReadOnlyList<DayCap> caps) =>
    [
        .. caps.SelectMany(c => Between($"cap, {c.Day}", c.Most, 0, 50, " tiered cakes")),
        .. Twice("caps", caps.Select(c => c.Day.ToString())),
    ];

    internal static string Clock(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
