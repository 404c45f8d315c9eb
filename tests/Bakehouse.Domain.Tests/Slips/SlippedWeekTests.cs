namespace Bakehouse.Domain.Tests.Slips;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Testing;

/// <summary>What each slip does to the week. The cake is 6+8+10 in for Saturday; figures are those of the invented sample bakery.</summary>
public sealed class SlippedWeekTests
{
    private static readonly Order Cake = Cakes.Good() with { Number = 401, Version = 1 };
    private static readonly Guid Eight = Cake.Tiers[1].Id;
    private static readonly string Bake = Key("bake");

    [Fact]
    public void The_same_facts_in_any_order_give_the_same_week()
    {
        Slip[] slips = [Slip(1, SlipKind.Cracked, Bake), Slip(2, SlipKind.Away, "petra", hours: 5), Slip(3, SlipKind.RanOut, "raspberry-jam", hours: 20)];
        Assert.Equal(WeekFile.Write(Week(slips)), WeekFile.Write(Week([slips[2], slips[0], slips[1]])));
    }

    [Fact]
    public void A_sunk_sponge_was_baked_and_comes_again_from_the_bowl_to_the_wrapping_of_that_tier_alone()
    {
        var (before, week) = (Week([]), Week([Slip(1, SlipKind.Cracked, Bake)]));
        string[] again = [.. week.Steps.Select(s => s.Id).Except(before.Steps.Select(s => s.Id))];
        Assert.Equal(new[] { "mix", "bake", "turnout", "wrap" }.Select(w => Key(w, ordinal: 101)).Order(), again.Order());
        Assert.Equal(new[] { Key("mix"), Bake }.ToHashSet(), week.Fixed.Where(f => f.Why == "done").Select(f => f.Step!).ToHashSet());
        Assert.DoesNotContain(week.Steps, s => s.Id == Key("turnout") || s.Id == Key("wrap"));
        Assert.Single(week.Holds, h => h.To == Key("fill") && h.From == Key("wrap", ordinal: 101));
        Assert.DoesNotContain(week.Holds, h => h.From == Key("wrap"));
        Assert.Empty(Problems(week));
    }

    [Fact]
    public void A_sponge_that_sinks_a_second_time_comes_a_second_time()
    {
        var week = Week([Slip(1, SlipKind.Cracked, Bake), Slip(2, SlipKind.Cracked, Key("bake", ordinal: 101))]);
        Assert.Contains(week.Steps, s => s.Id == Key("mix", ordinal: 201));
        Assert.Empty(Problems(week));
    }

    [Fact]
    public void A_spare_from_the_freezer_saves_the_baking_and_thaws_by_heat()
    {
        var week = Week([Slip(1, SlipKind.Cracked, Bake) with { Spare = true }]);
        Assert.DoesNotContain(week.Steps, s => s.Id == Key("mix", ordinal: 101));
        var thaws = week.Holds.Single(h => h.To == Key("fill") && h.From == Key("wrap"));
        // Still wrapped, layers of 4 to 5 cm thaw in 2 to 4 h in a room or overnight in a fridge (common practice, no source).
        Assert.InRange(Assert.Single(thaws.In, i => i.Store == "bench").Least, 120, 300);
        Assert.All(thaws.In.Where(i => i.Store.StartsWith('f')), i => Assert.InRange(i.Least, 300, 720));
        Assert.DoesNotContain(thaws.In, i => i.Store.StartsWith('z'));
        Assert.Contains(week.Fixed, f => f.Step == Key("wrap") && f.Why == "done");
    }

    [Fact]
    public void What_is_not_set_makes_the_next_step_wait_until_then()
    {
        var week = Week([Slip(1, SlipKind.NotSet, Key("crumb"), hours: 3)]);
        var wait = week.Steps.Single(s => s.Name == "wait");
        Assert.Equal(Key("coat"), week.Holds.Single(h => h.From == wait.Id).To);
        var end = week.Fixed.Single(f => f.Step == wait.Id).Start + wait.Minutes;
        Assert.Equal(WeekTime.Up((int)(Cakes.Now + Duration.FromHours(3) - week.Epoch).TotalMinutes), end);
        Assert.Contains(week.Fixed, f => f.Step == Key("crumb"));
    }

    [Fact]
    public void What_ran_out_holds_up_every_step_that_needs_it_and_no_other()
    {
        var week = Week([Slip(1, SlipKind.RanOut, "raspberry-jam", hours: 30)]);
        var waiting = week.Holds.Where(h => week.Steps.First(s => s.Id == h.From).Name == "wait").Select(h => h.To).ToHashSet();
        Assert.Equal(week.Steps.Where(s => s.Mix?.Family == "raspberry-jam").Select(s => s.Id).ToHashSet(), waiting);
    }

    [Fact]
    public void An_oven_that_is_out_is_closed_and_a_fridge_with_its_door_shut_for_four_hours_is_not()
    {
        var week = Week([Slip(1, SlipKind.Out, "oven1", hours: 5), Slip(2, SlipKind.Out, "f1l2", hours: 4), Slip(3, SlipKind.Out, "f2l2", hours: 5)]);
        Assert.Equal(300, Assert.Single(week.Machines.Single(m => m.Id == "oven1").Down).Minutes);
        // USDA FSIS, "Keep your food safe during emergencies": a closed refrigerator keeps cold for about 4 hours.
        Assert.Empty(week.Stores.Single(s => s.Id == "f1l2").Down);
        Assert.Equal(300, Assert.Single(week.Stores.Single(s => s.Id == "f2l2").Down).Minutes);
    }

