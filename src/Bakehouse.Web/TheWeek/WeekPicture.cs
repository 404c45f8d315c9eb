namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>
/// The week as drawn marks with their places in px. Three pieces lie under each other and share one axis: ruler, cake rows,
/// lanes; each counts y from its own top. x counts from the start of the axis.
/// </summary>
/// <param name="Width">Of the axis and the margin for flags behind it.</param>
/// <param name="NowX">Null if now is not drawn.</param>
public sealed record WeekPicture(
    PlanFacts Facts,
    WeekWindow Window,
    TimeAxis Axis,
    double Width,
    double? NowX,
    IReadOnlyList<CakeRow> Rows,
    IReadOnlyList<Lane> Lanes,
    IReadOnlyList<AreaDrawing> Areas)
{
    /// <summary>Px of the ruler.</summary>
    public const double RulerHigh = 58;

    /// <summary>Px of a cake's row.</summary>
    public const double RowHigh = 46;

    /// <summary>Px behind the axis, so that a flag in the last hour still stands inside.</summary>
    public const double Margin = 96;

    /// <summary>An hour is never narrower than this: four days of fourteen hours stand on a tablet of 1024 px.</summary>
    public const double LeastPxPerHour = 11.5;

    /// <summary>Px of all cake rows.</summary>
    public double RowsHigh => Rows.Count * RowHigh;

    /// <summary>Px of all lanes.</summary>
    public double LanesHigh => Areas.Count > 0 ? Areas[^1].Y + Areas[^1].High : Lanes.Count > 0 ? Lanes[^1].Y + Lanes[^1].High : 0;

    /// <summary>The cakes that count for the line on top: those whose flag stands in the window.</summary>
    public IEnumerable<CakeFacts> Flagged => Rows.Select(r => r.Cake).Where(c => c.Flag >= Axis.From && c.Flag <= Axis.To);

    /// <summary>The picture of the book at that instant; null if there is no shop.</summary>
    /// <param name="later">Windows later (or, negative, earlier) than the usual one.</param>
    /// <param name="width">Px to fill, with the margin.</param>
    public static WeekPicture? Of(BookState state, Instant now, int later, double width)
    {
        if (PlanFacts.Of(state, now) is not { } facts)
        {
            return null;
        }

        var window = WeekWindow.Of(facts, later);
        var axis = TimeAxis.Of(window.Open, window.Starts, window.Ends, Words.Of(facts.Shop).Zone, width - Margin, LeastPxPerHour);
        var cakes = facts.Cakes.Where(c => c.Steps.Count > 0 && axis.Shows(c.Steps[0].From, Later(c.Flag, c.Steps[^1].To))).ToList();
        var rows = cakes.Select((c, i) => new RowDrawing(facts, axis).Row(c, i * RowHigh)).ToList();
        var lanes = LaneDrawing.Of(facts, axis);
        var top = lanes.Count == 0 ? 0 : lanes[^1].Y + lanes[^1].High;
        return new WeekPicture(
            facts, window, axis, axis.Width + Margin, axis.Shows(now, now.PlusTicks(1)) ? axis.X(now) : null,
            rows, lanes, AreaDrawing.Of(facts, axis, top));
    }

    private static Instant Later(Instant a, Instant b) => a > b ? a : b;
}

/// <summary>What a block is made of.</summary>
public enum Ink
{
    /// <summary>To do.</summary>
    Plain,

    /// <summary>Ticked.</summary>
    Done,

    /// <summary>Work after the flag.</summary>
    Late,
}

/// <summary>A block of work.</summary>
/// <param name="Text">Written in it, or "" if nothing fits.</param>
public sealed record Block(StepFacts Step, double X, double Y, double Wide, double High, Ink Ink, string Text);

/// <summary>A hatched band: something waits.</summary>
/// <param name="Kind">fridge, freezer, cool, rack, bench or van.</param>
public sealed record Band(string Kind, double X, double Y, double Wide, double High);

/// <summary>A flag: pole, pennant with the time, words under it.</summary>
/// <param name="Pole">x of what is promised.</param>
/// <param name="X">x of the pennant: the pole, or behind late work.</param>
public sealed record Flag(double Pole, double X, string Time, string Says, MarkKind State);

/// <summary>One cake.</summary>
/// <param name="SpareFrom">x at which the time to spare begins; it ends at the flag.</param>
/// <param name="Flag">Null if it stands after the window.</param>
/// <param name="Beyond">"to Tue 20 Oct" if the flag stands after the window, else "".</param>
public sealed record CakeRow(
    CakeFacts Cake, double Y, IReadOnlyList<Block> Blocks, IReadOnlyList<Band> Bands, double? SpareFrom, Flag? Flag, string Beyond);

/// <summary>Somebody, an oven or a mixer.</summary>
/// <param name="Below">Second line: hours at work.</param>
/// <param name="Off">Shaded: not at work. x and width.</param>
public sealed record Lane(
    string Name, string Below, double Y, double High, IReadOnlyList<Block> Blocks, IReadOnlyList<(double X, double Wide)> Off)
{
    /// <summary>Whose lane it is, or null for machines.</summary>
    public string? Person { get; init; }

    /// <summary>Work that is no order.</summary>
    public IReadOnlyList<ChoreBand> Chores { get; init; } = [];
}

/// <summary>Work that is no order, on a lane; its name if it fits.</summary>
public sealed record ChoreBand(string Name, double X, double Y, double Wide, double High);
