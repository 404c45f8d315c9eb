namespace Bakehouse.Web.Tests.SetUpShop;

using AngleSharp.Dom;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.SetUpShop;
using Bakehouse.Web.TakeOrder;
using Bakehouse.Web.TheCakes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;
using NodaTime.Testing;

/// <summary>The owner says which law's list counts, what is done for whom, and what is said about the kitchen. Our own rules.</summary>
public sealed class AllergensTrayTests : BunitContext
{
    private readonly BookInHand book = new();

    public AllergensTrayTests()
    {
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(new FakeTimeProvider(Cakes.Now.ToDateTimeOffset()));
    }

    [Fact]
    public void Her_rules_are_written_read_back_and_show_at_the_counter_and_on_a_cakes_page()
    {
        book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) }, "ines");
        var page = Open();
        page.Find("#law").Change("us");
        page.Find("#traces").Input("Almond and sesame are used in this kitchen.");
        page.Find("#other-allergens").Input("kiwi (kiwis, kiwifruit), coconut");
        page.Find("#rule-nuts").Change("Refuse");
        page.Find("#rule-kiwi").Change("Note");
        Write(page);

        var rules = book.State.Shop!.Allergens;
        Assert.Equal(("us", "Almond and sesame are used in this kitchen."), (rules.Law, rules.Traces));
        Assert.Equal([new AllergenPolicy("nuts", KitchenRule.Refuse), new AllergenPolicy("kiwi", KitchenRule.Note)], rules.Policies);
        Assert.Equal(["kiwi", "coconut"], rules.Others.Select(o => o.Id));
        Assert.Equal(["kiwi", "kiwis", "kiwifruit"], rules.Others[0].Words);
        Assert.Equal("kiwi (kiwis, kiwifruit), coconut", Open().Find("#other-allergens").GetAttribute("value"));
        Assert.Contains("1 refused, 1 noted, the rest with controls", Open().Find("#kitchen-rules summary").TextContent, StringComparison.Ordinal);

        var asked = Render<AllergyFields>(p => p.Add(f => f.Form, new OrderForm { Allergies = AllergyKind.Avoid }).Add(f => f.Rules, rules));
        Assert.Contains("kiwi", asked.FindAll(".avoid button").Select(b => b.TextContent));
        book.State = book.State with { Cookbook = Starter.Sample };
        var cake = Render<OneCakePage>(p => p.AddCascadingValue(new Who("ines", "office")).Add(c => c.Number, book.State.Orders[0].Number)).Find("#contains").TextContent;
        Assert.Contains("Almond and sesame are used in this kitchen.", cake, StringComparison.Ordinal);
        Assert.Contains("No label yet.", cake, StringComparison.Ordinal);
        var told = Weighing.Of(new AllergyAnswer(AllergyKind.Avoid, ["nuts"], ""), Contents(rules), rules).Single();
        Assert.Equal((Verdict.Refuse, true), (told.Verdict, told.Reason.EndsWith("The owner's rule is to refuse.", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("#traces", "Our kitchen is free from nuts.", "Your sentence about this kitchen “free from”: That is a promise")]
    [InlineData("#traces", "Safe for everybody.", "Your sentence about this kitchen “safe”: That is a promise")]
    [InlineData("#other-allergens", "kiwi, (", "Others to look for “kiwi, (”: This list can't be read.")]
    [InlineData("#other-allergens", "kiwi, Kiwi", "Others to look for “kiwi”: That is on the list already.")]
    [InlineData("#other-allergens", "egg", "Others to look for “egg”: That is on the list already.")]
    public void What_can_not_stand_is_named_at_its_field_and_nothing_is_written(string field, string typed, string says)
    {
        var page = Open();
        page.Find(field).Input(typed);
        Write(page);
        Assert.Contains(page.FindAll(".problems li"), l => l.TextContent.Trim().StartsWith(says, StringComparison.Ordinal));
        Assert.Single(page.FindAll($"{field}-wrong"));
        Assert.DoesNotContain(book.Heard, c => c is WriteShop);
    }

    [Fact]
    public void What_stays_on_the_list_keeps_its_id_and_a_rule_leaves_with_its_word()
    {
        book.State = book.State with { Shop = book.State.Shop! with { Allergens = AllergenRules.Usual with { Others = [new Allergen("own-1", "きなこ", "きなこ"), new Allergen("kiwi", "kiwi", "kiwi")], Policies = [new AllergenPolicy("kiwi", KitchenRule.Refuse)] } } };
        var page = Open();
        page.Find("#other-allergens").Input("coconut, きなこ (kinako)");
        Write(page);
        Assert.Equal(["coconut", "own-1"], book.State.Shop!.Allergens.Others.Select(o => o.Id));
        Assert.Empty(book.State.Shop.Allergens.Policies);
    }

    [Fact]
    public void What_a_stricter_rule_would_stop_is_told_before_it_counts()
    {
        var order = book.Write(Cakes.Good() with { MadeFrom = MadeFrom.Of(Starter.Sample) }, "ines").Order!;
        book.State = book.State with { Cookbook = Starter.Sample };
        var page = Open();
        page.Find("#other-allergens").Input("kiwi");
        Write(page);
        Assert.Contains(page.FindAll("[aria-label='Before it counts'] li"), l => l.TextContent.Contains($"{order.Number} Okafor stops at its next step. Nobody has said yet what that contains.", StringComparison.Ordinal));
        Assert.DoesNotContain(book.Heard, c => c is WriteShop);
        page.FindAll("button").First(b => b.TextContent.Trim() == "Write it all the same").Click();
        Assert.Equal("kiwi", Assert.Single(book.State.Shop!.Allergens.Others).Id);
    }

    [Fact]
    public void A_shop_that_says_nothing_stays_as_it_was_and_so_does_a_draft_of_before()
    {
        var rules = new AllergenRules("us", [new AllergenPolicy("nuts", KitchenRule.Refuse)], "Sesame is used here.") { Others = [new Allergen("kiwi", "kiwi", "kiwi", "kiwifruit")] };
        var shop = book.State.Shop! with { Allergens = rules };
        var form = ShopReader.Form(shop, Cookbook.Empty);
        var read = new ShopReader(shop).Read(form).Shop!.Allergens;
        Assert.Equal(("us", rules.Traces, "nuts", "kiwi, kiwifruit"), (read.Law, read.Traces, Assert.Single(read.Policies).Word, string.Join(", ", Assert.Single(read.Others).Words)));
        form.Allergens = null;
        Assert.Same(rules, new ShopReader(shop).Read(form).Shop!.Allergens);
    }

    [Fact]
    public void The_tray_defers_to_the_law_of_the_place_and_promises_nothing()
    {
        var tray = Open().Find("#allergen-rules").TextContent;
        Assert.Contains("The law of your place and licensed practice decide.", tray, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)\\b(safe|free from)\\b", tray);
    }

    private static CakeContents Contents(AllergenRules rules) =>
        CakeContents.Of(Cakes.Good(), Starter.Sample, rules, Bakehouse.Domain.Cakes.CakeFigures.Usual)!;

    private IRenderedComponent<ShopPage> Open() => Render<ShopPage>(p => p.AddCascadingValue(new Who("ines", "office")));

    private static void Write(IRenderedComponent<ShopPage> page) => page.FindAll("button").First(b => b.TextContent.Trim() == "Write the change").Click();
}
