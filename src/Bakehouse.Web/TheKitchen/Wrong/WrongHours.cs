namespace Bakehouse.Web.TheKitchen.Wrong;

using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;
using NodaTime;
using NodaTime.Text;

/// <summary>Until when: the usual answers as buttons, and hours as they come in an address or a field.</summary>
public sealed class WrongHours(Shop shop, Instant now)
{
    private static readonly LocalDateTimePattern Typed = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");
    private static readonly int[] Moved = [-180, -120, -60, -30, 30, 60, 120];
    private static readonly int[] Over = [10, 20, 30, 45, 60, 90];
    private static readonly int[] Setting = [15, 30, 60, 120];
    private static readonly int[] Missing = [30, 60, 120];
    private static readonly int[] Gone = [60, 120, 240];
    private readonly Words words = Words.Of(shop);

    /// <summary>The usual answers with the hour that each means.</summary>
    /// <param name="agreed">The hour agreed with the customer, for one who comes early or late.</param>
    public IEnumerable<(string Words, Instant Until)> Picks(SlipKind kind, LocalDateTime? agreed) => kind switch
    {
        SlipKind.Pickup when agreed is { } at => Moved.Select(m => (Words: m < 0 ? $"{Words.Minutes(-m)} earlier" : $"{Words.Minutes(m)} later", Until: Of(at.PlusMinutes(m)))).Where(p => p.Until > now),
        SlipKind.Behind => Over.Select(m => After(m, "{0} more")),
        SlipKind.NotSet => [.. Setting.Select(m => After(m, "{0} more")), Morning()],
        SlipKind.RanOut => [.. Missing.Select(m => After(m, "In {0}")), Morning(), .. Evening(1)],
        _ => [.. Gone.Select(m => After(m, "For {0}")), .. Evening(0), Morning(), .. Evening(1)],
    };

    /// <summary>Reads an instant (ISO 8601) or an hour of the shop's wall as a field writes it; null if it is neither.</summary>
    public Instant? Read(string? text) => text is null ? null
        : InstantPattern.ExtendedIso.Parse(text) is { Success: true } instant ? instant.Value
        : Typed.Parse(text) is { Success: true } typed ? Of(typed.Value)
        : null;

    /// <summary>The instant of an hour on the shop's wall.</summary>
    public Instant Of(LocalDateTime at) => at.InZoneLeniently(words.Zone).ToInstant();

    /// <summary>As an address has it.</summary>
    public static string Text(Instant at) => InstantPattern.ExtendedIso.Format(at);

    /// <summary>As a field has it.</summary>
    public string Field(Instant at) => Typed.Format(words.Local(at));

    private (string Words, Instant Until) After(int minutes, string says) =>
        (says.Replace("{0}", Words.Minutes(minutes), StringComparison.Ordinal), Up(now + Duration.FromMinutes(minutes)));

    private (string Words, Instant Until) Morning() => ("Tomorrow morning", Of(words.Local(now).Date.PlusDays(1) + new LocalTime(shop.Settings.DayStarts, 0)));

    private IEnumerable<(string Words, Instant Until)> Evening(int days)
    {
        var end = Of(words.Local(now).Date.PlusDays(days) + new LocalTime(shop.Settings.DayEnds, 0));
        return end <= now ? [] : [(days == 0 ? "Rest of the day" : "All of tomorrow", end)];
    }

    private static Instant Up(Instant at)
    {
        const long five = 5 * 60;
        return Instant.FromUnixTimeSeconds((at.ToUnixTimeSeconds() + five - 1) / five * five);
    }
}
