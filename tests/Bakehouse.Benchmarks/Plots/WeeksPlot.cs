using System.Globalization;

namespace Bakehouse.Benchmarks.Plots;

/// <summary>On how many bakery weeks a plan is better, equal or worse than each of two plain planners, level by level.</summary>
internal static class WeeksPlot
{
    private const int Wide = 860;
    private const double Left = 190;
    private const double Row = 24;

    private static readonly (string Beginning, string Colour, string Letters)[] Parts =
        [("better", "#1f6f54", "#fff"), ("equal", "#c9c3b8", "#2a2622"), ("worse", "#b4572b", "#fff")];

    public static void Draw(string folder)
    {
        var table = new ResultTable(Path.Combine(folder, "weeks.csv"));
        var rows = table.Column("week").Select(w => w.Split('-')[0]).Zip(table.Column("against_rule"), table.Column("against_solver")).ToList();
        var kinds = new[] { "tiny", "home", "small", "busy", "ask", "repair" }.Where(k => rows.Exists(r => r.First == k)).ToList();
        var svg = new Svg(Wide, (int)(70 + kinds.Count * (2 * Row + 12) + 30));
        var unit = (Wide - Left - 30) / Math.Max(1, kinds.Max(k => rows.Count(r => r.First == k)));
        svg.Text(20, 28, "Bakery weeks on which this planner is better, equal or worse, level by level", size: 14);
        var y = 50.0;
        foreach (var kind in kinds)
        {
            var own = rows.Where(r => r.First == kind).ToList();
            svg.Text(20, y + Row, kind);
            Bar(svg, y, unit, "the baker's rule", own.Select(r => r.Second));
            Bar(svg, y + Row, unit, "plain solver model", own.Select(r => r.Third));
            y += 2 * Row + 12;
        }

        Key(svg, y + 12);
        svg.Save(Path.Combine(folder, "weeks.svg"), "Bakery weeks against two plain planners");
    }

    private static void Bar(Svg svg, double y, double unit, string peer, IEnumerable<string> verdicts)
    {
        svg.Text(Left - 8, y + 16, peer, "end");
        var (all, x) = (verdicts.ToList(), Left);
        foreach (var (beginning, colour, letters) in Parts)
        {
            var count = all.Count(v => v.StartsWith(beginning, StringComparison.Ordinal));
            svg.Box(x, y + 2, count * unit, Row - 4, colour);
            if (count > 0)
            {
                svg.Text(x + count * unit / 2, y + 16, count.ToString(CultureInfo.InvariantCulture), "middle", letters);
            }

            x += count * unit;
        }
    }

    private static void Key(Svg svg, double y)
    {
        var x = Left;
        foreach (var (beginning, colour, _) in Parts)
        {
            svg.Box(x, y - 10, 12, 12, colour);
            svg.Text(x + 18, y, beginning);
            x += 100;
        }
    }
}
