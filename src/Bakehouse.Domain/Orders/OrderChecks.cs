namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using static System.FormattableString;

/// <summary>Everything that can be wrong with an order, all at once: field, value, limit and what to try.</summary>
public static partial class OrderChecks
{
    /// <summary>Most tiers of one cake; more are two cakes.</summary>
    public const int MostTiers = 8;

    /// <summary>Longest name, address or allergy words, in characters as people count them.</summary>
    public const int LongestName = 200;

    /// <summary>Longest inscription; more does not fit on a cake.</summary>
    public const int LongestInscription = 120;

    /// <summary>Longest notes.</summary>
    public const int LongestNotes = 4000;

    /// <summary>Longest route of a delivery, minutes one way.</summary>
    public const int LongestRoute = 240;

    /// <summary>Most portions of one order.</summary>
    public const int MostPortions = 1000;

    /// <summary>Most money for one order.</summary>
    public const int MostMoney = 1_000_000;

    /// <summary>What is wrong with the tiers alone: whether they can be built, and baked and stood in this shop.</summary>
    public static IReadOnlyList<Problem> OfTiers(Order order, Shop shop) => [.. TierCount(order), .. order.Tiers.SelectMany((tier, i) => Tier(tier, i, order, shop))];

    /// <summary>Every problem; empty if the order may be written in its stage.</summary>
    /// <param name="owner">True if the owner writes it: a wider tier above needs her tick.</param>
    /// <param name="recipes">Against which an allergy is weighed; null or unwritten: against what the methods are known to be made with.</param>
    public static IReadOnlyList<Problem> Problems(Order order, Shop shop, Instant now, bool owner, Cookbook? recipes = null)
    {
        var problems = new List<Problem>();
        problems.AddRange(When(order, shop, now));
        problems.AddRange(Words(order));
        problems.AddRange(HowMany(order, shop));
        problems.AddRange(ServesFewer(order, shop));
        problems.AddRange(Agreed(order));
        problems.AddRange(TierCount(order));
        problems.AddRange(order.Tiers.SelectMany((tier, i) => Tier(tier, i, order, shop)));
        problems.AddRange(WiderAbove(order, owner));
        if (order.Allergies.Kind == AllergyKind.NotAsked)
        {
            problems.Add(new Problem("Allergies", "", "Nobody has asked about allergies yet.", "Ask, then choose \"None told\" or \"Avoid\"."));
        }

        if (order.Allergies.Kind == AllergyKind.Avoid && order.Allergies.Avoid.Count == 0 && order.Allergies.Words.Trim().Length == 0)
        {
            problems.Add(new Problem("Allergies", "", "It is not said what to avoid.", "Write it in the customer's own words."));
        }

        problems.AddRange(recipes is { Version: > 0 } ? [.. AllergyChecks.Problems(order, recipes, shop), .. AllergyChecks.NotKnown(order, recipes, shop)] : [.. MadeWith(order), .. AllergyChecks.Words(order)]);
        problems.AddRange(OnTopChecks.Problems(order));
        problems.AddRange(EaterQuestions.Problems(order, shop, owner, recipes ?? Cookbook.Empty));
        problems.AddRange(OwnLimitChecks.Problems(order, shop));
        return problems;
    }

    /// <summary>
    /// What the order avoids and is known to be made with, in a shop that keeps no recipes yet. What is not found here may still be in it.
    /// </summary>
    private static IEnumerable<Problem> MadeWith(Order order)
    {
        if (order.Allergies is not { Kind: AllergyKind.Avoid, Told: not CustomersWord.Dislike })
        {
            yield break;
        }

        var made = order.Tiers.Where(t => !t.IsFalse)
            .SelectMany(t => ((string?, IReadOnlyList<string>)[])[(Sponge.Of(t.Sponge)?.Name, Sponge.Of(t.Sponge)?.Has ?? []), (Filling.Of(t.Filling)?.Name, t.Layers > 1 ? Filling.Of(t.Filling)?.Has ?? [] : [])])
            .Append(("Buttercream for the coat", Filling.Of("buttercream")!.Has))
            .DistinctBy(m => m.Item1, StringComparer.Ordinal);
        foreach (var (name, has) in made)
        {
            var met = has.Intersect(order.Allergies.Avoid, StringComparer.OrdinalIgnoreCase).ToList();
            if (met.Count > 0)
            {
                yield return new Problem("Allergies", string.Join(", ", met), $"{name} is made with that.", "Choose another sponge or filling, or refuse the order. Check the recipe yourself, too.");
            }
        }
    }

