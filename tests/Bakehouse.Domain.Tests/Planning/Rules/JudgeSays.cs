namespace Bakehouse.Domain.Tests.Planning.Rules;

using Bakehouse.Domain.Planning;
using Bakehouse.Testing.Planning;

/// <summary>
/// What the Judge must say of a tiny week and plan. Every week here is worked out by hand beside its test, from the
/// sentence of the rule; the source of the sentences is the project's own rule table (Judge's method comments).
/// </summary>
internal static class JudgeSays
{
    public static void Kept(WeekBuilder week, PlanBuilder plan) =>
        Assert.Empty(Judge.Examine(week.Build(), plan.Build()).Breaches.Select(b => $"{b.Rule} {b.Sentence}"));

    /// <summary>One breach of this rule and of no other, about this step, hold or thing, with these words in the sentence.</summary>
    public static void Broken(string rule, string about, WeekBuilder week, PlanBuilder plan, params string[] words)
    {
        var breaches = Judge.Examine(week.Build(), plan.Build()).Breaches;

        Assert.Equal([rule], breaches.Select(b => b.Rule));
        Assert.Equal(about, breaches[0].Step);
        Assert.All(words, w => Assert.Contains(w, breaches[0].Sentence, StringComparison.Ordinal));
    }
}
