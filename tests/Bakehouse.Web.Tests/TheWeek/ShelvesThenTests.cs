namespace Bakehouse.Web.Tests.TheWeek;

using Bakehouse.Domain.Planning;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheWeek;
using Bunit;
using NodaTime;

/// <summary>The shelves at one hour, as the week page draws them.</summary>
public sealed class ShelvesThenTests
{
    [Fact]
    public void Every_change_of_the_plan_is_drawn_with_everything_where_it_was_worked_out_to_stand()
    {
        var state = WeeksInHand.Sample(WeeksInHand.Thursday);
        var (week, plan) = (state.Week!, state.Wall!.From(state.Week!.Epoch));
        var stretches = Shelving.Of(week, plan).Where(s => s.Store.Kind is "fridge" or "freezer" or "cool").ToList();
        Assert.Contains(stretches, s => s.Holds.Count > 2);
        var seen = 0;
        var then = ShelvesThen.Of(state, week.Epoch)!;
        for (Instant? last = null; last != then.At; then = ShelvesThen.Of(state, then.Until)!)
        {
            last = then.At;
            var minute = (int)(then.At - week.Epoch).TotalMinutes;
            var drawn = then.Units.SelectMany(u => u.Levels).ToList();
            Assert.Equal(stretches.Where(s => s.Span.From <= minute && minute < s.Span.To).Sum(s => s.Holds.Count), drawn.Sum(l => l.Things.Count));
            Assert.All(drawn, l => Assert.Equal("", l.Crowded));
            Assert.All(drawn, Fits);
            seen += drawn.Sum(l => l.Things.Count);
        }

        Assert.True(seen > 20);
    }

    [Fact]
    public void The_drawing_is_to_scale_and_the_front_lies_below()
    {
        using var screen = new BunitContext();
        var shelf = new ShelfView(2, 55, 60, [new ThingView(13, 12, 22, 22, true, "409", "409 8 in", 20.32m, "#F7F0E1"), new ThingView(35, 40, 36, 36, false, "411", "411 6+8 in in its box", 0, "")], "");
        var page = screen.Render<ShelfFromAbove>(p => p.Add(s => s.Shelf, shelf));
        Assert.Equal("Level 2 from above: 409 8 in, 411 6+8 in in its box", page.Find("svg").GetAttribute("aria-label"));
        var board = page.FindAll("circle")[0];
        Assert.Equal(("40", "145", "33"), (board.GetAttribute("cx"), board.GetAttribute("cy"), board.GetAttribute("r")));
        Assert.Equal("30.48", page.FindAll("circle")[1].GetAttribute("r"));
        Assert.Equal(["409", "411"], page.FindAll("text").Select(t => t.TextContent));
    }

    [Fact]
    public void A_shelf_that_does_not_hold_says_what_is_missing_and_draws_nothing_false()
    {
        var state = WeeksInHand.Sample(WeeksInHand.Thursday);
        var tight = state with { Week = state.Week! with { Stores = [.. state.Week.Stores.Select(s => s.Kind == "fridge" ? s with { Floor = new(300, 300) } : s)] } };
        var then = ShelvesThen.Of(tight, WeekPicture.Of(state, WeeksInHand.Thursday, 0, 1224)!.Areas[0].Area.Fullest!.From)!;
        var crowded = Assert.Single(then.Units.SelectMany(u => u.Levels).Where(l => l.Crowded.Length > 0).Take(1));
        Assert.Matches("^Fridge [12], level [1-4], .*: .* stand .*\\. [0-9]+ cm of width are missing\\.$", crowded.Says);
        Assert.Empty(crowded.Things);
    }

    private static void Fits(ShelfView shelf)
    {
        foreach (var (t, i) in shelf.Things.Select((t, i) => (t, i)))
        {
            Assert.True(t.X >= t.Wide / 2 && t.X <= shelf.Width - (t.Wide / 2) && t.Y >= t.Deep / 2 && t.Y <= shelf.Depth - (t.Deep / 2));
            Assert.All(shelf.Things.Take(i).Where(o => o.IsRound && t.IsRound), o => Assert.True(
                Math.Sqrt(Math.Pow((double)(o.X - t.X), 2) + Math.Pow((double)(o.Y - t.Y), 2)) >= (double)((o.Wide + t.Wide) / 2) + 1.99));
        }
    }
}
