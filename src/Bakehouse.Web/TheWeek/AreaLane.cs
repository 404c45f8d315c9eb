namespace Bakehouse.Web.TheWeek;

using NodaTime;

/// <summary>How full the fridges (or freezers) are: a stack of strips, one for each cake, in places.</summary>
/// <param name="Kind">fridge or freezer.</param>
/// <param name="Places">All places there.</param>
/// <param name="Levels">Stretches of time with a constant stack, in order, without gaps.</param>
public sealed record AreaLane(string Kind, int Places, IReadOnlyList<AreaLevel> Levels)
{
    /// <summary>The fullest stretch, the first of equals; null if nothing stands there.</summary>
    public AreaLevel? Fullest => Levels.Where(l => l.Sum > 0).MaxBy(l => l.Sum);

    /// <summary>Stretches that need more than there is, joined.</summary>
    public IEnumerable<(Instant From, Instant To, int TooMany)> TooFull
    {
        get
        {
            for (var i = 0; i < Levels.Count; i++)
            {
                if (Levels[i].Sum <= Places)
                {
                    continue;
                }

                var from = i;
                while (i + 1 < Levels.Count && Levels[i + 1].Sum > Places)
                {
                    i++;
                }

                yield return (Levels[from].From, Levels[i].To, Levels.Skip(from).Take(i - from + 1).Max(l => l.Sum) - Places);
            }
        }
    }

    /// <summary>The stack between two instants.</summary>
    public static AreaLane Of(PlanFacts facts, string kind, Instant from, Instant to)
    {
        var waits = facts.Cakes.SelectMany(c => c.Waits).Where(w => w.Kind == kind && w.To > w.From && w.From < to && w.To > from).ToList();
        var cuts = waits.SelectMany(w => new[] { w.From, w.To }).Where(t => t > from && t < to)
            .Append(from).Append(to).Distinct().Order().ToList();
        var rank = facts.Cakes.Select((c, i) => (c.Id, i)).ToDictionary(p => p.Id, p => p.i);
        var levels = cuts.Zip(cuts.Skip(1)).Select(cut => new AreaLevel(
            cut.First,
            cut.Second,
            [.. waits.Where(w => w.From <= cut.First && w.To >= cut.Second)
                .GroupBy(w => w.Cake)
                .OrderBy(g => rank[g.Key])
                .Select(g => new AreaPart(g.Key, g.Sum(w => w.Places)))]));
        return new AreaLane(kind, facts.Stores.Where(s => s.Kind == kind).Sum(s => s.Places), [.. levels]);
    }

    /// <summary>A colour number 1 to 7 for each cake, so that strips that touch differ while seven are enough.</summary>
    public IReadOnlyDictionary<string, int> Colours()
    {
        const int All = 7;
        var pairs = Levels.SelectMany(l => l.Parts.Zip(l.Parts.Skip(1)).Select(p => (p.First.Cake, Other: p.Second.Cake))).ToHashSet();
        var given = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var cake in Levels.SelectMany(l => l.Parts).Select(p => p.Cake).Distinct())
        {
            var near = pairs.Where(p => p.Cake == cake).Select(p => p.Other).Concat(pairs.Where(p => p.Other == cake).Select(p => p.Cake));
            var taken = near.Where(given.ContainsKey).Select(c => given[c]).ToHashSet();
            var wish = Enumerable.Range(0, All).Select(i => ((given.Count + i) % All) + 1);
            given[cake] = wish.FirstOrDefault(c => !taken.Contains(c), (given.Count % All) + 1);
        }

        return given;
    }
}

/// <summary>A stretch of time with the same things standing there.</summary>
/// <param name="Parts">From below.</param>
public sealed record AreaLevel(Instant From, Instant To, IReadOnlyList<AreaPart> Parts)
{
    /// <summary>Places taken.</summary>
    public int Sum => Parts.Sum(p => p.Places);
}

/// <summary>Places taken by one cake.</summary>
public sealed record AreaPart(string Cake, int Places);
