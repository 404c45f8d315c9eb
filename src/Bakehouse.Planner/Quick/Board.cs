using System.Numerics;
using System.Runtime.InteropServices;

namespace Bakehouse.Planner.Quick;

/// <summary>A run of a machine: one bowlful or oven load.</summary>
internal struct Run
{
    public int Members;
    public int Machine;
    public int Start;
    public int End;
    public int Code;
    public int Size;
    public ulong Pans;
    public ulong Has;
    public ulong Avoid;
    public ulong People;
    public int First;
}

/// <summary>A wet clean-down: machine, start, person.</summary>
internal readonly record struct Clean(int Machine, int Start, int Person);

/// <summary>Where a step stands; Start is -1 while it is not placed, Run is -1 off the machines.</summary>
internal record struct Row(int Start, ulong People, int Run);

/// <summary>
/// What is taken when: people and runs as bits, tools, machines and stores as counts per grain. Can be copied
/// in microseconds, so that a try costs nothing to take back.
/// </summary>
internal sealed partial class Board
{
    public const short Down = -2;
    public const short Cleaning = -1;
    private const short Closed = 16000;

    private readonly Shop shop;
    private readonly int grains;
    private readonly int words;
    private readonly ulong[] busy;
    private readonly short[] tools;
    private readonly short[] stores;
    private readonly short[] runAt;
    private readonly ulong[] starts;
    private readonly ulong[] startsOf;
    private readonly ulong[] toolsTaken;
    private readonly ulong[] machineTaken;
    private readonly int[] freeRuns;
    private int freeCount;
    private readonly short[] airHas;
    private readonly short[] airAvoid;
    private readonly int[] nextInRun;

    public Board(Shop shop)
    {
        this.shop = shop;
        grains = shop.Grains;
        words = shop.Words;
        busy = new ulong[words * shop.Shift.Length];
        tools = new short[grains * shop.ToolCount.Length];
        stores = new short[grains * shop.StorePlaces.Length];
        runAt = new short[grains * shop.Machines.Length];
        starts = new ulong[words * shop.Machines.Length];
        startsOf = new ulong[words * shop.Machines.Length * shop.Codes];
        toolsTaken = new ulong[words * shop.ToolCount.Length];
        machineTaken = new ulong[words * shop.Machines.Length];
        airHas = new short[grains * shop.Air.Length];
        airAvoid = new short[grains * shop.Air.Length];
        nextInRun = new int[shop.Acts.Length];
        Runs = new Run[shop.Acts.Length + 1];
        freeRuns = [.. Enumerable.Range(0, Runs.Length).Reverse()];
        freeCount = Runs.Length;
        Rows = new Row[shop.Acts.Length];
        Array.Fill(Rows, new Row(-1, 0, -1));
        Stands = new int[shop.Links.Length];
        Array.Fill(Stands, -1);
        OnShelf = new Neighbours(shop.StorePlaces.Length, shop.Links.Length);
        (sizes, beside) = (new int[shop.Links.Length + 1], new (int, int, int)[shop.Links.Length]);
        CloseWhatIsDown();
    }

    public Row[] Rows { get; }

    /// <summary>Store of each hold, or -1.</summary>
    public int[] Stands { get; }

    public Run[] Runs { get; }

    public List<Clean> Cleans { get; } = [];

    public void CopyFrom(Board other)
    {
        other.busy.CopyTo(busy, 0);
        other.tools.CopyTo(tools, 0);
        other.stores.CopyTo(stores, 0);
        other.runAt.CopyTo(runAt, 0);
        other.starts.CopyTo(starts, 0);
        other.startsOf.CopyTo(startsOf, 0);
        other.toolsTaken.CopyTo(toolsTaken, 0);
        other.machineTaken.CopyTo(machineTaken, 0);
        other.freeRuns.CopyTo(freeRuns, 0);
        freeCount = other.freeCount;
        other.airHas.CopyTo(airHas, 0);
        other.airAvoid.CopyTo(airAvoid, 0);
        other.nextInRun.CopyTo(nextInRun, 0);
        other.Rows.CopyTo(Rows, 0);
        other.Stands.CopyTo(Stands, 0);
        OnShelf.CopyFrom(other.OnShelf);
        other.Runs.CopyTo(Runs, 0);
        Cleans.Clear();
        Cleans.AddRange(other.Cleans);
    }

