namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>
/// Cakes for Saturday 24 October 2026, 14:00 (London, still summer time), and a plan with only the rows that a test writes by hand.
/// </summary>
internal sealed class SmallPlan(params Order[] orders)
{
    private readonly List<StepRow> rows = [];
    private readonly List<HoldRow> holds = [];

    public static LocalDate Saturday { get; } = new(2026, 10, 24);

    public IReadOnlyList<Order> Orders { get; } = orders;

    public List<Tick> Ticks { get; } = [];

    public List<RingAnswer> Answers { get; } = [];

    public Instant Now { get; init; } = At(12, 0);

    public (LocalTime From, LocalTime To)? Quiet { get; init; }

    public Week Week => Week.From(Orders, SampleBakery.Shop, Ticks, null, Now);

    public Wall Wall => new(Epoch, new Plan("small", new Dictionary<string, string>(), rows, holds, []));

    private Shop Shop => SampleBakery.Shop with { Settings = new ShopSettings(QuietFrom: Quiet?.From, QuietTo: Quiet?.To) };

    private Instant Epoch => WeekTime.Of(London, Now, SampleBakery.Shop.Settings.PlanDays).Epoch;

    public static Instant At(int hour, int minute) => (Saturday + new LocalTime(hour, minute)).InZoneStrictly(London).ToInstant();

    public static DateTimeZone London => DateTimeZoneProviders.Tzdb["Europe/London"];

    /// <summary>The cake of one tier of 8 in, numbered 405 and called Moss.</summary>
    public static Order Moss(int number = 1) =>
        Cakes.Good(number, 8) with { Number = 404 + number, Version = 1, Customer = new Customer("Moss", ""), Handover = new Handover(Way.Collect, Saturday + new LocalTime(14, 0), "", 0) };

    public static string Key(Order order, string operation, int tier = -1) =>
        new StepKey(order.Id, tier < 0 ? null : order.Tiers[tier].Id, operation, 1).ToString();

    public SmallPlan Row(string step, Instant start, string? person = null, string? machine = null, string? batch = null)
    {
        rows.RemoveAll(r => r.Step == step);
        rows.Add(new StepRow(step, (int)(start - Epoch).TotalMinutes, person is null ? [] : [person], machine, batch));
        return this;
    }

    public SmallPlan Stands(string from, string to, string store)
    {
        holds.Add(new HoldRow($"{from}>{to}", store));
        return this;
    }

    /// <summary>Boxed at 13:00, out of Fridge 1, level 3 when said, handed over at 14:00 by Wren.</summary>
    public SmallPlan LastHour(Order order, Instant leave) => this
        .Row(Key(order, "box"), At(13, 0), "petra")
        .Row(Key(order, "leavefridge"), leave, "wren")
        .Row(Key(order, "handover"), At(14, 0), "wren")
        .Stands(Key(order, "box"), Key(order, "leavefridge"), "f1l3")
        .Stands(Key(order, "leavefridge"), Key(order, "handover"), "bench");

    public IReadOnlyList<Ring> Rings() => Domain.Reminders.Rings.Of(Week, Wall, Orders, Shop, Ticks, Answers);

    public Ring Ring(RingKind kind) => Assert.Single(Rings(), r => r.Kind == kind);
}
