using System.Collections.Concurrent;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>A week in grains and numbers, the same for every plan of it. Members of one kind are numbered as in the week.</summary>
internal sealed class Shop
{
    public required Week Week { get; init; }

    /// <summary>Grains of the horizon.</summary>
    public required int Grains { get; init; }

    public required int FreeFrom { get; init; }

    /// <summary>Families and heats.</summary>
    public required int Codes { get; init; }

    public int Words => Bits.Words(Grains + 64);

    /// <summary>Per person: grains of a shift, and of a shift or overtime.</summary>
    public required ulong[][] Shift { get; init; }

    public required ulong[][] Duty { get; init; }

    public required ulong[][] Extra { get; init; }

    public required int[] ToolCount { get; init; }

    public required MachineFacts[] Machines { get; init; }

    public required int[] StorePlaces { get; init; }

    public required bool[] StoreCold { get; init; }

    public required Floors Floors { get; init; }

    /// <summary>Allergens that settle out of the air: bit and grains.</summary>
    public required (ulong Bit, int Settle)[] Air { get; init; }

    /// <summary>Allergens that somebody has and somebody avoids in bowls.</summary>
    public required ulong Clashing { get; init; }

    public required Act[] Acts { get; init; }

    public required Link[] Links { get; init; }

    public required int[] ClockLimit { get; init; }

    public required int[][] ClockActs { get; init; }

    public required Job[] Jobs { get; set; }

    public required int[] Diameters { get; init; }

    public int Grain => Week.Grain;
}

/// <summary>A bowl or oven in grains.</summary>
internal sealed record MachineFacts(
    Machine Machine, int TurnSame, int TurnOther, int CleanGrains, int[] Cleaners, IReadOnlyDictionary<int, int> Limit)
{
    private readonly ConcurrentDictionary<ulong, bool> packed = new();

    /// <summary>True if those pans can stand on the levels (rule M4: exact, by trying).</summary>
    public bool Packs(ulong pans, int[] diameters)
        => packed.TryGetValue(pans, out var fits) ? fits : packed[pans] = Packing.Fits(Machine, pans, diameters);
}

/// <summary>Pans on the levels of an oven: each level holds at most the whole of its shares.</summary>
internal static class Packing
{
    public static bool Fits(Machine oven, ulong pans, int[] diameters)
    {
        if (oven.Deck is { } deck)
        {
            return Domain.Cakes.Packing.DeckLoad.Fit(deck, oven.Levels, [.. diameters.SelectMany((inches, d) => Enumerable.Repeat(inches, (int)((pans >> (8 * d)) & 255)))]);
        }

        var whole = oven.Fits.Values.Where(n => n > 0).Aggregate(1L, Lcm);
        var shares = new List<long>();
        for (var d = 0; d < diameters.Length; d++)
        {
            var count = (int)((pans >> (8 * d)) & 255);
            if (count == 0)
            {
                continue;
            }

            if (oven.Fits.GetValueOrDefault(diameters[d]) is var fit && fit <= 0)
            {
                return false;
            }

            shares.AddRange(Enumerable.Repeat(whole / fit, count));
        }

        shares.Sort((a, b) => b.CompareTo(a));
        return shares.Sum() <= whole * oven.Levels && Put(shares, 0, Enumerable.Repeat(whole, oven.Levels).ToArray());
    }

    private static bool Put(List<long> shares, int next, long[] room)
    {
        if (next == shares.Count)
        {
            return true;
        }

        for (var level = 0; level < room.Length; level++)
        {
            if (room[level] < shares[next] || (level > 0 && room[level] == room[level - 1]))
            {
                continue;
            }

            room[level] -= shares[next];
            if (Put(shares, next + 1, room))
            {
                return true;
            }

            room[level] += shares[next];
        }

        return false;
    }

    private static long Lcm(long a, int b) => a / Gcd(a, b) * b;

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}
