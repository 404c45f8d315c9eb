namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>Far orders hold hours, not minutes, until their day comes near.</summary>
public sealed class NearEntryTests
{
    private static readonly LocalDateTime Far = new(2027, 3, 6, 14, 0); // A Saturday.

    [Fact]
    public async Task A_far_order_is_taken_on_a_budget_and_asked_for_by_it()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var wall = disk.Book.State.Wall;
        var far = At(Far, "Far");

        var asked = await disk.Asked(far);
        Assert.True(asked.Wished is { IsYes: true, Proof: null, Budget.Fits: true });
        Assert.True(asked.Earliest is { IsYes: true, Proof: not null }, "Nearer days still have plans.");

        Assert.Equal(AnswerKind.Accepted, (await disk.Write(far)).Kind);
        Assert.Equal(wall!.Plan.Steps.Select(r => (r.Step, r.Start)), disk.Book.State.Wall!.Plan.Steps.Select(r => (r.Step, r.Start)));
        Assert.DoesNotContain(disk.Book.State.Week!.Steps, s => s.Id.StartsWith(far.Id.ToString("N"), StringComparison.Ordinal));
        Assert.Empty(disk.Book.State.WithoutPlan(disk.Clock.GetCurrentInstant()));
    }

    [Fact]
    public async Task A_day_that_is_full_of_far_orders_is_refused_with_what_is_short_and_another_is_offered()
    {
        using var disk = new BookOnDisk();
        for (var n = 0; n < 12; n++)
        {
            Assert.Equal(AnswerKind.Accepted, (await disk.Write(At(Far, $"Far {n}", 10, 8, 6))).Kind);
        }

        var asked = await disk.Asked(At(Far, "One more", 10, 8, 6));
        Assert.True(asked.Wished is { IsYes: false, Budget.Fits: false });
        Assert.Contains(asked.Offers, o => o.Fit is { IsYes: true, Budget: not null } && o.Fit.Order.Handover.At > Far);
        Assert.True(asked.IsWhole);
    }

    /// <summary>It gets its plan on the day on which it comes within the planned ones, from the program itself, once.</summary>
    [Fact]
    public async Task When_its_day_comes_near_it_gets_its_plan()
    {
        using var disk = new BookOnDisk();
        var far = At(Far, "Far", 9, 6);
        await disk.Write(far);
        Assert.Equal(AnswerKind.Refused, (await Near(disk)).Kind);

        disk.Clock.Reset(new LocalDateTime(2027, 2, 13, 6, 0).InUtc().ToInstant());
        Assert.Equal([far.Id], disk.Book.State.WithoutPlan(disk.Clock.GetCurrentInstant()).Select(o => o.Id));
        var answer = await Near(disk);
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message);
        Assert.Empty(answer.Late);
        Assert.Contains(disk.Book.State.Wall!.Plan.Steps, r => r.Step.StartsWith(far.Id.ToString("N"), StringComparison.Ordinal));
        Assert.Equal(AnswerKind.Refused, (await Near(disk)).Kind);
    }

    /// <summary>Sixteen three-tier cakes for one Saturday: taken by word all the same, and the book says who is late as soon as it can know.</summary>
    [Fact]
    public async Task What_no_longer_fits_is_said_when_it_comes_near()
    {
        using var disk = new BookOnDisk();
        for (var n = 0; n < 16; n++)
        {
            await disk.Write(At(Far, $"Far {n}", 10, 8, 6));
        }

        disk.Clock.Reset(new LocalDateTime(2027, 3, 1, 6, 0).InUtc().ToInstant());
        var answer = await Near(disk);
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        Assert.NotEmpty(answer.Late);
    }

    [Fact]
    public async Task An_order_put_far_away_leaves_the_wall_and_comes_back_with_a_nearer_day()
    {
        using var disk = new BookOnDisk();
        var order = BookOnDisk.Order();
        await disk.Write(order);
        Order Now() => disk.Book.State.Orders.Single();
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(Now() with { Handover = order.Handover with { At = Far } })).Kind);
        Assert.Empty(disk.Book.State.Wall?.Plan.Steps ?? []);
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(Now() with { Handover = order.Handover })).Kind);
        Assert.NotEmpty(disk.Book.State.Wall!.Plan.Steps);
    }

    [Fact]
    public async Task Nobody_without_a_name_enters_anything_else()
    {
        using var disk = new BookOnDisk();
        Assert.Equal(AnswerKind.NotAllowed, (await disk.Write(BookOnDisk.Order(), "")).Kind);
    }

    [Fact]
    public async Task More_than_two_years_ahead_is_refused_with_the_last_day()
    {
        using var disk = new BookOnDisk();
        var answer = await disk.Write(At(new LocalDateTime(2030, 3, 2, 14, 0), "Far"));
        Assert.Contains(answer.Problems, p => p.Where == "When" && p.Sentence.Contains("2028", StringComparison.Ordinal));
    }

    private static Task<Answer> Near(BookOnDisk disk) => disk.Enter(new PlanNear(BookOnDisk.NewId(), "", "by itself"));

    private static Order At(LocalDateTime at, string name, params int[] inches)
    {
        var order = BookOnDisk.Order(name, inches: inches);
        return order with { Handover = order.Handover with { At = at } };
    }
}
