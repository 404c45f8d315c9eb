namespace Bakehouse.Planner.Quick;

/// <summary>
/// At which grains each step of a job could start: where hands, tools and machines are free beside what stands, and where the steps before
/// it can start too, at gaps that some store allows. One bit for each grain. A start that is missing here is impossible; one that is here
/// may still fail, by a full store, a food clock or a step of the same job.
/// </summary>
internal sealed partial class Openings(Shop shop, Board board)
{
    private readonly int words = shop.Words;
    private readonly ulong[] bits = new ulong[shop.Acts.Length * shop.Words];
    private readonly ulong[] row = new ulong[shop.Words];
    private readonly ulong[] sum = new ulong[shop.Words];
    private readonly ulong[] kit = new ulong[shop.Words];
    private readonly ulong[] hands = new ulong[shop.Words];
    private readonly ulong[][] atFirst = [new ulong[shop.Acts.Length * shop.Words], new ulong[shop.Acts.Length * shop.Words]];
    private readonly int[][] looked = [new int[shop.Acts.Length], new int[shop.Acts.Length]];
    private int look;
    private readonly ulong[] known = new ulong[shop.Words];
    private Job job = null!;
    private Terms terms;
    private ulong[][] duty = [];
    private readonly bool[] present = new bool[shop.Links.Length];
    private readonly bool[] reached = new bool[shop.Acts.Length];
    private readonly bool[] inside = new bool[shop.Acts.Length];

    /// <summary>Names the steps and holds that exist in this build.</summary>
    public void Enter(Build build)
    {
        Array.Clear(present);
        Array.Clear(inside);
        foreach (var link in build.Links)
        {
            present[link.Index] = true;
        }

        foreach (var act in build.Acts)
        {
            inside[act.Index] = true;
        }
    }

    public bool Has(Link link) => present[link.Index];

    public bool Has(int act) => inside[act];

    public ReadOnlySpan<ulong> Of(Act act) => Own(act.Index);

    /// <summary>First step first; false if some step has no start at all.</summary>
    /// <param name="known">The board is as it was at the last call: what is free need not be looked up again.</param>
    public bool Compute(Job job, Build build, Terms terms, ulong[][] duty, bool known)
    {
        (this.job, this.terms, this.duty) = (job, terms, duty);
        look += known ? 0 : 1;
        Array.Clear(reached);
        for (var i = build.Acts.Length - 1; i >= 0; i--)
        {
            if (!Compute(build.Acts[i], true))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Looks again at a step and at those that must come shortly before it, now that other steps of the job stand. True if that took
    /// starts away.
    /// </summary>
    public bool Refresh(Act act, Act[] shortlyBefore)
    {
        if (shortlyBefore.Length == 0)
        {
            return false;
        }

        Own(act.Index).CopyTo(known);
        foreach (var before in shortlyBefore)
        {
            Compute(before, false);
        }

        Compute(act, false);
        return !Own(act.Index).SequenceEqual(known);
    }

    /// <summary>The starts of one step while all others stand.</summary>
    public void Only(Job job, Act act, Terms terms, ulong[][] duty)
    {
        (this.job, this.terms, this.duty) = (job, terms, duty);
        Array.Clear(reached);
        foreach (var link in act.In)
        {
            _ = present[link.Index] && Compute(shop.Acts[link.From], false);
        }

        foreach (var cap in act.CapsIn)
        {
            _ = inside[cap.From] && Compute(shop.Acts[cap.From], false);
        }

        Compute(act, false);
    }

    private bool Compute(Act act, bool first)
    {
        var own = Own(act.Index);
        reached[act.Index] = true;
        if (board.Rows[act.Index].Start is >= 0 and var placed)
        {
            own.Clear();
            Bits.Set(own, placed, placed + 1);
            return true;
        }

        if (first)
        {
            FreeAtFirst(act).CopyTo(own);
        }
        else
        {
            Free(act, own, duty);
        }

        Follow(act, own, terms);
        Promise(job, act, own, terms);
        return own.ContainsAnyExcept(0UL);
    }

    /// <summary>Looked up once for the usual hours and once with overtime, while none of the job stands.</summary>
    private Span<ulong> FreeAtFirst(Act act)
    {
        var kind = terms.Overtime ? 1 : 0;
        var free = atFirst[kind].AsSpan(act.Index * words, words);
        if (looked[kind][act.Index] != look)
        {
            Free(act, free, duty);
            looked[kind][act.Index] = look;
        }

        return free;
    }

    private Span<ulong> Own(int act) => bits.AsSpan(act * words, words);

    /// <summary>Starts that the steps before it allow, and those after it that stand already.</summary>
    private void Follow(Act act, Span<ulong> own, Terms terms)
    {
        foreach (var link in act.In)
        {
            if (present[link.Index] && inside[link.From])
            {
                After(own, link.From, link.Least, link.Most);
            }
        }

        foreach (var cap in act.CapsIn)
        {
            // A limit may begin at a step that no wait leads from; then its starts are not known yet.
            if (reached[cap.From] && terms.Keeps(cap.Kind) && cap.Kind != CapKind.Buffer)
            {
                Bits.Keep(own, 0, Bits.LastSet(Own(cap.From), shop.Grains) + shop.Acts[cap.From].Grains + terms.Limit(cap) + 1);
            }
        }

        foreach (var link in act.Out)
        {
            if (present[link.Index] && board.Rows[link.To].Start is >= 0 and var to)
            {
                Bits.Keep(own, to - link.Most - act.Grains, to - link.Least - act.Grains + 1);
            }
        }
    }

    private void After(Span<ulong> own, int from, int least, int most)
    {
        Own(from).CopyTo(row);
        BitRows.Later(row, shop.Acts[from].Grains + least);
        BitRows.Spread(row, Math.Min(most, shop.Grains) - least + 1);
        BitRows.And(own, row);
    }

    private static void Promise(Job job, Act act, Span<ulong> own, Terms terms)
    {
        foreach (var order in job.Outs)
        {
            if (order.Act == act.Index)
            {
                Bits.Keep(own, Math.Max(order.From, terms.From == 0 ? 0 : order.To + terms.From), order.To + terms.To + 1);
            }
        }
    }
}
