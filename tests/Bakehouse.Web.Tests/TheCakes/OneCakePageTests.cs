namespace Bakehouse.Web.Tests.TheCakes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Structure;
using Bakehouse.Testing;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheCakes;
using Bunit;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;
using NodaTime.Testing;

/// <summary>One cake: all that is needed to build it, in the order of its drawing.</summary>
public sealed class OneCakePageTests : BunitContext
{
    private readonly BookInHand book = new();
    private readonly Order order;

    public OneCakePageTests()
    {
        order = book.Write(Cakes.Good(), "ines").Order!;
        Services.AddSingleton<IBook>(book);
        Services.AddSingleton<IClock>(new FakeClock(Cakes.Now));
        Services.AddSingleton<TimeProvider>(new MovableTime(Cakes.Now));
    }

    [Fact]
    public void The_top_tier_stands_on_top_and_the_dowels_agree_in_table_count_and_drawing()
    {
        var page = Open();
        Assert.Equal(["6 in", "8 in", "10 in"], page.FindAll(".tier-row h2").Select(h => h.TextContent.Trim()));
        var dowels = page.FindAll(".tier-row dl > div:last-child dd").Select(d => d.TextContent).ToList();
        Assert.Equal(["none", "5 × 10.7 cm", "6 × 10.7 cm"], dowels);
        Assert.Contains("Hidden inside: 11 dowels, 2 boards, 1 rod. 14 parts in all: count them in, and tell whoever cuts it the same count.", page.Find(".cake-facts .danger").TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal(11, page.FindAll(".inside-tray circle.dowel").Count);
        Assert.Contains("no proof of strength", page.Find(".inside-tray").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_may_promise_is_said_in_plain_words()
    {
        var said = Open().Find(".not-promised").TextContent;
        Assert.Contains("Don't promise That it will carry: the dowels are a usual number", said, StringComparison.Ordinal);
        Assert.Contains("what is used in this kitchen can leave traces", said, StringComparison.Ordinal);
        Assert.DoesNotContain("out of the cold", said, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(safe|free from)\b", said);
        var cream = order with { Tiers = [order.Tiers[0] with { Filling = "cream-cheese" }] };
        Assert.Equal(2, NotPromised.Of(cream, BuildSheet.Of(cream)).Count);
        Assert.Contains("the rules of your place come first", NotPromised.Of(cream, BuildSheet.Of(cream))[1], StringComparison.Ordinal);
    }

    /// <summary>Back a stage that a tick brought takes that tick back: else the cake is in work with no work in any plan.</summary>
    [Fact]
    public void Not_handed_over_after_all_takes_the_tick_back_and_withhandoverone_moves_the_stage()
    {
        var handover = new StepKey(order.Id, null, "handover", 1).ToString();
        book.State = book.State with { Orders = [order with { Stage = Stage.HandedOver }] };
        book.Lines = [new CakeLine(Cakes.Now, "wren", CakeDeed.Ticked, handover, "wren", Cakes.Now, "")];
        Back(Open());
        Assert.Equal(handover, Assert.IsType<UndoTick>(book.Heard[^1]).Step);

        book.Lines = [.. book.Lines, new CakeLine(Cakes.Now, "ines", CakeDeed.TakenBack, handover, "wren", null, "")];
        Back(Open());
        Assert.Equal(Stage.Ready, Assert.IsType<MoveStage>(book.Heard[^1]).To);

        static void Back(IRenderedComponent<OneCakePage> page) => page.FindAll("button").First(b => b.TextContent.Trim() == "Not handed over after all").Click();
    }

    [Fact]
    public void What_went_wrong_is_told_among_what_was_done()
    {
        var bake = new StepKey(order.Id, order.Tiers[0].Id, "bake", 1).ToString();
        book.Lines = [new CakeLine(Cakes.Now, "petra", CakeDeed.Cracked, bake, "", null, ""), new CakeLine(Cakes.Now, "petra", CakeDeed.ToldBack, bake, "", null, ""), new CakeLine(Cakes.Now, "petra", CakeDeed.Spared, bake, "", null, "")];
        var told = Open().FindAll("#log li").Select(l => l.TextContent.Trim()).ToList();
        Assert.EndsWith("cracked or sunk, spares from the freezer taken", told[0], StringComparison.Ordinal);
        Assert.EndsWith("what went wrong taken back", told[1], StringComparison.Ordinal);
        Assert.EndsWith("cracked or sunk, baked again", told[2], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Half cut", "cut in half")]
    [InlineData("Outside", "from the front")]
    [InlineData("From above", "from above")]
    public void It_is_drawn_three_ways(string tap, string says)
    {
        var page = Open();
        page.FindAll(".cake-views button").Single(b => b.TextContent == tap).Click();
        Assert.Contains(says, page.Find(".cake-views svg title").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Lifting_and_allergies_stand_on_black_and_no_price_anywhere()
    {
        book.State = book.State with { Shop = book.State.Shop! with { Settings = book.State.Shop.Settings with { TwoPeopleFromKg = 5 } } };
        book.Write(order with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "airways close"), Price = new AgreedPrice(417.25m, "Regular") }, "ines");
        var page = Open();
        Assert.Equal(["Avoid nuts.", "Two people lift.", "Hidden inside:"], page.FindAll(".danger b").Select(b => b.TextContent));
        Assert.Contains("“airways close”", page.Find(".danger").TextContent, StringComparison.Ordinal);
        Assert.Contains("no recipes are written yet. Check the recipe yourself", page.Find("#contains").TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Markup, c => c is '£' or '$' or '€');
        Assert.DoesNotContain("417.25", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void What_comes_off_who_eats_and_the_owners_sentence_stand_on_its_page()
    {
        book.State = book.State with { Cookbook = Starter.Sample, Shop = book.State.Shop! with { Limits = new OwnLimits(false, "", null, "Made in a home kitchen.") } };
        book.Write(
            order with
            {
                MadeFrom = MadeFrom.Of(Starter.Sample), Eaters = new Eaters(true, false),
                OnTop = new OnTop(new FreshFlowers([new OrderedFlower("foxglove", FlowerPut.Pick, Stems: 5)], "Tansy Lane"), [new OrderedTopping("topper")]),
            },
            "ines");
        var page = Open();
        Assert.Equal(["Take off before cutting:", "Children under 5 eat this.", "Hidden inside:"], page.FindAll(".danger b").Select(b => b.TextContent));
        Assert.Contains("5 stems of foxglove, acrylic or wooden topper.", page.Find(".danger").TextContent, StringComparison.Ordinal);
        Assert.Contains("Foxglove: listed as poisonous, each stem in a pick, none in cake. From Tansy Lane.", page.Find(".cake-facts .tray").TextContent, StringComparison.Ordinal);
        Assert.Contains("Colorado State University Extension 7.237, table 1.", page.Find(".cake-facts .tray").TextContent, StringComparison.Ordinal);
        Assert.Contains("Ask your poison centre", page.Find(".cake-facts .tray").TextContent, StringComparison.Ordinal);
        Assert.Equal(["Take off before eating: 5 stems of foxglove, acrylic or wooden topper.", "The owner's sentence: Made in a home kitchen."], page.FindAll("#contains .label-text").Select(l => l.TextContent).TakeLast(2));
        Assert.Contains("On top: nothing 5 foxglove in picks, from Tansy Lane, acrylic or wooden topper", page.Find("#what-changed").TextContent, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)\\b(safe|free from)\\b", page.Find(".cake-facts").TextContent);
    }

    /// <summary>The golden order: its totals and loads are held against published figures in the domain's own tests.</summary>
    [Fact]
    public void Its_face_says_what_it_takes_and_the_working_stands_behind_a_tap_with_formula_and_source()
    {
        var page = Open();
        Assert.Contains("without the top tier 48 or 62", page.Find(".totals").TextContent, StringComparison.Ordinal);
        Assert.Contains("11 dowels, 2 boards, 1 rod. 14 parts in all", page.FindAll(".danger")[^1].TextContent, StringComparison.Ordinal);
        Assert.Contains("Wooden dowel, 6.35 mm across, all cut to 10.7 cm. All in a tier from one mark. Centre rod 9.53 mm across, 27.4 cm long", page.Find(".inside-tray").TextContent, StringComparison.Ordinal);
        var facts = page.Find(".cake-facts .tray").TextContent;
        var mixed = BuildSheet.Of(order).Colours.Single();
        foreach (var said in (string[])["one person, 9.1 kg with its boards; two from 10 kg.", "Travels in one piece.", "Drum 14 in, 12 mm thick.", "Box 14 in square, 15 in high, none is sold so wide and high: make one.", $"Ivory {mixed.ToMix.Litres:0.00} L in one batch, {mixed.KeptBack.Litres:0.00} L kept back"])
        {
            Assert.Contains(said, System.Text.RegularExpressions.Regex.Replace(facts, @"\s+", " ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1)), StringComparison.Ordinal);
        }

        var working = page.Find("details#working");
        Assert.False(working.HasAttribute("open"));
        Assert.Equal(["8 in: 5 × wooden dowel", "10 in: 6 × wooden dowel", "The whole cake", "Boards, seams and room on a shelf"], working.QuerySelectorAll("h3").Select(h => h.TextContent));
        Assert.All(working.QuerySelectorAll("dl > div"), line => Assert.All(line.QuerySelectorAll("dt, dd"), cell => Assert.NotEqual("", cell.TextContent.Trim())));
        var load = StackLoads.Of(BuildSheet.Of(order), SupportKind.Dowel, TierBoard.DoubleCard)[0];
        Assert.Contains($"{load.Each:0.##} N", working.TextContent, StringComparison.Ordinal);
        Assert.Contains("NIOSH, DHHS publication 94-110", working.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_to_look_at_advises_and_never_stops()
    {
        Assert.Empty(Open().FindAll(".looks"));
        book.Write(order with { Tiers = [Cakes.Tier(1, 1, 14), Cakes.Tier(1, 2, 12), Cakes.Tier(1, 3, 10)] }, "ines");
        var page = Open();
        Assert.All(page.FindAll(".looks li b:last-child"), b => Assert.StartsWith("Look: ", b.TextContent, StringComparison.Ordinal));
        Assert.Contains("use hard board", page.Find(".looks").TextContent, StringComparison.Ordinal);
        Assert.Contains("Worked out from averages", page.Find(".looks").TextContent, StringComparison.Ordinal);
        Assert.Contains("in 2 parts, 12+14 and 10 (over 12 kg)", page.Find(".cake-facts").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".controls button"));
    }

    [Fact]
    public void Tiers_of_other_outlines_are_called_by_them()
    {
        CakeTier Cut(int tier, int inches, Outline outline) => Cakes.Tier(1, tier, inches) with { Special = new TierSpecial { Outline = outline } };
        book.Write(order with { Tiers = [Cut(1, 14, new(OutlineKind.Rectangle, Length.FromInches(14), Length.FromInches(10))), Cut(2, 9, new(OutlineKind.Petal, Length.FromInches(9)))] }, "ines");
        var page = Open();
        Assert.Equal(["9 in petal", "14 × 10 in"], page.FindAll(".tier-row h2").Select(h => h.TextContent.Trim()));
        Assert.Contains("9 petal+14×10", page.Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains("its outline, cut from 10 in", page.Find(".tier-row").TextContent, StringComparison.Ordinal);
        Assert.Contains("18 × 14 in", page.FindAll(".tier-row")[1].TextContent, StringComparison.Ordinal);
    }

    /// <summary>8 in and 2.5 cm make a working board of 22.8 cm, with 2 cm for hands 24.8 cm; a bead of 6 mm around 8 in is 0.02 L (worked by hand).</summary>
    [Fact]
    public void Working_boards_seams_and_room_stand_in_the_working()
    {
        var said = Open().Find("details#working").TextContent;
        foreach (var part in (string[])["8 in on its working board", "24.8 × 24.8 cm of shelf", "board of 22.8 cm, 12 mm thick", "Seam under the 8 in tier", "0.02 L", "On its drum", "In its box"])
        {
            Assert.Contains(part, said, StringComparison.Ordinal);
        }

        Assert.Contains(("Working board", "22.8 cm"), Card(order.Tiers[1], "crumb").Build);
        Assert.Contains(("Seam under 8 in", "0.02 L of what is kept back"), Card(null, "stack").Build);
    }

    /// <summary>8 in: a ring of 1.2 cm is π/4·(20.32² − 17.92²) cm² by three fillings of 0.635 cm, 137 mL; a bead of 1 cm is π·20.32·π/4 cm³, 50 mL (worked by hand).</summary>
    [Fact]
    public void A_ring_and_beads_stand_on_the_page_and_on_the_cards()
    {
        var tier = Cakes.Tier(1, 1, 8) with { Special = new TierSpecial { Dam = Length.FromCentimetres(1.2m), FootBead = Length.FromCentimetres(1) } };
        book.Write(order with { Tiers = [tier] }, "ines");
        var row = Open().Find(".tier-row").TextContent;
        Assert.Contains("1.2 cm wide, 0.14 L icing", row, StringComparison.Ordinal);
        Assert.Contains("foot 1 cm, 0.05 L", row, StringComparison.Ordinal);
        Assert.Contains(("Ring around the filling", "1.2 cm wide, 0.14 L icing"), Card(tier, "fill").Build);
        Assert.Contains(("Beads", "foot 1 cm, 0.05 L"), Card(tier, "coat").Build);
    }

    [Fact]
    public void Each_part_on_the_road_has_its_board_its_box_and_who_carries_it()
    {
        book.Write(order with { Tiers = [Cakes.Tier(1, 1, 14), Cakes.Tier(1, 2, 12), Cakes.Tier(1, 3, 10)] }, "ines");
        var sheet = BuildSheet.Of(book.State.Orders.Single());
        var parts = TravelPart.Of(sheet, 0);
        var words = Shell.Words.Of(book.State.Shop);
        var page = Open();
        var said = page.FindAll(".parts li").Select(l => System.Text.RegularExpressions.Regex.Replace(l.TextContent, @"\s+", " ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1))).ToList();
        Assert.Equal(2, said.Count);
        Assert.StartsWith($"12+14 on the drum, 18 in, 12 mm thick, {words.Weight(parts[0].Mass)}: two people or a trolley. Box 18 in square", said[0], StringComparison.Ordinal);
        Assert.StartsWith($"10 on a working board of 27.9 cm, {words.Weight(parts[1].Mass)}: one person. Box 11 in square, 6 in high.", said[1], StringComparison.Ordinal);
        Assert.Contains($"12+14 {words.Weight(parts[0].Mass)} at arm's length", page.FindAll(".danger").First(d => d.TextContent.Trim().StartsWith("Two people", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);
        Assert.Contains("Lifting index of 10 (1 is the limit)", page.Find("#working").TextContent, StringComparison.Ordinal);
        Assert.Contains(("Box for 10", "11 in square, 6 in high"), Card(null, "box").Build);
    }

    [Fact]
    public void Sugar_paste_stands_there_by_colour_with_its_sheet()
    {
        var tier = Cakes.Tier(1, 1, 8) with { Colours = [new CoatColour("Ivory", "#F7F0E1", 0.7m), new CoatColour("Sage", "#C7D5BD", 0.3m)], Special = new TierSpecial { Paste = PasteSheet.Usual } };
        book.Write(order with { Tiers = [tier] }, "ines");
        var paste = BuildSheet.Of([tier], Finish.Smooth, CakeFigures.Usual).Tiers[0].Paste!;
        var words = Shell.Words.Of(book.State.Shop);
        var page = Open();
        foreach (var said in (string[])["sheet of 19 in round", words.MassOf(paste.Rolled * 0.7m) + " Ivory", words.MassOf(paste.Rolled * 0.3m) + " Sage"])
        {
            Assert.Contains(said, page.Find(".tier-row").TextContent, StringComparison.Ordinal);
        }

        Assert.Contains($"{words.MassOf(paste.Rolled * 0.3m)} sugar paste in one piece", page.Find(".mix").TextContent, StringComparison.Ordinal);
        Assert.Contains(("of it Sage", words.MassOf(paste.Rolled * 0.3m)), Card(tier, "cover").Build);
    }

    [Fact]
    public void Layers_are_told_pan_by_pan_on_the_page_and_on_the_cards()
    {
        var tier = Cakes.Tier(1, 1, 8) with { Height = Length.FromCentimetres(8), Layers = 3 };
        book.Write(order with { Tiers = [tier, Cakes.Tier(1, 2, 6)] }, "ines");
        var rows = Open().FindAll(".tier-row");
        Assert.Contains("each split: layers 1+2, 3+4", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("one split: layers 1+2, 3", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("0.86, 0.43 L", rows[1].TextContent, StringComparison.Ordinal);
        Assert.Equal([("2 × 8 in", "0.86, 0.43 L batter"), ("Layers, from the foot", "one split: layers 1+2, 3")], Card(tier, "bake").Build);
        Assert.Equal([("8 in", "2 sponges"), ("Layers, from the foot", "one split: layers 1+2, 3")], Card(tier, "turnout").Build);
    }

    [Fact]
    public void A_tier_too_wide_for_every_oven_is_told_in_halves()
    {
        var tier = Cakes.Tier(1, 1, 16);
        book.Write(order with { Tiers = [tier] }, "ines");
        var row = Open().Find(".tier-row").TextContent;
        Assert.Contains("4 × half-round of 16 in", row, StringComparison.Ordinal);
        Assert.Contains("two halves make a cake; each split: layers 1+2, 3+4", row, StringComparison.Ordinal);
        Assert.Contains(Card(tier, "bake").Build, b => b.Name == "2 × half-round of 16 in, load 1 of 2");
    }

    [Fact]
    public void What_is_kept_back_goes_into_bags()
    {
        Assert.Contains("kept back in 1 bag, for seams and repairs", Open().Find(".mix").TextContent, StringComparison.Ordinal);
        book.Write(order with { Tiers = [Cakes.Tier(1, 1, 14), Cakes.Tier(1, 2, 12), Cakes.Tier(1, 3, 10)] }, "ines");
        Assert.Contains("kept back in 2 bags: one stays for seams, one goes along", Open().Find(".mix").TextContent, StringComparison.Ordinal);
        Assert.Contains(Card(null, "colour").Build, b => b.Figure.EndsWith("in 2 bags: one stays for seams, one goes along", StringComparison.Ordinal));
    }

    private Web.TheKitchen.CardView Card(CakeTier? tier, string operation) =>
        new Web.TheKitchen.CardReader(Bell.WhatRings.At(Cakes.Now, book.State, []), book.State.Shop!).Read(new StepKey(order.Id, tier?.Id, operation, 1).ToString())!;

    /// <summary>A seven of 12 in and 10 cm is cut from slabs of 7.2 × 12 in; half of 18.288 × 30.48 × 10 cm³ in two pans is 1.39 L each (worked by hand).</summary>
    [Fact]
    public void A_number_takes_the_batter_of_its_slab_on_the_page_and_on_the_card()
    {
        var seven = order with { Tiers = [Cakes.Tier(1, 1, 12) with { Special = new TierSpecial { Outline = new Outline(OutlineKind.Sign, Length.FromInches(12), Sign: "7") } }] };
        book.Write(seven, "ines");
        var rows = Open().Find(".tier-row").TextContent;
        Assert.Contains("2 × slab of 7.2 in × 12 in, cut out", rows, StringComparison.Ordinal);
        Assert.Contains("1.39 L a slab", rows, StringComparison.Ordinal);
        Assert.Contains("sponge, in no part of the cake", rows, StringComparison.Ordinal);
        Assert.Contains(("2 × slab of 7.2 in × 12 in, cut out", "1.39 L batter each"), Card(seven.Tiers[0], "mix").Build);
    }

    [Fact]
    public void A_new_version_says_what_changed_and_who_did_it()
    {
        book.Write(order with { Portions = new Portions(55, Cut.Dessert) }, "petra");
        var page = Open();
        Assert.Contains("version 2", page.Find(".cake-head").TextContent, StringComparison.Ordinal);
        Assert.Equal("40 dessert", page.Find("#what-changed s").TextContent);
        Assert.Contains("Petra", page.Find("#what-changed").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivery_says_when_it_leaves()
    {
        book.Write(order with { Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, 24, 10, 0), "Orchard Hall", 90) }, "ines");
        Assert.Equal("Sat 24 Oct, leave 08:30", Open().Find(".leaves").TextContent);
    }

    [Fact]
    public void A_cake_of_one_tier_hides_nothing()
    {
        book.Write(order with { Tiers = [order.Tiers[0]] }, "ines");
        Assert.Empty(Open().FindAll(".inside-tray"));
    }

    private IRenderedComponent<OneCakePage> Open() =>
        Render<OneCakePage>(p => p.AddCascadingValue(new Who("petra", "bench")).Add(c => c.Number, order.Number));
}
