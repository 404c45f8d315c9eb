namespace Bakehouse.Book.Tests.Answers;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Shops;

/// <summary>
/// Eleven days before, sixty guests become eighty-five on a 6+8+10 in whose top tier is kept. 74 fingers, 12 of them on top, 62 to cut, 23 short
/// (the chart that most shops print, common practice, no source). The tiers stay; a 9 × 13 in slab (50 to 54 fingers) is cut beside it.
/// </summary>
public sealed class MoreGuestsTests
{
    [Fact]
    public async Task Sixty_become_eighty_five_and_a_slab_is_cut_beside_the_cake()
    {
        using var disk = new BookOnDisk();
        await disk.Enter(BookOnDisk.Recipes());
        var sixty = new Guests(60, Occasion.Other, Serving.Plated, KeepsTop: true);
        var first = BookOnDisk.Order("Amari", day: 24, inches: [10, 8, 6]) with { Guests = sixty, Portions = new Portions(sixty.Portions, Cut.Coffee) };
        var taken = (await disk.Write(first, "wren")).Order!;
        Assert.Equal((74, 62), (Serves.Of(taken, CakeFigures.Usual)!.All, Serves.Of(taken, CakeFigures.Usual)!.ToCut));

        // The change is not taken silently: 23 are short.
        var eightyFive = sixty with { Invited = 85 };
        var more = taken with { Guests = eightyFive, Portions = new Portions(eightyFive.Portions, Cut.Coffee) };
        var refused = await disk.Write(more, "wren");
        Assert.Equal(AnswerKind.Refused, refused.Kind);
        Assert.Contains("23 short", Assert.Single(refused.Problems).Sentence, StringComparison.Ordinal);

        // An 8 in gives 24, which is too tight; the slab is the better offer.
        var shop = disk.Book.State.Shop!;
        var offers = CuttingCake.For(23, Cut.Coffee, taken.Tiers[0], inches: true, CakeFigures.Usual, t => OrderChecks.OfTiers(taken with { Tiers = [t] }, shop).Count == 0);
        Assert.Equal([(54, false), (24, true)], offers.Select(o => (o.Portions, o.IsTight)));
        Assert.InRange(offers[0].Portions, 50, 54);

        // Structure untouched, version on by one.
        var changed = (await disk.Write(more with { ShortTold = 23 }, "wren")).Order!;
        Assert.Equal(taken.Version + 1, changed.Version);
        Assert.Equal(taken.Tiers.Select(t => (t.Id, t.Diameter, t.Height, t.Layers)), changed.Tiers.Select(t => (t.Id, t.Diameter, t.Height, t.Layers)));

        // The slab, of the same flavour: allergies are asked again, and it has its own price.
        var slab = BookOnDisk.Order("Amari", day: 24) with { Portions = new Portions(23, Cut.Coffee), Tiers = [offers[0].Tier with { Id = Guid.NewGuid() }], Allergies = AllergyAnswer.NotAsked };
        Assert.Equal((taken.Tiers[0].Sponge, taken.Tiers[0].Filling), (slab.Tiers[0].Sponge, slab.Tiers[0].Filling));
        Assert.Equal("Allergies", Assert.Single((await disk.Write(slab, "wren")).Problems).Where);
        var beside = await disk.Write(slab with { Allergies = AllergyAnswer.NoneTold }, "wren");
        Assert.True(beside.Kind == AnswerKind.Accepted, string.Join(" ", beside.Problems));
        Assert.Contains(disk.Book.State.Week!.Steps, s => s.Order == slab.Id.ToString("N") && s.Name == "bake");
        Assert.NotNull(CakePrice.Of(slab, disk.Book.State.Cookbook, SampleBakery.Shop));
    }
}
