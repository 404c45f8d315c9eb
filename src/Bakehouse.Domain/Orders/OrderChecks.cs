namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using NodaTime.TimeZones;
using static System.FormattableString;

/// <summary>Everything that can be wrong with an order, all at once: field, value, limit and what to try.</summary>
public static class OrderChecks
{
    /// <summary>Most tiers of one cake; more are two cakes.</summary>
    public const int MostTiers = 8;

    /// <summary>Longest name, address or allergy words, in characters as people count them.</summary>
    public const int LongestName = 200;

    /// <summary>Longest inscription; more does not fit on a cake.</summary>
    public const int LongestInscription = 120;

    /// <summary>Longest notes.</summary>
    public const int LongestNotes = 4000;

    /// <summary>Most portions of one order.</summary>
    public const int MostPortions = 1000;

    /// <summary>Every problem; empty if the order may be written in its stage.</summary>
    /// <param name="owner">True if the owner writes it: a wider tier above needs her tick.</param>
    public static IReadOnlyList<Problem> Problems(Order order, Shop shop, Instant now, bool owner)
    {
        var problems = new List<Problem>();
        problems.AddRange(When(order, shop, now));
        problems.AddRange(Words(order));
        problems.AddRange(HowMany(order));
        problems.AddRange(TierCount(order));
        problems.AddRange(order.Tiers.SelectMany((tier, i) => Tier(tier, i, order, shop)));
        problems.AddRange(WiderAbove(order, owner));
        if (order.Allergies.Kind == AllergyKind.NotAsked)
        {
            problems.Add(new Problem("Allergies", "not asked", "Nobody has asked about allergies yet.", "Ask, then choose \"None told\" or \"Avoid\"."));
        }

        if (order.Allergies.Kind == AllergyKind.Avoid && order.Allergies.Avoid.Count == 0 && order.Allergies.Words.Trim().Length == 0)
        {
            problems.Add(new Problem("Allergies", "nothing", "It is not said what to avoid.", "Write it in the customer's own words."));
        }

        return problems;
    }

    private static IEnumerable<Problem> When(Order order, Shop shop, Instant now)
    {
        var at = order.Handover.At;
        var said = Say(at);
        var zone = DateTimeZoneProviders.Tzdb[shop.Zone];
        var mapping = zone.MapLocal(at);
        if (mapping.Count != 1)
        {
            yield return ClockChange(mapping, said);
        }

        var instant = at.InZone(zone, Resolvers.LenientResolver).ToInstant();
        var today = now.InZone(zone).Date;
        if (instant <= now)
        {
            yield return new Problem("When", said, $"That has passed: it is {Say(now.InZone(zone).LocalDateTime)}.", "Choose a later day or hour.");
            yield break;
        }

        if (Stages.IsPlanned(order.Stage) && order.Version == 0 && instant - now < Duration.FromHours(shop.Settings.NoticeHours))
        {
            yield return new Problem("When", said, $"The shop asks for {shop.Settings.NoticeHours} h notice.", $"Choose {Say((now + Duration.FromHours(shop.Settings.NoticeHours)).InZone(zone).LocalDateTime)} or later, or change the notice in Shop.");
        }

        if (at.Date > today.PlusDays(shop.Settings.PlanDays))
        {
            yield return new Problem("When", said, $"Plans reach {shop.Settings.PlanDays} days, to {Say(today.PlusDays(shop.Settings.PlanDays))}.", "Choose an earlier day; far dates come with a later version.");
        }

        var hours = shop.HoursOn(at.Date);
        if (order.Handover.Way == Way.Collect && !hours.Any(h => h.From <= at.TimeOfDay && at.TimeOfDay <= h.To))
        {
            var open = hours.Count == 0 ? "The shop is shut that day." : $"The shop is open {string.Join(" and ", hours.Select(h => $"{Say(h.From)} to {Say(h.To)}"))} that day.";
            yield return new Problem("When", said, open, $"Choose an hour in the opening hours{NextOpen(shop, at.Date)}.");
        }

        if (order.Cutting is { } cutting && cutting < at)
        {
            yield return new Problem("Cutting", Say(cutting), $"The cake is cut before it is handed over ({said}).", "Choose a later cutting time.");
        }

        if (order.Handover.Way == Way.Deliver && order.Handover.Address.Trim().Length == 0)
        {
            yield return new Problem("Address", "nothing", "A delivery needs an address.", "Write the address, or choose Collect.");
        }

        if (order.Handover.RouteMinutes is < 0 or > 480)
        {
            yield return new Problem("Route", Text(order.Handover.RouteMinutes), "A route is 0 to 480 minutes.", "Give the minutes on the road, one way.");
        }
    }

