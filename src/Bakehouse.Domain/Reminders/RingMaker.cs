namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>A step of the plan that calls.</summary>
/// <param name="Minute">Planned minute of the week.</param>
internal sealed record Call(RingKind Kind, IReadOnlyList<StepRow> Rows, int Minute, string? Person)
{
    /// <summary>The food limit that bears on the cake, as minute of the week with a sentence.</summary>
    public (int Minute, string Sentence)? Limit { get; init; }
}

/// <summary>Makes the ring of a call, with the answers that bear on it; none if it was answered for good.</summary>
internal sealed class RingMaker(OpenPlan plan, IReadOnlyDictionary<string, Order> orders, Shop shop, IReadOnlyList<RingAnswer> answers)
{
    private readonly ILookup<string, RingAnswer> given = answers.ToLookup(a => a.Ring);
    private readonly QuietHours? quiet = QuietHours.Of(shop);
    private readonly RingWords words = new(plan, orders, shop);

    public Ring? Make(Call call)
    {
        var row = call.Rows[0];
        var id = $"{call.Kind}:{row.Step}";
        var planned = plan.At(call.Minute);
        if (given[id].Any(a => IsLast(call.Kind, a.Kind) && a.At >= planned))
        {
            return null;
        }

        var slack = call.Kind is RingKind.OvenOut or RingKind.FoodLimit ? null : Slack.Until(plan, row);
        var due = Due(planned, slack, given[id]);
        var rings = QuietHours.Passes(call.Kind) ? due : quiet?.EndOr(due) ?? due;
        var (place, placeId) = words.Place(call.Kind, row);
        return new Ring(
            id, call.Kind, row.Step, rings, call.Person, words.Verb(call.Kind, row), place, placeId, words.What(call.Rows), words.Orders(call.Rows),
            call is { Kind: RingKind.FoodLimit, Limit: { } limit } ? RingWords.Why(limit.Sentence) : words.Why(row), slack)
        {
            Steps = call.Kind == RingKind.FoodLimit ? [] : [.. call.Rows.Select(r => r.Step)],
            HeldSince = rings == due ? null : due,
            FoodEnds = call.Limit is { } end ? plan.At(end.Minute) : null,
        };
    }

    /// <summary>True if the answer ends the ring while its step is not ticked: "done" elsewhere is a tick.</summary>
    private static bool IsLast(RingKind ring, RingAnswerKind answer) =>
        answer == RingAnswerKind.Cannot || (ring == RingKind.FoodLimit && answer == RingAnswerKind.Done);

    /// <summary>
    /// As planned, or as late as somebody said "later", but never beyond the slack that the plan leaves now. An answer to an earlier
    /// plan does not hold a later one back.
    /// </summary>
    private static Instant Due(Instant planned, Instant? slack, IEnumerable<RingAnswer> answers)
    {
        var until = answers.LastOrDefault(a => a.Kind == RingAnswerKind.Later)?.Until;
        return until is not { } later || later <= planned || slack is not { } most ? planned : Instant.Min(later, Instant.Max(planned, most));
    }
}
