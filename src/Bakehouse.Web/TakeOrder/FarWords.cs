namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Says a budget of a far day: that it is one, what was counted, and what is short.</summary>
internal sealed class FarWords(Words words)
{
    private static readonly IReadOnlyDictionary<string, string> Verbs = new Dictionary<string, string>
    {
        [Skills.Bake] = "bake", [Skills.Coat] = "fill and coat", [Skills.Decorate] = "decorate", [Skills.Box] = "box",
    };

    /// <summary>"3 h of hands are missing", in the order in which it would stop the cake.</summary>
    public static string Short(FarBudget budget) => budget switch
    {
        { Hands.Left: < 0 and var left } => $"{Words.Minutes(-left)} of hands are missing",
        { Van: { } van } => $"the van is out with {string.Join(", ", van.Numbers)}",
        _ => $"the fridges are full on the night of {budget.Nights.First(n => n.Over > 0).Evening.DayOfWeek}",
    };

    /// <summary>What was counted, in one or two sentences.</summary>
    public string Counted(FarBudget budget) => budget.Fits
        ? $"A budget, no plan yet: {Hours(budget.Hands)} Its plan is made on {Day(budget.PlannedFrom)}."
        : budget switch
        {
            { Hands.Left: < 0 } => $"What decides it, by a budget of hours: {Hours(budget.Hands)}",
            { Van: { } van } => $"What decides it: one van, away from {words.DayAndTime(van.Leaves)} to {words.Time(van.Back.TimeOfDay)}.",
            _ => Cold(budget.Nights.First(n => n.Over > 0)),
        };

    private string Hours(FarHands hands)
    {
        var who = hands.Skills.Count == Verbs.Count ? "hands" : $"hands that {string.Join(" or ", hands.Skills.Select(s => Verbs[s]))}";
        var kept = hands.Small > 0 ? $"{Words.Minutes(hands.Small)} are kept for small cakes, " : "";
        return $"from {words.Day(hands.From)} to {Day(hands.To)} there are {Words.Minutes(hands.Usable)} of {who}, {kept}{Words.Minutes(hands.Taken)} are taken, this needs {Words.Minutes(hands.Needed)}.";
    }

    private string Cold(FarNight night) =>
        $"What decides it: room in the cold. {night.Tiers} tiers would stand in the fridges on the night of {Day(night.Evening)}, and {(night.Over == 1 ? "1 finds" : $"{night.Over} find")} no shelf.";

    private string Day(LocalDate day) => $"{words.Day(day)} {day.Year}";
}
