namespace Bakehouse.Domain.Tests.FoodClocks;

using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Heat.Foods;

/// <summary>Cooling against rules, date marks, families of fillings.</summary>
public sealed class CoolingTests
{
    [Fact]
    public void The_total_of_the_food_code_is_six_hours_and_not_two_and_four()
    {
        CoolingReading[] log = [new(0, 57), new(60, 21), new(372, 5)];
        Assert.False(Cooling.Of(FoodRules.UnitedStates, log).Keeps);
        Assert.False(Cooling.Of(FoodRules.AustraliaNewZealand, [new(0, 60), .. log.Skip(1)]).Keeps);
        CoolingReading[] slow = [new(0, 57), new(110, 21), new(359, 5)];
        Assert.True(Cooling.Of(FoodRules.UnitedStates, slow).Keeps);
        Assert.False(Cooling.Of(FoodRules.AustraliaNewZealand, [new(0, 60), .. slow.Skip(1)]).Keeps);
        Assert.True(Cooling.Of(FoodRules.AustraliaNewZealand, [new(0, 60), new(119, 21), new(358, 5)]).Keeps);
    }

    [Fact]
    public void A_deep_tray_of_custard_is_too_slow_and_a_shallow_one_in_moved_air_is_not()
    {
        CoolingAnswer Tray(double thick, double h, double air) => Cooling.Of(FoodRules.UnitedStates, Conduction.Run(
            new HeatBody([new HeatSlab(thick, 0.3, CakeMaterials.Custard)]), HeatStart.Even(57), [new Stay(1440, Surroundings.Plain(air, h, true))], null, null, new HeatDetail(0.003)), HeatSpot.Base);
        Assert.Equal(false, Tray(0.05, 8, 4).Keeps);
        Assert.StartsWith("57 to 21 °C took 10 h", Tray(0.05, 8, 4).Sentence, StringComparison.Ordinal);
        Assert.Equal(true, Tray(0.025, 25, 3).Keeps);
    }

    [Fact]
    public void What_is_not_cold_yet_is_open_until_its_time_is_up()
    {
        Assert.Null(Cooling.Of(FoodRules.UnitedStates, [new(0, 57), new(60, 30)]).Keeps);
        Assert.Equal(false, Cooling.Of(FoodRules.UnitedStates, [new(0, 57), new(130, 30)]).Keeps);
        Assert.Null(Cooling.Of(FoodRules.UnitedKingdom, [new(0, 57), new(60, 30)]).Keeps);
        Assert.Throws<ArgumentException>(() => Cooling.Of(FoodRules.UnitedStates, [new(60, 30), new(0, 57)]));
    }

    [Fact]
    public void A_date_mark_counts_the_day_it_is_made_and_stands_still_in_the_freezer()
    {
        var (us, made) = (FoodRules.UnitedStates, new LocalDate(2026, 2, 26));
        Assert.Equal(new LocalDate(2026, 3, 4), DateMark.LastDay(us, made));
        Assert.Equal(new LocalDate(2026, 3, 6), DateMark.LastDay(us, made, (made.PlusDays(1), made.PlusDays(3))));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMark.LastDay(FoodRules.UnitedKingdom, made));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateMark.LastDay(us, made, (made.PlusDays(3), made.PlusDays(2))));
    }

    [Theory]
    [InlineData("cream", FamilyKept.Room, true)]
    [InlineData("cream-cheese", FamilyKept.Tested, true)]
    [InlineData("fruit", FamilyKept.Room, true)]
    [InlineData("curd", null, true)]
    [InlineData("curd", FamilyKept.Tested, false)]
    [InlineData("ganache", FamilyKept.Fridge, true)]
    [InlineData("ganache", FamilyKept.Room, false)]
    [InlineData("meringue", null, true)]
    [InlineData("plain", null, false)]
    [InlineData("plain", FamilyKept.Fridge, true)]
    [InlineData("paste", null, false)]
    public void A_family_is_on_the_clock_or_not(string id, FamilyKept? kept, bool isOn)
    {
        var family = FillingFamily.All.Single(f => f.Id == id);
        FamilyAnswer[] answers = kept is { } k ? [new FamilyAnswer(id, k, "laboratory, 3 March 2026, aw 0.84")] : [];
        Assert.Equal(isOn, family.IsOnClock(answers));
        Assert.EndsWith(FoodRules.Caution, family.Says(answers), StringComparison.Ordinal);
        Assert.DoesNotContain("safe", family.Says(answers), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void There_are_eight_and_every_filling_on_offer_belongs_to_one()
    {
        Assert.Equal(8, FillingFamily.All.Count);
        Assert.All(Domain.Methods.Filling.All, f => Assert.NotNull(FillingFamily.OfFilling(f.Id)));
        Assert.All(Domain.Methods.Filling.All, f => Assert.Equal(f.OnClock, FillingFamily.OfFilling(f.Id)!.IsOnClock([])));
    }

    [Fact]
    public void Answers_that_do_not_do_are_told_all_at_once() => Assert.Equal(
        ["family", "curd", "cream", "ganache"],
        FillingFamily.Problems([new("jelly", FamilyKept.Fridge), new("curd", FamilyKept.Tested), new("cream", FamilyKept.Room), new("ganache", FamilyKept.Room), new("ganache", FamilyKept.Fridge)]).Select(p => p.Where));
}
