namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Shell;
using NodaTime;
using Standing = Bakehouse.Web.Shell.Standing;

/// <summary>Reads the kitchen screen from the book: whose step is next, what follows, what rings.</summary>
/// <param name="person">Id of the one person that a screen is fixed to, or null for everybody.</param>
public sealed class KitchenReader(WhatRings state, Shop shop, string? person = null)
{
    private const int BandsThatFit = 2;
    private const int ThenThatFit = 8;
    private static readonly Duration Soon = Duration.FromMinutes(60);
    private readonly Words words = Words.Of(shop);
    private readonly Dictionary<string, Order> orders = state.Book.Orders.ToDictionary(o => o.Id.ToString("N"));

    private LocalDateTime Now => words.Local(state.Now);

    /// <summary>The screen.</summary>
    public KitchenView Read()
    {
        var list = state.Book is { Week: { } week, Wall: { } wall } ? WorkList.Of(week, wall, state.Book.Ticks, state.Now, state.Book.NotDone) : [];
        var shown = Shown(list);
        var rings = new RingReader(state, shop, orders);
        return new KitchenView(shop, Now, [.. shown.Select(Band)], [.. Then(list, shown)], [.. state.Answered.Select(Told)], [.. state.Ringing.Take(RingView.Most).Select(rings.Read)], IsNight())
        {
            IsOnePersons = person is not null,
            MoreRings = Math.Max(0, state.Ringing.Count - RingView.Most),
        };
    }

    /// <summary>
    /// The rest of the day by blocks: of one person all of it; of everybody what has an hour, and else the next stint of each block.
    /// </summary>
    private IEnumerable<ThenView> Then(IReadOnlyList<PersonWork> list, List<PersonWork> shown)
    {
        var blocks = list.Where(p => person is null || p.Person == person)
            .SelectMany(p => (p with { Stints = [.. p.Stints.Skip(shown.Contains(p) ? 1 : 0)] }).Blocks(IsToday).Select(b => (p.Person, Block: b)));
        return person is not null
            ? Cleans().Select(c => new ThenView("", "Clean", $"{words.Time(words.Local(c.Start).TimeOfDay)} {c.Words}"))
                .Concat(blocks.Select(x => new ThenView("", BlockWords.Of(x.Block.Kind), string.Join(", ", x.Block.Stints.Select(s => $"{Timed(s)} {Big(s)}".Trim())))))
            : Earliest(blocks.SelectMany(x => Nearest(x.Block).Select(n => (n.Stint.Start, Key: n.Stint.Steps[0], Then: new ThenView(Timed(n.Stint), Name(x.Person), Big(n.Stint) + (n.More > 0 ? $" and {n.More} more" : "")))))
                .DistinctBy(x => x.Key, StringComparer.Ordinal).Select(x => (x.Start, x.Then)));
    }

    /// <summary>Of everybody's work what fits the screen; a clean-down of the next hour comes first, for a strip that is cut off begins with it.</summary>
    private IEnumerable<ThenView> Earliest(IEnumerable<(Instant Start, ThenView Then)> work)
    {
        var cleans = Cleans().ToLookup(c => c.Start - state.Now <= Soon, c => (c.Start, Then: new ThenView(words.Time(words.Local(c.Start).TimeOfDay), Name(c.Person), c.Words)));
        var rest = work.Concat(cleans[false]).OrderBy(x => x.Start).Take(Math.Max(0, ThenThatFit - cleans[true].Count()));
        return cleans[true].Concat(rest).Select(x => x.Then);
    }

    /// <summary>Clean-downs of today, on one person's screen only theirs.</summary>
    private IEnumerable<CleanDownView> Cleans() => CleanDowns.Of(state.Book, shop, state.Now)
        .Where(c => words.Local(c.Start).Date <= Now.Date && (person is null || c.Person == person));

    private static IEnumerable<(Stint Stint, int More)> Nearest(Block block)
    {
        var free = block.Stints.Where(s => !s.IsTimed).ToList();
        return block.Stints.Where(s => s.IsTimed).Select(s => (s, 0)).Concat(free.Take(1).Select(s => (s, free.Count - 1)));
    }

    private bool IsToday(Stint stint) => words.Local(stint.Start).Date <= Now.Date;

    private string Timed(Stint stint) => stint.IsTimed ? words.Time(words.Local(stint.Start).TimeOfDay) : "";

