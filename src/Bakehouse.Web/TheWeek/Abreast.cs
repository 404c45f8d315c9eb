namespace Bakehouse.Web.TheWeek;

using NodaTime;

/// <summary>Work at the same time in one row lies abreast: each step gets a track, and knows how many tracks there are.</summary>
internal static class Abreast
{
    /// <summary>Track and number of tracks for each step.</summary>
    /// <param name="steps">By start.</param>
    public static IEnumerable<(StepFacts Step, int Track, int Of)> Of(IReadOnlyList<StepFacts> steps)
    {
        for (var i = 0; i < steps.Count;)
        {
            var until = steps[i].To;
            var ends = new List<Instant>();
            var group = new List<(StepFacts Step, int Track)>();
            for (; i < steps.Count && (group.Count == 0 || steps[i].From < until); i++)
            {
                var track = ends.FindIndex(e => e <= steps[i].From);
                if (track < 0)
                {
                    track = ends.Count;
                    ends.Add(steps[i].To);
                }

                ends[track] = steps[i].To;
                until = steps[i].To > until ? steps[i].To : until;
                group.Add((steps[i], track));
            }

            foreach (var (step, track) in group)
            {
                yield return (step, track, ends.Count);
            }
        }
    }

    /// <summary>Top and height of a track in a strip of that height, 2 px between tracks.</summary>
    public static (double Y, double High) Place(double top, double high, int track, int of)
    {
        var each = (high - (2 * (of - 1))) / of;
        return (top + (track * (each + 2)), each);
    }
}
