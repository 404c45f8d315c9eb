namespace Bakehouse.Book.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
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
        var order = first.Wished.Order;
        return first.Wished.IsYes
            ? first with { Earliest = From(order, times.First(order)), IsWhole = true }
            : first with
            {
                Earliest = From(order, times.First(order)),
                Decides = first.Wished.Proof is null ? null : new Deciding(desk, Late).Of(first.Wished),
                Offers = [.. new[] { MakingRoom(first.Wished), Later(first.Wished), Plainer(order), Smaller(order) }.OfType<Offer>().Take(MostOffers)],
                IsWhole = true,
            };
    }

    /// <summary>How that order fits.</summary>
    public Fit Of(Order order)
    {
        cancel.ThrowIfCancellationRequested();
        var against = Against(order);
        if (against.Count > 0)
        {
            return new Fit(order, null, 0, 0, null, against);
        }

        var fitted = Late(order, desk.Shop);
        return fitted is { IsPlan: true, Wall: { } wall }
            ? Standing(order, wall, fitted.Late.GetValueOrDefault(order.Id.ToString("N")))
            : new Fit(order, null, 0, 0, null, fitted.Reasons);
    }

    private Fitted Late(Order order, Shop shop) =>
        new Fitting(desk.Planner, shop, desk.Now, desk.State.Hand).Place(desk.OrdersWith(order), desk.State.Ticks, desk.State.Wall, order, afresh: true).OrOurBug();

    /// <summary>What the shop's own rules say of day, hour, size and the day's cap.</summary>
    private IReadOnlyList<Reason> Against(Order order)
    {
        string[] later = ["Who", "Allergies", "How many", "Address"];
        var full = DayCaps.Against(order, desk.Order(order.Id), desk.State.Orders, desk.Shop, owner: false);
        return [.. OrderChecks.NewProblems(order, desk.Order(order.Id), desk.Shop, desk.Now, owner: true).Where(p => !later.Contains(p.Where, StringComparer.Ordinal))
            .Concat(full is null ? [] : [full]).Select(p => new Reason(p.Sentence, p.Try))];
    }

    private Fit Standing(Order order, Wall wall, int late)
    {
        var week = Week.From(desk.OrdersWith(order), desk.Shop, desk.State.Ticks, wall, desk.Now, desk.State.Hand);
        var promise = week.Orders.First(o => o.Id == order.Id.ToString("N"));
        var rows = wall.From(week.Epoch).Steps.ToDictionary(r => r.Step, StringComparer.Ordinal);
        var minutes = week.Steps.Where(s => s.Id == promise.Ready || s.Id == promise.Out).ToDictionary(s => s.Id, s => s.Minutes, StringComparer.Ordinal);
        var ready = rows[promise.Ready].Start + minutes[promise.Ready];
        var leaves = promise.To - (promise.EdgeIsEnd ? minutes[promise.Out] : 0);
        return new Fit(order, week.Epoch + Duration.FromMinutes(ready), leaves - ready, late, wall, []);
    }

    /// <summary>The first time from there on at which it fits, in steps of what each try is late by.</summary>
    private Fit? From(Order order, LocalDateTime? at)
    {
        for (var tries = 0; at is { } time && tries < MostTries; tries++)
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
        Best(OfferKind.Build, Enumerable.Range(1, Math.Max(0, order.Tiers.Count - 1)).Select(less => order with { Tiers = [.. order.Tiers.SkipLast(less)] }));

    private Offer? Best(OfferKind kind, IEnumerable<Order> tries) =>
        tries.Select(Of).FirstOrDefault(f => f.IsYes) is { } fit ? Still(kind, fit) : null;

    private static Offer Still(OfferKind kind, Fit fit) => new(kind, fit, 0, []);

    /// <summary>The wish itself, if others make way and keep their promises.</summary>
    private Offer? MakingRoom(Fit wished)
    {
        if (wished.Proof is null || desk.State.Wall is not { } hung || desk.Fitting.MakeRoom(desk.OrdersWith(wished.Order), desk.State.Ticks, hung, wished.Order, Late(wished.Order, desk.Shop).Late) is not { Wall: { } wall } room)
        {
            return null;
        }

        room.OrOurBug();
        var before = hung.From(wall.Epoch).Steps.ToDictionary(r => r.Step, StringComparer.Ordinal);
        var moved = wall.Plan.Steps.Where(r => before.TryGetValue(r.Step, out var was) && (was.Start != r.Start || was.Machine != r.Machine || !was.People.SequenceEqual(r.People, StringComparer.Ordinal)))
            .Select(r => StepKey.Parse(r.Step)!.Value.Order).ToList();
        var cakes = desk.State.Orders.Where(o => moved.Contains(o.Id)).Select(o => o.Number).Order().ToList();
        return new Offer(OfferKind.Moves, Standing(wished.Order, wall, 0), moved.Count, cakes);
    }
}
