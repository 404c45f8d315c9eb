namespace Bakehouse.Web.TheWeek;

using System.Globalization;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;
using Standing = Bakehouse.Web.Shell.Standing;

/// <summary>Joins orders, week, plan and ticks into facts. Rows that the week does not know are left out.</summary>
internal sealed class FactsReader(BookState state, Week week, Plan plan)
{
    private readonly Shop shop = state.Shop!;
    private readonly Dictionary<string, StepRow> rows = Once(plan.Steps, r => r.Step);
    private readonly Dictionary<string, HoldRow> stands = Once(plan.Holds, r => r.Hold);
    private readonly Dictionary<string, Step> steps = Once(week.Steps, s => s.Id);
    private readonly Dictionary<string, Store> stores = Once(week.Stores, s => s.Id);
    private readonly Dictionary<string, Order> orders = Once(state.Orders, o => o.Id.ToString("N"));
    private readonly HashSet<string> pinned = [.. week.Fixed.Where(f => f is { Why: "pinned", Step: not null }).Select(f => f.Step!)];
    private readonly Dictionary<string, Tick> done = Once(state.Ticks, t => t.Step);

    public PlanFacts Read(Instant now) => new(
        now,
        shop,
        [.. week.Orders.Select(o => Cake(o, now)).OfType<CakeFacts>().OrderBy(c => c.Flag).ThenBy(c => c.Number, StringComparer.Ordinal)],
        [.. plan.Cleans.Select(Clean)],
        [.. week.People.Select(p => new PersonFacts(p.Id, p.Name, [.. p.Shifts.Select(s => new Interval(At(s.From), At(s.To)))]))],
        [.. week.Machines.Select(Named)],
        [.. week.Stores.Select(s => new StoreFacts(s.Id, StoreName(s), s.Kind, s.Places))])
    {
        Chores = [.. Chores()],
    };

    private static Dictionary<string, T> Once<T>(IEnumerable<T> all, Func<T, string> key)
    {
        var found = new Dictionary<string, T>(StringComparer.Ordinal);
        foreach (var one in all)
        {
            found.TryAdd(key(one), one);
        }

        return found;
    }

    private IEnumerable<ChoreFacts> Chores() =>
        from chore in state.Chores
        from span in chore.In(WeekTime.Of(week, DateTimeZoneProviders.Tzdb[week.Zone]))
        select new ChoreFacts(chore.Name, At(span.From), At(span.To), chore.People, chore.Machines, chore.Shelves);

    private Instant At(int minute) => week.Epoch + Duration.FromMinutes(minute);

    private bool Present(Taken? taken) =>
        taken is null || (plan.Choices.TryGetValue(taken.Choice, out var option) && option == taken.Option);

    private CakeFacts? Cake(WeekOrder promise, Instant now)
    {
        if (Standing.Of(week, promise, plan.Steps, now) is not { } standing)
        {
            return null;
        }

        var order = orders.GetValueOrDefault(promise.Id);
        var own = week.Steps.Where(s => s.Order == promise.Id && rows.ContainsKey(s.Id)).Select(s => Step(s, order));
        return new CakeFacts(
            promise.Id,
            order,
            order?.Number.ToString(CultureInfo.InvariantCulture) ?? promise.Id,
            order?.Customer.Name ?? promise.Name,
            order is null ? "" : Build(order),
            [.. own.OrderBy(s => s.From).ThenBy(s => s.Id, StringComparer.Ordinal)],
            [.. Waits(promise.Id, order)],
            promise.Out,
            standing,
            promise.EdgeIsEnd ? At(promise.To) : null);
    }

    private string Build(Order order) => Words.Of(shop).Whole(order.Tiers);

