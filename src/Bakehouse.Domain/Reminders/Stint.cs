namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Planning;

/// <summary>What a day is thought of in (common practice, no source).</summary>
public enum BlockKind
{
    /// <summary>Batter, oven, turning out, wrapping, and what is cooked beside it.</summary>
    Bake,

    /// <summary>Cream and filling.</summary>
    Fill,

    /// <summary>Crumb coat and final coat.</summary>
    Coat,

    /// <summary>Stacking and décor.</summary>
    Decorate,

    /// <summary>Boxing, out of the fridge, handing over.</summary>
    Box,

    /// <summary>On the road.</summary>
    Drive,
}

/// <summary>What one tap ticks: a load, a bowl, or pieces of one operation that one person does one after another.</summary>
public sealed record Stint(IReadOnlyList<Work> Works)
{
    /// <summary>Word of the method of its last piece: what the others lead to.</summary>
    public string Operation => Works[^1].Operation;

    /// <summary>Words of the pieces that come before that one, if they are others; else empty.</summary>
    public IReadOnlyList<string> First => [.. Works.Select(w => w.Operation).Where(o => o != Operation).Distinct()];

    /// <summary>The block of the day that it belongs to.</summary>
    public BlockKind Kind => KindOf(Operation);

    /// <summary>Planned beginning of the first piece.</summary>
    public Instant Start => Works[0].Start;

    /// <summary>Planned end of the last piece.</summary>
    public Instant End => Works.Max(w => w.End);

    /// <summary>Every step that the tap ticks.</summary>
    public IReadOnlyList<string> Steps => [.. Works.SelectMany(w => w.Steps).Distinct()];

    /// <summary>True if it is taken as done.</summary>
    public bool IsAssumed => Works.All(w => w.IsAssumed);

    /// <summary>True if a wait, an oven or a customer says when it begins.</summary>
    public bool IsTimed => Works[0].IsTimed;

    /// <summary>True for two operations that one tap may have ticked: the same, or creams with what is filled with them at once.</summary>
    public static bool IsOneTap(string operation, string other) => operation == other
        || (Stints.Creams.Contains(operation) && (Stints.Creams.Contains(other) || other == "fill")) || (operation == "fill" && Stints.Creams.Contains(other));

    /// <summary>Steps before it that nobody ticked, where it may not be guessed; else empty.</summary>
    public IReadOnlyList<string> Doubts => [.. Works.SelectMany(w => w.Doubts).Distinct()];

    private static BlockKind KindOf(string operation) => operation switch
    {
        "mix" or "bake" or "turnout" or "wrap" or "filling" => BlockKind.Bake,
        "buttercream" or "colour" or "fill" => BlockKind.Fill,
        "crumb" or "coat" or "cover" => BlockKind.Coat,
        "drip" or "stack" or "decorate" or "pipe" => BlockKind.Decorate,
        "box" or "leavefridge" or "handover" => BlockKind.Box,
        "deliver" or "return" => BlockKind.Drive,
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, "No such operation."),
    };
}

/// <summary>All stints of one kind on one day.</summary>
public sealed record Block(BlockKind Kind, IReadOnlyList<Stint> Stints);

/// <summary>Joins work to stints.</summary>
internal sealed class Stints(OpenPlan plan, Instant now)
{
    /// <summary>Longer apart than this is another stint (common practice, no source).</summary>
    private static readonly Duration Apart = Duration.FromMinutes(30);

    /// <summary>A wait of so many minutes says when the next step begins.</summary>
    private const int AWait = 15;

    /// <summary>So long after its planned end a stint that is assumed may still be ticked, if nothing else has begun.</summary>
    private static readonly Duration StillShown = Duration.FromMinutes(30);

    /// <summary>These call one by one: an oven or a customer waits.</summary>
    private static readonly HashSet<string> Alone = new(StringComparer.Ordinal) { "bake", "leavefridge", "handover", "deliver", "return" };

    internal static readonly HashSet<string> Creams = new(StringComparer.Ordinal) { "filling", "buttercream", "colour" };

    /// <summary>The stints of one person that are still shown, earliest first.</summary>
    /// <param name="works">Open and assumed, by start.</param>
    public IReadOnlyList<Stint> Of(IEnumerable<Work> works)
    {
        List<List<Work>> joined = [];
        foreach (var work in works.Select(w => w with { IsTimed = IsTimed(w), Doubts = Doubts(w) }))
        {
            if (joined.Count > 0 && Joins(joined[^1], work))
            {
                joined[^1].Add(work);
            }
            else
            {
                joined.Add([work]);
            }
        }

        var stints = joined.Select(w => new Stint(w)).ToList();
        return [.. stints.Where((s, i) => !s.IsAssumed || (now < s.End + StillShown && (i + 1 == stints.Count || stints[i + 1].Start > now)))];
    }

    private bool Joins(List<Work> stint, Work next)
    {
        var last = stint[^1];
        return (next.Operation == last.Operation || IsOneBowl(last, next))
            && !Alone.Contains(next.Operation)
            && next.With.ToHashSet().SetEquals(last.With)
            && next.Start - last.End <= Apart
            && !next.Steps.Any(s => plan.Before[s].Any(h => h.In.Min(i => i.Least) > 0 && stint.Any(w => w.Steps.Contains(h.From))));
    }

    /// <summary>Creams are made one after another, and filled with at once.</summary>
    private static bool IsOneBowl(Work last, Work next) =>
        Creams.Contains(last.Operation) && (Creams.Contains(next.Operation) || (next.Operation == "fill" && next.Start == last.End));

    private bool IsTimed(Work work) => Alone.Contains(work.Operation) || work.Steps.Any(s => plan.Before[s].Any(h =>
        h.In.Min(i => i.Least) is >= AWait and var least && plan.Row(h.From) is { } before && work.Start - plan.At(plan.End(before)) < Duration.FromMinutes(least + AWait)));

    /// <summary>
    /// The nearest steps before it that are assumed; what lies before those is answered with them. Nobody is asked about the batter of
    /// what comes out of the oven.
    /// </summary>
    private IReadOnlyList<string> Doubts(Work work) => Assumed.IsAsked(work.Operation) && work.Operation != "bake"
        ? [.. work.Steps.SelectMany(s => plan.Before[s]).Select(h => h.From).Where(plan.IsAssumed).Distinct()]
        : [];
}
