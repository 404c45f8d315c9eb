namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>What a ring says: verb, place, tier, order and why.</summary>
internal sealed class RingWords(OpenPlan plan, IReadOnlyDictionary<string, Order> orders, Shop shop)
{
    public string Verb(RingKind kind, StepRow row) => kind switch
    {
        RingKind.OvenOut => "Take out",
        RingKind.FoodLimit => "Ask the owner",
        _ => Method.OperationOf(plan.Step(row.Step).Name).Verb,
    };

    /// <summary>The oven of a load; else the shelf or bench on which the thing stands when the step begins.</summary>
    public (string Words, string Id) Place(RingKind kind, StepRow row)
    {
        if (kind == RingKind.OvenOut)
        {
            return (shop.Ovens.FirstOrDefault(o => o.Id == row.Machine)?.Name ?? "the oven", row.Machine ?? "");
        }

        var store = plan.Before[row.Step].Select(h => plan.Stores.GetValueOrDefault(h.Id)).FirstOrDefault(s => s is not null) ?? "";
        return (PlaceWords.Of(store, shop), store);
    }

    public string What(IReadOnlyList<StepRow> rows)
    {
        var tiers = rows.SelectMany(r => StepWords.TiersOf(plan.Step(r.Step).Id, OrderOf(r))).ToList();
        var sponges = tiers.Select(t => Sponge.Of(t.Sponge)?.Food ?? t.Sponge).Distinct(StringComparer.Ordinal);
        return $"{StepWords.Size(tiers, shop)}, {string.Join(" and ", sponges)}";
    }

    public string Orders(IReadOnlyList<StepRow> rows) =>
        string.Join(", ", rows.Select(OrderOf).Distinct().Select(o => $"{o.Number} {o.Customer.Name}"));

    /// <summary>Why the next step waits as it does; of the last step, what is due with the customer.</summary>
    public string Why(StepRow row)
    {
        var name = plan.Step(row.Step).Name;
        var next = plan.After[row.Step].Select(h => plan.Step(h.To).Name).FirstOrDefault();
        return Method.Waits.FirstOrDefault(w => w.From == name && w.To == next)?.Why
            ?? "Look into the box together before it goes.";
    }

    /// <summary>Why a food limit rings.</summary>
    /// <param name="limit">Which limit is passed.</param>
    public static string Why(string limit) => $"{limit} Don’t hand it over before the owner has decided. The rules of your place come first.";

    private Order OrderOf(StepRow row) => orders[plan.Step(row.Step).Order];
}
