namespace Bakehouse.Domain.Planning;

/// <summary>What the bowl of a mix met that the cake must be kept from, and the wet clean-down that lies between.</summary>
/// <param name="Bowl">Id of the bowl.</param>
/// <param name="Of">Allergens that went into it and that the mix is kept from; at least one.</param>
/// <param name="Planned">The clean-down after the last of them; null if the plan has none.</param>
public sealed record BowlMet(string Bowl, IReadOnlyList<string> Of, CleanRow? Planned)
{
    /// <summary>Null if the step is no mix on a bowl, or if its bowl met nothing that it is kept from.</summary>
    /// <param name="week">Knows what goes into each mix: of what is done, the week says it of the last mix in each bowl.</param>
    /// <param name="plan">Counted from the week's epoch.</param>
    public static BowlMet? Before(Week week, Plan plan, string mix)
    {
        if (week.Steps.FirstOrDefault(s => s.Id == mix) is not { Mix: not null, Avoid.Count: > 0 } step || plan.Steps.FirstOrDefault(r => r.Step == mix) is not { Machine: { } bowl } row)
        {
            return null;
        }

        var has = week.Steps.Where(s => s.Mix is not null).ToDictionary(s => s.Id, s => s.Has);
        var dirty = plan.Steps.Where(r => r.Machine == bowl && r.Start < row.Start && has.TryGetValue(r.Step, out var went) && went.Intersect(step.Avoid).Any()).ToList();
        if (dirty.Count == 0)
        {
            return null;
        }

        var last = dirty.Max(r => r.Start);
        return new BowlMet(
            bowl,
            [.. dirty.SelectMany(r => has[r.Step]).Intersect(step.Avoid)],
            plan.Cleans.Where(c => c.Machine == bowl && c.Start > last && c.Start < row.Start).MaxBy(c => c.Start));
    }
}
