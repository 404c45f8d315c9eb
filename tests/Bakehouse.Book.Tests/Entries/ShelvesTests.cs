namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>Shelves by the real size of what stands there, from the order to the plan on the wall.</summary>
public sealed class ShelvesTests
{
    /// <summary>
    /// Two shelves of 60 × 40 cm. The drum of a 10 in tier with its gap, 37.6 cm, goes in; it was refused while shelves were counted in rows of
    /// 30 cm.
    /// </summary>
    [Fact]
    public async Task A_ten_inch_cake_is_taken_where_the_fridge_is_forty_centimetres_deep()
    {
        using var disk = await Open(Shelf(1, 60, 40, 30));
        var answer = await disk.Write(BookOnDisk.Order(inches: 10));
        Assert.True(answer.Kind == AnswerKind.Accepted, string.Join(' ', answer.Problems));
        Assert.Empty(Crowded(disk));
    }

    /// <summary>
    /// Many cakes for one little fridge: whatever is taken, late or not, no plan that hangs puts more on a shelf than can be put down; and things
    /// do stand beside each other.
    /// </summary>
    [Fact]
    public async Task No_plan_that_hangs_puts_more_on_a_shelf_than_can_be_put_down()
    {
        using var disk = await Open(Shelf(1, 60, 40, 30), Shelf(2, 55, 36, 30));
        var most = 0;
        foreach (var (i, inches) in new[] { 8, 6, 10, 6, 8, 6, 9, 6 }.Select((n, i) => (i, n)))
        {
            await disk.Write(BookOnDisk.Order($"Cake {i}", day: 17 + (i % 3 == 2 ? 3 : 0), hour: 10 + (i % 4), inches: inches));
            Assert.Empty(Crowded(disk));
            var state = disk.Book.State;
            most = Math.Max(most, Shelving.Of(state.Week!, state.Wall!.From(state.Week!.Epoch)).Where(s => s.Store.Kind == "fridge").Max(s => s.Holds.Count));
        }

        Assert.True(disk.Book.State.Orders.Count >= 4, $"{disk.Book.State.Orders.Count} cakes were taken");
        Assert.True(most >= 2, $"{most} at once");
    }

    /// <summary>
    /// A shelf made smaller under what is planned there: it is planned anew, or a cake is named that finds no room; nothing hangs that does not
    /// go in.
    /// </summary>
    [Fact]
    public async Task A_shelf_made_smaller_plans_anew_what_no_longer_goes_in()
    {
        using var disk = await Open(Shelf(1, 60, 60, 30), Shelf(2, 60, 60, 30));
        foreach (var i in Enumerable.Range(0, 4))
        {
            Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order($"Cake {i}", hour: 10 + i, inches: 8))).Kind);
        }

        var shop = disk.Book.State.Shop!;
        var answer = await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "counter", shop with { Shelves = [.. shop.Shelves.Select(s => s.Kind == ShelfKind.Fridge ? s with { Depth = Length.FromCentimetres(36) } : s)] }));
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message);
        Assert.Empty(Crowded(disk));
    }

    /// <summary>Too tall for every shelf as it is: what to pull out is said only where the owner said that it can be.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_tier_too_tall_hears_which_shelf_to_pull_out(bool pulls)
    {
        using var disk = await Open(Shelf(1, 60, 60, 12), Shelf(2, 60, 60, 12) with { PullsOut = pulls });
        var answer = await disk.Write(BookOnDisk.Order(inches: 8));
        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Contains(pulls ? "Pull out level 2 of Fridge 1: level 1 then has 24 cm of height." : "If level 2 of Fridge 1 can be pulled out, say so under Shop.", string.Join(' ', answer.Problems.Select(p => p.Try)), StringComparison.Ordinal);
    }

    /// <summary>The same from the planner's reason, which knows the step and no shop.</summary>
    [Fact]
    public void A_reason_of_the_planner_is_told_with_the_shelf_to_pull_out()
    {
        var shop = BookOnDisk.Shop with { Shelves = [Shelf(1, 60, 60, 12), Shelf(2, 60, 60, 12) with { PullsOut = true }] };
        var week = Week.From([BookOnDisk.Order(inches: 8)], shop, [], null, NodaTime.Instant.FromUtc(2026, 10, 14, 7, 0));
        var crumb = week.Steps.First(s => s.Name == "crumb");
        var reason = new Reason("It is too tall.", "Clear a taller shelf.", crumb.Order, crumb.Id);
        Assert.Equal(
            "Pull out level 2 of Fridge 1: level 1 then has 24 cm of height. Write that height under Shop and take level 2 out there. Or: Clear a taller shelf.",
            TooTall.With(reason, week, shop).Try);
        Assert.Equal(reason, TooTall.With(reason with { Step = week.Steps.First(s => s.Name == "mix").Id }, week, shop) with { Step = crumb.Id });
    }

    private static IReadOnlyList<ShelfStretch> Crowded(BookOnDisk disk) =>
        disk.Book.State is { Week: { } week, Wall: { } wall } ? Shelving.Crowded(week, wall.From(week.Epoch)) : [];

    private static async Task<BookOnDisk> Open(params Shelf[] shelves)
    {
        var disk = new BookOnDisk(withShop: false);
        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "", "counter", BookOnDisk.Shop with { Shelves = shelves }));
        return disk;
    }

    private static Shelf Shelf(int level, int wide, int deep, int clear) =>
        new($"f{level}", ShelfKind.Fridge, "Fridge 1", level, Length.FromCentimetres(wide), Length.FromCentimetres(deep), Length.FromCentimetres(clear));
}
