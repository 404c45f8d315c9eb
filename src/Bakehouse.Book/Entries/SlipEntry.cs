namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>Writes what went wrong and mends the plan around it.</summary>
internal static class SlipEntry
{
    public static Outcome Decide(TellSlip command, Desk desk)
    {
        var slip = command.Slip with { Id = command.Id, Told = desk.Now, Person = command.Person };
        if (Refusal(slip.Kind, command, desk) is { } refused)
        {
            return refused;
        }

        var week = desk.State.Week! with { Now = WeekTime.Of(desk.State.Week!, DateTimeZoneProviders.Tzdb[desk.Shop.Zone]).Minute(desk.Now) };
        var problems = new SlipChecks(week, desk.Shop, desk.Now).Problems(slip);
        return problems.Count > 0 ? Refused(Subject(command), problems) : slip.Kind switch
        {
            SlipKind.Pickup => Move(command, desk, slip),
            SlipKind.Anyway => Begin(command, desk, slip),
            SlipKind.Behind => Write(command, desk, slip with { From = Began(slip, desk) }),
            SlipKind.Cracked when slip.Spare => SparesEntry.Take(slip, desk, taken => Write(command, desk, taken)),
            _ => Write(command, desk, slip),
        };
    }

    /// <summary>A pickup is moved by those who write orders, a wait is shortened by the owner.</summary>
    public static Outcome? Refusal(SlipKind kind, Command command, Desk desk)
    {
        var role = desk.Shop.PersonOf(command.Person)?.Role;
        return kind switch
        {
            SlipKind.Pickup when !EntryRights.May(typeof(WriteOrder), role) => Outcome.NotAllowed("The agreed hour is moved by whoever takes orders. Ask them."),
            SlipKind.Anyway when role != Role.Owner => Outcome.NotAllowed("A wait is the owner’s to shorten. Ask the owner."),
            _ => null,
        };
    }

    /// <summary>The rows of the wall that this moved, and the slip.</summary>
    public static void Row(BookContext book, Command command, Desk desk, Slip slip, Wall? after) => book.Slips.Add(new SlipRow
    {
        Id = slip.Id,
        Kind = slip.Kind.ToString(),
        Format = Document.Format,
        Document = Document.Write(slip),
        Before = desk.State.Wall is { } before ? Document.Write(after is null ? before : WallMoves.Before(before, after)) : null,
        Person = command.Person,
        Device = command.Device,
        Written = desk.Now,
    });

    /// <summary>What it does to the plan; null if there is none before or after.</summary>
    public static Repaired? Repair(Desk desk, IReadOnlyList<Order> orders, ByHand hand, Wall? after) =>
        desk.State is { Week: { } week, Wall: { } before } && after is not null
            ? Repaired.Of(week, before, Week.From(orders, desk.Shop, desk.State.Ticks, after, desk.Now, hand), after)
            : null;

    private static Outcome Write(TellSlip command, Desk desk, Slip slip)
    {
        var hand = With(desk, slip);
        var followed = Follow.Mended(desk, hand);
        return Outcome.Accepted(Subject(command), new Change(followed.Wall, book => Row(book, command, desk, slip, followed.Wall)), late: followed.Late, message: followed.Message)
            with { Repair = Repair(desk, desk.State.Orders, hand, followed.Wall) };
    }

    /// <summary>The agreed hour is another one: the order gets a version, the plan is mended.</summary>
    private static Outcome Move(TellSlip command, Desk desk, Slip slip)
    {
        var before = desk.Order(Guid.ParseExact(slip.About[0], "N"))!;
        var zone = DateTimeZoneProviders.Tzdb[desk.Shop.Zone];
        var told = slip with { From = before.Handover.At.InZoneLeniently(zone).ToInstant() };
        var after = before with { Version = before.Version + 1, Handover = before.Handover with { At = slip.Until!.Value.InZone(zone).LocalDateTime } };
        return Pickup(command, Subject(command), desk, before, after, With(desk, told), null, (book, wall) => Row(book, command, desk, told, wall));
    }

