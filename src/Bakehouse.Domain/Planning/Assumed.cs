namespace Bakehouse.Domain.Planning;

/// <summary>
/// What nobody ticked and everybody takes as done, because its planned time has passed: hands in flour tick a load, not each small
/// step. It holds until a step that may not be guessed; there one question is asked (trade practice, no source). Nothing is learned
/// from what is only assumed.
/// </summary>
public static class Assumed
{
    /// <summary>
    /// Never taken as done: what is in the oven, filling (layers must be cold), and everything from the box on, where a food clock or a
    /// customer waits for it.
    /// </summary>
    private static readonly HashSet<string> Asked = new(StringComparer.Ordinal) { "bake", "fill", "box", "leavefridge", "handover", "deliver" };

    /// <summary>The word that such a row carries among what is given: <see cref="Fixed.Why"/>.</summary>
    public const string Why = "assumed";

    /// <summary>True if somebody must say that this step is done.</summary>
    /// <param name="operation">Word of the method.</param>
    public static bool IsAsked(string operation) => Asked.Contains(operation);

    /// <summary>
    /// A plan as it stands once a week assumes steps of it: they ask for no hands and no machine any more, and nothing waits for them.
    /// </summary>
    /// <param name="plan">With minutes from the week's own epoch.</param>
    /// <param name="given">What the week has as given.</param>
    public static Plan Taken(Plan plan, IReadOnlyList<Fixed> given)
    {
        var assumed = given.Where(f => f.Why == Why).ToDictionary(f => f.Step!);
        return assumed.Count == 0 ? plan : plan with
        {
            Steps = [.. plan.Steps.Select(r => assumed.TryGetValue(r.Step, out var f) ? r with { Start = f.Start ?? r.Start, People = f.People ?? [], Machine = f.Machine, Batch = null } : r)],
            Holds = [.. plan.Holds.Where(h => h.Hold.Split('>') is not [_, var to] || !assumed.ContainsKey(to))],
        };
    }

    /// <summary>Steps that are taken as done at that minute, with the minute at which they ended: as planned.</summary>
    /// <param name="rows">Planned rows of steps that are not done.</param>
    /// <param name="step">The step of a row.</param>
    /// <param name="before">Holds by the step that they end at.</param>
    /// <param name="done">Ends of what is done.</param>
    /// <param name="denied">When somebody last said of a step that it is not done: what was planned to end by then is not assumed.</param>
    /// <param name="now">Minute of the week.</param>
    internal static Dictionary<string, int> Of(
        IEnumerable<StepRow> rows, Func<string, Step> step, ILookup<string, Hold> before, IReadOnlyDictionary<string, int> done, IReadOnlyDictionary<string, int> denied, int now)
    {
        var found = new Dictionary<string, int>();
        bool Ready(StepRow row) => before[row.Step].Where(h => !Methods.Places.IsWhenever(h)).All(h =>
            (done.TryGetValue(h.From, out var end) || found.TryGetValue(h.From, out end)) && row.Start - end >= h.In.Min(i => i.Least));
        foreach (var row in rows.OrderBy(r => r.Start).ThenBy(r => r.Start + step(r.Step).Minutes))
        {
            var ends = row.Start + step(row.Step).Minutes;
            if (ends <= now && !IsAsked(step(row.Step).Name) && denied.GetValueOrDefault(row.Step, int.MinValue) < ends && Ready(row))
            {
                found[row.Step] = ends;
            }
        }

        return found;
    }
}
