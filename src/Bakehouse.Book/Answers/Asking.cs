namespace Bakehouse.Book.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>Answers "can we?" on what stands in the book: every yes is a plan that the Judge has passed, and nothing is written.</summary>
internal sealed class Asking(Desk desk, CancellationToken cancel)
{
    /// <summary>How far a later time is looked for: two weeks of tries, each at least to the next opening.</summary>
    private const int MostTries = 16;

    private const int MostOffers = 3;

    private readonly PickupTimes times = new(desk.Shop, desk.Now);

    /// <summary>The wish alone: one insertion.</summary>
    public CanWe First(Order order) => new(Of(order), desk.State.Head);

    /// <summary>The rest: the earliest time, and for a wish that fails what decides it and what else could be.</summary>
    public CanWe Whole(CanWe first)
    {
        var whole = first with { Earliest = From(first.Wished.Order, times.First(first.Wished.Order)), IsWhole = true };
        return first.Wished.IsYes ? whole : whole with
        {
            Decides = first.Wished.Proof is null ? null : new Deciding(desk).Of(first.Wished),
            Offers = [.. Instead(first.Wished).OfType<Offer>().Take(MostOffers).Select(o => Priced(o, first.Wished.Order))],
        };
    }

    /// <summary>What takes longest: the earliest time at which others make way for it, after what is offered already.</summary>
    public CanWe Last(CanWe whole) => new SoonestWithMoves(this, times).Of(whole) is { } offer
        ? whole with { Offers = [.. whole.Offers, Priced(offer, whole.Wished.Order)] }
        : whole;

    /// <summary>How one day stands for that cake, at the wished hour or else at another of it.</summary>
    /// <param name="hour">The hour that was wished; null if any will do: then the last of the day is asked for.</param>
    public DayAnswer On(LocalDate day, Order order, LocalTime? hour)
    {
        if (times.LastOn(day) is not { } last)
        {
            return new DayAnswer(day, DayStands.Shut, null);
        }

        var wish = hour is { } h && desk.Shop.HoursOn(day).Any(open => open.From <= h && h <= open.To) ? day + h : last;
        var fit = Of(order with { Handover = order.Handover with { At = wish } });
        if (!fit.IsYes)
        {
            fit = From(order, fit.Proof is null ? times.Next(order, day.AtMidnight()) : times.Next(order, wish.PlusMinutes(fit.Late)), day);
        }

        return fit is null ? new DayAnswer(day, DayStands.No, null)
            : new DayAnswer(day, hour is null || fit.Order.Handover.At.TimeOfDay == hour ? DayStands.Yes : DayStands.OtherHour, fit.Order.Handover.At);
    }

    /// <summary>Nearest to the wish first. A cake that was begun is not made another one.</summary>
    private IEnumerable<Offer?> Instead(Fit wished)
    {
        yield return MakingRoom(wished);
        yield return Later(wished);
        if (!desk.TicksWith(wished.Order).Any(t => StepKey.Parse(t.Step)?.Order == wished.Order.Id))
        {
            yield return Plainer(wished.Order);
            yield return Smaller(wished.Order);
        }
    }

    /// <summary>How that order fits.</summary>
    public Fit Of(Order order)
    {
        cancel.ThrowIfCancellationRequested();
        var against = Against(order);
        if (against.Count > 0)
        {
            return Fit.No(order, against);
        }

        if (PlanReach.IsFar(order, desk.Shop, desk.Today))
        {
            return Fit.Far(order, FarBudget.Of(order, desk.State.Orders, desk.Shop, desk.State.Chores, desk.Today));
        }

        var fitted = OrderEntry.Placed(desk, order, desk.Fitting);
        return fitted is { IsPlan: true, Wall: { } wall } ? Proved(order, wall, fitted.Late) : Fit.No(order, fitted.Reasons);
    }

    /// <summary>What the shop's own rules say of day, hour, size and the day's cap; beyond it only the owner's tick goes, which is hers alone to give.</summary>
    private IReadOnlyList<Reason> Against(Order order)
    {
        string[] later = ["Who", "Allergies", "How many", "Address", "On top", "Eaters", "Own limits"];
        var before = desk.Order(order.Id);
        var full = DayCaps.Against(order, before, desk.State.Orders, desk.Shop, owner: true);
        return [.. OrderChecks.NewProblems(order, before, desk.Shop, desk.Now, owner: true).Where(p => !later.Contains(p.Where, StringComparer.Ordinal))
            .Concat(full is null ? [] : [full]).Select(p => new Reason(p.Sentence, p.Try))];
    }

