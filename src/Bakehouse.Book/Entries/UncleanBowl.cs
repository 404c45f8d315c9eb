namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>A batter that must be kept from what its bowl met, and no wet clean-down between: an allergen stop.</summary>
internal static class UncleanBowl
{
    /// <summary>Such a batter is not ticked before its bowl can have been cleaned down.</summary>
    public static IEnumerable<Problem> BeforeTick(string step, Desk desk)
    {
        if (desk.State is not { Week: { } week, Wall: { } wall } || BowlMet.Before(week, wall.From(week.Epoch), step) is not { } clean
            || (clean.Planned is { } begun && At(week, begun.Start) <= desk.Now))
        {
            return [];
        }

        var planned = clean.Planned is { } later ? $" The clean-down is planned for {desk.DayAndClock(At(week, later.Start))}." : "";
        return
        [
            new Problem("step", Name(clean, desk), $"{Name(clean, desk)} met {string.Join(", ", clean.Of)} and is not cleaned down yet.{planned}",
                "Clean it down wet first and tick from that hour on, or move this batter on the week page: its clean-down moves with it."),
        ];
    }

    /// <summary>Who tells of an allergy once the batter is made hears it if the bowl met that allergen before.</summary>
    public static IEnumerable<Problem> AfterMixing(Order? before, Order after, Desk desk)
    {
        var fresh = after.Allergies.Avoid.Except(before?.Allergies.Avoid ?? [], StringComparer.OrdinalIgnoreCase).ToList();
        if (before is null || fresh.Count == 0 || desk.State.Wall is not { } wall)
        {
            return [];
        }

        var week = Week.From(desk.OrdersWith(after), desk.Shop, [], null, desk.Now, ByHand.Nothing with { RecipesOf = desk.State.CookbookOf });
        var plan = wall.From(week.Epoch);
        var ticked = desk.State.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes, StringComparer.Ordinal);
        return plan.Steps
            .Where(r => StepKey.Parse(r.Step)?.Order == after.Id && minutes.TryGetValue(r.Step, out var took) && (ticked.Contains(r.Step) || At(week, r.Start + took) <= desk.Now))
            .Select(r => (Row: r, Clean: BowlMet.Before(week, plan, r.Step)))
            .Where(m => m.Clean is { Planned: null } clean && clean.Of.Intersect(fresh, StringComparer.OrdinalIgnoreCase).Any())
            .Select(m => new Problem("Allergies", string.Join(", ", m.Clean!.Of),
                $"{Name(m.Clean!, desk)} met {string.Join(", ", m.Clean!.Of)} before {Word(m.Row.Step)} of this cake was made in it ({desk.DayAndClock(At(week, m.Row.Start))}), and no clean-down lay between.",
                "Make it again (Something’s wrong, on the kitchen screen), or tell the customer that this cake can’t be made for it."))
            .DistinctBy(p => p.Sentence).Take(1);
    }

    private static string Word(string step) => StepKey.Parse(step)?.Operation switch { "mix" => "the batter", "buttercream" or "colour" => "the buttercream", "filling" => "the filling", _ => "something" };

    private static Instant At(Week week, int minute) => week.Epoch + Duration.FromMinutes(minute);

    private static string Name(BowlMet clean, Desk desk) => desk.Shop.Bowls.FirstOrDefault(b => b.Id == clean.Bowl)?.Name ?? clean.Bowl;
}
