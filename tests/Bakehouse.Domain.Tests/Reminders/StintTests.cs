namespace Bakehouse.Domain.Tests.Reminders;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using static SmallPlan;

/// <summary>What one tap takes, what is assumed, and where one question is asked (common practice, no source).</summary>
public sealed class StintTests
{
    private static readonly Order Cake = Testing.Cakes.Good(1, 9, 8) with { Number = 405 };

    /// <summary>Dov fills both tiers one after the other: one tap. Crumb coats wait half an hour, so each is another.</summary>
    [Fact]
    public void Pieces_of_one_operation_in_a_row_are_one_tap()
    {
        var list = Dov(Filled(At(9, 0)));
        Assert.Equal(["fill", "crumb"], list.Stints.Select(s => s.Operation));
        Assert.Equal((2, At(9, 0), At(9, 35)), (list.Stints[0].Steps.Count, list.Stints[0].Start, list.Stints[0].End));
        Assert.Equal([BlockKind.Fill, BlockKind.Coat], list.Blocks(_ => true).Select(b => b.Kind));
    }

    /// <summary>The crumb coat begins when the half hour of settling is over: its hour is forced; filling from noon is a free choice.</summary>
    [Fact]
    public void Only_a_forced_hour_is_told()
    {
        var list = Dov(Filled(At(9, 0)));
        Assert.Equal([false, true], list.Stints.Select(s => s.IsTimed));
    }

    /// <summary>Crumb coats planned until 10:10 are taken as done from then on; the fillings before them are not, whatever the hour.</summary>
    [Fact]
    public void A_step_is_assumed_when_its_planned_time_has_passed_and_all_before_it_is_done()
    {
        var plan = Filled(At(10, 10));
        Assert.Empty(AssumedIn(plan)); // nobody said that the tiers are filled
        plan.Ticks.AddRange([new Tick(Key(Cake, "fill", 0), At(9, 20), "dov"), new Tick(Key(Cake, "fill", 1), At(9, 35), "dov")]);
        Assert.Equal([Key(Cake, "crumb", 0), Key(Cake, "crumb", 1)], AssumedIn(plan).Order(StringComparer.Ordinal));
        Assert.Empty(AssumedIn(plan, At(9, 59)));
    }

    /// <summary>What somebody says is not done is not assumed by what was planned until then.</summary>
    [Fact]
    public void What_is_denied_is_not_assumed()
    {
        var plan = Filled(At(10, 10));
        plan.Ticks.AddRange([new Tick(Key(Cake, "fill", 0), At(9, 20), "dov"), new Tick(Key(Cake, "fill", 1), At(9, 35), "dov")]);
        var denied = new Dictionary<string, Instant> { [Key(Cake, "crumb", 0)] = At(10, 10) };
        Assert.Equal([Key(Cake, "crumb", 1)], AssumedIn(plan, null, denied));
    }

    /// <summary>Assumed work stays on the screen until the next begins, so that it can be ticked.</summary>
    [Fact]
    public void Assumed_work_is_shown_until_the_next_begins()
    {
        var plan = Filled(At(10, 10));
        plan.Ticks.AddRange([new Tick(Key(Cake, "fill", 0), At(9, 20), "dov"), new Tick(Key(Cake, "fill", 1), At(9, 35), "dov")]);
        plan.Row(Key(Cake, "coat", 0), At(10, 50), "dov");
        Assert.Equal(("crumb", true), (Dov(plan).AtHand!.Operation, Dov(plan).AtHand!.IsAssumed));
        Assert.Equal("coat", Dov(plan, At(10, 50)).AtHand!.Operation);
    }

    /// <summary>Boxing may not be guessed: it asks about the décor, once, and no earlier step asks.</summary>
    [Fact]
    public void One_question_is_asked_where_it_may_not_be_guessed()
    {
        var cake = Moss();
        var plan = new SmallPlan(cake) { Now = At(12, 55) }
            .Row(Key(cake, "decorate"), At(11, 0), "dov").Row(Key(cake, "box"), At(13, 0), "petra");
        plan.Ticks.Add(new Tick(Key(cake, "coat", 0), At(8, 0), "dov"));
        var box = List(plan, "petra").AtHand!;
        Assert.Equal([Key(cake, "decorate")], box.Doubts);
        plan.Ticks.Add(new Tick(Key(cake, "decorate"), At(11, 20), "dov"));
        Assert.Empty(List(plan, "petra").AtHand!.Doubts);
    }

    private static SmallPlan Filled(Instant now) => new SmallPlan(Cake) { Now = now }
        .Row(Key(Cake, "fill", 0), At(9, 0), "dov").Row(Key(Cake, "fill", 1), At(9, 20), "dov")
        .Row(Key(Cake, "crumb", 0), At(9, 50), "dov").Row(Key(Cake, "crumb", 1), At(10, 0), "dov");

    private static PersonWork Dov(SmallPlan plan, Instant? now = null) => List(plan, "dov", now);

    private static PersonWork List(SmallPlan plan, string person, Instant? now = null) =>
        WorkList.Of(plan.Week, plan.Wall, plan.Ticks, now ?? plan.Now).Single(p => p.Person == person);

    private static List<string> AssumedIn(SmallPlan plan, Instant? now = null, Dictionary<string, Instant>? notDone = null) =>
        [.. new AssumedNow(plan.Week, plan.Wall, plan.Ticks, now ?? plan.Now, notDone ?? []).Steps];
}
