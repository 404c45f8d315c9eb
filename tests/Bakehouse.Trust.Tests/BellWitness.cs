namespace Bakehouse.Trust.Tests;

using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Testing;
using NodaTime;

/// <summary>
/// Holds what a screen shows as ringing against the file of the book, by a plain rule of its own: a step on the wall whose time has come,
/// which is not done and to which nobody said "later" or "can't", rings from that minute; nothing else does, and nothing twice. While the
/// book stands still, nothing that rings falls silent and nothing begins but at its time. Shares no code with what rings.
/// </summary>
internal sealed class BellWitness
{
    private readonly Dictionary<long, int> headOf = [];
    private readonly HashSet<(string Id, Instant Due)> rings = [];
    private readonly Dictionary<string, Instant> silenced = new(StringComparer.Ordinal);
    private (Written Book, Instant Now, IReadOnlyList<Ring> Ringing)? last;

    /// <summary>Rings that were seen, each once for each time at which it was due.</summary>
    public int Rings => rings.Count;

    /// <summary>Steps, or loads, or limits that rang.</summary>
    public int Jobs => rings.DistinctBy(r => r.Id).Count();

    /// <summary>How often rows on the wall came, went or moved.</summary>
    public int PlanChanges { get; private set; }

    /// <summary>Rings that fell silent because the plan moved or the cake was cancelled: neither done nor answered.</summary>
    public int Withdrawn { get; private set; }

    /// <summary>Those of them that rang again for the same job, and the longest silence between.</summary>
    public (int Count, Duration Longest) CameAgain { get; private set; }

    /// <summary>What is wrong with a screen's list of rings, in words; null if nothing is. Remembers it for the next look.</summary>
    public string? Look(Written book, Week? week, Instant now, IReadOnlyList<Ring> ringing)
    {
        foreach (var answer in book.Answers)
        {
            headOf.TryAdd(answer.Seq, book.Head);
        }

        var wrong = Wrong(book, week, now, ringing) ?? Flickers(book, now, ringing);
        Count(book, now, ringing);
        last = (book, now, ringing);
        return wrong;
    }

    /// <summary>The rule for one moment.</summary>
    public string? Wrong(Written book, Week? week, Instant now, IReadOnlyList<Ring> ringing)
    {
        var open = DueSteps.All(week, book.Wall, book.Planned, book.Ticked).ToDictionary(s => s.Step, StringComparer.Ordinal);
        var must = open.Values.Where(s => s.Due <= now && Silence(book, s, now) == Quiet.No).Select(s => s.Step);
        var may = open.Values.Where(s => s.Due <= now && Silence(book, s, now) != Quiet.Yes).Select(s => s.Step).ToHashSet(StringComparer.Ordinal);
        var seen = ringing.SelectMany(r => r.Steps).ToList();
        return must.Except(seen, StringComparer.Ordinal).FirstOrDefault() is { } lost ? $"{lost} is due and does not ring."
            : seen.Concat(ringing.Select(r => r.Id)).GroupBy(s => s, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice ? $"{twice.Key} rings twice."
            : seen.FirstOrDefault(s => !may.Contains(s)) is { } ghost ? $"{ghost} rings, but it is done, answered, not planned or not due."
            : ringing.FirstOrDefault(r => r.Steps.Any(s => open[s].Ring != r.Id)) is { } misnamed ? $"{misnamed.Id} is not the ring of {string.Join(' ', misnamed.Steps)}."
            : ringing.FirstOrDefault(r => r.Steps.Count == 0 && !(book.Stands(r.Step) && r.Due <= now)) is { } gone ? $"{gone.Id} rings, but its cake is gone."
            : week?.Fixed.FirstOrDefault(f => f is { Why: "done", Step: { } s } && Calls(s) && !book.SaysSomethingOf(s)) is { } untold ? $"{untold.Step} counts as done, and nobody said anything of its cake."
            : null;
    }

    /// <summary>
    /// "Can't" holds for the time that it was said of. "Later" holds until then, while the book stands as it did when it was said; after any
    /// change it may ring sooner, since the slack may be gone, but not after that.
    /// </summary>
    private Quiet Silence(Written book, DueStep step, Instant now)
    {
        var said = book.Answers.Where(a => a.Ring == step.Ring).ToList();
        return said.Any(a => a.Kind == "Cannot" && a.At >= step.Due) ? Quiet.Yes
            : said.LastOrDefault(a => a.Kind == "Later") is { Until: { } until } later && until > now ? headOf.GetValueOrDefault(later.Seq) == book.Head ? Quiet.Yes : Quiet.Perhaps
            : Quiet.No;
    }

    private static bool Calls(string step) => step.Split('.')[2] is "leavefridge" or "bake" or "handover" or "deliver";

    private string? Flickers(Written book, Instant now, IReadOnlyList<Ring> ringing) =>
        last is not { } before || before.Book.Head != book.Head ? null
        : before.Ringing.FirstOrDefault(r => ringing.All(n => n.Id != r.Id)) is { } fell ? $"{fell.Id} fell silent, and nothing was written."
        : ringing.FirstOrDefault(r => before.Ringing.All(b => b.Id != r.Id) && !(r.Due > before.Now && r.Due <= now)) is { } began ? $"{began.Id} began to ring, and it was not its time."
        : null;

    private void Count(Written book, Instant now, IReadOnlyList<Ring> ringing)
    {
        rings.UnionWith(ringing.Select(r => (r.Id, r.Due)));
        foreach (var ring in ringing.Where(r => silenced.ContainsKey(r.Id)))
        {
            silenced.Remove(ring.Id, out var since);
            CameAgain = (CameAgain.Count + 1, Duration.Max(CameAgain.Longest, now - since));
        }

        if (last is not { } before)
        {
            return;
        }

        PlanChanges += book.SameRows(before.Book) ? 0 : 1;
        var answered = book.Answers.Where(a => headOf[a.Seq] > before.Book.Head).Select(a => a.Ring).ToHashSet(StringComparer.Ordinal);
        foreach (var ring in before.Ringing.Where(r => ringing.All(n => n.Id != r.Id) && !answered.Contains(r.Id) && !book.Ticked.Any(t => t[..32] == r.Step[..32] && !before.Book.Ticked.Contains(t))))
        {
            Withdrawn++;
            silenced[ring.Id] = now;
        }
    }

    private enum Quiet
    {
        No,
        Perhaps,
        Yes,
    }
}
