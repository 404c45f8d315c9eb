namespace Bakehouse.Domain.FoodClocks;

using Bakehouse.Domain.Heat;
using static System.FormattableString;

/// <summary>A temperature at a time after cooling began.</summary>
public readonly record struct CoolingReading(double Minutes, double Celsius);

/// <summary>Whether something cooked cooled as the rule asks.</summary>
/// <param name="Keeps">True or false; null if the rule gives no figures or the readings do not reach far enough.</param>
public sealed record CoolingAnswer(bool? Keeps, string Sentence);

/// <summary>Cooling of custard, curd and what else was cooked, against a rule.</summary>
public static class Cooling
{
    /// <summary>By readings, the first at or above the warmest line of the rule; between two of them a straight line.</summary>
    /// <exception cref="ArgumentException">The readings are not in the order of time.</exception>
    public static CoolingAnswer Of(FoodRules rules, IReadOnlyList<CoolingReading> readings)
    {
        if (readings.Zip(readings.Skip(1)).Any(p => p.Second.Minutes <= p.First.Minutes))
        {
            throw new ArgumentException("Readings of cooling come in the order of time.", nameof(readings));
        }

        if (rules.Cooling.Count == 0)
        {
            return new CoolingAnswer(null, $"{rules.Name} gives no figures: as quickly as can be. {FoodRules.Caution}");
        }

        var stages = rules.Cooling.Select(s => (Stage: s, Took: Took(rules, s, readings))).ToList();
        var late = stages.Where(s => s.Took > s.Stage.Minutes).ToList();
        bool? keeps = late.Count > 0 ? false : stages.Any(s => s.Took is null) ? Overdue(rules, readings) : true;
        var said = late.Select(s => Invariant($"{s.Stage.From:0} to {s.Stage.To:0} °C took {HeatWait.Said((int)Math.Ceiling(s.Took!.Value))}, {HeatWait.Said(s.Stage.Minutes)} is the most."));
        var sentence = late.Count > 0 ? string.Join(" ", said) : keeps switch
        {
            true => $"Cooled as {rules.Name} asks.",
            false => $"Not cold in the time that {rules.Name} gives.",
            null => "Not cold yet.",
        };
        return new CoolingAnswer(keeps, $"{sentence} {FoodRules.Caution}");
    }

    /// <summary>By a curve of the heat model, its core.</summary>
    public static CoolingAnswer Of(FoodRules rules, HeatCurve curve, HeatSpot spot = HeatSpot.Core) =>
        Of(rules, [.. curve.Minutes.Zip(curve.Celsius[(int)spot]).Select(p => new CoolingReading(p.First, p.Second))]);

    private static double? Took(FoodRules rules, CoolingStage stage, IReadOnlyList<CoolingReading> readings) =>
        Falls(readings, stage.To) is { } end && Falls(readings, stage.IsTotal ? rules.Cooling[0].From : stage.From) is { } begin ? end - begin : null;

    /// <summary>False if a stage that is not over has had all its time already; else null.</summary>
    private static bool? Overdue(FoodRules rules, IReadOnlyList<CoolingReading> readings) => rules.Cooling.Any(s =>
        Falls(readings, s.To) is null && Falls(readings, s.IsTotal ? rules.Cooling[0].From : s.From) is { } begin && readings[^1].Minutes - begin > s.Minutes) ? false : null;

    /// <summary>Minutes at which the readings first are at or under a temperature.</summary>
    private static double? Falls(IReadOnlyList<CoolingReading> readings, double celsius)
    {
        for (var i = 0; i < readings.Count; i++)
        {
            if (readings[i].Celsius <= celsius)
            {
                return i == 0 ? readings[0].Minutes
                    : readings[i - 1].Minutes + ((readings[i].Minutes - readings[i - 1].Minutes) * (readings[i - 1].Celsius - celsius) / (readings[i - 1].Celsius - readings[i].Celsius));
            }
        }

        return null;
    }
}

/// <summary>Days that something keeps cold by a date mark.</summary>
public static class DateMark
{
    /// <summary>The last day. The day it is made is the first; the day it is frozen and those until it thaws do not count, the day it thaws does.</summary>
    /// <param name="frozen">From the day it is frozen to the day it thaws.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rule has no date mark, or it thaws before it is frozen.</exception>
    public static LocalDate LastDay(FoodRules rules, LocalDate made, params IReadOnlyList<(LocalDate Frozen, LocalDate Thawed)> frozen)
    {
        if (rules.DateMarkDays is not { } days || frozen.Any(f => f.Thawed < f.Frozen || f.Frozen < made))
        {
            throw new ArgumentOutOfRangeException(nameof(frozen), $"{rules.Id}, {frozen.Count}", "A date mark needs a rule with days, and thaws after it freezes.");
        }

        var day = made;
        for (var counted = 1; counted < days;)
        {
            day = day.PlusDays(1);
            counted += frozen.Any(f => f.Frozen <= day && day < f.Thawed) ? 0 : 1;
        }

        return day;
    }
}