    /// <summary>Writes an order for another hour; the same way there and back.</summary>
    /// <param name="back">The plan to hang, or null to mend the one that hangs.</param>
    public static Outcome Pickup(Command command, string subject, Desk desk, Order before, Order after, ByHand hand, Wall? back, Action<BookContext, Wall?> rows)
    {
        var owner = desk.Shop.PersonOf(command.Person)?.Role == Role.Owner;
        Problem?[] problems = [.. OrderChecks.NewProblems(after, before, desk.Shop, desk.Now, owner), DayCaps.Against(after, before, desk.State.Orders, desk.Shop, owner)];
        if (problems.OfType<Problem>().ToList() is { Count: > 0 } wrong)
        {
            return Refused(subject, wrong);
        }

        var orders = desk.OrdersWith(after);
        var fitted = back is not null
            ? new Fitted(back, new Dictionary<string, int>(), [], [])
            : new Fitting(desk.Planner, desk.Shop, desk.Now, hand).Mend(orders, desk.State.Ticks, desk.State.Wall).OrOurBug();
        if (fitted is not { IsPlan: true, Stuck.Count: 0 })
        {
            return Refused(subject, [.. fitted.Reasons.Concat(fitted.Stuck).Select(r => new Problem("plan", desk.DayAndClock(desk.Now), r.Sentence, r.Try))]);
        }

        void Rows(BookContext book)
        {
            book.Orders.Add(OrderRow.Of(after, command.Person, command.Device, desk.Now));
            rows(book, fitted.Wall);
        }

        return Outcome.Accepted(subject, new Change(fitted.Wall, Rows), after, fitted.Late, new PlanWords(desk).Lost(fitted.Wall)) with { Repair = Repair(desk, orders, hand, fitted.Wall) };
    }

    /// <summary>The owner begins a step now. Only waits give way; people, machines, allergen stops and food limits stand.</summary>
    private static Outcome Begin(TellSlip command, Desk desk, Slip slip)
    {
        var (step, week) = (slip.About[0], desk.State.Week!);
        var time = WeekTime.Of(week, DateTimeZoneProviders.Tzdb[desk.Shop.Zone]);
        var at = time.At(WeekTime.Up(time.Minute(desk.Now)));
        if (desk.State.Wall is not { } wall || wall.Plan.Steps.FirstOrDefault(r => r.Step == step) is not { } row)
        {
            return Refused(Subject(command), [new Problem("about", step, "That step is in no plan.", "Look at the list again.")]);
        }

        if (Stops(step, desk) is { Count: > 0 } stops)
        {
            return Refused(Subject(command), stops);
        }

        var begun = slip with { From = at };
        var hand = With(desk, begun);
        // Whoever has it in the plan; where that can't be, the owner's own hands.
        IReadOnlyList<string>[] hands = row.People.Count == 1 ? [row.People, [command.Person]] : [row.People];
        var fitted = hands.Select(who => new Fitting(desk.Planner, desk.Shop, desk.Now, hand).Begin(desk.State.Orders, desk.State.Ticks, wall, new Pin(step, at, who, row.Machine))).FirstOrDefault(f => f.IsPlan);
        return fitted is not null
            ? Outcome.Accepted(Subject(command), new Change(fitted.Wall, book => Row(book, command, desk, begun, fitted.Wall)), late: fitted.Late, message: new PlanWords(desk).Lost(fitted.Wall))
                with { Repair = Repair(desk, desk.State.Orders, hand, fitted.Wall) }
            : Refused(Subject(command), [new Problem("about", new PlanWords(desk).Name(step), $"{new PlanWords(desk).Name(step)} can’t begin at {desk.Clock(at)}: only a wait gives way to your word. Hands, machines, allergen stops and food limits stand.", "Let it wait, or free who and what it needs.")]);
    }

    /// <summary>What must be answered about a cake before it is made on: no word of anybody goes over it.</summary>
    private static IReadOnlyList<Problem> Stops(string step, Desk desk) =>
        StepKey.Parse(step) is { } key && BeforeWork.IsMaking(key.Operation) && desk.Order(key.Order) is { } order ? desk.State.StopsOf(order) : [];

    private static Instant? Began(Slip slip, Desk desk) => desk.State.Wall is { } wall && wall.Plan.Steps.FirstOrDefault(r => r.Step == slip.About[0]) is { } row
        ? wall.Epoch + Duration.FromMinutes(row.Start)
        : slip.From;

    private static ByHand With(Desk desk, Slip slip) => desk.State.Hand with { Slips = [.. desk.State.Slips, slip] };

    private static Outcome Refused(string subject, IReadOnlyList<Problem> problems) =>
        Outcome.Refused(subject, problems.Count == 1 ? problems[0].Sentence : $"{problems.Count.ToString(CultureInfo.InvariantCulture)} things need a look.", problems);

    private static string Subject(Command command) => command.Id.ToString("N", CultureInfo.InvariantCulture);
}
