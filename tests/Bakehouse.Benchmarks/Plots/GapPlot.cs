using System.Globalization;

namespace Bakehouse.Benchmarks.Plots;

/// <summary>
/// Gap against schedules, a panel for each of the two single-mode sets. Beside ours: sampling by latest finish with justification, a
/// trial of the project on 25 Nov 2026; the best published heuristics at 5,000 and 50,000 schedules (Kolisch and Hartmann 2006, from
/// memory).
/// </summary>
internal static class GapPlot
{
    private const int Wide = 860;
    private const int High = 330;
    private const double Top = 50;
    private const double Floor = 270;
    private const string Ours = "#1f6f54";
    private const string Trial = "#b4572b";
    private const string Print = "#5b5f97";

    private static readonly (double, double)[] TrialJ30 = [(100, 0.85), (1000, 0.37), (5000, 0.21)];
    private static readonly (double, double)[] TrialJ60 = [(100, 12.88), (1000, 12.24), (5000, 11.90)];
    private static readonly (double, double)[] PrintJ30 = [(5000, 0.04), (50000, 0)];
    private static readonly (double, double)[] PrintJ60 = [(5000, 11.10), (50000, 10.71)];

    public static void Draw(string folder)
    {
        var svg = new Svg(Wide, High);
        Panel(svg, 60, "30 activities: % above the optimum", (0, 1.2, 0.2), Gaps(Path.Combine(folder, "j30.csv"), "best_known"), TrialJ30, PrintJ30);
        Panel(svg, 490, "60 activities: % above the critical path", (10.5, 13.5, 0.5), Gaps(Path.Combine(folder, "j60.csv"), "critical_path"), TrialJ60, PrintJ60);
        Key(svg, 60, Ours, "this engine");
        Key(svg, 190, Trial, "sampling with justification, a trial");
        Key(svg, 440, Print, "best in print (Kolisch and Hartmann 2006, from memory)");
        svg.Save(Path.Combine(folder, "gap.svg"), "Gap against schedules generated on two published sets");
    }

    private static (double, double)[] Gaps(string path, string above)
    {
        var table = new ResultTable(path);
        return [.. table.Endings("end_").Select(b => (double.Parse(b, CultureInfo.InvariantCulture), table.Numbers("end_" + b).Zip(table.Numbers(above), (end, least) => 100 * end / least - 100).Average()))];
    }

    private static void Panel(Svg svg, double left, string title, (double From, double To, double Step) axis, params (double Schedules, double Gap)[][] lines)
    {
        double X(double schedules) => left + (Math.Log10(schedules) - 2) / 2.8 * 330;
        double Y(double gap) => Floor - (gap - axis.From) / (axis.To - axis.From) * (Floor - Top);
        svg.Text(left, 28, title, size: 14);
        for (var gap = axis.From; gap <= axis.To + 0.001; gap += axis.Step)
        {
            svg.Line(left, Y(gap), left + 330, Y(gap));
            svg.Text(left - 8, Y(gap) + 4, gap.ToString("0.0", CultureInfo.InvariantCulture), "end");
        }

        foreach (var schedules in new[] { 100, 1000, 5000, 50000 })
        {
            svg.Text(X(schedules), Floor + 18, schedules.ToString("N0", CultureInfo.InvariantCulture), "middle");
        }

        string[] colours = [Ours, Trial, Print];
        for (var n = lines.Length - 1; n >= 0; n--)
        {
            svg.Path(lines[n].Select(p => (X(p.Schedules), Y(p.Gap))), colours[n], dashed: n > 0);
            foreach (var (schedules, gap) in lines[n])
            {
                svg.Dot(X(schedules), Y(gap), colours[n]);
            }
        }
    }

    private static void Key(Svg svg, double x, string colour, string text)
    {
        svg.Dot(x, High - 16, colour);
        svg.Text(x + 10, High - 12, text);
    }
}
