namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;

public sealed class WeekFromTests
{
    private static readonly Order Cake = Cakes.Good() with { Number = 401, Version = 1 };

    [Fact]
    public void The_week_begins_on_the_monday_before_and_reaches_a_week_past_the_last_day_that_may_be_planned()
    {
        var week = Week.From([Cake], SampleBakery.Shop, [], null, Cakes.Now);
        Assert.Equal(new LocalDateTime(2026, 10, 5, 0, 0).InZoneStrictly(London).ToInstant(), week.Epoch);
        Assert.Equal(new LocalDateTime(2026, 11, 11, 0, 0).InZoneStrictly(London).ToInstant(), week.Epoch + Duration.FromMinutes(week.Horizon));
    }

    [Fact]
    public void A_far_order_is_in_no_week_until_it_was_begun()
    {
        var soon = SampleBakery.Shop with { Settings = new ShopSettings(PlanDays: 3) };
        var far = Week.From([Cake], soon, [], null, Cakes.Now);
        Assert.Empty(far.Steps);

        var mix = Week.From([Cake], SampleBakery.Shop, [], null, Cakes.Now).Steps[0].Id;
        var begun = Week.From([Cake], soon, [new Tick(mix, Cakes.Now, "petra")], null, Cakes.Now);
        Assert.True(begun.Orders.Single().To < begun.Horizon);
    }

    [Theory]
    [InlineData(Stage.Enquiry, false)]
    [InlineData(Stage.Kept, true)]
    [InlineData(Stage.Ready, true)]
    [InlineData(Stage.HandedOver, false)]
    [InlineData(Stage.Cancelled, false)]
    public void Only_what_holds_a_place_in_the_plan_is_in_it(Stage stage, bool planned) =>
        Assert.Equal(planned, Week.From([Cake with { Stage = stage }], SampleBakery.Shop, [], null, Cakes.Now).Steps.Count > 0);

    /// <summary>Saturday 24 October 2026 ends the summer time in London the night after: each shift still begins at its hour on the wall.</summary>
    [Fact]
    public void Shifts_keep_their_hour_on_the_wall_over_a_clock_change()
    {
        var week = Week.From([Cake], SampleBakery.Shop, [], null, Cakes.Now);
        Assert.All(week.People.SelectMany(p => p.Shifts), s => Assert.Contains(
            (week.Epoch + Duration.FromMinutes(s.From)).InZone(London).TimeOfDay,
            SampleBakery.Shop.People.SelectMany(p => p.Shifts).Select(x => x.From)));
    }

