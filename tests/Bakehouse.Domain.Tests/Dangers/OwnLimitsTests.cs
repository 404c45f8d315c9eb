namespace Bakehouse.Domain.Tests.Dangers;

using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

/// <summary>
/// A licence for a home kitchen as its owner quotes it (a scenario of the trade, figures invented): nothing that needs the fridge, 50,000 a year of which 46,800 are
/// booked. Asked for: a cake of 420 with cream cheese and fresh strawberries. 46,800 + 420 = 47,220 = 94.44 % of the cap.
/// </summary>
public sealed class OwnLimitsTests
{
    private static readonly Shop Home = SampleBakery.Shop with
    {
        Limits = new OwnLimits(true, "I sell nothing that needs the fridge.", 50_000, "Made in a home kitchen."),
    };

    private static readonly Order[] Booked = [Priced(2, 40_000), Priced(3, 6_800) with { Stage = Stage.HandedOver }];

    private static readonly Order Asked = Priced(1, 420) with
    {
        Tiers = [Cakes.Tier(1, 1, 8) with { Filling = "cream-cheese" }],
        OnTop = new OnTop(null, [new OrderedTopping("fresh-strawberries")]),
    };

    [Fact]
    public void Cream_cheese_and_strawberries_are_refused_in_her_words_and_buttercream_and_jam_offered()
    {
        var problems = OrderChecks.Problems(Asked, Home, Cakes.Now, owner: true).Where(p => p.Where == "Own limits").ToList();
        Assert.Equal(["Cream cheese", "Fresh strawberries"], problems.Select(p => p.Value));
        Assert.All(problems, p => Assert.StartsWith("“I sell nothing that needs the fridge.”", p.Sentence, StringComparison.Ordinal));
        Assert.Equal("Take buttercream or raspberry jam instead.", problems[0].Try);
        Assert.Contains("Leave them off", problems[1].Try, StringComparison.Ordinal);
    }

    [Fact]
    public void What_she_offers_instead_is_taken()
    {
        var instead = Asked with { Tiers = [Asked.Tiers[0] with { Filling = "raspberry-jam" }], OnTop = null };
        Assert.Empty(OwnLimitChecks.Problems(instead, Home));
        Assert.Empty(OwnLimitChecks.Problems(Asked, SampleBakery.Shop));
        Assert.Empty(OwnLimitChecks.Problems(Asked with { Stage = Stage.Enquiry }, Home));
        // A single layer has no filling.
        Assert.Single(OwnLimitChecks.Problems(Asked with { Tiers = [Asked.Tiers[0] with { Layers = 1 }] }, Home));
    }

    [Fact]
    public void The_cap_is_warned_at_94_percent_and_nothing_is_refused()
    {
        var year = YearlyCap.Of(Asked, 420, Booked, Home)!;
        Assert.Equal((2026, 46_800m, 47_220m, 94), (year.Year, year.Booked, year.Together, year.Percent));
        Assert.Equal((true, false), (year.IsNear, year.IsOver));
        Assert.Null(YearlyCap.Against(Asked, null, Booked, Home, owner: true));
    }

    [Theory]
    [InlineData("3200", false)]
    [InlineData("3200.01", true)]
    public void Above_the_cap_it_is_refused_with_what_is_left(string price, bool refused)
    {
        var problem = YearlyCap.Against(Asked with { Price = new AgreedPrice(decimal.Parse(price, System.Globalization.CultureInfo.InvariantCulture)) }, null, Booked, Home, owner: true);
        Assert.Equal(refused, problem is not null);
        Assert.Equal(refused, problem?.Sentence == "50,000.01 would be booked for 2026; your yearly cap is 50,000, and 3,200 of it is left.");
    }

    [Fact]
    public void Her_figures_are_told_to_her_alone_and_what_has_no_price_can_not_be_counted()
    {
        var told = YearlyCap.Against(Asked with { Price = new AgreedPrice(4_000) }, null, Booked, Home, owner: false)!;
        Assert.Equal("With it the owner's cap for 2026 would be passed.", told.Sentence);
        Assert.DoesNotContain("000", told.Sentence + told.Try, StringComparison.Ordinal);
        var unpriced = Asked with { Price = null };
        Assert.Contains("this cake has none", YearlyCap.Against(unpriced, null, Booked, Home, owner: true)!.Sentence, StringComparison.Ordinal);
        Assert.Null(YearlyCap.Against(unpriced with { Stage = Stage.Kept }, null, Booked, Home, owner: true));
        Assert.Null(YearlyCap.Against(unpriced, null, Booked, SampleBakery.Shop, owner: true));
        // Taken before there was a cap: nobody is held up by it; a price that is struck out is asked for.
        Assert.Null(YearlyCap.Against(unpriced with { Notes = "later" }, unpriced, Booked, Home, owner: true));
        Assert.NotNull(YearlyCap.Against(unpriced, Asked, Booked, Home, owner: true));
    }

    [Fact]
    public void Another_year_an_enquiry_and_itself_do_not_count_and_what_has_no_price_is_named()
    {
        Order[] orders =
        [
            .. Booked, Priced(4, 9_000) with { Handover = Asked.Handover with { At = new LocalDateTime(2027, 1, 2, 10, 0) } }, Priced(5, 9_000) with { Stage = Stage.Enquiry },
            Priced(6, 9_000) with { Stage = Stage.Cancelled }, Priced(7, 0) with { Price = null, Number = 407 }, Asked,
        ];
        var year = YearlyCap.Of(Asked, 420, orders, Home)!;
        Assert.Equal(46_800m, year.Booked);
        Assert.Equal([407], year.Unpriced);
        Assert.Null(YearlyCap.Of(Asked, 420, orders, SampleBakery.Shop));
    }

    [Fact]
    public void What_stood_above_a_lowered_cap_is_not_asked_again_until_it_costs_more()
    {
        var low = Home with { Limits = Home.Limits! with { YearlyCap = 100 } };
        Assert.Null(YearlyCap.Against(Asked with { Notes = "later" }, Asked, Booked, low, owner: true));
        Assert.NotNull(YearlyCap.Against(Asked with { Price = new AgreedPrice(421) }, Asked, Booked, low, owner: true));
        Assert.NotNull(YearlyCap.Against(Asked, Asked with { Stage = Stage.Enquiry }, Booked, low, owner: true));
    }

    [Fact]
    public void Her_sentence_stands_on_the_card_of_the_box() =>
        Assert.Contains(Caution.Of(Cakes.Good(), null, Home, Domain.Recipes.Cookbook.Empty), c => c.Says == "“Made in a home kitchen.”" && c.Steps.Contains("box"));

    [Fact]
    public void What_she_may_not_write_is_named_with_its_value()
    {
        var wrong = Home with { Limits = new OwnLimits(true, new string('x', 400), -5, "Gluten free from our kitchen") };
        var problems = ShopChecks.Problems(wrong);
        Assert.Equal(["cold words", "label", "yearly cap"], problems.Select(p => p.Where));
        Assert.Equal(["free from", "-5"], problems.Skip(1).Select(p => p.Value));
        Assert.Empty(ShopChecks.Problems(Home));
    }

    private static Order Priced(int number, decimal price) => Cakes.Good(number) with { Price = new AgreedPrice(price), Number = 400 + number };
}
