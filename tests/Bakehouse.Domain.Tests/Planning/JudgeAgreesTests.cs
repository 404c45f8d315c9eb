namespace Bakehouse.Domain.Tests.Planning;

using System.Globalization;
using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>
/// Source: verdicts and levels by a judge written apart from this project in another language, measured by the project on
/// 25 November 2026 (Weeks/plans/levels.csv).
/// </summary>
public sealed class JudgeAgreesTests
{
    public static TheoryData<string> Plans => [.. WeekFiles.Table("plans/levels.csv").Select(r => r["plan"])];

    [Theory]
    [MemberData(nameof(Plans))]
    public void On_every_plan_the_levels_and_the_broken_rules_agree(string file)
    {
        var expected = WeekFiles.Table("plans/levels.csv").Single(r => r["plan"] == file);

        var verdict = Judge.Examine(WeekFiles.Week(expected["week"]), WeekFiles.Plan(file[..^".json".Length]));

        Assert.Equal(expected["feasible"] == "yes", verdict.Feasible);
        var levels = new Levels(N("L0"), N("L1"), N("L2"), N("L3"), N("L4"), N("L5"), N("L6"));
        Assert.Equal(levels, verdict.Levels);
        var broken = verdict.Breaches.GroupBy(b => b.Rule).Select(g => $"{g.Key}:{g.Count()}");
        Assert.Equal(expected["broken"], string.Join(' ', broken));

        long N(string level) => long.Parse(expected[level], CultureInfo.InvariantCulture);
    }

    [Fact]
    public void A_plan_written_and_read_again_is_the_same()
    {
        var plan = WeekFiles.Plan("small-080-hands.rule");
        var (again, problems) = PlanFile.Read(PlanFile.Write(plan));
        Assert.Empty(problems);
        Assert.Equal(PlanFile.Write(plan), PlanFile.Write(again!));
    }
}
