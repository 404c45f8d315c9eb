using System.CommandLine;
using Bakehouse.Benchmarks.Weeks;

var root = new RootCommand("Measure the planner on a folder of problems. Results are CSV with the machine, the budget and the date in each row.")
{
    WeeksCommand.Build(),
};
return await root.Parse(args).InvokeAsync();
