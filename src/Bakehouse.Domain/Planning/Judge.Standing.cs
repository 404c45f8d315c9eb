namespace Bakehouse.Domain.Planning;

/// <content>Where things stand, food clocks and ages.</content>
public static partial class Judge
{
    /// <summary>Least gap.</summary>
    private static IEnumerable<Breach> S1(WeekIndex at) =>
        from h in at.Held
        let standing = StandingOf(h.Hold, h.Store)
        where standing is null ? h.Span.Minutes < h.Hold.In.Min(i => i.Least) : h.Span.Minutes < standing.Least
        select new Breach("S1", $"{h.Hold.Id} is {h.Span.Minutes} min in {h.Store.Id}, less than {standing?.Least ?? h.Hold.In.Min(i => i.Least)}.", h.Hold.Id, h.Span.From);

    /// <summary>Most gap.</summary>
    private static IEnumerable<Breach> S2(WeekIndex at) =>
        from h in at.Held
        let standing = StandingOf(h.Hold, h.Store)
        where standing is not null && h.Span.Minutes > standing.Most
        select new Breach("S2", $"{h.Hold.Id} is {h.Span.Minutes} min in {h.Store.Id}, more than {standing.Most}.", h.Hold.Id, h.Span.From);

    /// <summary>It stands where it may.</summary>
    private static IEnumerable<Breach> S3(WeekIndex at) =>
        from h in at.Held
        where StandingOf(h.Hold, h.Store) is null
        select new Breach("S3", $"{h.Hold.Id} may not stand in {h.Store.Id}.", h.Hold.Id, h.Span.From);

    /// <summary>It is not too tall.</summary>
    private static IEnumerable<Breach> S4(WeekIndex at) =>
        from h in at.Held
        where h.Span.Minutes > 0 && h.Hold.Height > h.Store.Clear
        select new Breach("S4", $"{h.Hold.Id} is {h.Hold.Height} cm high and {h.Store.Id} has {h.Store.Clear} cm.", h.Hold.Id, h.Span.From);

    /// <summary>Places are not exceeded.</summary>
    private static IEnumerable<Breach> S5(WeekIndex at) =>
        from held in at.Held.GroupBy(h => h.Store.Id)
        let store = at.Stores[held.Key]
        from over in Crowded(held.Select(h => (h.Span, h.Hold.Places, h.Hold.Id)), store.Places)
        select new Breach("S5", $"{store.Id} has {store.Places} places and needs {over.Load}.", over.What, over.Minute);

    /// <summary>A store out of use holds nothing.</summary>
    private static IEnumerable<Breach> S6(WeekIndex at) =>
        from h in at.Held
        where h.Span.Minutes > 0 && h.Store.Down.Any(d => d.Meets(h.Span))
        select new Breach("S6", $"{h.Store.Id} is out of use while {h.Hold.Id} stands there.", h.Hold.Id, h.Span.From);

    private static Standing? StandingOf(Hold hold, Store store) => hold.In.FirstOrDefault(i => i.Store == store.Id);

    /// <summary>Time out of the cold adds up; chilling again never resets it.</summary>
    private static IEnumerable<Breach> K1(WeekIndex at)
    {
        if (at.Week.Clocks.Count == 0)
        {
            yield break;
        }

        var warm = at.Held.Where(h => !h.Store.Cold).ToDictionary(h => h.Hold.Id, h => Math.Max(0, h.Span.Minutes));
        foreach (var clock in at.Week.Clocks)
        {
            var minutes = clock.Steps.Where(at.Runs).Sum(s => at.Steps[s].Minutes) + clock.Holds.Sum(h => warm.GetValueOrDefault(h));
            if (minutes > clock.Limit)
            {
                yield return new Breach("K1", $"{clock.Id}: {minutes} min out of the cold, more than {clock.Limit}.", clock.Id);
            }
        }
    }

    /// <summary>Nothing older than a hard age.</summary>
    private static IEnumerable<Breach> K2(WeekIndex at) =>
        from age in at.Week.Ages
        where age.Hard && at.Runs(age.From) && at.Runs(age.To)
        let old = at.Start(age.To) - at.End(age.From)
        where old > age.Most
        select new Breach("K2", $"{age.Id}: {old} min old, more than {age.Most}.", age.Id, at.Start(age.To));
}
