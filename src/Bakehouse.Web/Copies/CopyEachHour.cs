namespace Bakehouse.Web.Copies;

using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>
/// Takes a copy of the book an hour after the newest, also when the app was off meanwhile; one that failed is tried again in ten
/// minutes.
/// </summary>
public sealed class CopyEachHour(BookCopies copies, IBook book, IClock clock, TimeProvider time, ILogger<CopyEachHour> log) 
    : EachMinute(time, log)
{
    private static readonly Duration Between = Duration.FromHours(1);
    private static readonly Duration AgainAfter = Duration.FromMinutes(10);
    private readonly Lock gate = new();
    private CopyTaken? last;

    /// <summary>The last try since the app started, or null if there was none yet.</summary>
    public CopyTaken? Last => last;

    /// <summary>Takes a copy if one is due.</summary>
    public void Look()
    {
        lock (gate)
        {
            var now = clock.GetCurrentInstant();
            if (book.State.Shop is null || !IsDue(now))
            {
                return;
            }

            last = copies.Take(now);
            foreach (var problem in last.Problems)
            {
                log.LogError("Copy of {Time}: {Problem}", now, problem);
            }
        }
    }

    /// <summary>Off this thread: a big book takes seconds. A copy that was begun is finished.</summary>
    protected override Task LookOnce(CancellationToken cancel) => Task.Run(Look, CancellationToken.None);

    private bool IsDue(Instant now) => last is { } tried
        ? now < tried.At || now - tried.At >= (tried.Path is null ? AgainAfter : Between)
        : copies.Newest is not { } newest || now < newest || now - newest >= Between;
}
