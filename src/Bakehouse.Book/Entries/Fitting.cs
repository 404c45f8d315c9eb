namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>Fits a change into the plan on the wall, and has the Judge look at every plan before it is written.</summary>
internal sealed class Fitting(IPlanner planner, Shop shop, Instant now, ByHand hand)
{
    /// <summary>So many are asked to make way while a customer waits.</summary>
    private const int MostMakingWay = 8;

    private static readonly IReadOnlyDictionary<string, int> NobodyLate = new Dictionary<string, int>();

    /// <summary>Places one order while the others stand still.</summary>
    /// <param name="orders">All orders, the one to place among them as it shall be.</param>
    /// <param name="afresh">False if its rows may stay when they still can: nothing in it that the plan depends on has changed.</param>
    public Fitted Place(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall, Order placed, bool afresh) =>
        LettingGo(f => f.PlaceHeld(orders, ticks, wall, placed, afresh));

    /// <summary>Keeps the plan and pushes later what can't stand any more.</summary>
    public Fitted Push(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => LettingGo(f => f.PushHeld(orders, ticks, wall));

    /// <summary>Plans everything anew as far as it must move: the shop itself has changed.</summary>
    public Fitted Replan(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => LettingGo(f => f.ReplanHeld(orders, ticks, wall));

    /// <summary>
    /// After something went wrong: promises first, then as few moves as are found. What is done and the next two hours stay, unless a
    /// promise would fall by it.
    /// </summary>
    public Fitted Mend(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => LettingGo(f => f.MendHeld(orders, ticks, wall));

    /// <summary>
    /// Makes room for an order that is late if all others stand still: one of them, not begun, is taken down, the order is placed, and
    /// that one again. Null unless somebody can make way so that it is in time and nobody is later than before. The nearest by handover are
    /// tried first.
    /// </summary>
    /// <param name="late">Minutes late by order id, with the order placed while the others stood still.</param>
    public Fitted? MakeRoom(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall wall, Order placed, IReadOnlyDictionary<string, int> late) => orders
        .Where(o => o.Id != placed.Id && MayMakeWay(o, ticks, wall))
        .OrderBy(o => Math.Abs(Period.Between(o.Handover.At, placed.Handover.At, PeriodUnits.Minutes).Minutes)).ThenBy(o => o.Number)
        .Take(MostMakingWay)
        .Select(o => MakeWay(orders, ticks, wall, placed, o))
        .FirstOrDefault(f => f is { IsPlan: true, Stuck.Count: 0 } && f.Late.All(l => l.Key != Key(placed) && l.Value <= late.GetValueOrDefault(l.Key)));

    private Fitted? MakeWay(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall wall, Order placed, Order other) =>
        Place([.. orders.Where(o => o.Id != other.Id)], ticks, wall, placed, afresh: true) is { IsPlan: true, Wall: { } between } without && !without.Late.ContainsKey(Key(placed))
            ? Place(orders, ticks, between, other, afresh: true)
            : null;

    private static string Key(Order order) => order.Id.ToString("N");

    /// <summary>Nothing of it is done, pinned, or soon at hand.</summary>
    private bool MayMakeWay(Order order, IReadOnlyList<Tick> ticks, Wall wall)
    {
        var id = order.Id.ToString("N");
        var calm = now + Duration.FromMinutes(Calm.Minutes);
        return Stages.IsPlanned(order.Stage)
            && !ticks.Any(t => t.Step.StartsWith(id, StringComparison.Ordinal)) && !hand.Pins.Any(p => p.Step.StartsWith(id, StringComparison.Ordinal))
            && wall.Plan.Steps.Where(r => r.Step.StartsWith(id, StringComparison.Ordinal)).All(r => wall.Epoch + Duration.FromMinutes(r.Start) > calm);
    }

    /// <summary>
    /// Puts one step where somebody wants it and pins it there; the others make way. Every other pin holds, or there is no plan.
    /// </summary>
    public Fitted Move(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall wall, Pin pin) => Move(orders, ticks, wall, pin, planner.Push);

    /// <summary>The same for a step that begins now: the others are mended around it.</summary>
    public Fitted Begin(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall wall, Pin pin) => Move(orders, ticks, wall, pin, Repair);

    private PlanOutcome Repair(Week week, CancellationToken cancel) => planner.Repair(week, week.Now + Calm.Minutes, cancel);

    private Fitted MendHeld(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => StoppedByNone(
        Look(WeekOf(orders, ticks, wall), orders, Repair), orders, null, rest => MendHeld(rest, ticks, wall));

    private Fitted Move(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall wall, Pin pin, Func<Week, CancellationToken, PlanOutcome> others)
    {
        var held = new Fitting(planner, shop, now, hand.With(pin));
        var week = held.WeekOf(orders, ticks, Hung(wall, pin));
        return week.Fixed.Any(f => f.Step == pin.Step && (f.Why is "pinned" or "started") && pin.Is(new StepRow(pin.Step, f.Start!.Value, f.People!, f.Machine, null), week.Epoch))
            ? week.Reference is { } kept && Judge.Examine(week, kept).Feasible ? new Fitted(new Wall(week.Epoch, kept), NobodyLate, [], []) : Look(week, orders, others)
            : new Fitted(null, NobodyLate, [new Reason("It can’t be held there.", "Choose another time or place.")], []);
    }

    /// <summary>
    /// A pin gives way where it leaves a cake without a plan: first the pins of the cakes that find no room, then all.
    /// </summary>
    private Fitted LettingGo(Func<Fitting, Fitted> fit)
    {
        var held = fit(this);
        if (held is { IsPlan: true, Stuck.Count: 0 } || hand.Pins.Count == 0)
        {
            return held;
        }

        var stuck = held.Reasons.Concat(held.Stuck).Select(r => r.Order).OfType<string>().ToHashSet();
        return new[] { hand.Pins.Where(p => !stuck.Contains(p.Step[..32])).ToList(), [] }
            .Select(pins => fit(new Fitting(planner, shop, now, hand with { Pins = pins })))
            .FirstOrDefault(f => f.IsPlan && (!held.IsPlan || f.Stuck.Count < held.Stuck.Count)) ?? held;
    }

    private Week WeekOf(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => Week.From(orders, shop, ticks, wall, now, hand);

    /// <summary>The wall with that one row changed; out of a load that it leaves.</summary>
    private static Wall Hung(Wall wall, Pin pin) => wall with
    {
        Plan = wall.Plan with
        {
            Steps = [.. wall.Plan.Steps.Select(r => r.Step != pin.Step || pin.Is(r, wall.Epoch)
                ? r
                : new StepRow(r.Step, (int)(pin.Start - wall.Epoch).TotalMinutes, pin.People, pin.Machine, null))],
        },
    };

    private Fitted PlaceHeld(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall, Order placed, bool afresh)
    {
        var week = WeekOf(orders, ticks, wall);
        if (!StandStill(week, placed.Id))
        {
            week = WeekOf(orders, ticks, Pushed(orders, ticks, wall, placed.Id));
        }

        if (!afresh && week.Reference is { } kept && Judge.Examine(week, kept).Feasible)
        {
            return new Fitted(new Wall(week.Epoch, kept), NobodyLate, [], []);
        }

        var bare = week with { Reference = Without(week, placed.Id) };
        return StoppedByNone(Look(bare, orders, planner.Insert), orders, placed.Id, rest => PlaceHeld(rest, ticks, wall, placed, afresh));
    }

    private Fitted PushHeld(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall) => StoppedByNone(
        Look(WeekOf(orders, ticks, wall), orders, planner.Push), orders, null, rest => PushHeld(rest, ticks, wall));

    private Fitted ReplanHeld(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall)
    {
        var pushed = PushHeld(orders, ticks, wall);
        return pushed is { IsPlan: true, Stuck.Count: 0 } ? pushed
            : StoppedByNone(Look(WeekOf(orders, ticks, wall), orders, planner.Plan), orders, null, rest => ReplanHeld(rest, ticks, wall));
    }

    /// <summary>
    /// A cake that finds no room any more is named and stops no other: the rest is planned without it, and it hangs on no wall until
    /// there is room again.
    /// </summary>
    private static Fitted StoppedByNone(Fitted first, IReadOnlyList<Order> orders, Guid? wanted, Func<IReadOnlyList<Order>, Fitted> again)
    {
        var stuck = first.Reasons.Select(r => r.Order).OfType<string>().Select(Guid.Parse).Where(id => id != wanted).ToHashSet();
        if (first.IsPlan || stuck.Count == 0)
        {
            return first;
        }

        var rest = again([.. orders.Where(o => !stuck.Contains(o.Id))]);
        return rest with { Stuck = [.. first.Reasons.Where(r => r.Order is { } id && stuck.Contains(Guid.Parse(id))), .. rest.Stuck] };
    }

    private Fitted Look(Week week, IReadOnlyList<Order> orders, Func<Week, CancellationToken, PlanOutcome> plan)
    {
        if (!orders.Any(o => Stages.IsPlanned(o.Stage)))
        {
            return new Fitted(null, NobodyLate, [], []);
        }

        var outcome = plan(week, CancellationToken.None);
        return outcome.Plan is { } made
            ? new Fitted(new Wall(week.Epoch, made), outcome.Late, [], Judge.Examine(week, made).Breaches)
            : new Fitted(null, outcome.Late, [.. outcome.Reasons.Select(r => TooTall.With(r, week, shop))], []);
    }

    /// <summary>
    /// True if the rows of the others can stay: what stood when it was written can fail since then only by time passing (work that
    /// nobody ticked) or by a tick at another moment than planned.
    /// </summary>
    private static bool StandStill(Week week, Guid placed)
    {
        var given = week.Fixed.Where(f => f.Step is not null).ToLookup(f => f.Step!, f => f.Start, StringComparer.Ordinal);
        return (week.Reference?.Steps ?? []).Where(r => StepKey.Parse(r.Step)?.Order != placed).All(r =>
            given.Contains(r.Step) ? given[r.Step].All(start => start is null || start == r.Start) : r.Start >= week.FreeFrom);
    }

    /// <summary>The wall with what can't stand any more pushed later, before anything is placed beside it.</summary>
    private Wall? Pushed(IReadOnlyList<Order> orders, IReadOnlyList<Tick> ticks, Wall? wall, Guid placed)
    {
        // What of the placed cake is done, begun or pinned keeps its hands, machines and shelf: then all are pushed together, and it is
        // placed anew after.
        var whole = WeekOf(orders, ticks, wall);
        var key = placed.ToString("N");
        if (wall is not null && whole.Fixed.Any(f => (f.Step ?? f.Hold)?.StartsWith(key, StringComparison.Ordinal) == true) && planner.Push(whole).Plan is { } all)
        {
            return new Wall(whole.Epoch, all);
        }

        var others = orders.Where(o => o.Id != placed).ToList();
        var week = WeekOf(others, ticks, wall);
        if (wall is null || planner.Push(week).Plan is not { } pushed)
        {
            return wall;
        }

        var mine = wall.From(week.Epoch).Steps.Where(r => StepKey.Parse(r.Step)?.Order == placed);
        return new Wall(week.Epoch, pushed with { Steps = [.. pushed.Steps, .. mine] });
    }

    /// <summary>The wall without that order, but for the places where it stood between what is done of it.</summary>
    private static Plan? Without(Week week, Guid order)
    {
        var done = week.Fixed.Select(f => f.Step).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var steps = week.Steps.Where(s => StepKey.Parse(s.Id)?.Order == order).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var holds = week.Holds.Where(h => steps.Contains(h.From) && !(done.Contains(h.From) && done.Contains(h.To))).Select(h => h.Id).ToHashSet(StringComparer.Ordinal);
        return week.Reference is not { } plan ? null : plan with
        {
            Steps = [.. plan.Steps.Where(r => !steps.Contains(r.Step))],
            Holds = [.. plan.Holds.Where(r => !holds.Contains(r.Hold))],
        };
    }
}

/// <summary>How a change fits.</summary>
/// <param name="Wall">The plan to hang up; null if nothing is planned any more, or if there is no plan.</param>
/// <param name="Late">Minutes late by order id.</param>
/// <param name="Reasons">Why there is no plan; empty if there is one.</param>
/// <param name="Breaches">Rules that the planner's plan breaks: always our bug.</param>
internal sealed record Fitted(Wall? Wall, IReadOnlyDictionary<string, int> Late, IReadOnlyList<Reason> Reasons, IReadOnlyList<Breach> Breaches)
{
    /// <summary>Why cakes other than the one in hand are in no plan; empty if all are.</summary>
    public IReadOnlyList<Reason> Stuck { get; init; } = [];

    /// <summary>True if the plan can hang on the wall.</summary>
    public bool IsPlan => Reasons.Count == 0 && Breaches.Count == 0;

    /// <summary>Throws if the planner broke a rule.</summary>
    public Fitted OrOurBug() => Breaches.Count == 0
        ? this
        : throw new InvalidOperationException($"The plan breaks {Breaches.Count} rules; first {Breaches[0].Rule} at {Breaches[0].Step}, minute {Breaches[0].Minute}.");
}