    private static Problem ClockChange(ZoneLocalMapping mapping, string said) => mapping.Count == 0
        ? new Problem("When", said, "That hour does not exist: the clocks go forward.", $"Choose {Say(mapping.LateInterval.IsoLocalStart)} or later.")
        : new Problem("When", said, "That hour comes twice: the clocks go back.", "Choose an hour before or after it, so that both mean the same.");

    private static string NextOpen(Shop shop, LocalDate day)
    {
        var next = Enumerable.Range(1, 14).Select(day.PlusDays).FirstOrDefault(d => shop.HoursOn(d).Count > 0);
        return next == default ? "" : $", or {Say(next)}";
    }

    private static IEnumerable<Problem> Words(Order order)
    {
        if (order.Customer.Name.Trim().Length == 0)
        {
            yield return new Problem("Who", "nothing", "The order has no name.", "Write the customer's name.");
        }

        (string Field, string Value, int Limit)[] texts =
        [
            ("Who", order.Customer.Name, LongestName),
            ("Address", order.Handover.Address, LongestName),
            ("Allergies", order.Allergies.Words, LongestName),
            ("Inscription", order.Inscription, LongestInscription),
            ("Notes", order.Notes, LongestNotes),
        ];
        foreach (var (field, value, limit) in texts)
        {
            var length = new StringInfo(value).LengthInTextElements;
            if (length > limit)
            {
                yield return new Problem(field, Short(value), $"This is {length} characters; at most {limit} fit.", "Shorten it, or put the rest into Notes.");
            }

            if (value.Any(c => char.IsControl(c) && c is not '\n' and not '\r' and not '\t'))
            {
                yield return new Problem(field, Short(value), "This holds a sign that can't be written.", "Type it again instead of pasting it.");
            }
        }
    }

    private static IEnumerable<Problem> HowMany(Order order)
    {
        if (order.Portions.Count is < 1 or > MostPortions)
        {
            yield return new Problem("How many", Text(order.Portions.Count), $"One order is 1 to {MostPortions} portions.", "Give the number of guests who eat cake, or write two orders.");
        }
    }

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
        if (tier.Diameter.Inches is < 3 or > 18)
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

        if (tier.Height.Centimetres is < 3 or > 25)
        {
            yield return new Problem(field, Invariant($"{tier.Height.Centimetres:0.#} cm"), "A tier is 3 to 25 cm high.", "Choose a height between.");
        }

        if (tier.Layers is < 1 or > 8)
        {
            yield return new Problem(field, $"{Text(tier.Layers)} layers", "A tier has 1 to 8 layers.", "Choose a number between.");
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
            var widest = fridges.Count == 0 ? 0 : fridges.Max(s => Math.Min(s.Width.Centimetres, s.Depth.Centimetres));
            yield return new Problem(field, size, $"On its board it needs {footprint.Centimetres.ToString("0.#", CultureInfo.InvariantCulture)} cm of shelf; the widest fridge shelf has {widest.ToString("0.#", CultureInfo.InvariantCulture)} cm.", "Choose a smaller tier.");
        }
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

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Short(string text) => text.Length <= 80 ? text : text[..79] + "…";

    private static string Say(LocalDate day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private static string Say(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Say(LocalDateTime at) => at.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
}
