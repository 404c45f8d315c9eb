namespace Bakehouse.Web.Tests.Kitchen;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheKitchen;
using NodaTime;

/// <summary>The card of a step: what it takes of its own tier, where it comes from and goes to, and what can hurt.</summary>
public sealed class CardReaderTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 10, 15, 9, 40);
    private static readonly OpenedSample Sample = OpenedSample.At(Now, new QuickPlanner());

    /// <summary>The sample's cake for somebody who avoids nuts.</summary>
    private static Order Nuts => Sample.Orders.Single(o => o.Allergies.Kind == AllergyKind.Avoid);

    private static CardView? Read(string step, Func<BookState, BookState>? but = null)
    {
        var week = Domain.Planning.Week.From(Sample.Orders, Sample.Shop, Sample.Ticks, Sample.Wall, Now);
        var book = new BookState(1, Sample.Shop, Sample.Orders, Sample.Ticks, week, Sample.Wall, []) { Cookbook = Starter.Sample };
        return new CardReader(WhatRings.At(Now, but?.Invoke(book) ?? book, []), Sample.Shop).Read(step);
    }

    [Fact]
    public void Every_step_of_the_sample_has_a_card_with_figures_of_its_own_tier()
    {
        var cards = Sample.Wall.Plan.Steps.Select(s => (s.Step, Card: Read(s.Step))).ToList();
        Assert.All(cards, c => Assert.NotNull(c.Card));
        Assert.All(cards.Where(c => StepKey.Parse(c.Step)!.Value.Operation != "return"), c => Assert.NotEmpty(c.Card!.Build));
        Assert.Equal(Method.Operations.Count - cards.Select(c => StepKey.Parse(c.Step)!.Value.Operation).Distinct().Count(), Method.Operations.Select(o => o.Id).Except(cards.Select(c => StepKey.Parse(c.Step)!.Value.Operation)).Count());
    }

    [Fact]
    public void Filling_says_the_layers_and_the_filling_of_that_tier_as_the_build_sheet_has_them()
    {
        var order = Sample.Orders.First(o => o.Tiers.Count == 3);
        var tier = BuildSheet.Of(order, CakeFigures.Of(Sample.Shop)).Tiers[1];
        var card = Read(new StepKey(order.Id, tier.Tier.Id, "fill", 1).ToString())!;
        Assert.Contains(card.Build, b => b.Figure == Words.Of(Sample.Shop).VolumeOf(tier.Filling));
        Assert.Contains("cold", card.Waits!, StringComparison.OrdinalIgnoreCase);
        Assert.Matches("^(Fridge|Freezer)", card.From);
    }

    [Fact]
    public void Stacking_counts_what_is_hidden()
    {
        var order = Sample.Orders.First(o => o.Tiers.Count == 3);
        var card = Read(new StepKey(order.Id, null, "stack", 1).ToString())!;
        var sheet = BuildSheet.Of(order, CakeFigures.Of(Sample.Shop));
        Assert.Single(card.Stops, s => s.StartsWith($"Hidden inside: {sheet.Supports} dowels, 2 boards, 1 rod. {sheet.Supports + 3} parts in all: count them in", StringComparison.Ordinal));
        Assert.DoesNotContain(card.Build, b => b.Name == "Hidden inside");
        Assert.Single(card.Cautions, c => c.Contains("dowels", StringComparison.Ordinal));
    }

    /// <summary>A light cake of one tier hides nothing and one person carries it; a heavy one of three says its weight and its parts, each once.</summary>
    [Fact]
    public void Weight_and_hidden_parts_stand_only_on_the_cards_of_cakes_that_have_them_and_once()
    {
        var light = Sample.Orders.First(o => o.Tiers.Count == 1);
        foreach (var operation in new[] { "box", "handover", "leavefridge" })
        {
            Assert.DoesNotContain(Read(new StepKey(light.Id, null, operation, 1).ToString())!.Cautions, c => c.Contains("eavy", StringComparison.Ordinal) || c.Contains("dowels", StringComparison.Ordinal) || c.Contains("two people", StringComparison.Ordinal));
        }

        var three = Sample.Orders.First(o => o.Tiers.Count == 3);
        BookState Tall(BookState book) => book with { Orders = [.. book.Orders.Select(o => o.Id != three.Id ? o : o with { Tiers = [.. o.Tiers.Select(t => t with { Height = Domain.Measures.Length.FromCentimetres(15) })] })] };
        foreach (var operation in new[] { "stack", "box", "handover" })
        {
            var cautions = Read(new StepKey(three.Id, null, operation, 1).ToString(), Tall)!.Cautions;
            Assert.Single(cautions, c => c.EndsWith("kg: two people lift", StringComparison.Ordinal));
            Assert.Single(cautions, c => c.Contains("dowels", StringComparison.Ordinal));
            Assert.DoesNotContain(cautions, c => c.StartsWith("Heavy", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_box_that_nobody_sells_is_said_on_the_card_too()
    {
        var three = Sample.Orders.First(o => o.Tiers.Count == 3);
        Assert.EndsWith("none is sold so wide and high: make one", Read(new StepKey(three.Id, null, "box", 1).ToString())!.Build[0].Figure, StringComparison.Ordinal);
    }

    /// <summary>One source: what the cake's page says stands on the cards of stacking, decorating, boxing and handing over in the same words.</summary>
    [Theory]
    [InlineData("stack")]
    [InlineData("decorate")]
    [InlineData("box")]
    [InlineData("handover")]
    public void What_comes_off_and_the_same_count_stand_on_each_card(string operation)
    {
        var order = Sample.Orders.First(o => o.Tiers.Count == 3);
        BookState Flowered(BookState book) => book with
        {
            Orders = [.. book.Orders.Select(o => o.Id != order.Id ? o : o with { OnTop = new OnTop(new FreshFlowers([new OrderedFlower("foxglove", FlowerPut.Pick, Stems: 5)], "Tansy Lane"), []), Eaters = new Eaters(true, false) })],
        };
        var told = Read(new StepKey(order.Id, null, operation, 1).ToString(), Flowered)!.Stops;
        Assert.Contains("Take off before cutting: 5 stems of foxglove.", told);
        Assert.Contains(told, s => s.StartsWith("Hidden inside: 11 dowels, 2 boards, 1 rod, 5 picks. 19 parts in all: count them in, and tell whoever cuts it the same count.", StringComparison.Ordinal));
        Assert.Equal(operation is not "stack", told.Any(s => s.StartsWith("Children under 5 eat this.", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_tier_with_an_allergy_bears_its_stop_sign_on_every_step()
    {
        var tier = Nuts.Tiers[0].Id;
        Assert.All(new[] { "mix", "fill", "coat" }, o =>
        {
            // A batter kept from something begins with a washed bowl besides; that has its own test.
            var stops = Read(new StepKey(Nuts.Id, tier, o, 1).ToString())!.Stops.Where(s => !s.StartsWith("Begin with bowl", StringComparison.Ordinal) && !s.StartsWith("Clean ", StringComparison.Ordinal)).ToList();
            Assert.Equal((2, "Avoid nuts (allergy). This tier contains egg, milk, wheat (gluten)."), (stops.Count, stops[0]));
            Assert.Equal("Avoid nuts: No recipe of this cake lists nuts. What is used in this kitchen can still get in. Wet clean-down before, clean kit, stop sign on every step. Tell the customer what is used in this kitchen.", stops[1]);
        });
        var other = Sample.Orders.First(o => o.Allergies.Kind == AllergyKind.NoneTold);
        Assert.Empty(Read(new StepKey(other.Id, other.Tiers[0].Id, "coat", 1).ToString())!.Stops);
    }

    [Fact]
    public void What_must_be_answered_first_stands_on_the_card_of_a_making_step_and_on_no_other()
    {
        BookState NotReadBack(BookState book) => book with { Orders = [.. book.Orders.Select(o => o.Id == Nuts.Id ? o with { Statement = new Statement("wren", Now) } : o)] };
        var tier = Nuts.Tiers[0].Id;
        Assert.StartsWith("Stop. What must be avoided has not been read back.", Read(new StepKey(Nuts.Id, tier, "mix", 1).ToString(), NotReadBack)!.Stops[0], StringComparison.Ordinal);
        Assert.StartsWith("Avoid nuts", Read(new StepKey(Nuts.Id, tier, "bake", 1).ToString(), NotReadBack)!.Stops[0], StringComparison.Ordinal);
        var walnuts = Starter.Sample.Ingredient("sugar")!.Swapped(new Pack("b", AllergenFacts.Only("walnuts")));
        BookState Nutty(BookState book) => book with { Cookbook = new Cookbook(1, [.. Starter.Sample.Ingredients.Select(i => i.Id == "sugar" ? walnuts : i)], Starter.Sample.Recipes) };
        Assert.Contains(Read(new StepKey(Nuts.Id, tier, "fill", 1).ToString(), Nutty)!.Stops, s => s.StartsWith("Stop. Avoid nuts (allergy). This tier contains egg, milk, walnuts", StringComparison.Ordinal));
        Assert.Contains("Stop: look at cake", DangerWords.Band(NotReadBack(new BookState(1, Sample.Shop, Sample.Orders, [], null, null, [])), [new StepKey(Nuts.Id, tier, "mix", 1).ToString()]), StringComparison.Ordinal);
        Assert.Equal("Avoid nuts", DangerWords.Band(new BookState(1, Sample.Shop, Sample.Orders, [], null, null, []) { Cookbook = Starter.Sample }, [new StepKey(Nuts.Id, tier, "mix", 1).ToString()]));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("5a3b1e0a000004c10102030405060708.cake.fly.1")]
    [InlineData("ffffffffffffffffffffffffffffffff.cake.box.1")]
    public void A_step_that_nobody_has_is_no_card(string step) => Assert.Null(Read(step));
}
