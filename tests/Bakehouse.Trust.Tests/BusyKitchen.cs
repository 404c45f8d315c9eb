namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Testing;
using Bakehouse.Web.Bell;
using NodaTime;

/// <summary>
/// A simulated shop in which people do what rings and little else, so that weeks pass quickly: the clock goes from one ring to the next,
/// most are answered at once, some later, by two at once or not at all; meanwhile the plan moves and the app is started again. A screen
/// draws what it was last told; the witness looks at it after every turn.
/// </summary>
internal sealed class BusyKitchen
{
    private static readonly HashSet<string> Asked = new(StringComparer.Ordinal) { "fill", "box" };
    private static readonly HashSet<Type> Quiet = [typeof(TickStep), typeof(AnswerRing), typeof(KeepDraft), typeof(RenewCalendar), typeof(StopCalendar), typeof(TrustClock), typeof(OpenSample)];
    private static readonly List<(int Weight, Type Command, Func<SimulatedShop, Screen, Command?> Do)> PlanMoves = [.. Deeds.All.Where(d => !Quiet.Contains(d.Command))];
    private readonly SimulatedShop shop;
    private readonly int cakes;
    private WhatRings drawn = null!;
    private Written written;

    public BusyKitchen(SimulatedShop shop)
    {
        (this.shop, cakes) = (shop, shop.OneOf([2, 3, 3, 6]));
        written = Written.Of(shop.Path, null);
        Connect();
    }

    public BellWitness Bell { get; } = new();

    /// <summary>Commands that met a fault of ours instead of an answer. The rings must not mind; the test tells them at its end.</summary>
    public List<string> Faults { get; } = [];

    private Instant Now => shop.Clock.GetCurrentInstant();

    private IReadOnlyList<Ring> Ringing => drawn.Ringing;

    /// <summary>To the next moment at which something happens, and what people do then. What is wrong with the rings, or null.</summary>
    public string? Turn()
    {
        shop.PassTo(Next());
        return Look() ?? StartAgain() ?? Answer() ?? After(shop.Happens(8) ? Deeds.Pick(PlanMoves, shop, At(shop.OneOf(shop.Screens))) : null)
            ?? Overdue().Select(After).FirstOrDefault(wrong => wrong is not null) ?? After(Gone()) ?? After(NewCake());
    }

    /// <summary>The bell looks, as it does each second and after each change; the witness looks at the screen.</summary>
    private string? Look()
    {
        shop.Bell.Look();
        written = Written.Of(shop.Path, written);
        return Bell.Look(written, shop.Book.State.Week, Now, Ringing);
    }

    private string? After(Command? command)
    {
        if (command is null)
        {
            return null;
        }

        Ask(command);
        return Look();
    }

    private Answer? Ask(Command command)
    {
        try
        {
            return shop.Ask(command);
        }
        catch (InvalidOperationException fault)
        {
            Faults.Add($"{Now}: {command}: {fault.Message}");
            return null;
        }
    }

    private void Connect()
    {
        shop.Bell.Changed += state => drawn = state;
        drawn = shop.Bell.State;
    }

    /// <summary>The screen that comes back shows what it showed before.</summary>
    private string? StartAgain()
    {
        if (!shop.Happens(2))
        {
            return null;
        }

        var before = Ringing.Select(r => (r.Id, r.Due)).ToList();
        shop.StartAgain();
        Connect();
        return Ringing.Select(r => (r.Id, r.Due)).SequenceEqual(before) ? Look() : "After the start other rings stand than before.";
    }

    /// <summary>To the next ring, or work that may not be guessed; now and then a second before it. At most to the next half day.</summary>
    private Instant Next()
    {
        var (week, wall) = (shop.Book.State.Week, written.Wall);
        var next = DueSteps.All(week, wall, written.Planned, written.Ticked).Select(s => s.Due).Concat(Works().Select(w => w.End))
            .Concat(written.Answers.Select(a => a.Until).OfType<Instant>()).Where(t => t > Now).Append(Now + Duration.FromHours(12)).Min();
        var before = next - Duration.FromSeconds(1);
        return before > Now && shop.Happens(15) ? before : next;
    }

