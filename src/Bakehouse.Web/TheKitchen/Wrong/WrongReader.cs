namespace Bakehouse.Web.TheKitchen.Wrong;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>What the address of the page says was picked so far.</summary>
/// <param name="About">Keys or ids with commas between.</param>
/// <param name="From">ISO 8601 or an hour on the shop's wall.</param>
/// <param name="Spare">Null if nobody has said: spare sponges then, if enough are counted.</param>
/// <param name="Done">Id of the slip that was told just now.</param>
/// <param name="Tell">Who must hear of that one: ids of people and orders with commas between.</param>
public sealed record Asked(string? Kind, string? About, string? From, string? Until, bool? Spare, string? Done, string? Tell = null);

/// <summary>Reads the page from what was picked so far: what is asked next, or what would happen.</summary>
public sealed class WrongReader(IBook book, Shop shop, Instant now, string person)
{
    private static readonly Duration Recent = Duration.FromDays(7);
    private readonly Words words = Words.Of(shop);
    private readonly WrongWords said = new(shop, book.State.Orders, now);

    private Role? Mine => shop.PersonOf(person)?.Role;

    /// <summary>The page.</summary>
    public async Task<WrongView> Read(Asked asked, CancellationToken cancel)
    {
        if (asked.Kind is null || !Enum.TryParse<SlipKind>(asked.Kind, out var kind) || !Enum.IsDefined(kind))
        {
            return new WrongView("Something’s wrong", [.. Enum.GetValues<SlipKind>().Where(May).Select(k => new Pick(WrongWords.Of(k), "", Address(k)))]) { Told = Told(asked) };
        }

        var title = WrongWords.Of(kind);
        if (string.IsNullOrEmpty(asked.About))
        {
            var picks = new WrongPicks(book.State, shop, now, said).Of(kind).Select(p => new Pick(p.Words, p.Second, Address(kind, p.About))).ToList();
            return new WrongView(title, picks) { Nothing = "There is nothing of the kind in the plan now." };
        }

        var hours = new WrongHours(shop, now);
        var needsHour = kind is not (SlipKind.Cracked or SlipKind.Anyway);
        if (needsHour && hours.Read(asked.Until) is null)
        {
            return Hours(kind, asked.About, title, hours);
        }

        var about = asked.About.Split(',');
        var slip = new Slip(Guid.NewGuid(), kind, about, now, person, hours.Read(asked.From) ?? (kind is SlipKind.Out or SlipKind.Away ? now : null), needsHour ? hours.Read(asked.Until) : null, asked.Spare == true);
        slip = slip with { Spare = asked.Spare ?? AreCounted(slip) };
        return new WrongView(title, []) { Foretold = await new WrongForetelling(book, shop, said, words.Local(now).Date).Of(slip, person, cancel) };
    }

    /// <summary>True if the freezer holds as many as were lost, and the cake may have them.</summary>
    private bool AreCounted(Slip slip) => slip.Kind == SlipKind.Cracked
        && FromFreezer.For(slip, book.State.Orders, shop, book.State.Freezer) is { Needed: > 0 } from && from.Counted == from.Needed
        && FromFreezer.Avoiding(slip, book.State.Orders) is null;

    private WrongView Hours(SlipKind kind, string about, string title, WrongHours hours)
    {
        var agreed = kind == SlipKind.Pickup ? said.OrderById(about)?.Handover.At : null;
        var picks = hours.Picks(kind, agreed).Select(h => new Pick(h.Words, said.At(h.Until), Address(kind, about, WrongHours.Text(h.Until))));
        return new WrongView(title, [.. picks])
        {
            Hours = new HoursAsked(kind.ToString(), about, kind is SlipKind.Out or SlipKind.Away ? hours.Field(now) : null, hours.Field(agreed is { } at ? hours.Of(at) : now + Duration.FromHours(2))),
        };
    }

    private IReadOnlyList<ToldSlip> Told(Asked asked) =>
    [
        .. book.State.Slips.Where(s => now - s.Told < Recent && (s.Until is null || s.Kind == SlipKind.Pickup || s.Until > now - Duration.FromHours(12))).OrderByDescending(s => s.Told)
            .Select(s => (Slip: s, Fresh: s.Id.ToString("N") == asked.Done))
            .Select(x => new ToldSlip(x.Slip.Id, said.Says(x.Slip), $"{said.At(x.Slip.Told)}, {said.Thing(x.Slip.Person)}", x.Fresh, x.Fresh ? said.Everybody(asked.Tell) : "")),
    ];

    private bool May(SlipKind kind) => kind switch
    {
        SlipKind.Anyway => Mine == Role.Owner,
        SlipKind.Pickup => EntryRights.May(typeof(WriteOrder), Mine),
        _ => true,
    };

    private static string Address(SlipKind kind, string? about = null, string? until = null) =>
        $"/kitchen/wrong?kind={kind}{(about is null ? "" : $"&about={Uri.EscapeDataString(about)}")}{(until is null ? "" : $"&until={Uri.EscapeDataString(until)}")}";
}