    /// <summary>
    /// What is wrong with a version, without what was wrong with the one before and was not touched: nobody is held up by that.
    /// </summary>
    /// <param name="after">As it shall be written.</param>
    /// <param name="before">The version that stands, or null.</param>
    public static IReadOnlyList<Problem> NewProblems(Order after, Order? before, Shop shop, Instant now, bool owner, Cookbook? recipes = null)
    {
        // The notice counts for what is new; a version that stands was taken in time.
        var wrong = Problems(after with { Version = before?.Version ?? 0 }, shop, now, owner, recipes);
        var old = before is not null && (Stages.IsPlanned(before.Stage) || !Stages.IsPlanned(after.Stage))
            ? Problems(before, shop, now, owner, recipes)
            : [];
        return [.. wrong.Except(old)];
    }

    private static IEnumerable<Problem> Words(Order order)
    {
        if (order.Customer.Name.Trim().Length == 0)
        {
            yield return new Problem("Who", "", "The order has no name.", "Write the customer's name.");
        }

        (string Field, string Value, int Limit)[] texts =
        [
            ("Who", order.Customer.Name, LongestName),
            ("Address", order.Handover.Address, LongestName),
            ("Allergies", order.Allergies.Words, LongestName),
            ("Inscription", order.Inscription, LongestInscription),
            ("Notes", order.Notes, LongestNotes),
            ("Price", order.Price?.Reason ?? "", LongestName),
        ];
        foreach (var (field, value, limit) in texts)
        {
            var length = new StringInfo(value).LengthInTextElements;
            if (length > limit)
            {
                yield return new Problem(field, Problem.Shown(value), $"This is {length} characters; at most {limit} fit.", "Shorten it, or put the rest into Notes.");
            }

            if (value.Any(c => char.IsControl(c) && c is not '\n' and not '\r' and not '\t'))
            {
                yield return new Problem(field, Problem.Shown(value), "This holds a sign that can't be written.", "Type it again instead of pasting it.");
            }
        }
    }

    private static IEnumerable<Problem> Agreed(Order order)
    {
        if (order.Price is { Amount: var amount } && (amount is < 0 or > MostMoney || amount != decimal.Round(amount, Prices.Cash.Places)))
        {
            yield return new Problem("Price", amount.ToString(CultureInfo.InvariantCulture), Invariant($"A price is 0 to {MostMoney}, in whole coins."), "Write it in figures, such as 385 or 385.50.");
        }
    }

    private static IEnumerable<Problem> HowMany(Order order, Shop shop)
    {
        if (order.Portions.Count is < 1 or > MostPortions)
        {
            yield return new Problem("How many", Text(order.Portions.Count), $"One order is 1 to {MostPortions} portions{Gives(order, shop)}.", "Give the number of guests who eat cake, or write two orders.");
        }
    }

    /// <summary>Nobody is promised more than the cake serves without being told.</summary>
    private static IEnumerable<Problem> ServesFewer(Order order, Shop shop)
    {
        if (order.Guests?.Problems().FirstOrDefault() is { } guests)
        {
            yield return guests with { Where = "How many" };
        }

        if (Stages.IsTaken(order.Stage) && order.Portions.Count is >= 1 and <= MostPortions && Serves.Of(order, CakeFigures.Of(shop)) is { Missing: > 0 } serves && serves.Missing > order.ShortTold)
        {
            var kept = serves.Kept > 0 ? Invariant($", {serves.Kept} on the top tier kept") : "";
            yield return new Problem("How many", Text(serves.Asked), Invariant($"This cake serves {serves.ToCut}{kept}: {serves.Missing} short."), "Take a larger cake, or tell the customer and tick that they know.");
        }
    }

    private static string Gives(Order order, Shop shop) => IsCounted(order.Tiers) && BuildProblems.Of(order.Tiers, CakeFigures.Of(shop)).Count == 0
        ? $"; this cake gives {BuildSheet.Of(order, CakeFigures.Of(shop)).Portions(order.Portions.Cut)}"
        : "";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Say(LocalDate day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private static string Say(LocalTime time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Say(LocalDateTime at) => at.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
}