    /// <summary>Those whose step is next, and those who ticked just now so that Undo stays where it was; in the shop's order.</summary>
    private List<PersonWork> Shown(IReadOnlyList<PersonWork> list)
    {
        var wanted = person is null
            ? list.Where(p => p.AtHand is not null || JustTicked(p.Person).Any())
                .OrderBy(p => JustTicked(p.Person).Any() ? 0 : 1)
                .ThenBy(p => p.AtHand?.Start ?? Instant.MaxValue)
                .Take(BandsThatFit).Select(p => p.Person).ToHashSet()
            : [person];
        return [.. list.Where(p => wanted.Contains(p.Person))];
    }

    private BandView Band(PersonWork list)
    {
        var who = shop.PersonOf(list.Person)!;
        var work = list.AtHand;
        if (work is null || work.Start - state.Now > Soon)
        {
            return Quiet(who, work);
        }

        var order = OrderOf(work.Steps[0]);
        var tiers = TiersOf(work.Steps);
        return new BandView(
            who, When(work), Big(work), Second(work), work.Steps, work.Start <= state.Now, false,
            DangerWords.Band(state.Book, work.Steps), DangerWords.Lift(work.Operation, order, shop), order.Number, PictureView.Of(work.Operation, tiers), Strip(who))
        {
            Card = work.Works.First(w => w.Operation == work.Operation).Steps[0],
            Doubt = Doubt(work),
            Late = Late(work),
        };
    }

    /// <summary>What nobody ticked before a step that may not be guessed, asked once in one line.</summary>
    private DoubtView? Doubt(Stint stint) => stint.Doubts.Count == 0 ? null : new DoubtView(
        string.Join(", ", stint.Doubts.GroupBy(s => StepKey.Parse(s)!.Value.Operation).Select(g => StepWords.Big(g.Key, TiersOf(g), shop))), stint.Doubts);

    private BandView Quiet(Person who, Stint? next)
    {
        var (text, second) = (NothingFor(who, next), next is null ? "No step is planned." : $"{At(next.Start)} {Big(next)}, {Second(next)}");
        // Who begins early ticks early; but what lets a cake go is not offered an hour before its time.
        var early = next is not null && words.Local(next.Start).Date == Now.Date && !BeforeWork.Leaves(next.Operation);
        return new BandView(who, "", text, second, early ? next!.Steps : [], false, true, null, null, null, null, Strip(who)) { Late = next is null ? null : Late(next) };
    }

    /// <summary>The latest of its cakes, by plan or by the clock.</summary>
    private string? Late(Stint work) => work.Steps.Select(OrderOf).Distinct()
        .Select(o => (Order: o, Standing: Standing.Of(state.Book, o, state.Now)))
        .Where(x => x.Standing is { Late: > 0 })
        .OrderByDescending(x => x.Standing!.Late)
        .Select(x => $"{x.Order.Number} {x.Standing!.Word}").FirstOrDefault();

    private string NothingFor(Person who, Stint? next) =>
        next is not null && words.Local(next.Start).Date == Now.Date ? $"Nothing for {who.Name} until {At(next.Start)}"
        : WorkedToday(who) ? $"Day done, {who.Name}"
        : next is null ? $"Nothing for {who.Name}"
        : $"Nothing for {who.Name} until {At(next.Start)}";

    private bool WorkedToday(Person who) => state.Book.Ticks.Any(t => t.Person == who.Id && words.Local(t.Done).Date == Now.Date);

    private string When(Stint work) => state.Now switch
    {
        var now when work.IsAssumed => $"until {At(work.End)}",
        var now when now < work.Start => $"at {At(work.Start)}, in {Words.Minutes((long)Math.Ceiling((work.Start - now).TotalMinutes))}",
        var now when now < work.End => $"now, {Words.Minutes((long)Math.Ceiling((work.End - now).TotalMinutes))} left",
        var now when work.Start == work.End => $"due {At(work.Start)}, {Words.Late((long)(now - work.End).TotalMinutes)} ago",
        var now when now - work.End < Duration.FromMinutes(1) => "now",
        var now => $"now, {Words.Late((long)(now - work.End).TotalMinutes)} over",
    };

    private string Big(Stint work) => work.Operation == "bake" && Oven(work) is { } oven
        ? $"{oven} out"
        : StepWords.Big(work.Operation, TiersOf(work.Steps), shop);

