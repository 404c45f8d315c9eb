namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Shops;
using NodaTime.TimeZones;

/// <summary>
/// The hours of the shop's wall in which only what can't wait rings: leaving the fridge, the oven, handing over. The rest is held to
/// the end of quiet. Quiet begins when the clock first shows its beginning and ends when it first shows its end, also on the nights
/// on which the clock changes (common practice, no source).
/// </summary>
/// <param name="From">Begins; later on the wall than <paramref name="To"/> means over midnight.</param>
/// <param name="To">Ends.</param>
public sealed record QuietHours(LocalTime From, LocalTime To, DateTimeZone Zone)
{
    /// <summary>Of two equal times on the wall the first; of one that does not come the first moment after it.</summary>
    private static readonly ZoneLocalMappingResolver ClockChange =
        Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter);

    /// <summary>The quiet hours of a shop, or null if it has none.</summary>
    public static QuietHours? Of(Shop shop) => shop.Settings is { QuietFrom: { } from, QuietTo: { } to } && from != to
        ? new QuietHours(from, to, DateTimeZoneProviders.Tzdb[shop.Zone])
        : null;

    /// <summary>True for what rings at any hour.</summary>
    public static bool Passes(RingKind kind) => kind is RingKind.LeaveFridge or RingKind.OvenOut or RingKind.Handover;

    /// <summary>The end of the quiet in which the moment lies; the moment itself if it lies in none.</summary>
    public Instant EndOr(Instant moment)
    {
        var day = moment.InZone(Zone).Date;
        return Enumerable.Range(-2, 4).Select(n => Night(day.PlusDays(n)))
            .FirstOrDefault(q => q.From <= moment && moment < q.To, (From: moment, To: moment)).To;
    }

    private (Instant From, Instant To) Night(LocalDate day) =>
        (At(day + From), At((From < To ? day : day.PlusDays(1)) + To));

    private Instant At(LocalDateTime local) => local.InZone(Zone, ClockChange).ToInstant();
}
