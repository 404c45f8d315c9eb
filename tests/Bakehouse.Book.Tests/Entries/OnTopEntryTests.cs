namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>Flowers, things on top, who eats and the owner's own limits are looked at by the book, whatever screen an order comes from.</summary>
public sealed class OnTopEntryTests
{
    private static readonly OnTop Unnamed = new(new FreshFlowers([], ""), []);

    [Fact]
    public async Task A_cake_with_flowers_that_nobody_named_is_kept_and_not_taken()
    {
        using var disk = new BookOnDisk();
        var kept = await disk.Write(BookOnDisk.Order(stage: Stage.Kept) with { OnTop = Unnamed }, "wren");
        Assert.Equal(AnswerKind.Accepted, kept.Kind);

        var refused = await disk.Enter(new MoveStage(BookOnDisk.NewId(), "wren", "counter", kept.Order!.Id, 1, Stage.Booked));
        Assert.Equal((AnswerKind.Refused, "On top"), (refused.Kind, refused.Problems[0].Where));

        var named = kept.Order with { Stage = Stage.Booked, OnTop = Unnamed with { Flowers = new FreshFlowers([new OrderedFlower("foxglove", FlowerPut.Pick, Stems: 5)], "Tansy Lane") } };
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(named, "wren")).Kind);
        Assert.Equal("foxglove", disk.Book.State.Orders.Single().OnTop!.Flowers!.Kinds.Single().Species);
    }

    [Fact]
    public async Task Nuts_on_top_meet_the_word_of_somebody_who_must_avoid_them()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(BookOnDisk.Recipes());
        var order = BookOnDisk.Order() with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") };
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(order)).Kind);

        var nutty = await disk.Write(BookOnDisk.Order("Hale") with { Allergies = order.Allergies, OnTop = new OnTop(null, [new OrderedTopping("whole-almonds")]) });
        Assert.Contains(nutty.Problems, p => p.Where == "Allergies" && p.Sentence.Contains("almonds", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_child_at_the_table_is_asked_about_once_and_what_stands_holds_nobody_up()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(BookOnDisk.Recipes());
        var order = BookOnDisk.Order() with { Eaters = new Eaters(SmallChildren: true, Vulnerable: false), Decoration = Decoration.Medium };
        var refused = await disk.Write(order, "wren");
        Assert.Equal((AnswerKind.Refused, "Eaters"), (refused.Kind, Assert.Single(refused.Problems).Where));

        var words = EaterQuestions.Of(order, Domain.Allergens.CakeContents.Of(order, Starter.Sample, BookOnDisk.Shop.Allergens, Domain.Cakes.CakeFigures.Of(BookOnDisk.Shop)), Starter.Sample)!.Words;
        Assert.Equal("A small child can choke on: sugar pearls. Alcohol goes in, baked or not: Vanilla extract.", words);
        var taken = await disk.Write(order with { Eaters = order.Eaters with { Asked = words } }, "wren");
        Assert.Equal(AnswerKind.Accepted, taken.Kind);
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(taken.Order! with { Inscription = "3" }, "wren")).Kind);
    }

    /// <summary>46,800 booked of 50,000: 420 more is taken, 3,200.01 is not (figures invented; see OwnLimitsTests).</summary>
    [Fact]
    public async Task The_yearly_cap_is_held_for_everybody_and_the_fridge_too()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "counter", disk.Book.State.Shop! with { Limits = new OwnLimits(true, "", 50_000, "Made in a home kitchen.") }));
        await disk.Write(BookOnDisk.Order("Hale") with { Price = new AgreedPrice(46_800) });

        var over = await disk.Write(BookOnDisk.Order("Moss") with { Price = new AgreedPrice(3_200.01m) });
        Assert.Contains("your yearly cap is 50,000, and 3,200 of it is left", Assert.Single(over.Problems).Sentence, StringComparison.Ordinal);
        var cold = BookOnDisk.Order("Moss") with { Price = new AgreedPrice(420) };
        cold = cold with { Tiers = [cold.Tiers[0] with { Filling = "cream-cheese" }] };
        Assert.Equal("Own limits", Assert.Single((await disk.Write(cold)).Problems).Where);
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(cold with { Tiers = [cold.Tiers[0] with { Filling = "buttercream" }] })).Kind);
        Assert.Equal("Made in a home kitchen.", disk.Book.State.Shop!.Limits!.Label);
    }
}
