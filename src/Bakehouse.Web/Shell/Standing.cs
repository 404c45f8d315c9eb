namespace Bakehouse.Web.Shell;

using Bakehouse.Book.Reading;
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
    /// <summary>The mark of that state.</summary>
    public MarkKind Mark => Late > 0 ? MarkKind.Late : Spare < Buffer ? MarkKind.Tight : MarkKind.InTime;

    /// <summary>The word beside the mark.</summary>
    public string Word => Late > 0 ? $"{Words.Minutes(Late)} late" : $"{Words.Minutes(Math.Max(0, Spare))} to spare";

    /// <summary>How that order stands in the plan on the wall; null if it is not planned.</summary>
    public static Standing? Of(BookState state, Order order)
    {
        if (state.Week is not { } week || state.Wall is not { } wall)
        {
            return null;
        }

        var id = order.Id.ToString("N");
        return week.Orders.FirstOrDefault(o => o.Id == id) is { } promise ? Of(week, promise, wall.From(week.Epoch).Steps) : null;
    }

    /// <summary>True if the order should be in the plan and found no room there.</summary>
    public static bool FoundNoRoom(BookState state, Order order) =>
        Stages.IsPlanned(order.Stage) && state.Week?.Orders.Any(o => o.Id == order.Id.ToString("N")) == true && Of(state, order) is null;

    /// <summary>How that promise stands in a plan of the week; null if a step that it needs has no row.</summary>
    public static Standing? Of(Week week, WeekOrder promise, IReadOnlyList<StepRow> rows)
    {
        var ready = rows.FirstOrDefault(s => s.Step == promise.Ready);
        var away = rows.FirstOrDefault(s => s.Step == promise.Out);
        if (ready is null || away is null)
        {
            return null;
        }

        var minutes = week.Steps.Where(s => s.Id == promise.Ready || s.Id == promise.Out).ToDictionary(s => s.Id, s => s.Minutes);
        var way = promise.EdgeIsEnd ? minutes.GetValueOrDefault(promise.Out) : 0;
        var flag = promise.To - way;
        var end = ready.Start + minutes.GetValueOrDefault(promise.Ready);
        return new Standing(
            week.Epoch + Duration.FromMinutes(end),
            week.Epoch + Duration.FromMinutes(flag),
            flag - end,
            Math.Max(0, away.Start + way - promise.To),
            promise.Buffer);
    }
}
