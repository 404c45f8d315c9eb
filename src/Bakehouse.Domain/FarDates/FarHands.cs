namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>Hours of hands over the days in which they are scarcest for an order.</summary>
/// <param name="From">First of those days.</param>
/// <param name="To">Last of them, included.</param>
/// <param name="Skills">Of whose hands it speaks: those who can do at least one of these.</param>
/// <param name="Usable">Minutes of their shifts, without work that is no order, times <see cref="UsableShare"/>.</param>
/// <param name="Small">Minutes left for small cakes that are not ordered yet.</param>
/// <param name="Taken">Minutes of other orders that fall wholly into those days.</param>
/// <param name="Needed">Minutes of this order.</param>
public sealed record FarHands(LocalDate From, LocalDate To, IReadOnlyList<string> Skills, int Usable, int Small, int Taken, int Needed)
{
    /// <summary>A shop keeps 15 to 20 % of its hours for what goes wrong (common practice, no source).</summary>
    public const double UsableShare = 0.82;

    /// <summary>Other orders are looked at so many days around.</summary>
    private const int Around = 14;

    /// <summary>Minutes that stay; below zero if they are short.</summary>
    public int Left => Usable - Small - Taken - Needed;

    /// <summary>
    /// The scarcest of all stretches of days around an order and all sets of skills: orders that must be made wholly within a stretch by
    /// those hands can't take more than those hands have (Hall 1935).
    /// </summary>
    internal static FarHands Of(Order order, IReadOnlyList<Order> others, Shop shop, IReadOnlyList<Chore> chores, LocalDate today)
    {
        var mine = Clip(FarLoad.Of(order, shop), today);
        var (earliest, latest) = (mine.First.PlusDays(-Around), mine.Last.PlusDays(Around));
        var around = others.Where(o => o.Handover.At.Date >= earliest && o.Handover.At.Date <= latest.PlusDays(1));
        List<FarLoad> all = [mine, .. around.Select(o => Clip(FarLoad.Of(o, shop), today)).Where(l => l.First >= earliest && l.Last <= latest)];
        var hours = new DayHours(shop, chores);
        var small = SmallCakes.Minutes(shop, order);
        return (
            from @from in all.Select(l => l.First).Distinct().Where(d => d <= mine.First)
            from to in all.Select(l => l.Last).Distinct().Where(d => d >= mine.Last)
            let inside = all.Where(l => l.First >= @from && l.Last <= to).ToList()
            from skills in Sets
            let needed = Of(mine.Minutes, skills)
            where needed > 0
            select new FarHands(@from, to, skills, (int)(hours.Minutes(@from, to, skills) * UsableShare), SmallIn(inside, shop, @from, to, Of(small, skills), skills), inside.Skip(1).Sum(l => Of(l.Minutes, skills)), needed))
            .OrderBy(h => h.Left).ThenBy(h => h.From).ThenBy(h => h.To).ThenBy(h => h.Skills.Count).First();
    }

    /// <summary>Every set of the making skills but the empty one.</summary>
    private static IReadOnlyList<IReadOnlyList<string>> Sets { get; } =
        [.. Enumerable.Range(1, (1 << FarLoad.Making.Count) - 1).Select(bits => (IReadOnlyList<string>)[.. FarLoad.Making.Where((_, i) => (bits >> i & 1) == 1)])];

    private static FarLoad Clip(FarLoad load, LocalDate today) => load with { First = LocalDate.Max(load.First, today), Last = LocalDate.Max(load.Last, today) };

    private static int Of(IReadOnlyDictionary<string, int> minutes, IReadOnlyList<string> skills) => skills.Sum(s => minutes.GetValueOrDefault(s));

    private static int SmallIn(List<FarLoad> inside, Shop shop, LocalDate from, LocalDate to, int each, IReadOnlyList<string> skills) =>
        Math.Max(0, (int)(SmallCakes.Usual(shop, from, to) * each) - inside.Where(l => SmallCakes.IsOne(l.Order)).Sum(l => Of(l.Minutes, skills)));

    /// <summary>Minutes of hands by day, looked up once.</summary>
    private sealed class DayHours(Shop shop, IReadOnlyList<Chore> chores)
    {
        private readonly Dictionary<(LocalDate Day, string Person), int> known = [];

        /// <summary>Of all who can do at least one of these, from one day to another, both included.</summary>
        public int Minutes(LocalDate from, LocalDate to, IReadOnlyList<string> skills)
        {
            var able = shop.People.Where(p => p.Skills.Intersect(skills).Any()).ToList();
            var sum = 0;
            for (var day = from; day <= to; day = day.PlusDays(1))
            {
                sum += able.Sum(p => On(day, p));
            }

            return sum;
        }

        private int On(LocalDate day, Person person)
        {
            if (!known.TryGetValue((day, person.Id), out var minutes))
            {
                known[(day, person.Id)] = minutes = shop.Closed.Contains(day) ? 0 : Free(day, person).Sum(s => s.Minutes);
            }

            return minutes;
        }

        private IReadOnlyList<Span> Free(LocalDate day, Person person)
        {
            IReadOnlyList<Span> spans = [.. shop.Worked(person.Shifts).Where(s => s.Day == day.DayOfWeek).Select(s => new Span(Minute(s.From), Minute(s.To)))];
            return chores.Where(c => c.IsOn(day) && c.People.Contains(person.Id)).Aggregate(spans, (s, c) => s.Without(new Span(Minute(c.From), Minute(c.To))));
        }

        private static int Minute(LocalTime time) => (time.Hour * 60) + time.Minute;
    }
}