    private StepFacts Step(Step step, Order? order)
    {
        var row = rows[step.Id];
        var operation = StepKey.Parse(step.Id)?.Operation ?? step.Name;
        var verb = Method.Operations.FirstOrDefault(o => o.Id == operation)?.Verb ?? Plain(step.Name.Length == 0 ? step.Id : step.Name);
        var tier = Tier(step, order);
        var tick = done.GetValueOrDefault(step.Id);
        // A done step asks for nobody any more in the week; who did it stands in the tick.
        return new StepFacts(
            step.Id, step.Order, operation, verb, tier.Length == 0 ? verb : $"{verb}, {tier}", At(row.Start), At(row.Start + step.Minutes),
            row.People.Count == 0 && tick is { Person.Length: > 0 } && IsHands(operation, step) ? [tick.Person] : row.People,
            row.Machine, row.Batch, LookOf(operation, step), tick is not null, pinned.Contains(step.Id));
    }

    private static bool IsHands(string operation, Step step) => operation != "bake" && step.Bake is null;

    private static StepLook LookOf(string operation, Step step) =>
        step.Bake is not null || operation == "bake" ? StepLook.Oven
        : step.Mix is not null || operation is "mix" or "buttercream" ? StepLook.Mixer
        : StepLook.Hands;

    private string Tier(Step step, Order? order)
    {
        if (StepKey.Parse(step.Id)?.Tier is not null && order is not null && StepWords.TiersOf(step.Id, order) is [var tier, ..])
        {
            return Words.Of(shop).Tier(tier);
        }

        return order is null && step.Tier.Length > 0 ? $"tier {step.Tier}" : "";
    }

    private IEnumerable<WaitFacts> Waits(string id, Order? order) =>
        from hold in Holds(id, order)
        where Present(hold.If) && rows.ContainsKey(hold.From) && rows.ContainsKey(hold.To) && steps.ContainsKey(hold.From)
        let store = stores.GetValueOrDefault(stands.GetValueOrDefault(hold.Id)?.Store ?? hold.In[0].Store)
        where store is not null
        let way = hold.In.FirstOrDefault(i => i.Store == store.Id)
        let start = rows[hold.From].Start + steps[hold.From].Minutes
        select new WaitFacts(
            hold.Id, id, hold.From, hold.To, store.Id, store.Kind, At(start), At(rows[hold.To].Start), hold.Places,
            way?.Least ?? 0, way?.Most ?? int.MaxValue);

    /// <summary>A wait that is over is no part of the problem any more, but it is part of what happened: the method still names it.</summary>
    private IEnumerable<Hold> Holds(string id, Order? order)
    {
        var open = week.Holds.Where(h => steps[h.From].Order == id).ToList();
        var known = open.Select(h => h.Id).ToHashSet();
        var over = order is null ? [] : CakeSteps.Of(order, shop).Holds.Where(h => !known.Contains(h.Id) && done.ContainsKey(h.From) && done.ContainsKey(h.To));
        return open.Concat(over);
    }

    private StepFacts Clean(CleanRow row)
    {
        var minutes = week.Machines.FirstOrDefault(m => m.Id == row.Machine)?.Clean?.Minutes ?? 0;
        return new StepFacts(
            $"clean.{row.Machine}.{row.Start}", "", "clean", "Clean down", $"Clean down {MachineName(row.Machine)}", At(row.Start), At(row.Start + minutes),
            row.People, row.Machine, null, StepLook.Clean, false);
    }

    private MachineFacts Named(Machine machine) => new(machine.Id, MachineName(machine.Id), machine.Kind == MachineKind.Oven);

    private string MachineName(string id) =>
        shop.Ovens.FirstOrDefault(o => o.Id == id)?.Name ?? shop.Bowls.FirstOrDefault(b => b.Id == id)?.Name ?? Plain(id);

    private string StoreName(Store store) => shop.Shelves.FirstOrDefault(s => s.Id == store.Id) is { } shelf
        ? $"{shelf.Unit}, level {shelf.Level}"
        : store.Kind switch { "rack" => "Rack", "bench" => "Bench", "cool" => "Dry room", "van" => "Van", _ => Plain(store.Id) };

    private static string Plain(string id) => id.Length == 0 ? id : char.ToUpperInvariant(id[0]) + id[1..].Replace('-', ' ').Replace('_', ' ');
}
