namespace Bakehouse.Domain.Tests.Orders;

using Bakehouse.Domain.Orders;

public sealed class StageTests
{
    [Fact]
    public void Every_stage_says_what_may_follow_and_none_follows_itself()
    {
        foreach (var stage in Enum.GetValues<Stage>())
        {
            Assert.NotEmpty(Stages.After(stage));
            Assert.DoesNotContain(stage, Stages.After(stage));
        }
    }

    [Fact]
    public void From_an_enquiry_every_stage_can_be_reached()
    {
        var reached = new HashSet<Stage> { Stage.Enquiry };
        while (reached.SelectMany(Stages.After).Any(reached.Add))
        {
        }

        Assert.Equal(Enum.GetValues<Stage>().Length, reached.Count);
    }
}
