namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using NodaTime;

/// <summary>How a planned cake stands: when it is ready and how much time there is to spare.</summary>
/// <param name="Ready">When the last making step ends.</param>
/// <param name="Flag">When it must leave: the agreed pickup, or the departure that a delivery needs.</param>
/// <param name="Spare">Minutes from ready to the flag; below zero if it is ready after it.</param>
/// <param name="Late">Minutes after what is promised, 0 if in time.</param>
/// <param name="Buffer">Minutes wanted to spare; fewer is tight.</param>
public sealed record Standing(Instant Ready, Instant Flag, int Spare, int Late, int Buffer)
{
    /// <summary>Minutes for which a ready cake has stood past the hour at which its customer wanted to fetch it; else 0.</summary>
    public int Waits { get; init; }

    /// <summary>The mark of that state.</summary>
    public MarkKind Mark => Late > 0 ? MarkKind.Late : Waits > 0 || Spare < Buffer ? MarkKind.Tight : MarkKind.InTime;

    /// <summary>The word beside the mark.</summary>
    public string Word => Late > 0 ? $"{Words.Late(Late)} late"
        : Waits > 0 ? $"ready, not fetched for {Words.Late(Waits)}"
        : $"{Words.Minutes(Math.Max(0, Spare))} to spare";

    /// <summary>How that order stands in the plan on the wall; null if it is not planned.</summary>
    /// <param name="now">The moment of looking: what should be done by then and is not, counts as late.</param>
    public static Standing? Of(BookState state, Order order, Instant? now = null)
    {
        if (state.Week is not { } week || state.Wall is not { } wall)
        {
            return null;
        }

        var id = order.Id.ToString("N");
        return week.Orders.FirstOrDefault(o => o.Id == id) is { } promise ? Of(week, promise, wall.From(week.Epoch).Steps, now) : null;
    }

    /// <summary>True if the order should be in the plan and found no room there.</summary>
    public static bool FoundNoRoom(BookState state, Order order) =>
        Stages.IsPlanned(order.Stage) && state.Week?.Orders.Any(o => o.Id == order.Id.ToString("N")) == true && Of(state, order) is null;

    /// <summary>"planned from Sat 13 Feb" if the order is beyond the planned days; else "".</summary>
    public static string PlannedFrom(BookState state, Order order, LocalDate today) =>
        state.Shop is { } shop && Stages.IsPlanned(order.Stage) && PlanReach.IsFar(order, shop, today)
            ? $"planned from {Words.Of(shop).Day(PlanReach.PlannedFrom(order, shop), today)}"
            : "";

    /// <summary>How that promise stands in a plan of the week; null if a step that it needs has no row.</summary>
    public static Standing? Of(Week week, WeekOrder promise, IReadOnlyList<StepRow> rows, Instant? now = null)
    {
        var minute = now is { } at ? (int)Math.Floor((at - week.Epoch).TotalMinutes) : (int?)null;
        return Readiness.Of(week, promise, rows, minute) is not { } found ? null : new Standing(
            week.Epoch + Duration.FromMinutes(found.Ready), week.Epoch + Duration.FromMinutes(found.Flag), found.Spare, found.Late, promise.Buffer)
        {
            Waits = found.Waits,
        };
    }
}
