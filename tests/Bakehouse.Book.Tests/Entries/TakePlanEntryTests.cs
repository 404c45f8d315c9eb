namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>A plan that was found beside the work: taken if it fits, is better and leaves what is near alone. Our own rules.</summary>
public sealed class TakePlanEntryTests : IDisposable
{
    private readonly BookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    private Wall Wall => disk.Book.State.Wall!;

    [Fact]
    public async Task A_better_plan_is_taken_and_hangs_on_the_wall()
    {
        var (better, worse, _) = await disk.PlanMadeWorse();
        var answer = await Take(better);
        Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
        Assert.Equal(Starts(better), Starts(Wall));
        disk.Reopen();
        Assert.Equal(Starts(better), Starts(Wall));
        Assert.NotEqual(Starts(worse), Starts(Wall));
    }

    [Fact]
    public async Task The_same_plan_or_a_worse_one_is_not_taken()
    {
        var (better, worse, _) = await disk.PlanMadeWorse();
        Assert.Equal("It is no better than the plan on the wall.", (await Take(worse)).Message);
        await Take(better);
        Assert.Equal("It is no better than the plan on the wall.", (await Take(worse)).Message);
    }

    [Fact]
    public async Task A_plan_that_breaks_a_rule_or_lacks_a_step_does_not_fit()
    {
        var (better, _, _) = await disk.PlanMadeWorse();
        var plan = better.Plan;
        var coat = plan.Steps.First(r => r.Step.Contains(".coat.", StringComparison.Ordinal));
        foreach (var wrong in new[]
        {
            plan with { Steps = [.. plan.Steps.Where(r => r != coat)] },
            plan with { Steps = [.. plan.Steps.Select(r => r == coat ? r with { Start = plan.Steps.Min(s => s.Start) } : r)] },
            plan with { Steps = [.. plan.Steps.Select(r => r == coat ? r with { People = ["nobody"] } : r)] },
        })
        {
            var answer = await Take(better with { Plan = wrong });
            Assert.Equal((AnswerKind.Refused, "That plan does not fit any more: the work has gone on."), (answer.Kind, answer.Message));
        }
    }

    /// <summary>It breaks no rule, and the other cake gains by it.</summary>
    [Fact]
    public async Task A_plan_that_makes_one_cake_later_is_not_taken_and_names_it()
    {
        var other = (await disk.Write(BookOnDisk.Order("Hale", day: 16))).Order!;
        var (better, _, _) = await disk.PlanMadeWorse();
        var handover = better.Plan.Steps.Single(r => r.Step.StartsWith(other.Id.ToString("N"), StringComparison.Ordinal) && r.Step.Contains(".handover.", StringComparison.Ordinal));
        var late = better.Plan with { Steps = [.. better.Plan.Steps.Select(r => r == handover ? r with { Start = r.Start + 5 } : r)] };
        var answer = await Take(better with { Plan = late });
        Assert.Empty(Judge.Examine(disk.Book.State.Week!, late).Breaches);
        Assert.Equal((AnswerKind.Refused, $"It would make order {other.Number} later than it is."), (answer.Kind, answer.Message));
    }

    [Fact]
    public async Task What_is_done_meanwhile_or_near_by_now_stays()
    {
        var (better, _, _) = await disk.PlanMadeWorse();
        var moved = better.Plan.Steps.First(r => Wall.From(better.Epoch).Steps.Single(s => s.Step == r.Step).Start != r.Start);
        disk.Clock.Reset(Wall.Epoch + Duration.FromMinutes(Wall.Plan.Steps.Single(r => r.Step == moved.Step).Start - 60));
        await disk.Book.Refresh(TestContext.Current.CancellationToken);
        Assert.Equal("That plan does not fit any more: the work has gone on.", (await Take(better)).Message);
    }

    [Fact]
    public async Task Whoever_looked_before_a_change_looks_again_and_only_owner_and_baker_decide()
    {
        var (better, _, _) = await disk.PlanMadeWorse();
        Assert.Equal(AnswerKind.Clash, (await Take(better, disk.Book.State.Head - 1)).Kind);
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(new TakePlan(BookOnDisk.NewId(), "wren", "counter", better, disk.Book.State.Head))).Kind);
        using var empty = new BookOnDisk();
        Assert.Equal("Nothing is planned.", (await empty.Enter(new TakePlan(BookOnDisk.NewId(), "ines", "counter", better, empty.Book.State.Head))).Message);
    }

    private Task<Answer> Take(Wall wall, int? head = null) => disk.Enter(new TakePlan(BookOnDisk.NewId(), "ines", "counter", wall, head ?? disk.Book.State.Head));

    private static IEnumerable<(string Step, Instant At)> Starts(Wall wall) => wall.Plan.Steps.Select(r => (r.Step, wall.Epoch + Duration.FromMinutes(r.Start))).OrderBy(r => r.Step, StringComparer.Ordinal);
}
