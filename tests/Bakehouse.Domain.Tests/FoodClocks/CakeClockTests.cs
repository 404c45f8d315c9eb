namespace Bakehouse.Domain.Tests.FoodClocks;

using System.Globalization;
using Bakehouse.Domain.FoodClocks;
using CsCheck;

/// <summary>
/// Chains worked out by hand for each rule set, power cuts, late customers, nights in which clocks change. A chain is told in hours from the
/// beginning: kind (P preparation, C cold, D display, T transport, H with the customer, O warm fridge), from-to, warmest °C, w if watched.
/// </summary>
public sealed class CakeClockTests
{
    private static readonly Instant Zero = Instant.FromUtc(2026, 6, 1, 0, 0);

    [Theory]
    // Display 3 h of 4; discard at 1 + 4.
    [InlineData("us", "C 0-1 4, D 1-4 15", 4, 180, 60, 5.0, ClockVerdict.Within)]
    // Exactly 4 h is within the rule; a minute more is not.
    [InlineData("us", "C 0-1 4, D 1-5 15", 5, 240, 0, 5.0, ClockVerdict.Within)]
    [InlineData("us", "C 0-1 4, D 1-6 15", 5.5, 270, 0, 5.0, ClockVerdict.Discard)]
    // Preparation is excepted: the clock begins with the drive.
    [InlineData("us", "P 0-2 18, C 2-10 4, T 10-11 12", 11, 60, 180, 14.0, ClockVerdict.Within)]
    // Chilling again stops nothing: 1 h out, 2 h cold, 1 h out are 4 h since it left.
    [InlineData("us", "D 0-1 15, C 1-3 4, D 3-4 15", 4, 240, 0, 4.0, ClockVerdict.Within)]
    [InlineData("us", "D 0-1 15, C 1-3 4, D 3-5 15", 4.5, 270, 0, 4.0, ClockVerdict.Discard)]
    // Watched and never above 21: 6 h.
    [InlineData("us", "C 0-1 4, D 1-6 20 w", 6, 300, 60, 7.0, ClockVerdict.Within)]
    [InlineData("us", "C 0-1 4, D 1-6 22 w", 6, 300, 0, 5.0, ClockVerdict.Discard)]
    // Under the line nothing counts, wherever it stands.
    [InlineData("us", "D 0-6 5", 6, 0, 240, null, ClockVerdict.NotBegun)]
    // A warm fridge counts like display.
    [InlineData("us", "C 0-4 4, O 4-6 9, C 6-7 4", 7, 180, 60, 8.0, ClockVerdict.Within)]
    // Over 8 °C for 3 h 54, once.
    [InlineData("uk", "C 0-1 4, D 1-5 12", 4.9, 234, 6, 5.0, ClockVerdict.Within)]
    // Less than 4 h: at 4 h it is over.
    [InlineData("uk", "C 0-1 4, D 1-5 12", 5, 240, 0, 5.0, ClockVerdict.Discard)]
    // A second period is none.
    [InlineData("uk", "D 0-1 12, C 1-2 4, D 2-3 12", 2.5, 60, 0, 2.5, ClockVerdict.Discard)]
    // 7 °C is under the line.
    [InlineData("uk", "D 0-6 7", 6, 0, 240, null, ClockVerdict.NotBegun)]
    // Preparation and a drive are excused.
    [InlineData("uk", "P 0-1 18, C 1-5 4, T 5-6 14", 6, 0, 240, null, ClockVerdict.NotBegun)]
    [InlineData("uk", "C 0-4 4, T 4-5 14, H 5-7 18", 7, 120, 120, 9.0, ClockVerdict.Within)]
    // Display, then the customer's table without cold between: one period.
    [InlineData("uk", "D 0-1 12, T 1-2 12, H 2-3 18", 3, 180, 60, 4.0, ClockVerdict.Within)]
    [InlineData("uk", "D 0-1 12, T 1-2 12, H 2-5 18", 4, 240, 0, 4.0, ClockVerdict.Discard)]
    // One period, over, and cold again: its time stands, nothing runs.
    [InlineData("uk", "D 0-2 12, C 2-20 4", 20, 120, 120, null, ClockVerdict.Within)]
    // The fridge broke down for an hour after a display: a second period.
    [InlineData("uk", "D 0-1 12, C 1-5 4, O 5-6 10", 6, 60, 0, 6.0, ClockVerdict.Discard)]
    // Preparation counts, too: half an hour and 1 h.
    [InlineData("au", "P 0-0.5 18, C 0.5-9 4, D 9-10 15", 10, 90, 150, 12.5, ClockVerdict.Within)]
    // Cold between adds nothing.
    [InlineData("au", "D 0-1 15, C 1-9 4, D 9-9.9 15", 9.9, 114, 126, 12.0, ClockVerdict.Within)]
    // From 2 h on it does not go back.
    [InlineData("au", "D 0-2 15", 2, 120, 120, 4.0, ClockVerdict.UseOnly)]
    [InlineData("au", "D 0-1.5 15, C 1.5-3 4, D 3-4 15", 4, 150, 90, 5.5, ClockVerdict.UseOnly)]
    // Put back all the same, it counts on.
    [InlineData("au", "D 0-2.5 15, C 2.5-3.5 4", 3.5, 210, 30, 4.0, ClockVerdict.UseOnly)]
    [InlineData("au", "D 0-2.5 15, C 2.5-6 4", 5, 300, 0, 4.0, ClockVerdict.Discard)]
    // Exactly 4 h is within, more is not.
    [InlineData("au", "P 0-1 18, C 1-2 4, T 2-3 15, H 3-5 20", 5, 240, 0, 5.0, ClockVerdict.UseOnly)]
    [InlineData("au", "P 0-1 18, C 1-2 4, T 2-3 15, H 3-6 20", 5.5, 270, 0, 5.0, ClockVerdict.Discard)]
    // While it is cold nothing runs.
    [InlineData("au", "P 0-1 18, C 1-30 4", 30, 60, 180, null, ClockVerdict.Within)]
    // A fridge at 7 °C is over the line of 5.
    [InlineData("au", "C 0-1 7, C 1-2 4", 2, 60, 180, null, ClockVerdict.Within)]
    // Kept hot nothing counts.
    [InlineData("au", "P 0-1 65, C 1-2 4", 2, 0, 240, null, ClockVerdict.NotBegun)]
    // Two hours in all.
    [InlineData("ca", "P 0-1 18, C 1-8 3, T 8-9 15", 9, 120, 0, 9.0, ClockVerdict.Within)]
    [InlineData("ca", "P 0-1 18, C 1-8 3, T 8-10 15", 9.5, 150, 0, 9.0, ClockVerdict.Discard)]
    [InlineData("ca", "D 0-1 15", 1, 60, 60, 2.0, ClockVerdict.Within)]
    // Exactly 2 h is within, six minutes more are not.
    [InlineData("ca", "D 0-2 15", 2, 120, 0, 2.0, ClockVerdict.Within)]
    [InlineData("ca", "D 0-3 15", 2.1, 126, 0, 2.0, ClockVerdict.Discard)]
    // At the line of 4 °C nothing counts; a fridge at 5 is over it.
    [InlineData("ca", "D 0-1 4", 1, 0, 120, null, ClockVerdict.NotBegun)]
    [InlineData("ca", "C 0-1 5, C 1-2 3", 2, 60, 60, null, ClockVerdict.Within)]
    // Twice half an hour on the bench.
    [InlineData("ca", "P 0-0.5 18, C 0.5-5 3, P 5-5.5 18", 5.5, 60, 60, 6.5, ClockVerdict.Within)]
    [InlineData("ca", "H 0-0.5 15, C 0.5-1 3, H 1-3 15", 3, 150, 0, 2.5, ClockVerdict.Discard)]
    [InlineData("ca", "C 0-5 3, O 5-6 9, C 6-7 3", 7, 60, 60, null, ClockVerdict.Within)]
    public void A_chain_worked_out_by_hand(string rules, string chain, double now, int used, int left, double? discardAt, ClockVerdict verdict)
    {
        var clock = CakeClock.Of(FoodRules.Of(rules)!, Chain(chain), At(now));
        Assert.Equal((used, left, verdict), ((int)clock.Used.TotalMinutes, (int)clock.Left.TotalMinutes, clock.Verdict));
        Assert.Equal(discardAt is { } hour ? At(hour) : (Instant?)null, clock.DiscardAt);
        Assert.EndsWith(FoodRules.Caution, clock.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain("safe", clock.Sentence, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void What_it_says()
    {
        var us = FoodRules.UnitedStates;
        Assert.Equal("2 h 10 of 4 h out of the cold. By US Food Code. Local rules and licensed practice decide.", CakeClock.Of(us, Chain("D 0-4 15"), Zero + Duration.FromMinutes(130)).Sentence);
        Assert.Equal("Discard it: 5 h of 4 h out of the cold. By US Food Code. Local rules and licensed practice decide.", CakeClock.Of(us, Chain("D 0-5 15"), At(5)).Sentence);
        Spell[] warm = [new(Zero, At(1), SpellKind.Display, 15) { LeftAt = 8 }];
        Assert.Equal("Discard it: it left the cold at 8 °C, the rule asks for 5 or less. By US Food Code. Local rules and licensed practice decide.", CakeClock.Of(us, warm, At(1)).Sentence);
    }

    [Fact]
    public void Fruit_cut_just_then_may_be_warmer_if_it_stays_under_21()
    {
        Spell cut = new(Zero, At(3), SpellKind.Display, 20) { LeftAt = 20, IsJustCut = true };
        Assert.Equal(ClockVerdict.Within, CakeClock.Of(FoodRules.UnitedStates, [cut], At(3)).Verdict);
        Assert.Equal(ClockVerdict.Discard, CakeClock.Of(FoodRules.UnitedStates, [cut with { Warmest = 22 }], At(3)).Verdict);
    }

    [Fact]
    public void A_power_cut_counts_from_four_hours_on_and_not_if_somebody_read_that_it_stayed_cold()
    {
        var (us, night) = (FoodRules.UnitedStates, Chain("C 0-10 4, T 10-11 14"));
        Assert.Equal(At(14), CakeClock.Of(us, night, At(11)).DiscardAt);
        Assert.Same(night, Spells.WithPowerCut(night, At(2), At(5), us));
        var cut = Spells.WithPowerCut(night, At(2), At(8), us);
        Assert.Equal([SpellKind.Cold, SpellKind.Outage, SpellKind.Cold, SpellKind.Transport], cut.Select(s => s.Kind));
        Assert.Equal(At(10), CakeClock.Of(us, cut, At(9)).DiscardAt);
        Assert.Same(night, Spells.WithPowerCut(night, At(2), At(8), us, warmest: 4.5));
    }

    [Fact]
    public void A_late_customer_makes_the_last_spell_longer()
    {
        var spells = Chain("C 0-1 4, D 1-2 15");
        var late = Spells.Until(spells, At(6));
        Assert.Equal(60, CakeClock.Of(FoodRules.UnitedStates, spells, At(2)).Used.TotalMinutes);
        Assert.Equal(ClockVerdict.Discard, CakeClock.Of(FoodRules.UnitedStates, late, At(6)).Verdict);
        Assert.Same(spells, Spells.Until(spells, At(1.5)));
    }

    [Theory]
    // Out at 23:00, 4 h by elapsed time: discard at 03:00 on a plain night, at 04:00 when the clocks go forward, at 02:00 when they go back.
    [InlineData("Europe/London", 2026, 3, 28, "04:00")]
    [InlineData("Europe/London", 2026, 10, 24, "02:00")]
    [InlineData("America/New_York", 2026, 3, 7, "04:00")]
    [InlineData("America/New_York", 2026, 10, 31, "02:00")]
    [InlineData("Europe/London", 2026, 6, 6, "03:00")]
    public void On_nights_in_which_clocks_change_the_elapsed_time_counts(string zone, int year, int month, int day, string discard)
    {
        var there = DateTimeZoneProviders.Tzdb[zone];
        var left = there.AtStrictly(new LocalDate(year, month, day).At(new LocalTime(23, 0))).ToInstant();
        var morning = there.AtStrictly(new LocalDate(year, month, day).PlusDays(1).At(new LocalTime(9, 0))).ToInstant();
        var clock = CakeClock.Of(FoodRules.UnitedStates, [new Spell(left, morning, SpellKind.Display, 15)], left + Duration.FromHours(3));
        Assert.Equal(180, clock.Used.TotalMinutes);
        Assert.Equal(240, (clock.DiscardAt!.Value - left).TotalMinutes);
        Assert.Equal(discard, clock.DiscardAt.Value.InZone(there).ToString("HH:mm", CultureInfo.InvariantCulture));
    }

    [Fact]
    public void Time_only_ever_uses_up_a_clock_and_used_and_left_are_the_limit() => Gen.Select(Gen.Int[0, 3], Gen.Int[0, 5].Array[1, 6], Gen.Int[0, 600]).Sample(
        (rule, kinds, minute) =>
        {
            var rules = FoodRules.All[rule];
            Spell[] spells = [.. kinds.Select((k, i) => new Spell(At(i), At(i + 1), (SpellKind)k, k == 1 ? 4 : 15))];
            CakeClock Of(int m) => CakeClock.Of(rules, spells, Zero + Duration.FromMinutes(m));
            var (first, later) = (Of(minute), Of(minute + 7));
            Assert.True(later.Used >= first.Used && later.Verdict >= first.Verdict, $"{rules.Id}: {first} then {later}");
            Assert.True(first.Verdict == ClockVerdict.Discard || first.Used + first.Left == Duration.FromMinutes(rules.LimitMinutes), first.ToString());
        }, iter: 400);

    [Fact]
    public void Spells_that_make_no_sense_are_told_all_at_once()
    {
        Spell[] wrong = [new(At(2), At(1), SpellKind.Display, double.NaN), new(At(0), At(3), SpellKind.Cold, 300)];
        Assert.Equal(["Display", "Display, warmest", "Cold, warmest", "Cold"], Spells.Problems(wrong).Select(p => p.Where));
        Assert.Throws<ArgumentException>(() => CakeClock.Of(FoodRules.UnitedStates, wrong, At(1)));
    }

    private static Instant At(double hours) => Zero + Duration.FromMinutes((long)Math.Round(hours * 60));

    private static IReadOnlyList<Spell> Chain(string told) => [.. told.Split(", ").Select(part =>
    {
        var f = part.Split(' ');
        var hours = f[1].Split('-').Select(h => double.Parse(h, CultureInfo.InvariantCulture)).ToArray();
        var kind = f[0] switch { "P" => SpellKind.Preparation, "C" => SpellKind.Cold, "D" => SpellKind.Display, "T" => SpellKind.Transport, "H" => SpellKind.Handed, _ => SpellKind.Outage };
        return new Spell(At(hours[0]), At(hours[1]), kind, double.Parse(f[2], CultureInfo.InvariantCulture)) { IsWatched = f.Length > 3 };
    })];
}
