namespace Bakehouse.Web.Tests.TheWeek;

using System.Globalization;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Solver;
using Bakehouse.Web.BetterPlan;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheWeek;
using Bunit;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;

/// <summary>The page: empty, lit up, live.</summary>
public sealed class WeekPageTests : IDisposable
{
    private readonly BunitContext screen = new();
    private readonly BookInHand book = new();
    private readonly FakeTimeProvider time = new(WeeksInHand.Thursday.ToDateTimeOffset());

    public WeekPageTests()
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        screen.Services.AddSingleton<IBook>(book);
        screen.Services.AddSingleton<IClock>(new ClockOf(time));
        screen.Services.AddSingleton<TimeProvider>(time);
        screen.Services.AddSingleton<Improving>((week, plan, _) => Task.FromResult(new Improved(plan, Judge.Examine(week, plan).Levels, false, null)));
        screen.Services.AddSingleton<PlanSearch>();
        screen.JSInterop.SetupModule("/js/week.js").SetupVoid("watch", _ => true).SetVoidResult();
    }

    public void Dispose() => screen.Dispose();

    [Fact]
    public void An_empty_week_says_what_will_stand_here_and_has_one_button()
    {
        book.State = new BookState(1, SampleBakery.Shop, [], [], null, null, []);

        var page = screen.Render<WeekPage>();

        Assert.Contains("No cakes this week. The first order shows here.", page.Markup, StringComparison.Ordinal);
        var button = Assert.Single(page.FindAll(".empty .button"));
        Assert.Equal(("Take an order", "/order"), (button.TextContent, button.GetAttribute("href")));
        Assert.Single(page.FindAll(".empty svg"));
    }

    [Fact]
    public void The_head_names_the_days_and_the_counts_with_their_marks()
    {
        book.State = WeeksInHand.ByHand(820);

        var page = screen.Render<WeekPage>();

        Assert.Equal("Wed 14 to Sat 17 October", page.Find("h1").TextContent);
        Assert.Equal("1 tight: 409 Lindqvist, 20 min", page.Find(".week-counts .says").TextContent.Trim());
        Assert.Single(page.FindAll(".week-counts .says .mark"));
    }

    [Fact]
    public void A_tap_on_a_cake_lights_its_chain_up_and_the_same_tap_lets_go()
    {
        book.State = WeeksInHand.Sample(WeeksInHand.Thursday);
        var page = screen.Render<WeekPage>();
        Assert.DoesNotContain(page.FindAll("figure.wk style"), _ => true);

        page.FindAll("g.head")[2].Click();

        Assert.Equal(".wk .c{opacity:.35}.wk .c2{opacity:1}", page.Find("figure.wk style").TextContent);
        Assert.Contains("lit", page.FindAll("g.row")[2].ClassList);
        Assert.Single(page.FindAll("g.row.lit"));
        var chosen = page.Instance.Picture!.Rows[2].Cake;
        Assert.Contains(chosen.Title, page.Find(".week-chosen h2").TextContent, StringComparison.Ordinal);
        // Every mark of that cake in the lanes carries the class that stays at full strength.
        var strips = page.Instance.Picture.Areas.SelectMany(a => a.Strips).Count(s => s.Cake == chosen.Id);
        Assert.Equal(strips, page.FindAll(".wk-lanes g.c2 rect.s").Count);
        Assert.True(strips > 0);

        page.FindAll("g.head")[2].Click();
        Assert.Empty(page.FindAll("g.row.lit"));
    }

    [Fact]
    public void A_step_says_who_when_where_and_why_then()
    {
        book.State = WeeksInHand.ByHand(820);
        var page = screen.Render<WeekPage>();

        page.FindAll("g.row .w-hit")[2].Click();

        var says = page.Find(".week-chosen").TextContent;
        Assert.Contains("Final coat, 8 in", says, StringComparison.Ordinal);
        Assert.Contains("Dov, Thu 11:00–11:30", says, StringComparison.Ordinal);
        // Baked until 9:00, at least 90 min on the rack: 10:30. An hour in the fridge before the box at 13:20: 12:20.
        Assert.Contains("Not before Thu 10:30: 1 h 30 on the rack after “Bake, 8 in”.", says, StringComparison.Ordinal);
        Assert.Contains("Done by Thu 12:20 at the latest: 1 h in the fridge before “Box” at Thu 13:20.", says, StringComparison.Ordinal);
        Assert.Equal("/cakes/409", page.Find(".week-chosen a").GetAttribute("href"));
    }

    [Fact]
    public void Arrow_keys_move_between_cakes_and_steps_and_enter_opens()
    {
        book.State = WeeksInHand.Sample(WeeksInHand.Thursday);
        var page = screen.Render<WeekPage>();
        void Press(string key) => page.Find("figure.wk").KeyDown(new KeyboardEventArgs { Key = key });

        Press("ArrowDown");
        Press("ArrowDown");
        Assert.Contains("lit", page.FindAll("g.row")[1].ClassList);
        Press("ArrowRight");
        Assert.Single(page.FindAll(".w-chosen"));
        Press("Escape");
        Assert.Empty(page.FindAll(".lit"));
        Press("ArrowDown");
        Press("Enter");
        var number = page.Instance.Picture!.Rows[0].Cake.Number;
        Assert.EndsWith($"/cakes/{number}", screen.Services.GetRequiredService<Microsoft.AspNetCore.Components.NavigationManager>().Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_in_the_book_shows_without_a_reload()
    {
        book.State = WeeksInHand.ByHand(810);
        var page = screen.Render<WeekPage>();
        Assert.Contains("1 with time to spare", page.Find(".week-counts").TextContent, StringComparison.Ordinal);

        book.Say(WeeksInHand.ByHand(940, ticked: "bake"));

        page.WaitForAssertion(() => Assert.Contains("1 late: 409 Lindqvist, 1 h 40", page.Find(".week-counts").TextContent, StringComparison.Ordinal));
        Assert.Single(page.FindAll(".f-late"));
        Assert.Single(page.FindAll("g.row .is-done.b-oven"));
    }

    [Fact]
    public void The_now_line_moves_on_with_the_minute()
    {
        book.State = WeeksInHand.ByHand(820);
        var page = screen.Render<WeekPage>();
        var before = page.Instance.Picture!.NowX!.Value;
        Assert.Contains("now 10:42", page.Markup, StringComparison.Ordinal);

        time.Advance(TimeSpan.FromMinutes(1));

        page.WaitForAssertion(() => Assert.Contains("now 10:43", page.Markup, StringComparison.Ordinal));
        Assert.Equal(page.Instance.Picture!.Axis.PxPerHour / 60, page.Instance.Picture.NowX!.Value - before, 6);
    }

    [Fact]
    public void A_name_is_never_markup()
    {
        book.State = WeeksInHand.ByHand(820, "<script>alert(1)</script>");

        var page = screen.Render<WeekPage>();

        Assert.Empty(page.FindAll("script"));
        Assert.Contains("&lt;scr", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gone_pages_no_longer_listen()
    {
        book.State = WeeksInHand.ByHand(820);
        screen.Render<WeekPage>();
        Assert.Equal(1, book.Listeners);

        await screen.DisposeComponentsAsync();

        Assert.Equal(0, book.Listeners);
    }
}
