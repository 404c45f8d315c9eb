namespace Bakehouse.Book.Reading;

using Bakehouse.Book.Keeping;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>
/// Reads what stands in the book. Orders and the shop are only ever appended, so each version is read once. Used by one at a time.
/// </summary>
internal sealed class StateReader(BookFile file)
{
    private readonly Dictionary<Guid, Order> newest = [];
    private readonly FactTime facts = new();
    private long seen;
    private Shop? shop;
    private readonly Dictionary<int, Cookbook> cookbooks = [];
    private Cookbook cookbook = Cookbook.Empty;

    /// <summary>What stands now, with the week compiled as of <paramref name="now"/>.</summary>
    public BookState Read(Instant now)
    {
        using var book = file.Context();
        // One transaction: rows of one moment, not of two.
        using var moment = book.Database.BeginTransaction();
        var head = book.Heads.AsNoTracking().Single();
        ReadOrders(book);
        ReadShop(book);
        ReadCookbooks(book);
        var orders = newest.Values.OrderBy(o => o.Handover.At).ThenBy(o => o.Number).ToList();
        var planned = orders.Where(o => Stages.IsPlanned(o.Stage)).Select(o => o.Id).ToList();
        var state = new BookState(head.Version, shop, orders, Ticks(book, planned), null, WallRows.Read(book, head), Answers(book, planned))
        {
            Newest = facts.Newest(book),
            Pins = [.. book.Pins.AsNoTracking().Where(p => p.Undone == null && planned.Contains(p.Order)).OrderBy(p => p.Seq).AsEnumerable().Select(p => p.Pin())],
            Chores = Chores(book),
            NotDone = NotDone(book, planned),
            Slips = Slips(book, now),
            Freezer = Freezer(book),
            Cookbook = cookbook,
            Cookbooks = new Dictionary<int, Cookbook>(cookbooks),
            Calendars = [.. book.Calendars.AsNoTracking().Where(c => c.Ended == null).OrderBy(c => c.Seq).AsEnumerable().Select(c => new CalendarAddress(c.Person, c.Secret, c.Made))],
        };
        return At(state, now);
    }

    /// <summary>The same facts, with the week compiled as of another moment.</summary>
    public static BookState At(BookState state, Instant now) => state.Shop is { } known
        ? state with { ReadAt = now, Week = Week.From(state.Orders, known, state.Ticks, state.Wall, now, state.Hand) }
        : state;

    private void ReadOrders(BookContext book)
    {
        foreach (var row in book.Orders.AsNoTracking().Where(r => r.Seq > seen).OrderBy(r => r.Seq))
        {
            newest[row.Id] = row.Order();
            seen = row.Seq;
        }
    }

    private void ReadShop(BookContext book)
    {
        var version = shop?.Version ?? 0;
        shop = book.Shops.AsNoTracking().Where(r => r.Version > version).OrderByDescending(r => r.Version).FirstOrDefault()?.Shop() ?? shop;
    }

    /// <summary>The newest, and those from which a planned order is made; a version never changes, so each is read once.</summary>
    private void ReadCookbooks(BookContext book)
    {
        cookbook = book.Cookbooks.AsNoTracking().Where(r => r.Version > cookbook.Version).OrderByDescending(r => r.Version).FirstOrDefault()?.Cookbook() ?? cookbook;
        var wanted = newest.Values.Where(o => Stages.IsPlanned(o.Stage)).Select(o => o.MadeFrom?.Cookbook ?? 0).Where(v => v > 0 && v != cookbook.Version).ToHashSet();
        cookbooks.Keys.Where(v => !wanted.Contains(v)).ToList().ForEach(v => cookbooks.Remove(v));
        var missing = wanted.Where(v => !cookbooks.ContainsKey(v)).ToList();
        foreach (var row in missing.Count == 0 ? [] : book.Cookbooks.AsNoTracking().Where(r => missing.Contains(r.Version)).ToList())
        {
            cookbooks[row.Version] = row.Cookbook();
        }
    }

    private static List<Chore> Chores(BookContext book) =>
        [.. book.Chores.AsNoTracking().OrderBy(c => c.Seq).AsEnumerable().GroupBy(c => c.Id).Select(c => c.Last().Chore()).Where(c => !c.Dropped)];

    /// <summary>Plans reach three weeks: what is older is about cakes that are gone.</summary>
    private static List<Slip> Slips(BookContext book, Instant now)
    {
        var since = now - Duration.FromDays(60);
        return [.. book.Slips.AsNoTracking().Where(s => s.Undone == null && s.Written >= since).OrderBy(s => s.Seq).AsEnumerable().Select(s => s.Slip())];
    }

    /// <summary>A count stands until the next of the same baking, so slips of any age may have taken from it.</summary>
    private static IReadOnlyList<SpareSponges> Freezer(BookContext book)
    {
        var counts = book.Spares.AsNoTracking().OrderBy(s => s.Seq).AsEnumerable().Select(s => new CountedSpares(s.Spares(), s.Written)).ToList();
        var cracked = nameof(SlipKind.Cracked);
        return counts.Count == 0 ? [] : FreezerStock.Left(
            counts,
            book.Slips.AsNoTracking().Where(s => s.Kind == cracked && s.Undone == null).AsEnumerable()
                .SelectMany(s => (s.Slip().Took ?? []).Select(t => new TakenSpares(t, s.Written))));
    }

    private static List<Tick> Ticks(BookContext book, List<Guid> planned) =>
        [.. book.Ticks.AsNoTracking().Where(t => t.Undone == null && planned.Contains(t.Order)).OrderBy(t => t.Seq).AsEnumerable().Select(t => t.Tick())];

    private static Dictionary<string, Instant> NotDone(BookContext book, List<Guid> planned) =>
        book.Ticks.AsNoTracking().Where(t => t.Undone != null && planned.Contains(t.Order)).AsEnumerable()
            .GroupBy(t => t.Step).ToDictionary(g => g.Key, g => g.Max(t => t.Undone!.Value));

    private static List<RingAnswer> Answers(BookContext book, List<Guid> planned) =>
        [.. book.RingAnswers.AsNoTracking().Where(a => a.Undone == null && planned.Contains(a.Order)).OrderBy(a => a.Seq).AsEnumerable().Select(a => a.Answer())];
}
