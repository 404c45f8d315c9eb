namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>A day is kept for the shop's hours; then its places are free and the order stands as quoted. Our own rules.</summary>
public sealed class KeptDayTests : IDisposable
{
    private readonly BookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_kept_day_holds_its_places_until_its_hours_are_over()
    {
        var kept = (await disk.Write(BookOnDisk.Order(day: 24, stage: Stage.Kept))).Order!;
        Assert.Equal(disk.Clock.GetCurrentInstant() + Duration.FromHours(48), kept.KeptUntil);
        disk.Clock.AdvanceHours(47);
        Assert.Equal("Its day is not kept, or still is.", (await LetGo(kept)).Message);
        Assert.NotEmpty(disk.Book.State.Wall!.Plan.Steps);

        disk.Clock.AdvanceHours(1);
        var gone = (await LetGo(kept)).Order!;
        Assert.Equal((Stage.Quoted, null, kept.Version + 1), (gone.Stage, gone.KeptUntil, gone.Version));
        Assert.Empty(disk.Book.State.Wall?.Plan.Steps ?? []);
        disk.Reopen();
        Assert.Equal((Stage.Quoted, null), (disk.Book.State.Orders.Single().Stage, disk.Book.State.Orders.Single().KeptUntil));
        Assert.Equal(AnswerKind.Refused, (await LetGo(kept)).Kind);
    }

    [Fact]
    public async Task A_change_of_the_order_does_not_keep_it_longer_and_one_that_is_taken_is_never_let_go()
    {
        var kept = (await disk.Write(BookOnDisk.Order(day: 24, stage: Stage.Kept))).Order!;
        disk.Clock.AdvanceHours(24);
        var changed = (await disk.Write(kept with { Notes = "Candles" })).Order!;
        Assert.Equal(kept.KeptUntil, changed.KeptUntil);
        var taken = (await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", kept.Id, changed.Version, Stage.Booked))).Order!;
        Assert.Null(taken.KeptUntil);
        disk.Clock.AdvanceHours(48);
        Assert.Equal(AnswerKind.Refused, (await LetGo(taken)).Kind);
        Assert.Equal(Stage.Booked, disk.Book.State.Orders.Single().Stage);
    }

    [Fact]
    public async Task The_owner_says_how_long_a_day_is_kept()
    {
        var shop = disk.Book.State.Shop!;
        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "office", shop with { Settings = shop.Settings with { KeepHours = 72 } }));
        Assert.Equal(disk.Clock.GetCurrentInstant() + Duration.FromHours(72), (await disk.Write(BookOnDisk.Order(day: 24, stage: Stage.Kept))).Order!.KeptUntil);
    }

    /// <summary>Which other sponge it will be is settled later: the day is kept meanwhile. What is only not liked is noted and stops nobody.</summary>
    [Fact]
    public async Task A_day_is_kept_for_a_cake_that_still_holds_what_must_be_avoided_and_a_dislike_is_taken()
    {
        await disk.Enter(BookOnDisk.Recipes());
        foreach (var (told, stage) in new[] { (CustomersWord.Allergy, Stage.Kept), (CustomersWord.Anaphylaxis, Stage.Kept), (CustomersWord.Dislike, Stage.Booked) })
        {
            var order = BookOnDisk.Order(day: 24, stage: stage, inches: [10, 6]);
            var answer = await disk.Write(order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["milk", "egg", "wheat"], "") { Told = told } });
            Assert.True(answer.Kind == AnswerKind.Accepted, $"{told} {answer.Message} {string.Join(' ', answer.Problems.Select(p => p.Sentence))}");
        }
    }

    private Task<Answer> LetGo(Order order) => disk.Enter(new LetDayGo(BookOnDisk.NewId(), "", "by itself", order.Id));
}
