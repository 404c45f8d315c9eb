namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Fridges and freezers at one moment of the plan, shelf by shelf, from above.</summary>
/// <param name="At">A moment at which something changes.</param>
/// <param name="Until">The next one.</param>
/// <param name="Before">The one before, or null.</param>
public sealed record ShelvesThen(Instant At, Instant Until, Instant? Before, IReadOnlyList<(string Unit, IReadOnlyList<ShelfView> Levels)> Units)
{
    /// <summary>The shelves at that instant or, before the first change, at it; null if nothing stands anywhere.</summary>
    public static ShelvesThen? Of(BookState state, Instant wanted)
    {
        if (state is not { Shop: { } shop, Week: { } week, Wall: { } wall })
        {
            return null;
        }

        var shelves = shop.Shelves.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var stretches = Shelving.Of(week, wall.From(week.Epoch)).Where(s => shelves.Contains(s.Store.Id)).ToList();
        var changes = stretches.SelectMany(s => new[] { s.Span.From, s.Span.To }).Distinct().Order().ToList();
        if (changes.Count < 2)
        {
            return null;
        }

        var minute = (wanted - week.Epoch).TotalMinutes;
        var i = Math.Clamp(changes.FindLastIndex(c => c <= minute), 0, changes.Count - 2);
        var (at, until) = (changes[i], changes[i + 1]);
        var there = stretches.Where(s => s.Span.Covers(new Span(at, until))).ToDictionary(s => s.Store.Id, StringComparer.Ordinal);
        var words = new ShelfWords(week, shop, state.Orders);
        var orders = state.Orders.ToDictionary(o => o.Id);
        Instant Of(int m) => week.Epoch + Duration.FromMinutes(m);
        return new ShelvesThen(Of(at), Of(until), i > 0 ? Of(changes[i - 1]) : null,
        [
            .. shop.Shelves.GroupBy(s => s.Unit).Select(unit => (unit.Key, (IReadOnlyList<ShelfView>)[.. unit.OrderByDescending(s => s.Level)
                .Select(s => ShelfView.Of(s, there.GetValueOrDefault(s.Id), words, orders))])),
        ]);
    }
}
