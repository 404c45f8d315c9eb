using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>Draws in favour of what is urgent: each by its regret against the least urgent one (Drexl 1991).</summary>
internal static class Regret
{
    /// <param name="dice">What decides.</param>
    /// <param name="keys">By activity; less is more urgent.</param>
    /// <param name="from">Activities to draw from, at least one.</param>
    public static int Draw(Dice dice, int[] keys, List<int> from)
    {
        var worst = int.MinValue;
        foreach (var a in from)
        {
            worst = Math.Max(worst, keys[a]);
        }

        var all = 0;
        foreach (var a in from)
        {
            all += worst - keys[a] + 1;
        }

        var ticket = dice.Below(all);
        foreach (var a in from)
        {
            ticket -= worst - keys[a] + 1;
            if (ticket < 0)
            {
                return a;
            }
        }

        throw new InvalidOperationException($"Ticket {ticket} of {all} drew none of {from.Count}.");
    }
}
