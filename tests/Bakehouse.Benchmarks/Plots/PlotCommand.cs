using System.CommandLine;
using Bakehouse.Benchmarks.Measured;

namespace Bakehouse.Benchmarks.Plots;

/// <summary><c>plot</c>: draws what the other commands measured.</summary>
internal static class PlotCommand
{
    public static Command Build()
    {
        var folder = new Option<string>("--in") { Description = "Folder with the results; the drawings go there, too.", DefaultValueFactory = _ => ResultFolder.Path };
        var command = new Command("plot", "Draw the results: gap against schedules, and the weeks against two plain planners.") { folder };
        command.SetAction(p =>
        {
            GapPlot.Draw(p.GetRequiredValue(folder));
            WeeksPlot.Draw(p.GetRequiredValue(folder));
        });
        return command;
    }
}