    private string? Oven(Stint work) => shop.Ovens.FirstOrDefault(o => o.Id == work.Works[0].Machine)?.Name is { } name && name.Length + 4 <= StepWords.Longest ? name : null;

    private string Second(Stint work)
    {
        var orderNames = string.Join(", ", work.Steps.Select(OrderOf).Distinct().Select(o => $"{o.Number} {o.Customer.Name}"));
        var order = OrderOf(work.Steps[0]);
        var steps = state.Book.Week!.Steps.Where(s => s.Name == work.Operation && work.Steps.Contains(s.Id)).ToList();
        var detail = work.Operation switch
        {
            "bake" => $"{StepWords.Size(TiersOf(work.Steps), shop)}, {StepWords.TiersOf(work.Steps[0], order)[0].Sponge}",
            "coat" => DangerWords.Coat(work.Steps, order, shop) ?? StepWords.Detail(steps, TiersOf(work.Steps), order),
            "box" when StepWords.Detail(steps, TiersOf(work.Steps), order) is { Length: > 0 } boxes => $"{boxes}, for {words.DayAndTime(order.Handover.At)}",
            "handover" or "leavefridge" or "deliver" when order is { Stack.Count: > 0, Beside.Count: > 0 } => $"{StepWords.Size(order.Tiers, shop)}, for {words.DayAndTime(order.Handover.At)}",
            "box" or "handover" or "leavefridge" or "deliver" => $"For {words.DayAndTime(order.Handover.At)}",
            _ => StepWords.Detail(steps, TiersOf(work.Steps), order),
        };
        var others = work.Works[0].With;
        var with = others.Count > 0 ? $", with {string.Join(" and ", others.Select(Name))}" : "";
        var first = work.First.Count > 0 ? $". First: {string.Join(", ", work.First.Select(o => Method.OperationOf(o).Verb.ToLowerInvariant()))}" : "";
        return $"{orderNames}{(detail.Length > 0 ? ". " + detail : "")}{first}{with}";
    }

    private StripView? Strip(Person who)
    {
        var ticks = JustTicked(who.Id).OrderByDescending(t => t.Done).ToList();
        if (ticks.Count == 0 || StepKey.Parse(ticks[0].Step) is not { } last || !orders.ContainsKey(last.Order.ToString("N")))
        {
            return null;
        }

        var together = ticks.Where(t => StepKey.Parse(t.Step) is { } key && Stint.IsOneTap(key.Operation, last.Operation) && orders.ContainsKey(key.Order.ToString("N")))
            .Select(t => t.Step).ToList();
        var said = StepWords.Big(last.Operation, TiersOf(together), shop);
        return new StripView($"{said}, done {words.Time(words.Local(ticks[0].Done).TimeOfDay)}, {who.Name}.", together);
    }

    private IEnumerable<Tick> JustTicked(string who) => state.Ticked.Where(t => t.Person == who);

    private string Told(RingAnswer answer)
    {
        var time = words.Time(words.Local(answer.At).TimeOfDay);
        return answer.Kind switch
        {
            RingAnswerKind.Done => $"Done by {Name(answer.Person)} {time}",
            RingAnswerKind.Later => $"{Name(answer.Person)}: ten minutes more, until {words.Time(words.Local(answer.Until ?? answer.At).TimeOfDay)}",
            RingAnswerKind.Cannot => $"{Name(answer.Person)} can’t: {answer.Reason}. {time}",
            _ => throw new InvalidOperationException($"Unknown answer {answer.Kind}."),
        };
    }

    private string At(Instant at) => words.Local(at) is var local && local.Date == Now.Date ? words.Time(local.TimeOfDay) : words.DayAndTime(local);

    private bool IsNight() => Now.Hour < shop.Settings.DayStarts || Now.Hour >= shop.Settings.DayEnds;

    private string Name(string id) => shop.PersonOf(id)?.Name ?? id;

    private Order OrderOf(string step) => orders[StepKey.Parse(step)!.Value.Order.ToString("N")];

    private IReadOnlyList<CakeTier> TiersOf(IEnumerable<string> steps) =>
        [.. StepWords.Together(steps.SelectMany(s => StepWords.TiersOf(s, OrderOf(s)))).OrderByDescending(t => t.Diameter)];
}
