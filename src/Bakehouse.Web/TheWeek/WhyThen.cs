namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Why a step stands where it stands, from the least and most times of what waits before and after it.</summary>
internal static class WhyThen
{
    private const int Day = 24 * 60;

    /// <summary>Sentences; empty if nothing but hands decides.</summary>
    public static IReadOnlyList<string> Of(PlanFacts facts, CakeFacts cake, StepFacts step)
    {
        var says = new List<string>();
        var words = Words.Of(facts.Shop);
        string Name(string id) => cake.Steps.FirstOrDefault(s => s.Id == id)?.What ?? id;

        var before = cake.Waits.Where(w => w.ToStep == step.Id).MaxBy(w => w.From + Duration.FromMinutes(w.Least));
        if (before is not null)
        {
            var least = before.From + Duration.FromMinutes(before.Least);
            says.Add(before.Least > 0
                ? $"Not before {When(words, least)}: {Words.Minutes(before.Least)} {Where(before.Kind)} after “{Name(before.FromStep)}”."
                : $"Not before {When(words, least)}: it follows “{Name(before.FromStep)}”.");
        }

        var after = cake.Waits.Where(w => w.FromStep == step.Id).MinBy(w => w.To - Duration.FromMinutes(w.Least));
        if (after is not null)
        {
            var last = after.To - Duration.FromMinutes(after.Least);
            says.Add(after.Least > 0
                ? $"Done by {When(words, last)} at the latest: {Words.Minutes(after.Least)} {Where(after.Kind)} before “{Name(after.ToStep)}” at {When(words, after.To)}."
                : $"Done by {When(words, last)} at the latest, when “{Name(after.ToStep)}” begins.");
        }

        var longest = cake.Waits.Where(w => w.FromStep == step.Id && w.Most <= Day).MinBy(w => w.Most);
        if (longest is not null)
        {
            says.Add($"Not much sooner: at most {Words.Minutes(longest.Most)} {Where(longest.Kind)} until “{Name(longest.ToStep)}”.");
        }

        return says;
    }

    /// <summary>"Thu 10:45".</summary>
    public static string When(Words words, Instant at) => $"{words.Day(words.Local(at).Date).Split(' ')[0]} {words.Time(words.Local(at).TimeOfDay)}";

    /// <summary>Where something waits, in words.</summary>
    public static string Where(string kind) => kind switch
    {
        "fridge" => "in the fridge",
        "freezer" => "in the freezer",
        "cool" => "in the dry room",
        "rack" => "on the rack",
        "bench" => "on the bench",
        "van" => "in the van",
        "tubs" => "in tubs",
        _ => "waiting",
    };
}