    /// <summary>Work on the wall that nobody ticked and that the plan does not assume, with its end.</summary>
    private IEnumerable<(string Step, string Name, Instant End)> Works()
    {
        var steps = (shop.Book.State.Week?.Steps ?? []).ToDictionary(s => s.Id, StringComparer.Ordinal);
        return (written.Wall?.Plan.Steps ?? []).Where(r => steps.ContainsKey(r.Step) && !written.Ticked.Contains(r.Step))
            .Select(r => (r.Step, steps[r.Step].Name, written.Wall!.Epoch + Duration.FromMinutes(r.Start + steps[r.Step].Minutes)));
    }

    /// <summary>Most of what rings is answered: done, later or can't; some by two people, some sent twice.</summary>
    private string? Answer()
    {
        foreach (var ring in Ringing.Where(_ => shop.Happens(80)).ToList())
        {
            if (shop.Happens(6) && shop.Book.State.Orders.First(o => ring.Step.StartsWith($"{o.Id:N}", StringComparison.Ordinal)) is var order)
            {
                Ask(new MoveStage(shop.NewId(), "ines", "phone", order.Id, order.Version, Stage.Cancelled)); // nobody wants the cake any more
                return Look();
            }

            var kind = shop.OneOf([.. Enumerable.Repeat(RingAnswerKind.Done, 8), RingAnswerKind.Later, RingAnswerKind.Cannot]);
            var command = Say(ring, kind);
            var heard = Ask(command);
            if (Look() is { } wrong)
            {
                return wrong;
            }

            if (shop.Happens(10))
            {
                Ask(command); // the same tap again hears the same: the witness of the shop looks
            }

            if (heard?.Kind == AnswerKind.Accepted && shop.Happens(10) && Ask(Say(ring, kind))?.Kind == AnswerKind.Accepted)
            {
                return $"{ring.Id} was answered {kind} by two.";
            }
        }

        return Look();
    }

    private AnswerRing Say(Ring ring, RingAnswerKind kind) => shop.OneOf(shop.Screens) is var at
        ? new AnswerRing(shop.NewId(), at.Person, at.Device, ring.Id, kind, "too soft")
        : throw new InvalidOperationException("No screen.");

    /// <summary>Ticks of what should be done by now; what rings is ticked so only long after.</summary>
    private IEnumerable<Command> Overdue() => Works()
        .Where(w => (Asked.Contains(w.Name) && w.End <= Now && shop.Happens(85)) || (Assumed.IsAsked(w.Name) && w.End <= Now - Duration.FromMinutes(90) && shop.Happens(50)))
        .OrderBy(w => w.End).ToList()
        .Select(w => (Command)new TickStep(shop.NewId(), "petra", "tablet", w.Step, shop.OneOf(shop.Book.State.Shop!.People).Id));

    /// <summary>Nobody waits for a cake half a day beyond its hour.</summary>
    private MoveStage? Gone() => shop.Book.State.Orders.FirstOrDefault(o => Stages.IsPlanned(o.Stage) && Handover(o) + Duration.FromHours(12) < Now) is { } order
        ? new MoveStage(shop.NewId(), "ines", "phone", order.Id, order.Version, Stage.Cancelled)
        : null;

    private WriteOrder? NewCake() => written.Planned.Count >= cakes ? null : new WriteOrder(shop.NewId(), "ines", "phone", Deeds.NewOrder(shop, Stage.Booked));

    private static Instant Handover(Order order) => order.Handover.At.InZoneLeniently(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();

    private Screen At(Screen screen)
    {
        screen.Seen = shop.Book.State;
        return screen;
    }
}
