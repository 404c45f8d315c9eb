namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Says an answer in the counter's words: one word, one headline, one sentence why.</summary>
public sealed class AnswerWords(Shop shop, LocalDate today)
{
    private readonly Words words = Words.Of(shop);

    /// <summary>The mark of the answer.</summary>
    public MarkKind Mark(CanWe can) => IsShort(can) ? MarkKind.Tight : can.Wished.IsYes ? MarkKind.InTime : IsNo(can) ? MarkKind.Late : MarkKind.Tight;

    /// <summary>Yes, Tight, Other time or No.</summary>
    public string Word(CanWe can) => IsShort(can) ? "Tight" : can.Wished.IsYes ? "Yes" : IsNo(can) ? "No" : "Other time";

    /// <summary>"Saturday 17 October at 14:00", or what fails and by how much.</summary>
    public string Headline(CanWe can)
    {
        var at = can.Wished.Order.Handover.At;
        return can.Wished.IsYes ? $"{words.LongDay(at.Date, today)} at {words.Time(at.TimeOfDay)}"
            : can.Wished.Budget is { } budget ? $"Not {words.DayAndTime(at, today)}: {FarWords.Missing(budget)}"
            : can.Wished.Proof is not null ? $"Not {words.DayAndTime(at, today)}: it would be {Late(can.Wished.Late)} late"
            : can.Wished.Reasons[0].Sentence;
    }

    /// <summary>When it is ready and how much there is to spare, or what decides it.</summary>
    public string Second(CanWe can)
    {
        var wished = can.Wished;
        var sooner = can.Earliest is { } first && first.Order.Handover.At < wished.Order.Handover.At ? $" The earliest is {words.DayAndTime(first.Order.Handover.At, today)}." : "";
        if (wished.Budget is { } budget)
        {
            return new FarWords(words, today).Counted(budget);
        }

        if (wished is { IsYes: true, Ready: { } ready })
        {
            return $"Ready {words.DayAndTime(words.Local(ready))}, so {Words.Minutes(Math.Max(0, wished.Spare))} to spare.{sooner}";
        }

        return can.Decides is { } decides ? $"What decides it: {Say(decides)}{sooner}"
            : wished.Proof is null ? string.Join(' ', wished.Reasons.Skip(1).Select(r => r.Sentence).Append(wished.Reasons[0].Try)) + sooner
            : "Looking for what else could be …";
    }

    /// <summary>"Fri 16 Oct, 17:00".</summary>
    public string When(Offer offer) => words.DayAndTime(offer.Fit.Order.Handover.At, today);

    /// <summary>"same cake, 40 min to spare".</summary>
    public string Differs(Offer offer)
    {
        var order = offer.Fit.Order;
        var what = offer.Kind switch
        {
            OfferKind.Time => "same cake",
            OfferKind.Moves => $"{(offer.Steps == 1 ? "1 step" : $"{offer.Steps} steps")} of {string.Join(", ", offer.Cakes)} {(offer.Steps == 1 ? "moves" : "move")}, none late",
            OfferKind.Finish => order.Finish == Finish.SemiNaked ? "semi-naked, simple" : "simple decoration",
            OfferKind.Build => $"{words.Whole(order.Tiers)}, {BuildSheet.Of(order, CakeFigures.Of(shop)).Portions(order.Portions.Cut)} {(order.Portions.Cut == Cut.Dessert ? "dessert" : "with coffee")}",
            _ => throw new ArgumentOutOfRangeException(nameof(offer), offer.Kind, "No such offer."),
        };
        what += offer.Dearer is { } dearer ? dearer == 0 ? ", same price" : $", {words.Money(Math.Abs(dearer))} {(dearer < 0 ? "less" : "more")}" : "";
        return offer.Fit.Budget is null ? $"{what}, {Words.Minutes(Math.Max(0, offer.Fit.Spare))} to spare" : $"{what}, by a budget of hours";
    }

    private bool IsShort(CanWe can) => can.Wished is { IsYes: true, Budget: null } && can.Wished.Spare < shop.Settings.BufferMinutes;

    private static bool IsNo(CanWe can) => can is { IsWhole: true, Offers.Count: 0, Earliest: null };

    private string Say(Decides decides)
    {
        var more = decides.Still == 0 ? "would do it" : $"would still leave it {Late(decides.Still)} late";
        return decides switch
        {
            { What: Scarce.Time } => "time. Baking, cooling and setting take longer than there is, whoever helps.",
            { Whose: { } whose, Needed: > 0, From: { } from, Until: { } until } => Named(decides, whose, Span(from, until), more),
            { From: { } from, Until: { } until } => decides.What switch
            {
                Scarce.Hands => $"hands. One more pair between {At(from)} and {At(until)}, for {Whole(decides.Minutes)} of work, {more}.",
                Scarce.Cold => $"room in the cold. One more shelf from {At(from)} to {At(until)} {more}.",
                _ => $"ovens and mixers. One more from {At(from)} to {At(until)}, for {Whole(decides.Minutes)}, {more}.",
            },
            { What: Scarce.Hands } => $"hands. One more pair {more}.",
            { What: Scarce.Cold } => $"room in the cold. One more shelf {more}.",
            _ => $"ovens, mixers, turntables and racks. Twice of them {more}.",
        };
    }

    /// <summary>Who or what, when, and both figures.</summary>
    private string Named(Decides decides, string whose, string span, string more) => decides.What switch
    {
        Scarce.Hands => $"{shop.PersonOf(whose)?.Name ?? whose}’s hands. {span} this cake needs {Whole(decides.Needed)} of them, {(decides.There == 0 ? "none" : Whole(decides.There))} is free. One more pair {more}.",
        Scarce.Cold => $"{PlaceWords.Of(whose, shop)}. {span} {decides.Needed} cm of width are needed, {decides.There} are there. One more shelf {more}.",
        _ => $"{shop.Ovens.FirstOrDefault(o => o.Id == whose)?.Name ?? shop.Bowls.FirstOrDefault(b => b.Id == whose)?.Name ?? whose}. {span} it is in use, and this cake needs it for {Whole(decides.Needed)}. One more {more}.",
    };

    /// <summary>"Fri 16 Oct, 09:00 to 13:00".</summary>
    private string Span(Instant from, Instant until) =>
        words.Local(from).Date == words.Local(until).Date ? $"{At(from)} to {words.Time(words.Local(until).TimeOfDay)}" : $"{At(from)} to {At(until)}";

    private static string Late(long minutes) => Words.Late(minutes).Replace(' ', '\u00A0');

    /// <summary>A duration that does not break over two lines.</summary>
    private static string Whole(long minutes) => Words.Minutes(minutes).Replace(' ', '\u00A0');

    private string At(Instant at) => words.DayAndTime(words.Local(at));
}