    [Fact]
    public void Everything_lies_on_the_grain_and_the_week_is_whole()
    {
        var week = Week.From([Cake, Cakes.Good(2, 12, 9) with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") }], SampleBakery.Shop, [], null, Cakes.Now);
        int[] minutes =
        [
            week.FreeFrom, week.Horizon,
            .. week.Steps.Select(s => s.Minutes), .. week.Orders.SelectMany(o => new[] { o.From, o.To, o.Buffer }),
            .. week.Holds.SelectMany(h => h.In).SelectMany(i => new[] { i.Least, i.Most }),
            .. week.Clocks.Select(c => c.Limit), .. week.Ages.Select(a => a.Most),
            .. week.People.SelectMany(p => p.Shifts.Concat(p.Extra)).SelectMany(s => new[] { s.From, s.To }),
        ];
        Assert.All(minutes, m => Assert.Equal(0, m % WeekTime.Grain));
        var (steps, stores) = (week.Steps.Select(s => s.Id).ToHashSet(), week.Stores.Select(s => s.Id).ToHashSet());
        Assert.Equal(steps.Count, week.Steps.Count);
        Assert.All(week.Holds, h => Assert.True(steps.Contains(h.From) && steps.Contains(h.To) && h.In.All(i => stores.Contains(i.Store)), h.Id));
    }

    [Fact]
    public void Filling_the_small_tier_first_does_not_say_that_the_large_one_is_done()
    {
        var fill = new StepKey(Cake.Id, Cake.Tiers[2].Id, "fill", 1).ToString();
        var week = Week.From([Cake], SampleBakery.Shop, [new Tick(fill, Cakes.Now, "dov")], null, Cakes.Now);
        var done = week.Fixed.Select(f => StepKey.Parse(f.Step!)!.Value).ToList();
        Assert.Contains(done, k => k.Tier == Cake.Tiers[2].Id && k.Operation == "bake");
        Assert.DoesNotContain(done, k => k.Tier == Cake.Tiers[0].Id);
    }

    [Fact]
    public void What_runs_by_the_wall_is_started_unless_the_one_who_did_it_is_gone()
    {
        var mix = new StepKey(Cake.Id, Cake.Tiers[0].Id, "mix", 1).ToString();
        var epoch = WeekTime.Of(London, Cakes.Now, 21).Epoch;
        var start = (int)(Cakes.Now - epoch).TotalMinutes - 5;
        var wall = new Wall(epoch, new Plan("w", new Dictionary<string, string>(), [new StepRow(mix, start, ["petra"], "bowl20", null)], [], []));
        var week = Week.From([Cake], SampleBakery.Shop, [], wall, Cakes.Now);
        Assert.Equal("started", Assert.Single(week.Fixed).Why);

        var without = SampleBakery.Shop with { People = [.. SampleBakery.Shop.People.Where(p => p.Id != "petra")] };
        Assert.Empty(Week.From([Cake], without, [], wall, Cakes.Now).Fixed);
    }

    /// <summary>
    /// An allergy that is told while the batter is mixed, in a bowl that met it: the mix has not begun by then, and is planned anew behind a
    /// clean-down. One that lay between counts, as long as the one who did it is still in the shop.
    /// </summary>
    [Fact]
    public void A_mix_in_a_bowl_that_met_what_it_is_kept_from_has_not_begun()
    {
        var nutty = Cakes.Good(2, 8) with { Number = 402, Version = 1, Tiers = [Cakes.Good(2, 8).Tiers[0] with { Sponge = "carrot" }] };
        var kept = Cake with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") };
        var first = new StepKey(nutty.Id, nutty.Tiers[0].Id, "mix", 1).ToString();
        var mix = new StepKey(kept.Id, kept.Tiers[0].Id, "mix", 1).ToString();
        var epoch = WeekTime.Of(London, Cakes.Now, 21).Epoch;
        var now = (int)(Cakes.Now - epoch).TotalMinutes;
        Wall Hung(params CleanRow[] cleans) => new(epoch, new Plan(
            "w", new Dictionary<string, string>(), [new StepRow(first, now - 90, ["petra"], "bowl20", null), new StepRow(mix, now - 5, ["petra"], "bowl20", null)], [], cleans));
        Tick[] done = [new(first, Cakes.Now - Duration.FromMinutes(70), "petra")];

        Assert.DoesNotContain(Week.From([kept, nutty], SampleBakery.Shop, done, Hung(), Cakes.Now).Fixed, f => f.Step == mix);
        Assert.Contains(Week.From([Cake, nutty], SampleBakery.Shop, done, Hung(), Cakes.Now).Fixed, f => f.Step == mix && f.Why == "started");
        Assert.Contains(Week.From([kept, nutty], SampleBakery.Shop, done, Hung(new CleanRow("bowl20", now - 60, ["petra"])), Cakes.Now).Fixed, f => f.Step == mix && f.Why == "started");
        Assert.DoesNotContain(Week.From([kept, nutty], SampleBakery.Shop, done, Hung(new CleanRow("bowl20", now - 60, ["nobody"])), Cakes.Now).Fixed, f => f.Step == mix);
        Assert.DoesNotContain(Week.From([kept, nutty], SampleBakery.Shop, done, Hung(new CleanRow("bowl20", now - 85, ["petra"])), Cakes.Now).Fixed, f => f.Step == mix);
    }

    /// <summary>A bowl with nuts, cleaned down, and a batter kept from them that runs: what was made for others in between brings no nuts back.</summary>
    [Fact]
    public void A_clean_down_before_a_batter_that_runs_counts_for_what_was_made_since()
    {
        var nutty = Cakes.Good(2, 8) with { Number = 402, Version = 1, Tiers = [Cakes.Good(2, 8).Tiers[0] with { Sponge = "carrot" }] };
        var plain = Cakes.Good(3, 8) with { Number = 403, Version = 1 };
        var kept = Cake with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "") };
        string Mix(Order order) => new StepKey(order.Id, order.Tiers[0].Id, "mix", 1).ToString();
        var epoch = WeekTime.Of(London, Cakes.Now, 21).Epoch;
        var now = (int)(Cakes.Now - epoch).TotalMinutes;
        Week At(int cleaned, params Order[] orders) => Week.From(
            orders, SampleBakery.Shop, [new(Mix(nutty), Cakes.Now - Duration.FromMinutes(90), "petra"), new(Mix(plain), Cakes.Now - Duration.FromMinutes(10), "petra")],
            new Wall(epoch, new Plan("w", new Dictionary<string, string>(), [new StepRow(Mix(nutty), now - 110, ["petra"], "bowl20", null), new StepRow(Mix(plain), now - 25, ["petra"], "bowl20", null), new StepRow(Mix(kept), now - 5, ["petra"], "bowl20", null)], [], [new CleanRow("bowl20", now - cleaned, ["petra"])])),
            Cakes.Now);
        IReadOnlyList<string> InBowl(Week week) => week.Steps.Single(s => s.Id == Mix(plain)).Has;

        var cleanedBefore = At(60, kept, nutty, plain);
        Assert.Contains(cleanedBefore.Fixed, f => f.Step == Mix(kept) && f.Why == "started");
        Assert.DoesNotContain("nuts", InBowl(cleanedBefore));
        // Cleaned before the nuts came in, or for nobody: the bowl still has them.
        Assert.Contains("nuts", InBowl(At(140, kept, nutty, plain)));
        Assert.Contains("nuts", InBowl(At(60, Cake, nutty, plain)));
    }

