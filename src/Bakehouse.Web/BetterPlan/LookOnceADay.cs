namespace Bakehouse.Web.BetterPlan;

using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Looks for a better plan once a day, in the first minute in which nobody has entered anything for a while.</summary>
public sealed class LookOnceADay(IBook book, PlanSearch search, IClock clock, TimeProvider time, ILogger<LookOnceADay> log) : EachMinute(time, log)
{
    /// <summary>So long nobody has touched a screen: then the machine has time (our own choice).</summary>
    private static readonly Duration Quiet = Duration.FromMinutes(10);

    private LocalDate looked;

    /// <summary>Looks, if it is time.</summary>
    public async Task Look(CancellationToken cancel = default)
    {
        var (state, now) = (book.State, clock.GetCurrentInstant());
        var today = Words.Of(state.Shop).Local(now).Date;
        if (looked != today && state.Wall is not null && now - state.Newest >= Quiet)
        {
            looked = today;
            await search.Look(cancel);
        }
    }

    /// <inheritdoc/>
    protected override Task LookOnce(CancellationToken cancel) => Look(cancel);
}
