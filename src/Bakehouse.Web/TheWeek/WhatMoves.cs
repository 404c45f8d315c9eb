namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>What a change would do to the plan, in words: which cakes turn late, and which other steps move.</summary>
/// <param name="Late">"412 Hale, 20 min late": only what is later than now.</param>
/// <param name="Moves">"409 Final coat, 8 in: Thu 11:00 → Thu 11:40 Dov".</param>
public sealed record WhatMoves(IReadOnlyList<string> Late, IReadOnlyList<string> Moves)
{
    /// <summary>The plan as foreseen against the plan on the wall.</summary>
    /// <param name="but">The step that was moved by hand.</param>
    public static WhatMoves Of(BookState state, Foreseen foreseen, Instant now, string? but = null)
    {
        if (PlanFacts.Of(state, now) is not { } before || PlanFacts.Of(state with { Wall = foreseen.Wall }, now) is not { } after)
        {
            return new WhatMoves([], []);
        }

        var words = Words.Of(before.Shop);
        var stood = before.Cakes.SelectMany(c => c.Steps).ToDictionary(s => s.Id);
        var late = before.Cakes.ToDictionary(c => c.Id, c => c.Late);
        return new WhatMoves(
            [.. after.Cakes.Where(c => c.Late > late.GetValueOrDefault(c.Id)).Select(c => $"{c.Title}, {Words.Late(c.Late)} late")],
            [
                .. from cake in after.Cakes
                   from step in cake.Steps
                   where step.Id != but && !step.Done && stood.TryGetValue(step.Id, out var was) && !Same(was, step)
                   orderby step.From
                   select $"{cake.Number} {step.What}: {WhyThen.When(words, stood[step.Id].From)} → {WhyThen.When(words, step.From)}{Who(after, stood[step.Id], step)}",
            ]);
    }

    private static bool Same(StepFacts was, StepFacts now) =>
        was.From == now.From && was.Machine == now.Machine && was.People.ToHashSet().SetEquals(now.People);

    private static string Who(PlanFacts facts, StepFacts was, StepFacts now) =>
        was.Machine == now.Machine && was.People.ToHashSet().SetEquals(now.People)
            ? ""
            : " " + string.Join(", ", now.People.Select(facts.NameOf).Concat(now.Machine is { } machine ? [facts.PlaceOf(machine)] : []));
}
