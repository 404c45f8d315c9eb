namespace Bakehouse.Book.Reading;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Tables;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>
/// When the newest accepted command was written, by the clock of then. Lines before the last <see cref="TrustClock"/> don't count: the
/// owner has said that the clock is right since. Each line of the audit is looked at once.
/// </summary>
internal sealed class FactTime
{
    private const string Accepted = nameof(AnswerKind.Accepted);
    private long seen;
    private Instant newest = Instant.MinValue;

    public Instant Newest(BookContext book)
    {
        var lines = book.Audit.AsNoTracking().Where(a => a.Counter > seen && a.Outcome == Accepted);
        if (lines.Where(a => a.Command == nameof(TrustClock)).OrderByDescending(a => a.Counter).FirstOrDefault() is { } trusted)
        {
            newest = trusted.At;
            lines = lines.Where(a => a.Counter > trusted.Counter);
        }

        var later = lines.OrderByDescending(a => a.At).FirstOrDefault();
        newest = later is not null && later.At > newest ? later.At : newest;
        seen = book.Audit.AsNoTracking().OrderByDescending(a => a.Counter).Select(a => a.Counter).FirstOrDefault();
        return newest;
    }
}
