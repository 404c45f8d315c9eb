namespace Bakehouse.Domain.Tests.FoodClocks;

using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Tests.Heat;

/// <summary>Rows of food rules, worked out by the product.</summary>
internal static class ClockRows
{
    private static readonly FoodRules Us = FoodRules.UnitedStates, Uk = FoodRules.UnitedKingdom, Au = FoodRules.AustraliaNewZealand, Ca = FoodRules.Canada;
    private static readonly Instant Nine = Instant.FromUtc(2026, 6, 1, 9, 0);

    public static IEnumerable<(string Id, Func<double> Found)> Numbers =>
    [
        ("FS-1", () => Us.Cooling[0].Minutes / 60.0), ("FS-2", () => Us.Cooling[1] is { IsTotal: true } s ? s.Minutes / 60.0 : -1), ("FS-3", () => Us.FromRoomMinutes!.Value / 60.0),
        ("FS-7", () => Us.ColdLine), ("FS-8", () => Us.HotLine), ("FS-9", () => Us.LimitMinutes / 60.0), ("FS-10", () => Us.LongLimitMinutes!.Value / 60.0),
        ("FS-14", () => Us.JustCutAtMost!.Value), ("FS-15", () => Us.DateMarkDays!.Value),
        ("FS-20", () => Uk.ColdLine), ("FS-21", () => Uk.IsLimitOut ? Uk.LimitMinutes / 60.0 : -1), ("FS-22", () => Uk.HotLine), ("FS-23", () => Uk.HotMinutes!.Value / 60.0),
        ("FS-26", () => Uk.AdvisedFridge!.Value),
        ("FS-30", () => Au.Cooling[0].Minutes / 60.0), ("FS-31", () => Au.Cooling[1] is { IsTotal: false } s ? s.Minutes / 60.0 : -1),
        ("FS-32", () => Ca.Cooling[0].Minutes / 60.0), ("FS-33", () => Ca.Cooling[1] is { IsTotal: false } s ? s.Minutes / 60.0 : -1), ("FS-34", () => Ca.ColdLine),
        .. new[] { 41, 70, 135, 46.4, 40, 90 }.Select(f => (FormattableString.Invariant($"FS-F{f}"), (Func<double>)(() => Temperature.FromFahrenheit(f).Celsius))),
    ];

    public static IEnumerable<(string Id, Func<bool> Holds)> Words =>
    [
        ("FS-4", () => Cools(1.5, 5.9) == true), ("FS-5", () => Cools(2.1, 5.0) == false), ("FS-6", () => Cools(1.0, 6.2) == false),
        ("FS-11", () => Verdict(Us, 5, Out(5, 20) with { LeftAt = 5, IsWatched = true }) == ClockVerdict.Within),
        ("FS-12", () => Verdict(Us, 5, Out(5, 22) with { LeftAt = 5, IsWatched = true }) == ClockVerdict.Discard),
        ("FS-13", () => Verdict(Us, 1, Out(1, 20) with { LeftAt = 8 }) == ClockVerdict.Discard),
        ("FS-16", () => DateMark.LastDay(Us, new LocalDate(2026, 4, 1)) == new LocalDate(2026, 4, 7)),
        ("FS-17", () => DateMark.LastDay(Us, new LocalDate(2026, 10, 1), (new LocalDate(2026, 10, 3), new LocalDate(2026, 10, 10))) == new LocalDate(2026, 10, 14)),
        .. HeatRow.All.Where(r => r.Id.StartsWith("FS-T", StringComparison.Ordinal)).Select(r => (r.Id, (Func<bool>)(() => Assessed(r)))),
        ("FS-24", () => Verdict(Uk, 3.9, Out(3.9, 12)) == ClockVerdict.Within),
        ("FS-25", () => Verdict(Uk, 10, Out(3.9, 12), Back(3.9, 9), Again(9, 10, 12)) == ClockVerdict.Discard),
        ("FS-27", () => Verdict(Au, 1.9, Out(1.9, 15)) == ClockVerdict.Within),
        ("FS-28", () => Verdict(Au, 2, Out(2, 15)) == ClockVerdict.UseOnly && Verdict(Au, 4, Out(4, 15)) == ClockVerdict.UseOnly),
        ("FS-29", () => Verdict(Au, 4.1, Out(4.1, 15)) == ClockVerdict.Discard),
    ];

    private static bool? Cools(double to21, double to5) =>
        Cooling.Of(Us, [new(0, 60), new(5, 57), new(5 + (to21 * 60), 21), new(5 + (to5 * 60), 5)]).Keeps;

    private static bool Assessed(HeatRow row) =>
        AcidAndWater.MustBeAssessed(row.In("aw"), row.In("pH"), row.Quantity.EndsWith("Table A", StringComparison.Ordinal)) == (row.Expected == "PA");

    private static ClockVerdict Verdict(FoodRules rules, double hour, params Spell[] spells) => CakeClock.Of(rules, spells, At(hour)).Verdict;

    private static Spell Out(double hours, double warmest) => new(Nine, At(hours), SpellKind.Display, warmest);

    private static Spell Back(double from, double to) => new(At(from), At(to), SpellKind.Cold, 4);

    private static Spell Again(double from, double to, double warmest) => new(At(from), At(to), SpellKind.Display, warmest);

    private static Instant At(double hours) => Nine + Duration.FromMinutes((long)Math.Round(hours * 60));
}
