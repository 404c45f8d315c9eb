namespace Bakehouse.Web.TheCakes;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>One step of a cake as its page lists it.</summary>
/// <param name="Who">Names of who is planned for it, or empty.</param>
/// <param name="Tick">Null if nobody ticked it.</param>
/// <param name="IsAssumed">True if it is taken as done.</param>
public sealed record StepLine(string Id, LocalDateTime At, string Name, int Minutes, string Who, Tick? Tick, bool IsAssumed)
{
    private static readonly Period Soon = Period.FromHours(12);

    /// <summary>True if somebody may well have done it: it is ticked, assumed, or planned within half a day.</summary>
    public bool MayBeDone(LocalDateTime now) => Tick is not null || IsAssumed || At <= now + Soon;

    private static string SizeOf(string step, Order order, Words words) =>
        StepKey.Parse(step)?.Tier is not null && StepWords.TiersOf(step, order) is [var tier, ..] ? words.Tier(tier) : "";

    /// <summary>The planned steps of an order by their hours; none while it is not planned.</summary>
    public static IReadOnlyList<StepLine> Of(BookState state, Order order, Words words, Instant now)
    {
        if (state is not { Week: { } week, Wall: { } wall })
        {
            return [];
        }

        var starts = wall.From(week.Epoch).Steps.ToDictionary(s => s.Step, StringComparer.Ordinal);
        var ticks = state.Ticks.ToDictionary(t => t.Step, StringComparer.Ordinal);
        var assumed = new AssumedNow(week, wall, state.Ticks, now, state.NotDone);
        var mine = order.Id.ToString("N") + ".";
        return
        [
            .. week.Steps.Where(s => s.Id.StartsWith(mine, StringComparison.Ordinal) && starts.ContainsKey(s.Id)).OrderBy(s => starts[s.Id].Start).Select(s => new StepLine(
                s.Id, words.Local(week.Epoch + Duration.FromMinutes(starts[s.Id].Start)), $"{Method.OperationOf(s.Name).Verb} {SizeOf(s.Id, order, words)}".Trim(), s.Minutes,
                string.Join(" and ", starts[s.Id].People.Select(p => state.Shop?.PersonOf(p)?.Name ?? p)), ticks.GetValueOrDefault(s.Id), assumed.Contains(s.Id))),
        ];
    }
}
