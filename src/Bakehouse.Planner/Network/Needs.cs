namespace Bakehouse.Planner.Network;

/// <summary>
/// What activities take, four resources to a word of 64 bits: each has 15 bits for its units and one above that stays set as long
/// as enough is left, so that one subtraction asks four questions.
/// </summary>
internal sealed class Needs
{
    /// <summary>The bit above each resource's units.</summary>
    public const ulong Guard = 0x8000_8000_8000_8000;

    private const int Lanes = 4;
    private const int Bits = 16;

    public Needs(Net net, Mode[] modes)
    {
        Words = Math.Max(1, (net.Resources.Count + Lanes - 1) / Lanes);
        Of = new ulong[Words][];
        Free = new ulong[Words][];
        for (var w = 0; w < Words; w++)
        {
            var word = w;
            Of[w] = [.. modes.Select(m => Pack(word, r => m.Demand[r], net.Resources.Count))];
            Free[w] = [.. Enumerable.Range(0, net.Horizon).Select(t => Guard | Pack(word, r => Units(net.Resources[r], t), net.Resources.Count))];
        }

        Taking = new int[modes.Length][];
        for (var a = 0; a < modes.Length; a++)
        {
            var own = a;
            Taking[a] = modes[a].Length == 0 ? [] : [.. Enumerable.Range(0, Words).Where(w => Of[w][own] != 0)];
        }
    }

    public int Words { get; }

    /// <summary>Units taken, packed, by word and activity.</summary>
    public ulong[][] Of { get; }

    /// <summary>Units there, packed and guarded, by word and grain.</summary>
    public ulong[][] Free { get; }

    /// <summary>Words of which an activity takes something.</summary>
    public int[][] Taking { get; }

    private static int Units(Renewable resource, int grain) => resource.Calendar is { } c ? c[grain] : resource.Capacity;

    private static ulong Pack(int word, Func<int, int> units, int resources)
    {
        ulong packed = 0;
        for (var r = word * Lanes; r < Math.Min((word + 1) * Lanes, resources); r++)
        {
            packed |= (ulong)units(r) << ((r - word * Lanes) * Bits);
        }

        return packed;
    }
}
