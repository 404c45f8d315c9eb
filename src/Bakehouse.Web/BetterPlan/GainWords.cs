namespace Bakehouse.Web.BetterPlan;

using Bakehouse.Domain.Planning;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheWeek;

/// <summary>What another plan gains, in a sentence.</summary>
internal static class GainWords
{
    /// <summary>"409 Lindqvist is in time, 2 tight cakes get more to spare, 1 h 10 less overtime."</summary>
    public static string Of(PlanFacts before, PlanFacts after, Levels was, Levels becomes)
    {
        var cakes = after.Cakes.ToDictionary(c => c.Id);
        var pairs = before.Cakes.Where(c => cakes.ContainsKey(c.Id)).Select(c => (Was: c, Is: cakes[c.Id])).ToList();
        List<string> said =
        [
            .. pairs.Where(p => p.Is.Late < p.Was.Late).Select(p => p.Is.Late == 0 ? $"{p.Was.Title} is in time" : $"{p.Was.Title} is {Words.Late(p.Was.Late - p.Is.Late)} less late"),
            .. Tight([.. pairs.Where(p => p.Was.State == MarkKind.Tight && p.Is.Standing.Spare > p.Was.Standing.Spare)]),
        ];
        Less(said, was.Stale - becomes.Stale, "over its best age");
        Less(said, was.Overtime - becomes.Overtime, "overtime");
        if (said.Count == 0)
        {
            Less(said, was.Fresh - becomes.Fresh, "waiting and cutting it fine, all cakes together");
        }

        return said.Count == 0 ? "" : $"{string.Join(", ", said)}.";
    }

    private static IEnumerable<string> Tight(IReadOnlyList<(CakeFacts Was, CakeFacts Is)> gain) => gain.Count switch
    {
        0 => [],
        1 => [$"{gain[0].Was.Title} gets {Words.Minutes(gain[0].Is.Standing.Spare - gain[0].Was.Standing.Spare)} more to spare"],
        _ => [$"{gain.Count} tight cakes get more to spare"],
    };

    private static void Less(List<string> said, long minutes, string of)
    {
        if (minutes > 0)
        {
            said.Add($"{Words.Minutes(minutes)} less {of}");
        }
    }
}