    /// <summary>
    /// The counter's words cover what the kitchen knows by other names: "gluten" is wheat in a batter and in the air, a kind of nut is in what
    /// has nuts (Regulation (EU) No 1169/2011, Annex II, points 1 and 8).
    /// </summary>
    [Theory]
    [InlineData("gluten", "vanilla", true)]
    [InlineData("hazelnuts", "carrot", true)]
    [InlineData("nuts", "carrot", true)]
    [InlineData("hazelnuts", "vanilla", false)]
    [InlineData("fish", "vanilla", false)]
    public void A_word_of_the_counter_is_met_by_what_it_covers(string word, string sponge, bool met)
    {
        var other = Cakes.Good(2, 8) with { Number = 402, Version = 1, Tiers = [Cakes.Good(2, 8).Tiers[0] with { Sponge = sponge }] };
        var kept = Cake with { Allergies = new AllergyAnswer(AllergyKind.Avoid, [word], "") };
        var week = Week.From([kept, other], SampleBakery.Shop, [], null, Cakes.Now);
        var mixes = week.Steps.Where(s => s.Order == other.Id.ToString("N") && s.Mix?.Family == sponge).ToList();
        Assert.NotEmpty(mixes);
        Assert.All(mixes, m => Assert.Equal(met, m.Has.Contains(word)));
        Assert.Equal(word == "gluten", week.Air.Any(a => a.Allergen == word));
        Assert.All(week.Steps, s => Assert.Empty(s.Has.Intersect(s.Avoid)));
    }

    /// <summary>Eight sizes of pan can be counted at once; a ninth counts as the next wider one, in ovens that take it.</summary>
    [Fact]
    public void More_than_eight_sizes_of_pan_are_counted_as_eight()
    {
        int[] sizes = [4, 5, 6, 7, 8, 9, 10, 11, 12, 14];
        var week = Week.From([.. sizes.Select((s, i) => Cakes.Good(i + 1, s) with { Number = 401 + i, Version = 1 })], SampleBakery.Shop, [], null, Cakes.Now);
        var bakes = week.Steps.Where(s => s.Bake is not null).ToList();
        Assert.InRange(bakes.SelectMany(s => s.Bake!.Pans).Distinct().Count(), 1, 8);
        foreach (var (size, i) in sizes.Select((s, i) => (s, i)))
        {
            var order = Cakes.Good(i + 1, size).Id.ToString("N");
            Assert.All(bakes.Where(s => s.Order == order).SelectMany(s => s.Bake!.Pans), counted =>
            {
                Assert.True(counted >= size, $"{counted} in for a pan of {size} in");
                Assert.Contains(week.Machines, m => m.Kind == MachineKind.Oven && m.Fits.GetValueOrDefault(counted) > 0);
            });
        }
    }

    private static DateTimeZone London => DateTimeZoneProviders.Tzdb["Europe/London"];
}
