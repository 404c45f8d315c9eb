using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>Earliest and latest starts of a job's steps by longest paths over its holds, others standing still.</summary>
internal sealed class Windows(Shop shop, Board board)
{
    public int[] Early { get; } = new int[shop.Acts.Length];

    public int[] Late { get; } = new int[shop.Acts.Length];

    /// <summary>False if some step has no time at all.</summary>
    public bool Compute(Job job, Build build, Terms terms)
    {
        var duty = terms.Overtime ? shop.Duty : shop.Shift;
        for (var i = build.Acts.Length - 1; i >= 0; i--)
        {
            Forward(build.Acts[i], duty);
        }

        foreach (var order in job.Orders)
        {
            Promise(build, order, terms);
        }

        // What comes after the handover (the van's way back) is held by the promise too.
        for (var i = build.Acts.Length - 1; i >= 0; i--)
        {
            Follow(build.Acts[i]);
        }

        foreach (var act in build.Acts)
        {
            Backward(act, terms);
            if (Early[act.Index] > Late[act.Index] && board.Rows[act.Index].Start < 0)
            {
                return false;
            }
        }

        return true;
    }

    private void Forward(Act act, ulong[][] duty)
    {
        if (board.Rows[act.Index].Start is >= 0 and var placed)
        {
            (Early[act.Index], Late[act.Index]) = (placed, placed);
            return;
        }

        var (early, late) = (shop.FreeFrom, shop.Grains - act.Grains);
        foreach (var link in act.In)
        {
            if (IsIn(link))
            {
                var from = shop.Acts[link.From].Grains;
                early = Math.Max(early, Early[link.From] + from + link.Least);
                late = Math.Min(late, Late[link.From] + from + link.Most);
            }
        }

        (Early[act.Index], Late[act.Index]) = act.PinStart >= 0 ? (act.PinStart, act.PinStart) : (OnDuty(act, early, duty), late);
    }

    /// <summary>First grain from which enough of the people have the time; a bowl may be shared, so only their shifts count.</summary>
    private int OnDuty(Act act, int early, ulong[][] duty)
    {
        if (act.Count == 0)
        {
            return early;
        }

        var none = act.OnMachine ? new ulong[shop.Words] : null;
        for (var t = early; t + act.Grains <= shop.Grains; t++)
        {
            var able = 0;
            foreach (var p in act.Able)
            {
                able += Bits.LastTaken(duty[p], none ?? board.Busy(p), t, t + act.Grains) < 0 ? 1 : 0;
            }

            if (able >= act.Count)
            {
                return t;
            }
        }

        return shop.Grains;
    }

    private void Promise(Build build, WeekOrder order, Terms terms)
    {
        var act = Array.Find(build.Acts, a => a.Step.Id == order.Out);
        if (act is null || board.Rows[act.Index].Start >= 0)
        {
            return;
        }

        var edge = order.EdgeIsEnd ? act.Grains : 0;
        var from = ((order.From + shop.Grain - 1) / shop.Grain) - edge;
        var to = (order.To / shop.Grain) - edge;
        Early[act.Index] = Math.Max(Early[act.Index], terms.From == 0 ? from : to + terms.From);
        Late[act.Index] = Math.Min(Late[act.Index], to + terms.To);
    }

    private void Follow(Act act)
    {
        if (board.Rows[act.Index].Start >= 0)
        {
            return;
        }

        foreach (var link in act.In)
        {
            if (IsIn(link))
            {
                Late[act.Index] = Math.Min(Late[act.Index], Late[link.From] + shop.Acts[link.From].Grains + link.Most);
            }
        }
    }

    private void Backward(Act act, Terms terms)
    {
        if (board.Rows[act.Index].Start >= 0)
        {
            return;
        }

        foreach (var link in act.Out)
        {
            if (IsIn(link))
            {
                Late[act.Index] = Math.Min(Late[act.Index], Late[link.To] - link.Least - act.Grains);
            }
        }

        foreach (var cap in act.CapsOut)
        {
            if (terms.Keeps(cap.Kind) && cap.Kind != CapKind.Buffer && Known(cap.To))
            {
                Early[act.Index] = Math.Max(Early[act.Index], Early[cap.To] - cap.Grains - act.Grains);
            }
        }
    }

    private bool IsIn(Link link) => Known(link.From) && Known(link.To) && present[link.Index];

    private bool Known(int act) => inside[act];

    private readonly bool[] present = new bool[shop.Links.Length];
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
}
