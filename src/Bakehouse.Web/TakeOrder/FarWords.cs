namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.FarDates;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Says a budget of a far day: that it is one, what was counted, and what is short.</summary>
internal sealed class FarWords(Words words, LocalDate today)
{
    /// <summary>"3 h of hands are missing", in the order in which it would stop the cake.</summary>
    public static string Missing(FarBudget budget) => budget switch
    {
        { Hands.Left: < 0 and var left } => $"{Hours(-left)} of hands are missing",
        { Van: { } van } => $"the van is out with {string.Join(", ", van.Numbers)}",
        _ => $"the fridges are full on the night of {budget.Nights.First(n => n.Over > 0).Evening.DayOfWeek}",
    };

    /// <summary>What was counted, in one or two sentences.</summary>
    public string Counted(FarBudget budget) => budget.Fits
        ? $"A budget, no plan yet: {Counted(budget.Hands)} Its plan is made on {Day(budget.PlannedFrom)}."
        : budget switch
        {
            { Hands.Left: < 0 } => $"What decides it, by a budget of hours: {Counted(budget.Hands)}",
            { Van: { } van } => $"What decides it: one van, away from {words.DayAndTime(van.Leaves)} to {words.Time(van.Back.TimeOfDay)}.",
            _ => Cold(budget.Nights.First(n => n.Over > 0)),
        };

    private string Counted(FarHands hands)
    {
        var who = hands.Skills.Count == FarLoad.Making.Count ? "hands" : $"hands that {Either(hands.Skills)}";
        var kept = hands.Small > 0 ? $"{Hours(hands.Small)} are kept for small cakes, " : "";
        var taken = hands.Taken > 0 ? $"{Hours(hands.Taken)} are taken, " : "";
        return $"from {words.Day(hands.From)} to {Day(hands.To)} there are {Hours(hands.Usable)} of {who}, {kept}{taken}this needs {Hours(hands.Needed)}.";
    }

    /// <summary>"bake, coat or decorate": the skills are verbs.</summary>
    private static string Either(IReadOnlyList<string> skills) =>
        skills.Count == 1 ? skills[0] : $"{string.Join(", ", skills.SkipLast(1))} or {skills[^1]}";

    /// <summary>Work is counted in hours, never in days: whole ones from ten on.</summary>
    private static string Hours(int minutes) => minutes < 600 ? Words.Minutes(minutes) : $"{(minutes + 30) / 60} h";

    private string Cold(FarNight night) =>
        $"What decides it: room in the cold. {night.Tiers} tiers would stand in the fridges on the night of {Day(night.Evening)}, and {(night.Over == 1 ? "1 finds" : $"{night.Over} find")} no shelf.";

    private string Day(LocalDate day) => words.Day(day, today);
}
