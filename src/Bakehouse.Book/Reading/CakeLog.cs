namespace Bakehouse.Book.Reading;

using Bakehouse.Book.Tables;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Slips;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>What somebody did about a step.</summary>
public enum CakeDeed
{
    /// <summary>Said that it is done.</summary>
    Ticked,

    /// <summary>Took a tick back.</summary>
    TakenBack,

    /// <summary>Put another hour or person in the place of a tick.</summary>
    Corrected,

    /// <summary>Said that what was assumed is not done yet.</summary>
    NotYet,

    /// <summary>Said to a ring: ten minutes more.</summary>
    Later,

    /// <summary>Said to a ring that it can't be done.</summary>
    Cannot,

    /// <summary>Told that sponges cracked or sank: they are baked again.</summary>
    Cracked,

    /// <summary>Told the same, and spares from the freezer took their place.</summary>
    Spared,

    /// <summary>Told that something is not firm yet.</summary>
    NotSet,

    /// <summary>Told that something needed for the step is used up.</summary>
    RanOut,

    /// <summary>Told that the step takes longer.</summary>
    Behind,

    /// <summary>Begun before its wait was over, as the owner said.</summary>
    Anyway,

    /// <summary>Took back what was told as gone wrong.</summary>
    ToldBack,
}

/// <summary>One line of a cake's log.</summary>
/// <param name="At">When it was said.</param>
/// <param name="Person">Id of who said it.</param>
/// <param name="Step">Key of the step.</param>
/// <param name="By">Id of who did the step; of a tick.</param>
/// <param name="Done">When the step was done; of a tick. Until when it waits or lasts; of what went wrong.</param>
/// <param name="Reason">In words, or empty.</param>
public sealed record CakeLine(Instant At, string Person, CakeDeed Deed, string Step, string By, Instant? Done, string Reason);

/// <summary>Reads what happened to a cake from the ticks, the answers and what went wrong, those that were taken back among them.</summary>
internal static class CakeLog
{
    public static IReadOnlyList<CakeLine> Of(BookContext book, Guid order) =>
    [
        .. book.Ticks.AsNoTracking().Where(t => t.Order == order).OrderBy(t => t.Seq).AsEnumerable().SelectMany(Lines)
            .Concat(book.RingAnswers.AsNoTracking().Where(a => a.Order == order).OrderBy(a => a.Seq).AsEnumerable().Select(a => a.Answer()).Where(a => a.Kind != RingAnswerKind.Done)
                .Select(a => new CakeLine(a.At, a.Person, a.Kind == RingAnswerKind.Later ? CakeDeed.Later : CakeDeed.Cannot, a.Ring[(a.Ring.IndexOf(':', StringComparison.Ordinal) + 1)..], "", null, a.Reason)))
            .Concat(Slips(book, order.ToString("N")))
            .OrderBy(l => l.At),
    ];

    private static IEnumerable<CakeLine> Slips(BookContext book, string order) =>
        from row in book.Slips.AsNoTracking().Where(r => r.Document.Contains(order)).OrderBy(r => r.Seq).AsEnumerable()
        let slip = row.Slip()
        where Deed(slip) is not null
        from step in slip.About.Where(a => a.StartsWith(order, StringComparison.Ordinal))
        from line in Lines(row, slip, step)
        select line;

    private static CakeDeed? Deed(Slip slip) => slip.Kind switch
    {
        SlipKind.Cracked => slip.Spare ? CakeDeed.Spared : CakeDeed.Cracked,
        SlipKind.NotSet => CakeDeed.NotSet,
        SlipKind.RanOut => CakeDeed.RanOut,
        SlipKind.Behind => CakeDeed.Behind,
        SlipKind.Anyway => CakeDeed.Anyway,
        // A machine or a person is no cake's, and another hour is another version of the order.
        _ => null,
    };

    private static IEnumerable<CakeLine> Lines(SlipRow row, Slip slip, string step)
    {
        yield return new CakeLine(slip.Told, slip.Person, Deed(slip)!.Value, step, "", slip.Kind == SlipKind.Anyway ? slip.From : slip.Until, "");
        if (row.Undone is { } at)
        {
            yield return new CakeLine(at, row.UndonePerson ?? "", CakeDeed.ToldBack, step, "", null, "");
        }
    }

    private static IEnumerable<CakeLine> Lines(TickRow row)
    {
        if (row.By == TickRow.Nobody)
        {
            yield return new CakeLine(row.Written, row.Person, CakeDeed.NotYet, row.Step, "", null, "");
            yield break;
        }

        yield return new CakeLine(row.Written, row.Person, CakeDeed.Ticked, row.Step, row.By, row.Done, "");
        if (row.Undone is { } at)
        {
            yield return new CakeLine(at, row.UndonePerson ?? "", row.Reason is null ? CakeDeed.TakenBack : CakeDeed.Corrected, row.Step, row.By, row.Done, row.Reason ?? "");
        }
    }
}
