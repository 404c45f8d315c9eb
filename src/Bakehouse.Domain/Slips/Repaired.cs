namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Planning;

/// <summary>What a repair does to the plan, before it counts or after: what moves, what turns red, who must be told.</summary>
/// <param name="Moves">Steps that begin at another time, in other hands, on another machine, or that came in; by their new hour.</param>
/// <param name="Red">Orders that turn late or become later, minutes by order id.</param>
/// <param name="Tight">Ids of orders that now have less to spare between boxed and out than the shop wants, and had enough before.</param>
/// <param name="Unplaced">Ids of orders that find no room any more.</param>
/// <param name="People">Ids of everybody whose steps move, to them or away from them.</param>
public sealed record Repaired(
    IReadOnlyList<Moved> Moves,
    IReadOnlyDictionary<string, int> Red,
    IReadOnlyList<string> Tight,
    IReadOnlyList<string> Unplaced,
    IReadOnlyList<string> People)
{
    /// <summary>Ids of the orders whose customers must be told: those that turn red, and those without a place.</summary>
    public IReadOnlyList<string> Customers => [.. Red.Keys.Concat(Unplaced).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Compares two plans, each with the week that it is for. What the week has as done or assumes is no move.</summary>
    /// <param name="before">The week as it was known before the slip.</param>
    public static Repaired Of(Week before, Wall was, Week after, Wall becomes)
    {
        var (old, now) = (Shown(before, was), Shown(after, becomes));
        var done = after.Fixed.Where(f => f.Why is "done" or Assumed.Why).Select(f => f.Step).ToHashSet();
        var moves = now.Values.Where(m => !done.Contains(m.Step) && (!old.TryGetValue(m.Step, out var last) || !Same(last, m)))
            .Select(m => new Moved(m.Step, old.GetValueOrDefault(m.Step), m)).OrderBy(m => m.To.At).ThenBy(m => m.Step, StringComparer.Ordinal).ToList();
        var (lateBefore, late) = (Judge.MinutesLate(before, was.From(before.Epoch)), Judge.MinutesLate(after, becomes.From(after.Epoch)));
        var tightBefore = TightIn(before, old).ToHashSet();
        return new Repaired(
            moves,
            late.Where(l => l.Value > lateBefore.GetValueOrDefault(l.Key)).ToDictionary(),
            [.. TightIn(after, now).Where(o => !late.ContainsKey(o) && !tightBefore.Contains(o))],
            [.. after.Orders.Where(o => !now.ContainsKey(o.Out) && old.ContainsKey(o.Out)).Select(o => o.Id)],
            [.. moves.SelectMany(m => m.To.People.Concat(m.From?.People ?? [])).Distinct().Order(StringComparer.Ordinal)]);
    }

    private static Dictionary<string, Shown> Shown(Week week, Wall wall)
    {
        var steps = week.Steps.Where(s => s.Name != SlippedWeek.WaitWord).Select(s => s.Id).ToHashSet();
        return wall.Plan.Steps.Where(r => steps.Contains(r.Step)).ToDictionary(r => r.Step, r => new Shown(r.Step, wall.Epoch + Duration.FromMinutes(r.Start), r.People, r.Machine));
    }

    private static bool Same(Shown one, Shown other) =>
        one.At == other.At && one.Machine == other.Machine && one.People.ToHashSet().SetEquals(other.People);

    private static IEnumerable<string> TightIn(Week week, Dictionary<string, Shown> rows)
    {
        var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
        return week.Orders.Where(o => rows.TryGetValue(o.Ready, out var ready) && rows.TryGetValue(o.Out, out var goes)
            && (goes.At - ready.At).TotalMinutes - minutes[o.Ready] < o.Buffer).Select(o => o.Id);
    }
}

/// <summary>A step where a plan has it.</summary>
public sealed record Shown(string Step, Instant At, IReadOnlyList<string> People, string? Machine);

/// <summary>A step that a repair moved.</summary>
/// <param name="From">Where it was; null if it came in (a sponge that is baked again).</param>
public sealed record Moved(string Step, Shown? From, Shown To);
