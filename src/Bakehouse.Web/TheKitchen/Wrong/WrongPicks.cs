namespace Bakehouse.Web.TheKitchen.Wrong;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>What a slip of each kind can be about now, the likeliest first.</summary>
public sealed class WrongPicks
{
    private const int Most = 12;

    private readonly BookState state;
    private readonly Shop shop;
    private readonly WrongWords said;
    private readonly IReadOnlyList<StepRow> rows;
    private readonly Dictionary<string, Step> steps;
    private readonly HashSet<string> done;
    private readonly HashSet<string> past;
    private readonly ILookup<string, Hold> after;
    private readonly ILookup<string, Hold> before;
    private readonly int minute;
    private readonly Instant epoch;

    /// <param name="said">How things are called.</param>
    public WrongPicks(BookState state, Shop shop, Instant now, WrongWords said)
    {
        (this.state, this.shop, this.said) = (state, shop, said);
        var week = state.Week!;
        epoch = week.Epoch;
        minute = (int)(now - epoch).TotalMinutes;
        rows = state.Wall?.From(epoch).Steps ?? [];
        steps = week.Steps.ToDictionary(s => s.Id);
        done = [.. week.Fixed.Where(f => f.Why == "done").Select(f => f.Step!)];
        past = [.. done, .. week.Fixed.Where(f => f.Why == Assumed.Why).Select(f => f.Step!)];
        (after, before) = (week.Holds.ToLookup(h => h.From), week.Holds.ToLookup(h => h.To));
    }

    /// <summary>What can be picked, with a second line and what is told about.</summary>
    public IEnumerable<(string Words, string Second, string About)> Of(SlipKind kind) => kind switch
    {
        SlipKind.Cracked => Begun().Where(r => Is(r, "bake") && !InTheCake(r.Step) && !IsBakedAgain(r.Step)).Select(r => (said.Layers(r.Step), $"{said.Cake(r.Step)}, in the oven {At(r)}", r.Step)).Take(Most),
        SlipKind.NotSet => Begun().Where(r => Slip.Sets.Contains(steps[r.Step].Name) && after[r.Step].Any(h => !Places.IsWhenever(h) && !done.Contains(h.To))).Select(Named).Take(Most),
        SlipKind.Behind => Begun().Where(r => !done.Contains(r.Step) && r.People.Count > 0).Select(Named).Take(Most),
        SlipKind.Anyway => Waiting().Select(Named).Take(Most),
        SlipKind.RanOut => Families(),
        SlipKind.Out => Equipment(),
        SlipKind.Away => shop.People.Select(p => (p.Name, "", p.Id)),
        SlipKind.Pickup => state.Orders.Where(o => state.Week!.Orders.Any(w => w.Id == o.Id.ToString("N"))).OrderBy(o => o.Handover.At).Select(o => (WrongWords.Cake(o), When(o), o.Id.ToString("N"))).Take(2 * Most),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    private IEnumerable<StepRow> Begun() => rows.Where(r => steps.ContainsKey(r.Step) && r.Start <= minute).OrderByDescending(r => r.Start);

    /// <summary>Still to come, with everything before it done: only a wait or somebody's hour holds it.</summary>
    private IEnumerable<StepRow> Waiting() => rows
        .Where(r => steps.ContainsKey(r.Step) && r.Start > minute && r.People.Count > 0 && !past.Contains(r.Step) && before[r.Step].Any() && before[r.Step].All(h => past.Contains(h.From)))
        .OrderBy(r => r.Start);

    private IEnumerable<(string Words, string Second, string About)> Families() => rows
        .Where(r => steps.TryGetValue(r.Step, out var step) && step.Mix is not null && !done.Contains(r.Step)).OrderBy(r => r.Start)
        .GroupBy(r => steps[r.Step].Mix!.Family, StringComparer.Ordinal)
        .Select(g => (said.Thing(g.Key), $"next {At(g.First())}, {said.Cake(g.First().Step)}", g.Key));

    private IEnumerable<(string Words, string Second, string About)> Equipment() =>
    [
        .. shop.Ovens.Select(o => (o.Name, "", o.Id)),
        .. shop.Shelves.GroupBy(s => s.Unit, StringComparer.Ordinal).Select(g => (g.Key, "", string.Join(',', g.Select(s => s.Id)))),
        .. shop.Bowls.Select(b => (b.Name, "", b.Id)),
    ];

    private bool Is(StepRow row, string word) => steps[row.Step].Name == word;

    private bool IsBakedAgain(string bake) => StepKey.Parse(bake) is { } key && steps.ContainsKey(Slip.Again(key).ToString());

    private bool InTheCake(string bake) => StepKey.Parse(bake) is { } key && done.Contains((key with { Operation = "fill", Ordinal = 1 }).ToString());

    private (string Words, string Second, string About) Named(StepRow row) =>
        (said.Step(row.Step), $"{said.Cake(row.Step)}, {At(row)}{(row.People.Count > 0 ? $" {string.Join(" and ", row.People.Select(said.Thing))}" : "")}", row.Step);

    private string At(StepRow row) => said.At(epoch + Duration.FromMinutes(row.Start));

    private string When(Order order) => said.At(order.Handover.At.InZoneLeniently(DateTimeZoneProviders.Tzdb[shop.Zone]).ToInstant());
}
