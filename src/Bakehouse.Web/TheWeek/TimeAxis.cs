namespace Bakehouse.Web.TheWeek;

using NodaTime;

/// <summary>
/// Time runs right. Every open hour is equally wide on every day; a night, or a closed day with the nights around it, is
/// folded to the width of 0.9 hour.
/// </summary>
public sealed class TimeAxis
{
    /// <summary>Width of a fold, in hours.</summary>
    public const double Fold = 0.9;

    private TimeAxis(IReadOnlyList<Stretch> stretches, double pxPerHour)
    {
        Stretches = stretches;
        PxPerHour = pxPerHour;
    }

    /// <summary>Open days and folds in turn, the last of them a fold.</summary>
    public IReadOnlyList<Stretch> Stretches { get; }

    /// <summary>Px in an open hour.</summary>
    public double PxPerHour { get; }

    /// <summary>First instant drawn.</summary>
    public Instant From => Stretches[0].From;

    /// <summary>End of what is drawn.</summary>
    public Instant To => Stretches[^1].To;

    /// <summary>Px of the whole axis.</summary>
    public double Width => Stretches[^1].X + Stretches[^1].Width;

    /// <summary>The axis for those open days.</summary>
    /// <param name="open">Open days, sorted; days between them are folded.</param>
    /// <param name="starts">First hour drawn, 0 to 23.</param>
    /// <param name="ends">Last hour drawn, 1 to 24.</param>
    /// <param name="width">Px to fill.</param>
    /// <param name="leastPxPerHour">Never narrower than this: then the axis is wider than asked and scrolls.</param>
    public static TimeAxis Of(IReadOnlyList<LocalDate> open, int starts, int ends, DateTimeZone zone, double width, double leastPxPerHour)
    {
        var bounds = open.Select(d => (Day: d, From: Hour(d, starts, zone), To: Hour(d, ends, zone))).ToList();
        var hours = bounds.Sum(b => (b.To - b.From).TotalHours) + (Fold * bounds.Count);
        var px = Math.Max(leastPxPerHour, width / hours);
        var all = new List<Stretch>();
        var x = 0.0;
        for (var i = 0; i < bounds.Count; i++)
        {
            var (day, from, to) = bounds[i];
            var wide = (to - from).TotalHours * px;
            var next = i + 1 < bounds.Count ? bounds[i + 1].From : Hour(day.PlusDays(1), starts, zone);
            all.Add(new Stretch(day, from, to, x, wide));
            all.Add(new Stretch(null, to, next, x + wide, Fold * px));
            x += wide + (Fold * px);
        }

        return new TimeAxis(all, px);
    }

    /// <summary>Px from the left of the axis; before its start 0, after its end its width.</summary>
    public double X(Instant at)
    {
        if (at <= From)
        {
            return 0;
        }

        foreach (var s in Stretches)
        {
            if (at <= s.To)
            {
                return s.To == s.From ? s.X : s.X + (s.Width * ((at - s.From) / (s.To - s.From)));
            }
        }

        return Width;
    }

    /// <summary>The instant drawn at that many px from the left; before the start or after the end of the axis, its ends.</summary>
    public Instant At(double x)
    {
        foreach (var s in Stretches)
        {
            if (x <= s.X + s.Width)
            {
                return s.From + ((s.To - s.From) * (s.Width > 0 ? Math.Clamp((x - s.X) / s.Width, 0, 1) : 0));
            }
        }

        return To;
    }

    /// <summary>True if that stretch of time is at least partly drawn.</summary>
    public bool Shows(Instant from, Instant to) => from < To && to > From;

    private static Instant Hour(LocalDate day, int hour, DateTimeZone zone) => zone.AtLeniently(
        hour >= 24 ? day.PlusDays(1).AtMidnight() : day.At(new LocalTime(hour, 0))).ToInstant();
}

/// <summary>A piece of the axis: an open day, or a fold if <paramref name="Day"/> is null.</summary>
public sealed record Stretch(LocalDate? Day, Instant From, Instant To, double X, double Width);
