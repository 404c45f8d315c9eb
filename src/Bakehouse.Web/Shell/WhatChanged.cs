namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.TakeOrder;

/// <summary>The differences of two versions of an order, in words.</summary>
public static class WhatChanged
{
    /// <summary>What differs, with the older and the newer wording; empty if nothing does.</summary>
    /// <param name="price">True to tell the price, too: those who build don't see it.</param>
    public static IReadOnlyList<(string What, string Old, string New)> Between(Order old, Order now, Words words, bool price = false)
    {
        var before = Facts(old, words, price);
        return [.. Facts(now, words, price).Zip(before, (n, o) => (n.What, o.Says, n.Says)).Where(x => x.Item2 != x.Item3)];
    }

    private static IReadOnlyList<(string What, string Says)> Facts(Order o, Words words, bool price) =>
    [
        ("Stage", StageNames.Say(o.Stage)),
        ("When", words.DayAndTime(o.Handover.At)),
        ("How it leaves", o.Handover.Way == Way.Collect ? "collected" : $"delivered to {o.Handover.Address}, {o.Handover.RouteMinutes} min"),
        ("Cut at", o.Cutting is { } c ? words.DayAndTime(c) : "not told"),
        ("How many", $"{o.Portions.Count} {(o.Portions.Cut == Cut.Dessert ? "dessert" : "with coffee")}{(o.ShortTold > 0 ? $", told that {o.ShortTold} are missing" : "")}"),
        ("Guests", o.Guests is { } g ? $"{g.Invited}{(g.KeepsTop ? ", top tier kept" : "")}" : "not counted"),
        ("Tiers", string.Join("; ", o.Tiers.Reverse().Select(t => Tier(t, words)))),
        ("Finish", FinishWords.Say(o)),
        ("Decoration", o.Decoration.ToString().ToLowerInvariant()),
        ("On top", OnTopWords.Say(o.OnTop)),
        ("Allergies", Allergy.Say(o.Allergies)),
        ("Who eats", OnTopWords.Say(o.Eaters)),
        ("Name", o.Customer.Name),
        ("Telephone", o.Customer.Phone),
        ("On the cake", o.Inscription),
        ("Notes", o.Notes),
        ("Price", !price ? "" : o.Price is { } agreed ? $"{words.Money(agreed.Amount)} {agreed.Reason}".Trim() : "not agreed"),
        ("The day's cap", o.BeyondCapAgreed ? "beyond it, agreed by the owner" : "kept"),
    ];

    private static string Tier(CakeTier t, Words words) =>
        (t.StandsBeside ? $"{words.Tier(t)}, {Flavours.Say(t.Sponge)}, swirl " : $"{words.Tier(t)} × {words.Centimetres(t.Height)}, {(t.IsFalse ? "false tier" : $"{t.Layers} layers, {Flavours.Say(t.Sponge, t.Filling)}")}, {(t.Special is { Separator.Centimetres: > 0 and var apart } ? $"on pillars of {apart:0.#} cm, " : "")}")
        + string.Join(" ", t.Colours.Select(c => $"{c.Name} {(c.Share * 100).ToString("0.##", CultureInfo.InvariantCulture)} %"));
}