    [Fact]
    public void What_was_made_in_a_bowl_that_is_out_was_made_in_it_all_the_same()
    {
        var epoch = WeekTime.Of(DateTimeZoneProviders.Tzdb["Europe/London"], Cakes.Now, 21).Epoch;
        var start = (int)(Cakes.Now - epoch).TotalMinutes - 30;
        var wall = new Wall(epoch, new Plan("w", new Dictionary<string, string>(), [new StepRow(Key("mix"), start, ["petra"], "bowl20", null)], [], []));
        var broken = Slip(1, SlipKind.Out, "bowl20", hours: 2) with { From = epoch + Duration.FromMinutes(start) };
        var week = Domain.Planning.Week.From([Cake], SampleBakery.Shop, [new Tick(Key("mix"), Cakes.Now - Duration.FromMinutes(10), "petra")], wall, Cakes.Now, ByHand.Nothing with { Slips = [broken] });
        var mixed = week.Fixed.Single(f => f.Step == Key("mix"));
        Assert.Equal("bowl20", mixed.Machine);
        var span = new Span(mixed.Start!.Value, mixed.Start.Value + week.Steps.Single(s => s.Id == Key("mix")).Minutes);
        Assert.DoesNotContain(week.Machines.Single(m => m.Id == "bowl20").Down, d => d.Meets(span));
        Assert.Contains(week.Machines.Single(m => m.Id == "bowl20").Down, d => d.Meets(new Span(week.Now, week.Now + 60)));
    }

    [Fact]
    public void Whoever_is_ill_has_no_hours_then_and_all_hours_after()
    {
        var (before, week) = (Week([]), Week([Slip(1, SlipKind.Away, "petra", hours: 26)]));
        int Hours(Domain.Planning.Week w) => w.People.Single(p => p.Id == "petra").Shifts.Sum(s => s.Minutes);
        // Told on Tuesday at 11:30, back on Wednesday at 13:30: 2.5 h are left of Tuesday, and 7 h of Wednesday's shifts before then.
        Assert.Equal((int)((2.5 + 4 + 3) * 60), Hours(before) - Hours(week));
        Assert.Empty(Problems(week));
    }

    [Fact]
    public void A_step_in_hand_that_takes_longer_runs_until_then_also_over_the_end_of_the_shift()
    {
        var epoch = WeekTime.Of(DateTimeZoneProviders.Tzdb["Europe/London"], Cakes.Now, 21).Epoch;
        var start = (int)(Cakes.Now - epoch).TotalMinutes - 5;
        var wall = new Wall(epoch, new Plan("w", new Dictionary<string, string>(), [new StepRow(Key("mix"), start, ["petra"], "bowl20", null)], [], []));
        var behind = Slip(1, SlipKind.Behind, Key("mix"), hours: 5) with { From = epoch + Duration.FromMinutes(start) };
        var week = Domain.Planning.Week.From([Cake], SampleBakery.Shop, [], wall, Cakes.Now, ByHand.Nothing with { Slips = [behind] });
        Assert.Equal(305, week.Steps.Single(s => s.Id == Key("mix")).Minutes);
        Assert.Equal("started", Assert.Single(week.Fixed).Why);
        Assert.Empty(Problems(week));
    }

    [Fact]
    public void The_owners_word_shortens_a_wait_and_no_age_no_food_clock_and_no_allergen_stop()
    {
        var (before, week) = (Week([]), Week([Slip(1, SlipKind.Anyway, Key("coat"))]));
        Assert.Equal(0, week.Holds.Where(h => h.To == Key("coat")).SelectMany(h => h.In).Max(i => i.Least));
        Assert.Equal(before.Clocks, week.Clocks, (a, b) => a.Limit == b.Limit);
        Assert.Equal(before.Ages, week.Ages);
        Assert.Equal(before.Air, week.Air);
        Assert.Equal(before.Steps.Select(s => (s.Id, string.Join(' ', s.Has), string.Join(' ', s.Avoid))), week.Steps.Select(s => (s.Id, string.Join(' ', s.Has), string.Join(' ', s.Avoid))));
        Assert.Equal(before.Machines, week.Machines, (a, b) => a.Clean == b.Clean && a.Down.Count == b.Down.Count);
    }

    [Fact]
    public void A_slip_about_a_cake_that_is_gone_does_nothing() =>
        Assert.Equal(WeekFile.Write(Week([])), WeekFile.Write(Week([Slip(1, SlipKind.Cracked, new StepKey(Guid.NewGuid(), Guid.NewGuid(), "bake", 1).ToString())])));

    private static Domain.Planning.Week Week(IReadOnlyList<Slip> slips) => Domain.Planning.Week.From([Cake], SampleBakery.Shop, [], null, Cakes.Now, ByHand.Nothing with { Slips = slips });

    private static IReadOnlyList<Problem> Problems(Domain.Planning.Week week) => WeekFile.Read(WeekFile.Write(week)).Problems;

    private static Slip Slip(int id, SlipKind kind, string about, int hours = 0) =>
        new(new Guid(id, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0), kind, [about], Cakes.Now, "ines", Cakes.Now, Cakes.Now + Duration.FromHours(hours));

    private static string Key(string word, int ordinal = 1) => new StepKey(Cake.Id, Eight, word, ordinal).ToString();
}
