namespace Bakehouse.Web.TakeOrder.Messages;

using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>The questions that are still open, and a reply to copy. It promises no day and says nothing about allergies but the question.</summary>
public sealed class ReplyWords(Shop shop, LocalDate today)
{
    private const int MostQuestions = 3;
    private readonly Words words = Words.Of(shop);

    /// <summary>At most three, what matters most first.</summary>
    public IReadOnlyList<string> Questions(OrderForm form, LocalDateTime? when, bool isWaySaid) => [.. Open(form, when, isWaySaid).Take(MostQuestions)];

    /// <summary>The letter.</summary>
    /// <param name="day">The day that was said, if its hour was not.</param>
    /// <param name="flavour">What they named, in the words of the methods; "" if nothing.</param>
    /// <param name="can">The answer to "can we?" as it stands, or null.</param>
    /// <param name="tiers">Bottom first; empty as long as no build is known.</param>
    public string Letter(OrderForm form, LocalDateTime? when, LocalDate? day, CanWe? can, IReadOnlyList<CakeTier> tiers, string flavour, IReadOnlyList<string> questions)
    {
        string[] understood =
        [
            when is { } at ? words.Spoken(at, today) : day is { } date ? words.LongDay(date, today) : "",
            form.Count.Length > 0 ? $"{form.Count} {(form.Cut == Cut.Dessert ? "dessert portions" : "portions with coffee")}" : "",
            TierNames.Build(tiers, stack => stack.All(t => t.Shape is Round) ? $"{words.Build(stack)} {(words.Inches ? "inches" : "cm")}" : string.Join(" on ", stack.Reverse().Select(words.Tier))),
            flavour,
            when is not null && form.Way == Way.Deliver ? "delivered" : "",
        ];
        var known = string.Join(", ", understood.Where(u => u.Length > 0));
        return string.Join("\n\n", new[]
        {
            form.Name.Trim().Length > 0 ? $"Hello {form.Name.Trim()}," : "Hello,",
            known.Length > 0 ? $"thank you for asking. This is what we understand: {known}." : "thank you for asking.",
            can is null ? "" : Stands(can),
            questions.Count == 0 ? "" : $"{(questions.Count == 1 ? "One thing" : $"{questions.Count} things")} we still need to know:\n{string.Join('\n', questions.Select((q, i) => $"{i + 1}. {q}"))}",
            shop.Name,
        }.Where(p => p.Length > 0));
    }

    private string Stands(CanWe can) => can.Wished.IsYes
        ? "There is room for it as our plan stands now. Nothing is kept for you yet: it is, once we have agreed."
        : can.Offers.FirstOrDefault(o => o.Kind == OfferKind.Time) is { } other
            ? $"That time is full as our plan stands now. {words.Spoken(other.Fit.Order.Handover.At, today)} would go."
            : "That time is full as our plan stands now.";

    private static IEnumerable<string> Open(OrderForm form, LocalDateTime? when, bool isWaySaid)
    {
        if (form.Day.Trim().Length == 0)
        {
            yield return "On which day is it for, and at what hour do you want it?";
        }

        if (form.Count.Trim().Length == 0)
        {
            yield return "How many people will eat of it, as a dessert or with coffee?";
        }

        if (form.Allergies == AllergyKind.NotAsked)
        {
            yield return "Is anybody who eats of it allergic to anything? Tell us in your own words what happens.";
        }

        if (form.Day.Trim().Length > 0 && when is null)
        {
            yield return "At what hour do you want it?";
        }

        if (!isWaySaid && form.Way == Way.Collect)
        {
            yield return "Will you collect it, or shall we deliver it, and where to?";
        }

        if (form.IsUnbuilt)
        {
            yield return "How many tiers shall it have, and which flavours?";
        }

        if (form.Phone.Trim().Length == 0)
        {
            yield return "On which telephone number can we reach you?";
        }

        if (form.Name.Trim().Length == 0)
        {
            yield return "In which name shall we write it down?";
        }
    }
}
