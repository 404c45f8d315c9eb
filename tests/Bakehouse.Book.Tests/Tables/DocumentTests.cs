namespace Bakehouse.Book.Tests.Tables;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>Documents written by every former version are still read. The files are kept as they were written; never write them anew.</summary>
public sealed class DocumentTests
{
    [Fact]
    public void An_order_of_format_1_is_read()
    {
        var order = Document.ReadOrder(1, Kept("order.1.json"));

        Assert.Equal((405, 3, "Álvarez"), (order.Number, order.Version, order.Customer.Name));
        Assert.Equal(new LocalDateTime(2026, 10, 17, 14, 0), order.Handover.At);
        Assert.Equal("6+8+10", order.SizeInInches);
        Assert.Equal([0.7m, 0.3m], order.Tiers[1].Colours.Select(c => c.Share));
        Assert.Equal(["nuts"], order.Allergies.Avoid);
        // What came since stands at its end; an older reader passes it over.
        Assert.Equal(
            Kept("order.1.json")[..^1].Replace("}]}", "}],\"special\":null}", StringComparison.Ordinal).Replace("\"words\":\"hazelnut\"", "\"words\":\"hazelnut\",\"told\":\"Allergy\",\"judged\":\"\"", StringComparison.Ordinal) + ",\"beyondCapAgreed\":false,\"madeFrom\":null,\"statement\":null,\"price\":null,\"keptUntil\":null,\"onTop\":null,\"eaters\":null,\"guests\":null,\"shortTold\":0}",
            Document.Write(order));
        // An old answer that named something counts as an allergy, never as less.
        Assert.Equal(CustomersWord.Allergy, order.Allergies.Told);
        // Nobody has judged old words: the cake waits until somebody has.
        Assert.True(order.Allergies.MustBeJudged);
    }

    [Fact]
    public void What_is_special_about_a_tier_is_kept()
    {
        var old = Document.ReadOrder(1, Kept("order.1.json"));
        Assert.All(old.Tiers, t => Assert.Null(t.Special));
        var special = new TierSpecial
        {
            Outline = new Outline(OutlineKind.Sign, Length.FromInches(12), Sign: "7"), LayerHeights = [Length.FromMillimetres(20)], IsFalse = true,
            Separator = Length.FromMillimetres(50), Paste = Length.FromMillimetres(4), Drip = Length.FromMillimetres(30),
        };
        var read = Document.ReadOrder(1, Document.Write(old with { Tiers = [old.Tiers[0] with { Special = special }] })).Tiers[0].Special!;
        Assert.Equal(special, read with { LayerHeights = special.LayerHeights });
        Assert.Equal(special.LayerHeights, read.LayerHeights);
    }

    [Fact]
    public void Cupcakes_are_kept_and_what_was_written_before_them_has_none()
    {
        var old = Document.ReadOrder(1, Kept("order.1.json"));
        var batch = Cupcakes.Batch(Guid.NewGuid(), 36, "lemon", [new CoatColour("Ivory", "#F7F0E1", 1)]);
        var text = Document.Write(old with { Tiers = [.. old.Tiers, batch] });
        var read = Document.ReadOrder(1, text);
        Assert.Equal((36, true), (read.Tiers[^1].Special!.Cupcakes!.Count, read.Tiers[^1].StandsBeside));
        Assert.Equal(("6+8+10 and 36 cupcakes", 3), (read.SizeInInches, read.Stack.Count));
        // A special tier of a book before there were cupcakes.
        var before = text.Replace(",\"cupcakes\":{\"count\":36}", "", StringComparison.Ordinal);
        Assert.NotEqual(text, before);
        Assert.Null(Document.ReadOrder(1, before).Tiers[^1].Special!.Cupcakes);
    }

    [Fact]
    public void A_shop_of_format_1_is_read()
    {
        var shop = Document.ReadShop(1, Kept("shop.1.json"));

        Assert.Equal(("Tolliver Row Cakes", "Europe/London"), (shop.Name, shop.Zone));
        Assert.Equal(5, shop.People.Count);
        Assert.Equal(new LocalTime(6, 0), shop.PersonOf("petra")!.Shifts[0].From);
        Assert.Equal(46, shop.Ovens[0].Width.Centimetres);
        Assert.Equal(OvenKind.Fan, shop.Ovens[0].Kind);
    }

    [Fact]
    public void Prices_of_a_shop_and_of_an_order_are_kept()
    {
        Assert.Null(Document.ReadShop(1, Kept("shop.1.json")).Prices);
        var prices = Document.ReadShop(1, Document.Write(SampleBakery.Shop)).Prices!;
        Assert.Equal(SampleBakery.Shop.Prices!.Packs, prices.Packs);
        Assert.Equal(SampleBakery.Shop.Prices.List.Portions, prices.List.Portions);
        Assert.Equal((0.22m, 4.20m), (prices.CupcakePack, prices.List.Cupcake));
        Assert.Equal((17m, 0.35m, 0.15m, 780), (prices.Wage, prices.MarkUp, prices.LeastMarkUp, prices.OrdersAYear));
        var agreed = new AgreedPrice(385.50m, "Regular");
        Assert.Equal(agreed, Document.ReadOrder(1, Document.Write(Document.ReadOrder(1, Kept("order.1.json")) with { Price = agreed })).Price);
    }

    [Fact]
    public void What_is_on_top_who_eats_and_the_owners_limits_are_kept()
    {
        var old = Document.ReadOrder(1, Kept("order.1.json"));
        Assert.Equal((null, null), ((object?)old.OnTop, (object?)old.Eaters));
        var read = Document.ReadOrder(1, Document.Write(old with
        {
            OnTop = new OnTop(new FreshFlowers([new OrderedFlower("rose", FlowerPut.Pick, Stems: 5)], "Tansy Lane"), [new OrderedTopping("flags", 4)]),
            Eaters = new Eaters(true, false) { Asked = "Raw egg: mousse.", RawEggAgreed = true },
        }));
        Assert.Equal(new OrderedFlower("rose", FlowerPut.Pick, Stems: 5), read.OnTop!.Flowers!.Kinds.Single());
        Assert.Equal(("Tansy Lane", new OrderedTopping("flags", 4)), (read.OnTop.Flowers.Florist, read.OnTop.Toppings.Single()));
        Assert.Equal(new Eaters(true, false) { Asked = "Raw egg: mousse.", RawEggAgreed = true }, read.Eaters);
        Assert.Null(Document.ReadShop(1, Kept("shop.1.json")).Limits);
        var limits = new OwnLimits(true, "Nothing cold.", 50_000, "Made at home.");
        Assert.Equal(limits, Document.ReadShop(1, Document.Write(SampleBakery.Shop with { Limits = limits })).Limits);
    }

    [Fact]
    public void A_format_of_the_future_is_refused_by_its_number()
    {
        var refused = Assert.Throws<NotSupportedException>(() => Document.ReadOrder(2, "{}"));
        Assert.Contains("format 2", refused.Message, StringComparison.Ordinal);
    }

    private static string Kept(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Tables", "Kept", file)).TrimEnd();
}
