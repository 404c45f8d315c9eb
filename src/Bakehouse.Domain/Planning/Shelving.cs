namespace Bakehouse.Domain.Planning;

using Bakehouse.Domain.Cakes.Packing;

/// <summary>What stands on one shelf, bench or the like from one change to the next.</summary>
/// <param name="Holds">By id; each has a piece.</param>
public sealed record ShelfStretch(Store Store, Span Span, IReadOnlyList<Hold> Holds)
{
    /// <summary>The rectangle.</summary>
    public Floor Floor => Store.Floor!.Value;

    /// <summary>From above, in the order of the holds.</summary>
    public IReadOnlyList<Piece> Pieces => [.. Holds.Select(h => h.Piece!.Value)];

    /// <summary>Where each stands, in the order of the holds; null if no way was found.</summary>
    public IReadOnlyList<Laid>? Layout => Layouts.Of(Floor, Pieces);

    /// <summary>Centimetres of width that are missing; 0 if all stand.</summary>
    public int MissingCm => Layouts.MissingCm(Floor, Pieces);
}

/// <summary>A plan seen shelf by shelf: what stands where, from one change to the next.</summary>
public static class Shelving
{
    /// <summary>Every stretch in which something stands on a store with a floor, by store and time.</summary>
    public static IReadOnlyList<ShelfStretch> Of(Week week, Plan plan) => [.. Of(new WeekIndex(week, plan))];

    /// <summary>The stretches for which no way was found to put everything down.</summary>
    public static IReadOnlyList<ShelfStretch> Crowded(Week week, Plan plan) =>
        [.. Of(new WeekIndex(week, plan)).Where(s => !Layouts.Fit(s.Floor, s.Pieces))];

    internal static IEnumerable<ShelfStretch> Of(WeekIndex at)
    {
        var held = at.Held.Where(h => h.Span.Minutes > 0 && h.Store.Floor is not null && h.Hold.Piece is not null).ToLookup(h => h.Store.Id);
        return at.Week.Stores.Where(s => held.Contains(s.Id)).SelectMany(store => On(store, [.. held[store.Id].Select(h => (h.Hold, h.Span))]));
    }

    private static IEnumerable<ShelfStretch> On(Store store, List<(Hold Hold, Span Span)> held)
    {
        var changes = held.SelectMany(h => new[] { (Minute: h.Span.From, Comes: true, h.Hold), (Minute: h.Span.To, Comes: false, h.Hold) })
            .GroupBy(c => c.Minute).OrderBy(c => c.Key).ToList();
        var there = new SortedDictionary<string, Hold>(StringComparer.Ordinal);
        for (var i = 0; i < changes.Count; i++)
        {
            foreach (var (_, _, hold) in changes[i].Where(c => !c.Comes))
            {
                there.Remove(hold.Id);
            }

            foreach (var (_, _, hold) in changes[i].Where(c => c.Comes))
            {
                there[hold.Id] = hold;
            }

            if (there.Count > 0)
            {
                yield return new ShelfStretch(store, new Span(changes[i].Key, changes[i + 1].Key), [.. there.Values]);
            }
        }
    }
}
