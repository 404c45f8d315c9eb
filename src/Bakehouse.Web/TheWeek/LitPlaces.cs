namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain.Planning;

/// <summary>A place where the step in hand can stand, drawn.</summary>
/// <param name="Person">On whose lane, or null on the cake's own row.</param>
public sealed record LitPlace(string? Person, double X, double Y, double Wide, double High)
{
    private const double Air = 2;

    /// <summary>What lights up on the cake's own row, for who and what is picked.</summary>
    public static IReadOnlyList<LitPlace> OnRow(WeekPicture picture, CakeRow row, Moving moving) =>
        [.. Of(picture, moving, moving.Runs, null, row.Y + Air, WeekPicture.RowHigh - (2 * Air))];

    /// <summary>What lights up on the lanes of those who could do it.</summary>
    public static IReadOnlyList<LitPlace> OnLanes(WeekPicture picture, Moving moving) =>
    [
        .. from lane in picture.Lanes
           let person = lane.Person
           where person is not null
           from place in Of(picture, moving, moving.RunsOf(person), person, lane.Y + Air, lane.High - (2 * Air))
           select place,
    ];

    /// <summary>The place that is picked, on the cake's own row; null if none is, or it is not drawn.</summary>
    public static LitPlace? Picked(WeekPicture picture, CakeRow row, Moving moving)
    {
        if (moving.Start is not { } start || !picture.Axis.Shows(moving.At(start), moving.End(start)))
        {
            return null;
        }

        var (x, wide) = RowDrawing.Place(picture.Axis, moving.At(start), moving.End(start));
        return new LitPlace(null, x, row.Y + 9, wide, WeekPicture.RowHigh - 18);
    }

    private static IEnumerable<LitPlace> Of(WeekPicture picture, Moving moving, IReadOnlyList<Span> runs, string? person, double y, double high) =>
        from run in runs
        where picture.Axis.Shows(moving.At(run.From), moving.End(run.To))
        let x = picture.Axis.X(moving.At(run.From))
        let end = picture.Axis.X(moving.End(run.To))
        select new LitPlace(person, x, y, Math.Max(4, end - x), high);
}