    private Fit Proved(Order order, Wall wall, IReadOnlyDictionary<string, int> late)
    {
        var week = WeekWith(order, wall);
        var stands = Readiness.Of(week, week.Orders.First(o => o.Id == order.Id.ToString("N")), wall.From(week.Epoch).Steps)
            ?? throw new InvalidOperationException($"A plan of {order} has no row for its last step.");
        return new Fit(order, week.Epoch + Duration.FromMinutes(stands.Ready), stands.Spare, late, wall, []);
    }

    private Week WeekWith(Order order, Wall wall) => Week.From(desk.OrdersWith(order), desk.Shop, desk.TicksWith(order), wall, desk.Now, desk.State.Hand);

    /// <summary>The first time from there on at which it fits, in steps of what each try is late by.</summary>
    /// <param name="only">The one day on which it is looked for; null for any.</param>
    private Fit? From(Order order, LocalDateTime? at, LocalDate? only = null)
    {
        for (var tries = 0; at is { } time && (only is null || time.Date == only) && tries < MostTries; tries++)
        {
            var fit = Of(order with { Handover = order.Handover with { At = time } });
            if (fit.IsYes)
            {
                return fit;
            }

            at = fit.Proof is null ? times.NextDay(order, time) : times.Next(order, time.PlusMinutes(fit.Late));
        }

        return null;
    }

    private Offer? Later(Fit wished)
    {
        var order = wished.Order;
        var next = wished.Proof is null ? times.NextDay(order, order.Handover.At) : times.Next(order, order.Handover.At.PlusMinutes(Math.Max(1, wished.Late)));
        return From(order, next) is { } fit ? Still(OfferKind.Time, fit) : null;
    }

    private Offer? Plainer(Order order)
    {
        Order[] plainer = [order with { Decoration = Decoration.Simple }, order with { Decoration = Decoration.Simple, Finish = Finish.SemiNaked }];
        return Best(OfferKind.Finish, plainer.Where(p => p.Decoration != order.Decoration || p.Finish != order.Finish));
    }

    private Offer? Smaller(Order order) =>
        Best(OfferKind.Build, Enumerable.Range(1, Math.Max(0, order.Stack.Count - 1)).Select(less => order with { Tiers = [.. order.Stack.SkipLast(less), .. order.Beside] }));

    private Offer? Best(OfferKind kind, IEnumerable<Order> tries) =>
        tries.Select(Of).FirstOrDefault(f => f.IsYes) is { } fit ? Still(kind, fit) : null;

    private Offer Priced(Offer offer, Order wish) => offer with { Dearer = Asks(offer.Fit.Order) - Asks(wish) };

    /// <summary>What is asked for a cake; null while nothing is known.</summary>
    private decimal? Asks(Order order) => CakePrice.Of(order, order.MadeFrom is null ? desk.State.Cookbook : desk.State.CookbookOf(order), desk.Shop)?.Asked;

    private static Offer Still(OfferKind kind, Fit fit) => new(kind, fit, 0, []);

    /// <summary>The wish itself, if another makes way and keeps its promise.</summary>
    public Offer? MakingRoom(Fit wished)
    {
        if (wished.Proof is null || desk.State is not { Week: { } week, Wall: { } hung } || OrderEntry.WithRoom(desk, wished.Order, wished.AllLate) is not { Wall: { } wall } room)
        {
            return null;
        }

        var moved = Repaired.Of(week, hung, WeekWith(wished.Order, wall), wall).Moves.Where(m => m.From is not null).ToList();
        var ids = moved.Select(m => StepKey.Parse(m.Step)!.Value.Order).ToHashSet();
        return new Offer(OfferKind.Moves, Proved(wished.Order, wall, room.Late), moved.Count, [.. desk.State.Orders.Where(o => ids.Contains(o.Id)).Select(o => o.Number).Order()]);
    }
}
