using System.Diagnostics;
using System.Text.Json;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Planner.Solver;
using Bakehouse.Testing.Planning;

namespace Bakehouse.Planner.Tests.Solver;

/// <summary>The promise of the solving process: whatever becomes of it, the best plan that it told stands.</summary>
public class SolverProcessTests
{
    private static readonly TimeSpan Long = TimeSpan.FromMinutes(2);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static SolverProcess Solver => new(Path.Combine(AppContext.BaseDirectory, "Bakehouse.Benchmarks"), SolverVerb.Name);

    [Fact]
    public async Task The_same_week_plan_and_units_give_the_same_plan_byte_by_byte()
    {
        var (week, plan) = Start("home-080-fridge");
        var one = await Solver.Improve(week, plan, 0.2, Long, cancel: Cancel);
        var other = await Solver.Improve(week, plan, 0.2, Long, cancel: Cancel);
        Assert.Null(one.Trouble);
        Assert.True(one.Levels.CompareTo(Judge.Examine(week, plan).Levels) < 0);
        Assert.Equal(PlanFile.Write(one.Plan), PlanFile.Write(other.Plan));
    }

    [Fact]
    public async Task A_proof_is_told()
    {
        var (week, plan) = Start("tiny-2");
        Assert.True((await Solver.Improve(week, plan, 30, Long, cancel: Cancel)).Proved);
    }

    [Fact]
    public async Task A_process_that_is_killed_while_it_solves_leaves_the_best_plan_that_it_told()
    {
        var (week, plan) = Start("home-095-hands");
        var solver = Solver;
        var told = new List<Plan>();
        var improved = await solver.Improve(week, plan, 1000, Long, Hear, Cancel);
        Assert.NotNull(improved.Trouble);
        Assert.Equal(PlanFile.Write(told[^1]), PlanFile.Write(improved.Plan));
        Assert.Empty(Judge.Examine(week, improved.Plan).Breaches);

        void Hear(Plan better)
        {
            told.Add(better);
            using var process = Process.GetProcessById(solver.Pid);
            process.Kill();
        }
    }

    /// <summary>What the system does for a program that is killed: the other end of the process's input is closed.</summary>
    [Fact]
    public async Task A_process_whose_program_has_gone_ends_by_itself()
    {
        var (week, plan) = Start("home-095-hands");
        using var process = Process.Start(new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "Bakehouse.Benchmarks"), SolverVerb.Name)
        {
            UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true,
        })!;
        await process.StandardInput.WriteLineAsync(JsonSerializer.Serialize(new SolverAsked(WeekFile.Write(week), PlanFile.Write(plan), 1, 100_000)).AsMemory(), Cancel);
        await process.StandardInput.FlushAsync(Cancel);
        Assert.NotNull(await process.StandardOutput.ReadLineAsync(Cancel));
        Assert.False(process.HasExited);

        process.StandardInput.Close();

        using var soon = CancellationTokenSource.CreateLinkedTokenSource(Cancel);
        soon.CancelAfter(TimeSpan.FromSeconds(30));
        await process.WaitForExitAsync(soon.Token);
        Assert.Equal(SolverVerb.Left, process.ExitCode);
    }

    [Fact]
    public async Task When_the_time_is_over_the_process_is_gone_and_the_plan_stands()
    {
        var (week, plan) = Start("home-095-hands");
        var solver = Solver;
        var improved = await solver.Improve(week, plan, 1000, TimeSpan.FromSeconds(3), cancel: Cancel);
        Assert.Empty(Judge.Examine(week, improved.Plan).Breaches);
        Assert.Throws<ArgumentException>(() => Process.GetProcessById(solver.Pid));
    }

    [Theory]
    [InlineData("/no/such/program", "")]
    [InlineData("/bin/false", "")]
    [InlineData("/bin/echo", "hello")]
    public async Task A_program_that_does_not_solve_leaves_the_plan_given_and_says_what_went_wrong(string file, string argument)
    {
        var (week, plan) = Start("tiny-1");
        var improved = await new SolverProcess(file, argument).Improve(week, plan, 1, Long, cancel: Cancel);
        Assert.NotNull(improved.Trouble);
        Assert.Equal(PlanFile.Write(plan), PlanFile.Write(improved.Plan));
    }

    [Fact]
    public void A_plan_that_breaks_a_rule_or_is_worse_is_not_taken()
    {
        var (week, plan) = Start("tiny-1");
        var best = new Bettering(week, plan, _ => Assert.Fail("It was taken."));
        best.Hear(new SolverTold(PlanFile.Write(plan with { Steps = [.. plan.Steps.Select(s => s with { Start = week.FreeFrom })] }), false, false));
        best.Hear(new SolverTold("rubbish", false, false));
        Assert.Equal(PlanFile.Write(plan), PlanFile.Write(best.Now(null).Plan));
    }

    private static (Week Week, Plan Plan) Start(string name)
    {
        var week = WeekFiles.Week(name);
        return (week, new QuickPlanner(20_000).Plan(week, Cancel).Plan!);
    }
}
