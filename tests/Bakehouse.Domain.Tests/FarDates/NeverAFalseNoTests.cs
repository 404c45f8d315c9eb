namespace Bakehouse.Domain.Tests.FarDates;

using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using NodaTime;

/// <summary>
/// The budget's no against another way to know it: minutes of work flow through skills and days to people (greatest flow, Ford and Fulkerson
/// 1956; by the theorem of Hall 1935 a shortage that the budget names leaves that flow unsaturated). Orders and shifts are random.
/// </summary>
public sealed class NeverAFalseNoTests(ITestOutputHelper output)
{
    private static readonly LocalDate Today = new(2026, 10, 13);

    [Fact]
    public void What_the_budget_of_hands_refuses_no_flow_of_work_can_do()
    {
        var chance = new Random(20261201);
        var (no, yes, loose) = (0, 0, 0);
        for (var i = 0; i < 150; i++)
        {
            var shop = RandomShop(chance);
            var orders = Enumerable.Range(1, chance.Next(2, 7)).Select(n => RandomOrder(chance, n)).ToList();
            var hands = FarBudget.Of(orders[0], orders, shop, [], Today).Hands;
            var flows = Flows(orders, shop);
            Assert.False(hands.Left < -1 && flows, $"seed 20261201, case {i}: {hands}");
            (no, yes, loose) = (no + (hands.Left < 0 ? 1 : 0), yes + (hands.Left >= 0 && flows ? 1 : 0), loose + (hands.Left >= 0 && !flows ? 1 : 0));
        }

        output.WriteLine($"{no} no, {yes} yes, {loose} yes that a flow would refuse");
        Assert.True(no > 20 && yes > 20, $"{no} no, {yes} yes");
    }

    private static Shop RandomShop(Random chance) => SampleBakery.Shop with
    {
        Settings = new ShopSettings(),
        People = [.. Enumerable.Range(0, chance.Next(1, 4)).Select(n => new Person(
            $"p{n}", "P", "star", Role.Owner, n == 0 ? Skills.All : [.. Skills.All.Where(_ => chance.Next(2) == 0)],
            [.. Enum.GetValues<IsoDayOfWeek>().Where(d => d != IsoDayOfWeek.None && chance.Next(3) > 0).Select(d => new Shift(d, new LocalTime(8, 0), new LocalTime(8 + chance.Next(1, 9), 0)))],
            []))],
    };

    private static Order RandomOrder(Random chance, int number)
    {
        int[][] builds = [[8], [10], [9, 6], [10, 8, 6]];
        var order = Cakes.Good(number, builds[chance.Next(builds.Length)]);
        return order with { Decoration = (Decoration)chance.Next(3), Handover = order.Handover with { At = new LocalDate(2027, 3, 1).PlusDays(chance.Next(6)).At(new LocalTime(chance.Next(9, 17), 0)) } };
    }

    /// <summary>True if all work fits: the greatest flow from (order, skill) by day to person carries every minute.</summary>
    private static bool Flows(List<Order> orders, Shop shop)
    {
        var flow = new GreatestFlow();
        var wanted = 0;
        foreach (var order in orders)
        {
            var load = FarLoad.Of(order, shop);
            foreach (var (skill, minutes) in load.Minutes)
            {
                var work = $"{order.Id} {skill}";
                flow.Add("source", work, minutes);
                wanted += minutes;
                for (var day = load.First; day <= load.Last; day = day.PlusDays(1))
                {
                    foreach (var person in shop.People.Where(p => p.Skills.Contains(skill)))
                    {
                        flow.Add(work, $"{day} {person.Id}", minutes);
                        flow.Set($"{day} {person.Id}", "sink", (int)(person.Shifts.Where(s => s.Day == day.DayOfWeek).Sum(s => Period.Between(s.From, s.To, PeriodUnits.Minutes).Minutes) * FarHands.UsableShare));
                    }
                }
            }
        }

        return flow.From("source", "sink") == wanted;
    }

    /// <summary>By augmenting paths, as in the textbook.</summary>
    private sealed class GreatestFlow
    {
        private readonly Dictionary<string, Dictionary<string, int>> free = [];

        public void Add(string from, string to, int minutes) => Set(from, to, minutes);

        public void Set(string from, string to, int minutes)
        {
            Of(from)[to] = minutes;
            Of(to).TryAdd(from, 0);
        }

        public int From(string source, string sink)
        {
            var total = 0;
            while (Push(source, sink, int.MaxValue, []) is var more and > 0)
            {
                total += more;
            }

            return total;
        }

        private int Push(string at, string sink, int most, HashSet<string> seen)
        {
            if (at == sink)
            {
                return most;
            }

            seen.Add(at);
            foreach (var (to, left) in Of(at).ToList())
            {
                if (left > 0 && !seen.Contains(to) && Push(to, sink, Math.Min(most, left), seen) is var pushed and > 0)
                {
                    Of(at)[to] -= pushed;
                    Of(to)[at] += pushed;
                    return pushed;
                }
            }

            return 0;
        }

        private Dictionary<string, int> Of(string at) => free.TryGetValue(at, out var known) ? known : free[at] = [];
    }
}