    public int End(Act act) => Rows[act.Index].Start + act.Grains;

    public ReadOnlySpan<ulong> Busy(int person) => busy.AsSpan(person * words, words);

    public bool Free(ulong[][] duty, int person, int from, int to)
        => from >= 0 && to <= grains && Bits.LastTaken(duty[person], Busy(person), from, to) < 0;

    public void Take(ulong people, int from, int to)
    {
        for (var p = 0; people != 0; p++, people >>= 1)
        {
            if ((people & 1) != 0)
            {
                Bits.Set(busy.AsSpan(p * words, words), from, to);
            }
        }
    }

    public void Release(ulong people, int from, int to)
    {
        for (var p = 0; people != 0; p++, people >>= 1)
        {
            if ((people & 1) != 0)
            {
                Bits.Clear(busy.AsSpan(p * words, words), from, to);
            }
        }
    }

    /// <summary>Last grain in [from, to) at which no piece is free, or -1.</summary>
    public int ToolTaken(int tool, int from, int to) => LastAbove(tools, tool, from, to, shop.ToolCount[tool] - 1);

    /// <summary>Last grain in [from, to) at which its places are not free or it can't be put down beside what stands there, or -1.</summary>
    public int StoreFull(int store, int from, int to, Link link)
    {
        var full = LastAbove(stores, store, from, to, shop.StorePlaces[store] - link.Places);
        return Math.Max(full, CrowdedLast(store, Math.Max(from, full + 1), to, link));
    }

    /// <summary>First grain in [from, to) at which its places are not free or it can't be put down, or <paramref name="to"/>.</summary>
    public int StoreFullFirst(int store, int from, int to, Link link)
    {
        var at = stores.AsSpan((store * grains) + from, to - from)
            .IndexOfAnyExceptInRange(short.MinValue, (short)Math.Min(Closed - 1, shop.StorePlaces[store] - link.Places));
        return CrowdedFirst(store, from, at < 0 ? to : from + at, link);
    }

    public void UseTools(Act act, int start, short by)
    {
        foreach (var tool in act.Tools)
        {
            Add(tools, tool, start, start + act.Grains, by);
            Note(tool, start, start + act.Grains);
        }
    }

    /// <summary>Grains at which no piece of the tool is free.</summary>
    public ReadOnlySpan<ulong> ToolsTaken(int tool) => toolsTaken.AsSpan(tool * words, words);

    private void Note(int tool, int from, int to)
    {
        var taken = toolsTaken.AsSpan(tool * words, words);
        for (var t = from; t < to; t++)
        {
            var full = tools[(tool * grains) + t] >= shop.ToolCount[tool];
            taken[t >> 6] = full ? taken[t >> 6] | (1UL << t) : taken[t >> 6] & ~(1UL << t);
        }
    }

    /// <summary>Puts a hold into a store between the placed ends of its steps.</summary>
    public void Stand(Link link, int store)
    {
        Stands[link.Index] = store;
        OnShelf.Add(store, link.Index);
        Add(stores, store, End(shop.Acts[link.From]), Rows[link.To].Start, (short)link.Places);
    }

    public void Unstand(Link link)
    {
        Add(stores, Stands[link.Index], End(shop.Acts[link.From]), Rows[link.To].Start, (short)-link.Places);
        OnShelf.Remove(Stands[link.Index], link.Index);
        Stands[link.Index] = -1;
    }

    private int LastAbove(short[] rows, int row, int from, int to, int most)
    {
        if (to <= from)
        {
            return -1;
        }

        var at = rows.AsSpan((row * grains) + from, to - from).LastIndexOfAnyExceptInRange(short.MinValue, (short)Math.Min(Closed - 1, most));
        return at < 0 ? -1 : from + at;
    }

    private void Add(short[] rows, int row, int from, int to, short by)
    {
        if (to <= from)
        {
            return;
        }

        var cells = rows.AsSpan((row * grains) + from, to - from);
        var whole = MemoryMarshal.Cast<short, Vector<short>>(cells);
        var step = new Vector<short>(by);
        foreach (ref var cell in whole)
        {
            cell += step;
        }

        foreach (ref var cell in cells[(whole.Length * Vector<short>.Count)..])
        {
            cell += by;
        }
    }
}
