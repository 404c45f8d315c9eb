namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Chains;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>A cake whose food clock has run out is not handed over, whoever says so.</summary>
internal static class PastClock
{
    /// <summary>Before a handover or a delivery is ticked.</summary>
    public static IEnumerable<Problem> BeforeTick(StepKey key, Order order, Instant done, Desk desk) =>
        key.Operation is "handover" or "deliver" && desk.State.Wall is { } wall
        && CakeChain.Clock(order, desk.Shop, wall, desk.State.Slips, done) is { Now: { Verdict: ClockVerdict.Discard } clock }
            ? [new Problem("step", $"{order.Number}", clock.Sentence, "Don't hand it over; ask the owner. If it never left the cold, take back its “Take out” on the cake's page first.")]
            : [];
}
