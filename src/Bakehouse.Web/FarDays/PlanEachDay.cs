namespace Bakehouse.Web.FarDays;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>
/// Enters <see cref="PlanNear"/> when the day of a far order has come near. What found no room is tried again after each
/// change of the book and on each new day, never in a circle.
/// </summary>
public sealed class PlanEachDay(IBook book, IClock clock, TimeProvider time, ILogger<PlanEachDay> log) : EachMinute(time, log)
{
    private (int Head, LocalDate Day) tried;

    /// <summary>Plans what waits for a plan.</summary>
    public async Task Look(CancellationToken cancel = default)
    {
        var (state, now) = (book.State, clock.GetCurrentInstant());
        var today = Words.Of(state.Shop).Local(now).Date;
        if (tried == (state.Head, today) || state.IsAhead(now) || state.WithoutPlan(now).Count == 0)
        {
            return;
        }

        var answer = await book.Enter(new PlanNear(Guid.NewGuid(), "", "by itself"), cancel);
        tried = (book.State.Head, today);
        log.LogInformation("What came near, at head {Head}: {Outcome}", book.State.Head, answer.Kind);
    }

    /// <inheritdoc/>
    protected override Task LookOnce(CancellationToken cancel) => Look(cancel);
}
