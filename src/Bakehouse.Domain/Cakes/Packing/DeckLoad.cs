namespace Bakehouse.Domain.Cakes.Packing;

using System.Collections.Concurrent;

/// <summary>A pan on a deck.</summary>
public readonly record struct PanOnDeck(int Inches, Laid Laid);

/// <summary>The round pans of one oven load, shared out over the levels and put down on each by their real size.</summary>
public static class DeckLoad
{
    // More different shares of one level than this are not looked through: such a load counts as too mixed.
    private const int MostShares = 3000;

    private const int MostKnown = 20_000;

    private static readonly ConcurrentDictionary<(Floor Deck, int Levels, string Pans), IReadOnlyList<IReadOnlyList<PanOnDeck>>?> Known = new();

    /// <summary>True if they stand on so many levels.</summary>
    public static bool Fit(Floor deck, int levels, IReadOnlyList<int> inches) => Of(deck, levels, inches) is not null;

    /// <summary>What stands on each level used, from the one filled first; null if no way was found.</summary>
    /// <param name="deck">One level, as <see cref="Room.Of(Shops.Oven)"/> gives it.</param>
    /// <param name="inches">Diameter of each pan.</param>
    public static IReadOnlyList<IReadOnlyList<PanOnDeck>>? Of(Floor deck, int levels, IReadOnlyList<int> inches)
    {
        var sorted = inches.OrderDescending().ToList();
        var key = (deck, levels, string.Join(' ', sorted));
        if (!Known.TryGetValue(key, out var found))
        {
            if (Known.Count > MostKnown)
            {
                Known.Clear();
            }

            found = Known[key] = new Sharing(deck, sorted).Of(levels);
        }

        return found;
    }

    /// <summary>Goes through the shares of a level, the fullest first, with what is left on the others; exact for what <see cref="Layouts"/> knows.</summary>
    private sealed class Sharing
    {
        private readonly Floor deck;
        private readonly int[] sizes;
        private readonly int[] counts;
        private readonly HashSet<(int Levels, int Left)> failed = [];

        public Sharing(Floor deck, List<int> pans)
        {
            this.deck = deck;
            sizes = [.. pans.Distinct()];
            counts = [.. sizes.Select(s => pans.Count(p => p == s))];
        }

        public IReadOnlyList<IReadOnlyList<PanOnDeck>>? Of(int levels)
        {
            var levelsUsed = new List<IReadOnlyList<PanOnDeck>>();
            return counts.Aggregate(1L, (all, c) => all * (c + 1)) <= MostShares && Put([.. counts], levels, levelsUsed) ? levelsUsed : null;
        }

        private bool Put(int[] left, int levels, List<IReadOnlyList<PanOnDeck>> used)
        {
            if (left.Sum() == 0)
            {
                return true;
            }

            if (levels == 0 || failed.Contains((levels, Number(left))))
            {
                return false;
            }

            foreach (var share in Shares(left, levels))
            {
                used.Add(OnDeck(share));
                if (Put([.. left.Zip(share, (l, s) => l - s)], levels - 1, used))
                {
                    return true;
                }

                used.RemoveAt(used.Count - 1);
            }

            failed.Add((levels, Number(left)));
            return false;
        }

        /// <summary>Shares of what is left that stand on one level, the one that covers most first; on the last level only all of it.</summary>
        private IEnumerable<int[]> Shares(int[] left, int levels)
        {
            var all = new List<int[]> { Array.Empty<int>() };
            for (var i = 0; i < left.Length && levels > 1; i++)
            {
                all = [.. from share in all
                          from n in Enumerable.Range(0, left[i] + 1)
                          let grown = share.Append(n).ToArray()
                          where Layouts.Fit(deck, Pieces(grown))
                          select grown];
            }

            return levels > 1 ? all.Where(s => s.Sum() > 0).OrderByDescending(s => Pieces(s).Sum(p => p.Area)).ThenBy(Number)
                : Layouts.Fit(deck, Pieces(left)) ? [left] : [];
        }

        private List<Piece> Pieces(int[] share) => [.. share.SelectMany((n, i) => Enumerable.Repeat(Room.Pan(sizes[i]), n))];

        private List<PanOnDeck> OnDeck(int[] share)
        {
            List<int> inches = [.. share.SelectMany((n, i) => Enumerable.Repeat(sizes[i], n))];
            return [.. inches.Zip(Layouts.Of(deck, [.. inches.Select(Room.Pan)])!, (pan, laid) => new PanOnDeck(pan, laid))];
        }

        private int Number(int[] share) => share.Select((n, i) => (n, i)).Aggregate(0, (sum, s) => (sum * (counts[s.i] + 1)) + s.n);
    }
}
