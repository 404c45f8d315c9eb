namespace Bakehouse.Planner.Quick;

/// <summary>Food clocks: grains out of the cold that are left to each while the job is placed.</summary>
internal sealed partial class Placing
{
    private bool WindClocks()
    {
        for (var c = 0; c < warmLeft.Length; c++)
        {
            warmLeft[c] = shop.ClockLimit[c];
            foreach (var a in shop.ClockActs[c])
            {
                warmLeft[c] -= openings.Has(a) ? shop.Acts[a].Grains : 0;
            }
        }

        foreach (var link in build.Links)
        {
            if (link.Clocks.Length == 0)
            {
                continue;
            }

            var warm = board.Stands[link.Index] is >= 0 and var store && !shop.StoreCold[store]
                ? board.Rows[link.To].Start - board.End(shop.Acts[link.From])
                : board.Stands[link.Index] >= 0 ? 0 : link.WarmLeast;
            Wind(link, -warm);
        }

        return Array.TrueForAll(build.Links, l => Array.TrueForAll(l.Clocks, c => warmLeft[c] >= 0));
    }

    private void Wind(Link link, int by)
    {
        foreach (var c in link.Clocks)
        {
            warmLeft[c] += by;
        }
    }
}
