using Bakehouse.Planner.Quick;

namespace Bakehouse.Planner.Network;

/// <summary>Makes a new list of two, in which each activity still stands after those it has lags from.</summary>
internal sealed class Crossing(Chart chart, Dice dice)
{
    /// <summary>Neighbours that are mixed up at once; tried on published nets of 30 and 60 activities.</summary>
    private const int Stretch = 10;

    private readonly bool[] placed = new bool[chart.Count];

    /// <summary>Mother's up to somewhere, then some in father's order, the rest in mother's; at last a short stretch is mixed up.</summary>
    public void Cross(int[] mother, int[] father, int[] list)
    {
        var (a, b) = (dice.Below(chart.Count + 1), dice.Below(chart.Count + 1));
        Array.Clear(placed);
        var n = Fill(mother, 0, Math.Min(a, b), list);
        n = Fill(father, n, Math.Max(a, b), list);
        Fill(mother, n, list.Length, list);
        Mix(list);
    }

    private int Fill(int[] from, int n, int to, int[] list)
    {
        for (var k = 0; n < to; k++)
        {
            if (!placed[from[k]])
            {
                placed[from[k]] = true;
                list[n++] = from[k];
            }
        }

        return n;
    }

    /// <summary>At each place of the stretch one of the rest of it comes next, if no lag holds it back.</summary>
    private void Mix(int[] list)
    {
        var length = Math.Min(list.Length, Stretch);
        var from = dice.Below(list.Length - length + 1);
        for (var n = from; n < from + length; n++)
        {
            var pick = n + dice.Below(from + length - n);
            var drawn = list[pick];
            if (Free(list.AsSpan(n, pick - n), drawn))
            {
                Array.Copy(list, n, list, n + 1, pick - n);
                list[n] = drawn;
            }
        }
    }

    /// <summary>True if no lag runs from one of these to the activity.</summary>
    private bool Free(ReadOnlySpan<int> these, int activity)
    {
        for (var k = chart.Before.At[activity]; k < chart.Before.At[activity + 1]; k++)
        {
            if (these.Contains(chart.Before.Other[k]))
            {
                return false;
            }
        }

        return true;
    }
}
