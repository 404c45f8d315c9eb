using System.Numerics;

namespace Bakehouse.Planner.Quick;

/// <summary>Rows of bits, one bit per grain of time.</summary>
internal static class Bits
{
    /// <summary>Words for so many grains.</summary>
    public static int Words(int grains) => (grains >> 6) + 1;

    public static void Set(Span<ulong> row, int from, int to)
    {
        for (; from < to; from = (from | 63) + 1)
        {
            row[from >> 6] |= Between(from, to);
        }
    }

    public static void Clear(Span<ulong> row, int from, int to)
    {
        for (; from < to; from = (from | 63) + 1)
        {
            row[from >> 6] &= ~Between(from, to);
        }
    }

    /// <summary>Highest set bit at or below <paramref name="at"/>, or -1.</summary>
    public static int LastSet(ReadOnlySpan<ulong> row, int at)
    {
        if (at < 0)
        {
            return -1;
        }

        var word = at >> 6;
        var bits = row[word] & Upto(at);
        while (bits == 0 && word > 0)
        {
            bits = row[--word];
        }

        return bits == 0 ? -1 : (word << 6) + 63 - BitOperations.LeadingZeroCount(bits);
    }

    /// <summary>Lowest set bit at or above <paramref name="at"/>, or <see cref="int.MaxValue"/>.</summary>
    public static int NextSet(ReadOnlySpan<ulong> row, int at)
    {
        var word = at >> 6;
        if (word >= row.Length)
        {
            return int.MaxValue;
        }

        var bits = row[word] & (ulong.MaxValue << at);
        while (bits == 0 && ++word < row.Length)
        {
            bits = row[word];
        }

        return bits == 0 ? int.MaxValue : (word << 6) + BitOperations.TrailingZeroCount(bits);
    }

    /// <summary>Highest grain in [from, to) that is off duty or busy, or -1.</summary>
    public static int LastTaken(ReadOnlySpan<ulong> duty, ReadOnlySpan<ulong> busy, int from, int to)
    {
        for (var word = (to - 1) >> 6; word >= from >> 6; word--)
        {
            var bits = ~duty[word] | busy[word];
            bits &= word == (to - 1) >> 6 ? Upto(to - 1) : ulong.MaxValue;
            bits &= word == from >> 6 ? ulong.MaxValue << from : ulong.MaxValue;
            if (bits != 0)
            {
                return (word << 6) + 63 - BitOperations.LeadingZeroCount(bits);
            }
        }

        return -1;
    }

    /// <summary>Latest start at or before <paramref name="at"/> of so many free grains in a row, or -1.</summary>
    public static int LatestStart(ReadOnlySpan<ulong> duty, ReadOnlySpan<ulong> busy, int at, int length)
    {
        while (at >= 0)
        {
            var taken = LastTaken(duty, busy, at, at + length);
            if (taken < 0)
            {
                return at;
            }

            at = LastFree(duty, busy, taken) + 1 - length;
        }

        return -1;
    }

    private static int LastFree(ReadOnlySpan<ulong> duty, ReadOnlySpan<ulong> busy, int before)
    {
        for (var word = before >> 6; word >= 0; word--)
        {
            var bits = duty[word] & ~busy[word];
            bits &= word == before >> 6 ? (1UL << before) - 1 : ulong.MaxValue;
            if (bits != 0)
            {
                return (word << 6) + 63 - BitOperations.LeadingZeroCount(bits);
            }
        }

        return -1;
    }

    /// <summary>The bits of one word from <paramref name="from"/> on, below <paramref name="to"/>.</summary>
    private static ulong Between(int from, int to) => (ulong.MaxValue << from) & (to > (from | 63) ? ulong.MaxValue : Upto(to - 1));

    private static ulong Upto(int at) => ulong.MaxValue >> (63 - (at & 63));

    /// <summary>Keeps the bits in [from, to) only.</summary>
    public static void Keep(Span<ulong> row, int from, int to)
    {
        Clear(row, 0, Math.Clamp(from, 0, row.Length << 6));
        Clear(row, Math.Clamp(to, 0, row.Length << 6), row.Length << 6);
    }
}
