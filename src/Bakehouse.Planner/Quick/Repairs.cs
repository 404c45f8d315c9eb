using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>
/// A repair: the wall pushed later is the first answer; then what can stand is kept and only the rest is placed anew, with the
/// next hours calm, and without. The Judge's levels decide in the order of a repair. An order that pushing keeps on time
/// stays on time in whatever is returned. At last, what came in or is overdue is done as soon as it can be.
/// </summary>
/// <param name="calm">First grain at which rows that can stand may be moved.</param>
internal sealed class Repairs(Shop shop, int calm, CancellationToken cancel)
{
    /// <summary>The repair, or why there is none.</summary>
    public PlanOutcome Run()
    {
        var best = Settled(new Session(shop, cancel).Make(0, true));
        var pushed = best.Outcome;
        foreach (var from in calm > shop.FreeFrom ? [calm, shop.FreeFrom] : new[] { shop.FreeFrom })
        {
            if (from == calm || best.Outcome is not { Plan: not null, Late.Count: 0 })
            {
                var mended = Looked(new Mending(shop, from).Mend());
                best = mended.Outcome.Late.Keys.All(pushed.Late.ContainsKey) || pushed.Plan is null ? Better(best, mended) : best;
            }
        }

        return best.Levels is null ? best.Outcome : Hurried(best).Outcome;
    }

    private Answer Settled(Draft draft)
    {
        if (!Array.Exists(draft.Builds, b => b is null))
        {
            new Settling(shop, draft).Settle();
        }

        return Looked(draft);
    }

    private Answer Hurried(Answer answer)
    {
        new Hurrying(shop, answer.Draft).Hurry();
        var hurried = Looked(answer.Draft);
        return hurried.Levels is { } mine && mine.CompareTo(answer.Levels!.Value, repair: true) <= 0 ? hurried : answer;
    }

    /// <summary>The first of equals.</summary>
    private static Answer Better(Answer one, Answer other) =>
        other.Levels is { } mine && (one.Levels is not { } known || mine.CompareTo(known, repair: true) < 0) ? other : one;

    private Answer Looked(Draft draft)
    {
        var outcome = new Session(shop, cancel).Outcome(draft);
        return new Answer(draft, outcome, outcome.Plan is { } plan ? Judge.Examine(shop.Week, plan).Levels : null);
    }

    private sealed record Answer(Draft Draft, PlanOutcome Outcome, Levels? Levels);
}
