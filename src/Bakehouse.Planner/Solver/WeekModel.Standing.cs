using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>Where things stand.</content>
internal sealed partial class WeekModel
{
    private readonly Dictionary<int, Dictionary<int, ILiteral>> stands = [];
    private readonly Dictionary<int, LinearExpr> lengths = [];
    private readonly Dictionary<int, List<Place>> places = [];

    /// <summary>A store in which something may stand for so many grains.</summary>
    private sealed record Place(int Store, int Least, int Most);

    private void Stand()
    {
        var standing = at.Week.Stores.Select(s => s.Down.Select(d => (new Span(d.From / at.Grain, d.To / at.Grain), s.Places)).ToList()).ToArray();
        var moving = at.Week.Stores.Select(_ => new List<Taking>()).ToArray();
        for (var h = 0; h < at.Holds.Length; h++)
        {
            var (from, to) = week.Ends[h];
            if (steps[from] is not { } before || steps[to] is not { } after || Never(On(at.Holds[h].If)))
            {
                continue;
            }

            if (before.Free || after.Free)
            {
                StandFree(h, from, to, moving);
            }
            else if (at.Standing[h] >= 0 && at.Start(to) > at.End(from))
            {
                standing[at.Standing[h]].Add((new Span(at.End(from), at.Start(to)), at.Holds[h].Places));
            }
        }

        for (var k = 0; k < standing.Length; k++)
        {
            Together(standing[k], at.Week.Stores[k].Places, moving[k]);
        }
    }

    /// <summary>Where a hold may stand by its own words, its height and what is given.</summary>
    private List<Place> Places(int h)
    {
        if (!places.TryGetValue(h, out var here))
        {
            var hold = at.Holds[h];
            here = [.. hold.In.DistinctBy(s => s.Store).Select(s => (Store: week.StoreAt[s.Store], s.Least, s.Most))
                .Where(s => !week.GivenHolds.Contains(hold.Id) || at.Standing[h] == s.Store)
                .Select(s => new Place(s.Store, (s.Least + at.Grain - 1) / at.Grain, at.Week.Stores[s.Store].Clear < hold.Height ? 0 : Math.Min(s.Most, at.Week.Horizon) / at.Grain))
                .Where(s => s.Least <= s.Most)];
            places[h] = here;
        }

        return here;
    }

    private void StandFree(int h, int from, int to, List<Taking>[] moving)
    {
        var on = On(at.Holds[h].If);
        var (shortest, longest) = (steps[to]!.First - steps[from]!.Last - at.Length[from], steps[to]!.Last - steps[from]!.First - at.Length[from]);
        var able = Places(h).Where(p => p.Least <= longest && p.Most >= shortest).ToList();
        var here = stands[h] = [];
        if (able.Count == 0)
        {
            model.AddBoolOr([on.Not()]);
            return;
        }

        var length = lengths[h] = steps[to]!.Start - EndOf(from);
        Lasts(length, able.Min(p => p.Least), able.Max(p => p.Most), shortest, longest, on);
        foreach (var place in able)
        {
            here[place.Store] = able.Count == 1 ? on : Hinted(Either(), at.Standing[h] == place.Store);
            Lasts(length, place.Least, place.Most, shortest, longest, here[place.Store]);
            var (least, most) = (Math.Max(place.Least, shortest), Math.Min(place.Most, longest));
            if (at.Holds[h].Places > 0 && most > 0)
            {
                moving[place.Store].Add(new Taking(new Span(steps[from]!.First + at.Length[from], steps[to]!.Last), at.Holds[h].Places,
                    () => model.NewOptionalIntervalVar(EndOf(from), model.NewIntVar(Math.Max(0, least), most, ""), steps[to]!.Start, here[place.Store], "")));
            }
        }

        if (able.Count > 1)
        {
            model.AddExactlyOne([.. here.Values, on.Not()]);
        }
    }

    /// <summary>A wait is within its bounds if the literal holds; nothing is said where it can't be otherwise.</summary>
    private void Lasts(LinearExpr length, int least, int most, int shortest, int longest, ILiteral when)
    {
        if (least > shortest || most < longest)
        {
            Only(model.AddLinearConstraint(length, least, most), when);
        }
    }
}
