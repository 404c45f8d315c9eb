namespace Bakehouse.Web.Shell;

using System.Globalization;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>How a planned cake stands: when it is ready and how much time there is to spare.</summary>
/// <param name="Ready">When the last making step ends.</param>
/// <param name="Spare">Minutes from ready to what is promised.</param>
/// <param name="Late">Minutes after what is promised, 0 if in time.</param>
/// <param name="Buffer">Minutes wanted to spare; fewer is tight.</param>
public sealed record Standing(Instant Ready, int Spare, int Late, int Buffer)
{
    /// <summary>The mark of that state.</summary>
    public MarkKind Mark => Late > 0 ? MarkKind.Late : Spare < Buffer ? MarkKind.Tight : MarkKind.InTime;

    /// <summary>The word beside the mark.</summary>
    public string Word => Late > 0 ? $"{Words.Minutes(Late)} late" : $"{Words.Minutes(Spare)} to spare";

    /// <summary>How that order stands in the plan on the wall; null if it is not planned.</summary>
    public static Standing? Of(BookState state, Order order)
    {
        if (state.Week is not { } week || state.Wall is not { } wall)
        {
            return null;
        }

        var number = order.Number.ToString(CultureInfo.InvariantCulture);
        var promise = week.Orders.FirstOrDefault(o => o.Id == order.Id.ToString("N") || o.Id == order.Id.ToString() || o.Id == number);
        if (promise is null)
        {
            return null;
        }

        var starts = wall.From(week.Epoch).Steps;
        var minutes = week.Steps.Where(s => s.Id == promise.Ready || s.Id == promise.Out).ToDictionary(s => s.Id, s => s.Minutes);
        var ready = starts.FirstOrDefault(s => s.Step == promise.Ready);
        var away = starts.FirstOrDefault(s => s.Step == promise.Out);
        if (ready is null || away is null)
        {
            return null;
        }

        var end = ready.Start + minutes.GetValueOrDefault(promise.Ready);
        var edge = away.Start + (promise.EdgeIsEnd ? minutes.GetValueOrDefault(promise.Out) : 0);
        return new Standing(week.Epoch + Duration.FromMinutes(end), promise.To - end, Math.Max(0, edge - promise.To), promise.Buffer);
    }
}
