namespace Bakehouse.Planner.Quick;

/// <summary>What is free for one step by itself.</summary>
internal sealed partial class Openings
{
    /// <summary>Starts at which its hands, tools and machines are free.</summary>
    private void Free(Act act, Span<ulong> own, ulong[][] duty)
    {
        own.Clear();
        if (act.PinStart >= 0)
        {
            Bits.Set(own, act.PinStart, act.PinStart + 1);
            return;
        }

        Bits.Set(own, shop.FreeFrom, shop.Grains - act.Grains + 1);
        if (act.Count > 0)
        {
            Hands(act, duty);
            BitRows.And(own, hands);
        }

        foreach (var tool in act.Tools)
        {
            kit.AsSpan().Fill(ulong.MaxValue);
            BitRows.AndNot(kit, board.ToolsTaken(tool));
            BitRows.Run(kit, act.Grains);
            BitRows.And(own, kit);
        }

        if (act.OnMachine)
        {
            Machines(act, own);
        }
    }

    private void Machines(Act act, Span<ulong> own)
    {
        sum.AsSpan().Clear();
        foreach (var m in act.Machines)
        {
            if (act.PinMachine < 0 || act.PinMachine == m)
            {
                kit.AsSpan().Fill(ulong.MaxValue);
                BitRows.AndNot(kit, board.MachineTaken(m));
                BitRows.Run(kit, act.Grains);
                BitRows.Or(sum, kit);
            }
        }

        BitRows.And(own, sum);
        foreach (var m in act.Machines)
        {
            if (act.PinMachine < 0 || act.PinMachine == m)
            {
                // Who shares a run needs no hands or machine of its own.
                BitRows.Or(own, board.RunsOf(m, act.Code));
            }
        }

        Bits.Keep(own, shop.FreeFrom, shop.Grains - act.Grains + 1);
    }

    /// <summary>Starts at which enough of the able people are free.</summary>
    private void Hands(Act act, ulong[][] duty)
    {
        hands.AsSpan().Clear();
        if (act.Count == 1)
        {
            foreach (var p in act.Able)
            {
                BitRows.AndNot(row, duty[p], board.Busy(p));
                BitRows.Run(row, act.Grains);
                BitRows.Or(hands, row);
            }

            return;
        }

        Several(act, duty);
    }

    /// <summary>How many are free is counted by a row of bits for each number.</summary>
    private void Several(Act act, ulong[][] duty)
    {
        var counted = new ulong[act.Count + 1][];
        for (var n = 0; n <= act.Count; n++)
        {
            counted[n] = new ulong[words];
        }

        Array.Fill(counted[0], ulong.MaxValue);
        foreach (var p in act.Able)
        {
            BitRows.AndNot(row, duty[p], board.Busy(p));
            BitRows.Run(row, act.Grains);
            for (var n = act.Count; n > 0; n--)
            {
                for (var w = 0; w < words; w++)
                {
                    counted[n][w] |= counted[n - 1][w] & row[w];
                }
            }
        }

        counted[act.Count].CopyTo(hands, 0);
    }
}
