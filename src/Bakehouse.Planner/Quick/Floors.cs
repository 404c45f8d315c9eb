using System.Collections.Concurrent;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>The floors of the stores and the sizes of what stands on them, numbered, and which sizes stand together.</summary>
internal sealed class Floors
{
    private readonly Floor[] floors;
    private readonly int[] floorOf;
    private readonly Piece[] pieces;
    private readonly int[] pieceOf;
    private readonly UInt128[] marks;
    private readonly ConcurrentDictionary<(int Floor, UInt128 Set), bool> known = new();

    public Floors(Week week)
    {
        floors = [.. week.Stores.Select(s => s.Floor).OfType<Floor>().Distinct()];
        floorOf = [.. week.Stores.Select(s => s.Floor is { } floor ? Array.IndexOf(floors, floor) : -1)];
        pieces = [.. week.Holds.Select(h => h.Piece).OfType<Piece>().Distinct()];
        pieceOf = [.. week.Holds.Select(h => h.Piece is { } piece ? Array.IndexOf(pieces, piece) : -1)];
        // A set is known by the sum of its members' marks: 128 bits at random, so that no two sets of a week meet by chance.
        var dice = new Dice(20_261);
        marks = [.. pieces.Select(_ => new UInt128(((ulong)dice.Next() << 32) | dice.Next(), ((ulong)dice.Next() << 32) | dice.Next()))];
    }

    /// <summary>Number of the size of a hold; -1 if it is only counted, there or anywhere.</summary>
    public int Size(int store, Link link) => floorOf[store] < 0 ? -1 : pieceOf[link.Index];

    /// <summary>True if things of those sizes stand together in that store.</summary>
    public bool Fit(int store, ReadOnlySpan<int> sizes)
    {
        UInt128 set = 0;
        foreach (var size in sizes)
        {
            unchecked
            {
                set += marks[size];
            }
        }

        var key = (floorOf[store], set);
        if (!known.TryGetValue(key, out var fits))
        {
            var all = new Piece[sizes.Length];
            for (var i = 0; i < all.Length; i++)
            {
                all[i] = pieces[sizes[i]];
            }

            known[key] = fits = Layouts.Fit(floors[floorOf[store]], all);
        }

        return fits;
    }
}

/// <summary>The holds in each store, as chains through their numbers.</summary>
internal sealed class Neighbours
{
    private readonly int[] first;
    private readonly int[] next;
    private readonly int[] before;

    public Neighbours(int stores, int links)
    {
        (first, next, before) = (new int[stores], new int[links], new int[links]);
        Array.Fill(first, -1);
    }

    /// <summary>The first hold there, or -1.</summary>
    public int First(int store) => first[store];

    /// <summary>The one after it in its store, or -1.</summary>
    public int Next(int link) => next[link];

    public void CopyFrom(Neighbours other)
    {
        other.first.CopyTo(first, 0);
        other.next.CopyTo(next, 0);
        other.before.CopyTo(before, 0);
    }

    public void Add(int store, int link)
    {
        (next[link], before[link]) = (first[store], -1);
        if (first[store] >= 0)
        {
            before[first[store]] = link;
        }

        first[store] = link;
    }

    public void Remove(int store, int link)
    {
        if (before[link] >= 0)
        {
            next[before[link]] = next[link];
        }
        else
        {
            first[store] = next[link];
        }

        if (next[link] >= 0)
        {
            before[next[link]] = before[link];
        }
    }
}
