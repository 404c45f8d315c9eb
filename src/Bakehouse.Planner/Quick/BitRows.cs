using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Bakehouse.Planner.Quick;

/// <summary>Whole rows of bits against each other, four words at a time.</summary>
internal static class BitRows
{
    public static void And(Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        var wide = Wide(row);
        var others = Wide(other);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] &= others[i];
        }

        for (var w = wide.Length * Vector<ulong>.Count; w < row.Length; w++)
        {
            row[w] &= other[w];
        }
    }

    public static void Or(Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        var wide = Wide(row);
        var others = Wide(other);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] |= others[i];
        }

        for (var w = wide.Length * Vector<ulong>.Count; w < row.Length; w++)
        {
            row[w] |= other[w];
        }
    }

    /// <summary>What is in one and not in the other.</summary>
    public static void AndNot(Span<ulong> row, ReadOnlySpan<ulong> one, ReadOnlySpan<ulong> other)
    {
        one.CopyTo(row);
        AndNot(row, other);
    }

    /// <summary>Takes the other's bits away.</summary>
    public static void AndNot(Span<ulong> row, ReadOnlySpan<ulong> other)
    {
        var wide = Wide(row);
        var others = Wide(other);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] &= ~others[i];
        }

        for (var w = wide.Length * Vector<ulong>.Count; w < row.Length; w++)
        {
            row[w] &= ~other[w];
        }
    }

    /// <summary>Keeps the bits that begin so many in a row.</summary>
    public static void Run(Span<ulong> row, int length)
    {
        var known = 1;
        for (; 2 * known <= length; known *= 2)
        {
            AndEarlier(row, known);
        }

        AndEarlier(row, length - known);
    }

    /// <summary>Sets the bits that follow a set one within fewer than so many.</summary>
    public static void Spread(Span<ulong> row, int length)
    {
        var known = 1;
        for (; 2 * known <= length; known *= 2)
        {
            OrLater(row, known);
        }

        OrLater(row, length - known);
    }

    /// <summary>Moves all bits up by so many.</summary>
    public static void Later(Span<ulong> row, int by)
    {
        var (whole, part) = (by >> 6, by & 63);
        for (var w = row.Length - 1; w >= 0; w--)
        {
            row[w] = Up(row, w - whole, part);
        }
    }

    private static void OrLater(Span<ulong> row, int by)
    {
        if (by <= 0)
        {
            return;
        }

        var (whole, part) = (by >> 6, by & 63);
        ref var first = ref MemoryMarshal.GetReference(row);
        var w = row.Length;
        for (; w - 4 - whole > 0; w -= 4)
        {
            var at = (nuint)(w - 4 - whole);
            var moved = part == 0 ? Vector256.LoadUnsafe(ref first, at)
                : (Vector256.LoadUnsafe(ref first, at) << part) | (Vector256.LoadUnsafe(ref first, at - 1) >>> (64 - part));
            (Vector256.LoadUnsafe(ref first, (nuint)(w - 4)) | moved).StoreUnsafe(ref first, (nuint)(w - 4));
        }

        for (w--; w >= whole; w--)
        {
            row[w] |= Up(row, w - whole, part);
        }
    }

    private static void AndEarlier(Span<ulong> row, int by)
    {
        if (by <= 0)
        {
            return;
        }

        var (whole, part) = (by >> 6, by & 63);
        ref var first = ref MemoryMarshal.GetReference(row);
        var w = 0;
        for (; w + whole + 5 <= row.Length; w += 4)
        {
            var at = (nuint)(w + whole);
            var moved = part == 0 ? Vector256.LoadUnsafe(ref first, at)
                : (Vector256.LoadUnsafe(ref first, at) >>> part) | (Vector256.LoadUnsafe(ref first, at + 1) << (64 - part));
            (Vector256.LoadUnsafe(ref first, (nuint)w) & moved).StoreUnsafe(ref first, (nuint)w);
        }

        for (; w < row.Length; w++)
        {
            row[w] &= Down(row, w + whole, part);
        }
    }

    private static ulong Up(Span<ulong> row, int word, int part) => word < 0 ? 0
        : part == 0 ? row[word] : (row[word] << part) | (word > 0 ? row[word - 1] >> (64 - part) : 0);

    private static ulong Down(Span<ulong> row, int word, int part) => word >= row.Length ? 0
        : part == 0 ? row[word] : (row[word] >> part) | (word + 1 < row.Length ? row[word + 1] << (64 - part) : 0);

    private static Span<Vector<ulong>> Wide(Span<ulong> row) => MemoryMarshal.Cast<ulong, Vector<ulong>>(row);

    private static ReadOnlySpan<Vector<ulong>> Wide(ReadOnlySpan<ulong> row) => MemoryMarshal.Cast<ulong, Vector<ulong>>(row);
}
