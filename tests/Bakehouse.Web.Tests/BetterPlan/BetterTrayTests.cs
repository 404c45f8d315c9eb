namespace Bakehouse.Web.Tests.BetterPlan;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Solver;
using Bakehouse.Web.Access;
using Bakehouse.Web.BetterPlan;
using Bakehouse.Web.Tests.TheWeek;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;

/// <summary>The offer on the week page: said with its gain, looked at, taken or left.</summary>
public sealed class BetterTrayTests : IDisposable
{
    private readonly BunitContext screen = new();
    private readonly BookInHand book = new() { State = OnTheWall(900) };
    private Plan found = WeeksInHand.ByHand(820).Wall!.Plan;

    public BetterTrayTests()
    {
        screen.Services.AddSingleton<IBook>(book);
        screen.Services.AddSingleton<IClock>(new ClockOf(new FakeTimeProvider(WeeksInHand.Midnight.ToDateTimeOffset())));
        screen.Services.AddSingleton<Improving>((week, _, _) => Task.FromResult(new Improved(found, Judge.Examine(week, found).Levels, false, null)));
        screen.Services.AddSingleton<PlanSearch>();
        book.Future = command => new Foreseen(BookInHand.Accepted(), book.State.Head, ((TakePlan)command).Plan);
    }

    public void Dispose() => screen.Dispose();

    [Fact]
    public void It_is_asked_for_offered_with_its_gain_and_taken_after_a_look_at_what_moves()
    {
        var tray = Tray();
        Tap(tray, "Look for a better plan");
        Assert.Contains("A better plan is in sight. 409 Lindqvist is in time", tray.Find(".better").TextContent, StringComparison.Ordinal);
        Assert.Contains("Nothing has moved yet.", tray.Find(".better").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(tray.FindAll("button"), b => b.TextContent == "Use this plan");
        Tap(tray, "See what moves");
        Assert.NotEmpty(tray.FindAll(".week-foretold li"));
        Tap(tray, "Use this plan");
        var taken = Assert.IsType<TakePlan>(book.Heard[^1]);
        Assert.Equal(("ines", found, book.State.Head), (taken.Person, taken.Plan.Plan, taken.Head));
        Assert.Contains("The new plan hangs since 00:00.", tray.Find(".better").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_left_and_what_fits_no_more_is_not_offered()
    {
        var tray = Tray();
        Tap(tray, "Look for a better plan");
        Tap(tray, "Leave it");
        Assert.Equal("Look for a better plan", Assert.Single(tray.FindAll("button")).TextContent);
        Assert.Empty(book.Heard);

        Tap(tray, "Look for a better plan");
        book.Future = _ => new Foreseen(BookInHand.Accepted() with { Kind = AnswerKind.Refused, Message = "That plan does not fit any more: the work has gone on." }, book.State.Head, book.State.Wall);
        book.Say(book.State with { Head = book.State.Head + 1 });
        tray.WaitForAssertion(() => Assert.Equal("Look for a better plan", Assert.Single(tray.FindAll("button")).TextContent));
    }

    [Fact]
    public void Without_anything_better_it_says_when_it_has_looked()
    {
        found = book.State.Wall!.Plan;
        var tray = Tray();
        Tap(tray, "Look for a better plan");
        Assert.Contains("Looked at Thu 15 Oct, 00:00: nothing better that is worth moving for.", tray.Find(".better").TextContent, StringComparison.Ordinal);
    }

    /// <summary>The week compiled from a book knows the plan on its wall.</summary>
    private static BookState OnTheWall(int boxed)
    {
        var state = WeeksInHand.ByHand(boxed);
        return state with { Week = state.Week! with { Reference = state.Wall!.Plan } };
    }

    private IRenderedComponent<BetterTray> Tray() => screen.Render<BetterTray>(p => p.AddCascadingValue(new Who("ines", "office")));

    private static void Tap(IRenderedComponent<BetterTray> tray, string words) => tray.FindAll("button").Single(b => b.TextContent == words).Click();
}
