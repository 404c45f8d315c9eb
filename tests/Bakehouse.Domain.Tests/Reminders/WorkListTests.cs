namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using static SmallPlan;

public sealed class WorkListTests
{
    private static readonly Order Cake = Moss();

    /// <summary>Petra boxes at 13:00; Wren takes out at 13:45 and hands over at 14:00; nobody else has work.</summary>
    [Fact]
    public void Each_person_has_the_earliest_open_step_at_hand()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 45));
        var list = Of(plan);
        Assert.Equal(["ines", "petra", "dov", "wren", "sal"], list.Select(p => p.Person));
        Assert.Equal("box", List(list, "petra").AtHand!.Operation);
        Assert.Equal(["leavefridge", "handover"], List(list, "wren").Open.Select(w => w.Operation));
        Assert.Equal((At(13, 45), At(13, 50)), (List(list, "wren").AtHand!.Start, List(list, "wren").AtHand!.End));
        Assert.Null(List(list, "dov").AtHand);
    }

    [Fact]
    public void A_tick_moves_to_the_next_and_a_step_that_is_not_ticked_stays()
    {
        var plan = new SmallPlan(Cake).LastHour(Cake, At(13, 45));
        Assert.Equal("box", List(Of(plan), "petra").AtHand!.Operation);
        plan.Ticks.Add(new Tick(Key(Cake, "leavefridge"), At(13, 46), "wren"));
        Assert.Equal("handover", List(Of(plan), "wren").AtHand!.Operation);
        Assert.Null(List(Of(plan), "petra").AtHand); // boxed before it left the fridge
    }

    /// <summary>Two tiers of one bowl and one load: one tap for the bowl, one for the pans; they go to whoever turns them out.</summary>
    [Fact]
    public void A_batch_is_one_piece_of_work()
    {
        var cake = Testing.Cakes.Good(1, 9, 8) with { Number = 405 };
        var plan = new SmallPlan(cake) { Now = At(6, 0) };
        for (var tier = 0; tier < 2; tier++)
        {
            plan.Row(Key(cake, "mix", tier), At(7, 0), "petra", "bowl20", "m1")
                .Row(Key(cake, "bake", tier), At(7, 20), machine: "oven1", batch: "b1")
                .Row(Key(cake, "turnout", tier), At(8, 15), "ines");
        }

        var list = Of(plan);
        var mix = Assert.Single(List(list, "petra").Open);
        Assert.Equal(("mix", 2, "bowl20"), (mix.Operation, mix.Steps.Count, mix.Machine));
        var outOfOven = List(list, "ines").Open[0];
        Assert.Equal(("bake", 2, "oven1", At(8, 5)), (outOfOven.Operation, outOfOven.Steps.Count, outOfOven.Machine, outOfOven.Start));
    }

    [Fact]
    public void Two_people_carry_together()
    {
        var plan = new SmallPlan(Cake);
        plan.Row(Key(Cake, "box"), At(13, 0), "petra");
        var wall = plan.Wall;
        var both = wall with { Plan = wall.Plan with { Steps = [wall.Plan.Steps[0] with { People = ["petra", "dov"] }] } };
        var list = WorkList.Of(plan.Week, both, [], plan.Now);
        Assert.Equal(["dov"], List(list, "petra").Open[0].With);
        Assert.Equal(["petra"], List(list, "dov").Open[0].With);
    }

    private static IReadOnlyList<PersonWork> Of(SmallPlan plan) => WorkList.Of(plan.Week, plan.Wall, plan.Ticks, plan.Now);

    private static PersonWork List(IReadOnlyList<PersonWork> list, string person) => list.Single(p => p.Person == person);
}
