namespace Bakehouse.Book.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>Reads from a plan with twice of something whose second was used, when, and for how much: who or what is missing.</summary>
/// <param name="desk">With the shop as it is.</param>
/// <param name="order">For which it is missing.</param>
/// <param name="doubled">The week with twice of it.</param>
/// <param name="plan">On that week's epoch.</param>
internal sealed class Missing(Desk desk, Order order, Week doubled, Plan plan)
{
    /// <summary>What the id of a second one ends with.</summary>
    public const string Second = "~2";

    private readonly Dictionary<string, int> minutes = doubled.Steps.ToDictionary(s => s.Id, s => s.Minutes, StringComparer.Ordinal);

    /// <summary>Whose hands, and in which hours they are asked for twice; null if no second pair was used.</summary>
    /// <param name="late">Minutes late even with a second pair.</param>
    public Decides? Hands(int late)
    {
        var twins = Rows(r => r.People).Where(u => u.Who.EndsWith(Second, StringComparison.Ordinal)).ToLookup(u => u.Who[..^Second.Length]);
        return twins.Select(t => OfPerson(t.Key, [.. t], late)).OrderByDescending(d => d.Minutes).ThenBy(d => d.From).FirstOrDefault();
    }

    /// <summary>Which oven or mixer is full, and how long this cake needs it then; null if no second one was used.</summary>
    /// <param name="late">Minutes late even with a second one.</param>
    public Decides? Machines(int late)
    {
        var twins = Rows(r => r.Machine is { } machine ? [machine] : []).Where(u => u.Who.EndsWith(Second, StringComparison.Ordinal)).ToList();
        if (twins.Count == 0)
        {
            return null;
        }

        var longest = twins.GroupBy(t => t.Who).OrderByDescending(g => g.Sum(t => t.At.Minutes)).ThenBy(g => g.Key, StringComparer.Ordinal).First();
        var first = longest.OrderBy(t => t.At.From).First().At;
        return new Decides(Scarce.Machines, Moment(first.From), Moment(first.To), longest.Sum(t => t.At.Minutes), late) { Whose = longest.Key[..^Second.Length], Needed = first.Minutes };
    }

    /// <summary>
    /// Which shelf is too short, when, and by how much: what stands on the second shelves is put back onto the first. Null if no second
    /// shelf was used.
    /// </summary>
    /// <param name="late">Minutes late even with second shelves.</param>
    public Decides? Cold(int late)
    {
        var twins = plan.Holds.Where(h => h.Store.EndsWith(Second, StringComparison.Ordinal)).Select(h => h.Hold).ToHashSet(StringComparer.Ordinal);
        if (twins.Count == 0)
        {
            return null;
        }

        var together = new Wall(doubled.Epoch, Together);
        var week = Week.From(desk.OrdersWith(order), desk.Shop, desk.TicksWith(order), together, desk.Now, desk.State.Hand);
        var crowded = Shelving.Crowded(week, together.From(week.Epoch)).Where(s => s.Holds.Any(h => twins.Contains(h.Id)))
            .OrderByDescending(s => s.MissingCm).ThenBy(s => s.Span.From).FirstOrDefault();
        if (crowded is not null)
        {
            var wide = (int)(crowded.Floor.Wide / 10);
            return new Decides(Scarce.Cold, week.Epoch + Duration.FromMinutes(crowded.Span.From), week.Epoch + Duration.FromMinutes(crowded.Span.To), crowded.Span.Minutes, late)
            {
                Whose = crowded.Store.Id,
                Needed = wide + crowded.MissingCm,
                There = wide,
            };
        }

        return Stays(twins) is [var first, ..] stays ? new Decides(Scarce.Cold, Moment(first.From), Moment(stays.Max(s => s.To)), stays.Max(s => s.To) - first.From, late) : null;
    }

    /// <summary>The plan with everything on the shelves that the shop has.</summary>
    private Plan Together => plan with { Holds = [.. plan.Holds.Select(h => h.Store.EndsWith(Second, StringComparison.Ordinal) ? h with { Store = h.Store[..^Second.Length] } : h)] };

    /// <summary>From when to when those stand, by beginning.</summary>
    private List<Span> Stays(HashSet<string> holds)
    {
        var starts = plan.Steps.ToDictionary(r => r.Step, r => r.Start, StringComparer.Ordinal);
        return [.. doubled.Holds.Where(h => holds.Contains(h.Id) && starts.ContainsKey(h.From) && starts.ContainsKey(h.To))
            .Select(h => new Span(starts[h.From] + minutes[h.From], starts[h.To])).OrderBy(s => s.From)];
    }

    private Decides OfPerson(string person, List<Use> twins, int late)
    {
        var own = Rows(r => r.People).Where(u => u.Who == person).ToList();
        var twice = twins.Select(t => (t.At, Minutes: own.Sum(o => Shared(t.At, o.At)))).OrderByDescending(t => t.Minutes).ThenBy(t => t.At.From).ToList();
        var whole = new Span(twins.Min(t => t.At.From), twins.Max(t => t.At.To));
        var said = Asks(whole, [.. own, .. twins], person) is { } all && all.Needed > all.There ? (At: whole, all.Needed, all.There)
            : twice[0].Minutes > 0 ? (twice[0].At, Needed: twice[0].At.Minutes, There: twice[0].At.Minutes - twice[0].Minutes)
            : (At: whole, Needed: 0, There: 0);
        return new Decides(Scarce.Hands, Moment(said.At.From), Moment(said.At.To), twins.Sum(t => t.At.Minutes), late)
        {
            Whose = person,
            Needed = said.Needed,
            There = said.There,
        };
    }

    /// <summary>Minutes that this cake asks of one person in a span, and those of the shift that other cakes leave.</summary>
    private (int Needed, int There)? Asks(Span span, IReadOnlyList<Use> uses, string person) =>
        doubled.People.FirstOrDefault(p => p.Id == person) is not { } there ? null
            : (uses.Where(u => u.IsMine).Sum(u => Shared(span, u.At)), there.Shifts.Where(span.Meets).Select(s => new Span(Math.Max(s.From, span.From), Math.Min(s.To, span.To)))
                .Sum(s => s.Minutes - uses.Where(u => !u.IsMine && u.Who == person).Sum(u => Shared(s, u.At))));

    private List<Use> Rows(Func<StepRow, IEnumerable<string>> who) =>
    [
        .. from row in plan.Steps
           where minutes.ContainsKey(row.Step)
           from one in who(row)
           select new Use(one, new Span(row.Start, row.Start + minutes[row.Step]), StepKey.Parse(row.Step)?.Order == order.Id),
    ];

    private static int Shared(Span one, Span other) => Math.Max(0, Math.Min(one.To, other.To) - Math.Max(one.From, other.From));

    private Instant Moment(int minute) => doubled.Epoch + Duration.FromMinutes(minute);

    /// <param name="IsMine">True for the order that is asked about.</param>
    private sealed record Use(string Who, Span At, bool IsMine);
}
