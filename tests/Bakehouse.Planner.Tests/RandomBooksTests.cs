namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using CsCheck;
using NodaTime;

/// <summary>Random books of the sample bakery: whatever was ordered, the plan passes the Judge, or says what no plan can do.</summary>
public sealed class RandomBooksTests(ITestOutputHelper output)
{
    private static readonly int[] Sizes = [6, 8, 9, 10, 12];

    private static readonly Gen<Order> Cake =
        from number in Gen.Int[1, 1_000_000]
        from tiers in Gen.Int[1, 3]
        from bottom in Gen.Int[0, Sizes.Length - 1]
        from sponge in Gen.Int[0, Sponge.All.Count - 1]
        from filling in Gen.Int[0, Filling.All.Count - 1]
        from day in Gen.Int[2, 14]
        from hour in Gen.Int[10, 15]
        from finish in Gen.Enum<Finish>()
        from decoration in Gen.Enum<Decoration>()
        from nuts in Gen.Bool
        let sizes = Enumerable.Range(0, tiers).Select(i => Sizes[Math.Max(0, bottom - i)]).Distinct().ToArray()
        let order = Cakes.Good(number, sizes)
        select order with
        {
            Number = number,
            Version = 1,
            Finish = finish,
            // Rich piping takes longer than any food clock allows: such an order is refused, so it is not drawn here.
            Decoration = Filling.All[filling].OnClock ? Decoration.Simple : decoration,
            Handover = order.Handover with { At = Open(new LocalDate(2026, 10, 13).PlusDays(day)) + new LocalTime(hour, 0) },
            Tiers = [.. order.Tiers.Select(t => t with { Sponge = Sponge.All[sponge].Id, Filling = Filling.All[filling].Id })],
            Allergies = nuts && sponge != 3 ? new AllergyAnswer(AllergyKind.Avoid, ["nuts"], "swells up") { Judged = "swells up" } : AllergyAnswer.NoneTold,
        };

    [Fact]
    public void Three_hundred_random_books_have_plans_that_pass_the_Judge()
    {
        var planner = new QuickPlanner();
        var (plans, refused) = (0, 0);
        var why = new System.Collections.Concurrent.ConcurrentBag<string>();
        Cake.Array[1, 4].Each(
            Seeds.Whole ? 20_000 : 300,
            cakes =>
            {
                var orders = cakes.DistinctBy(c => c.Id).ToList();
                var week = Week.From(orders, SampleBakery.Shop, [], null, Cakes.Now);
                var outcome = planner.Insert(week);
                if (outcome.Plan is null)
                {
                    Assert.NotEmpty(outcome.Reasons);
                    outcome.Reasons.ToList().ForEach(r => why.Add(r.Sentence));
                    Interlocked.Increment(ref refused);
                    return;
                }

                Interlocked.Increment(ref plans);
                Assert.Empty(Judge.Examine(week, outcome.Plan).Breaches);
            },
            threads: 2);
        foreach (var reason in why.Take(30))
        {
            output.WriteLine(reason);
        }

        output.WriteLine($"{plans} books planned, {refused} with a reason why not");
        Assert.True(plans > refused * 4, "Most books have a plan.");
    }

    /// <summary>"Nothing after five": read off the clock on the wall, not off the hours that the planner was given.</summary>
    [Fact]
    public void No_hand_works_after_the_last_hour_of_the_shop()
    {
        var last = new LocalTime(17, 0);
        var shop = SampleBakery.Shop with { Settings = new ShopSettings(LastHands: last) };
        var (planner, later, seen) = (new QuickPlanner(), 0, 0);
        Cake.Array[2, 4].Each(
            Seeds.Whole ? 2_000 : 40,
            cakes =>
            {
                var orders = cakes.DistinctBy(c => c.Id).ToList();
                var week = Week.From(orders, shop, [], null, Cakes.Now);
                var minutes = week.Steps.ToDictionary(s => s.Id, s => s.Minutes);
                LocalTime End(StepRow r) => (week.Epoch + Duration.FromMinutes(r.Start + minutes[r.Step])).InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).TimeOfDay;
                var rows = planner.Insert(week).Plan?.Steps.Where(r => r.People.Count > 0).ToList() ?? [];
                Interlocked.Add(ref seen, rows.Count);
                Assert.All(rows, r => Assert.True(End(r) <= last, $"{r.Step} ends at {End(r)}"));
                var without = planner.Insert(Week.From(orders, SampleBakery.Shop, [], null, Cakes.Now)).Plan;
                Interlocked.Add(ref later, without?.Steps.Count(r => r.People.Count > 0 && End(r) > last) ?? 0);
            },
            threads: 2);
        output.WriteLine($"{seen} steps by hand, none after {last}; without the rule {later} are");
        Assert.True(seen > 0 && later > 0, "The rule has something to hold back.");
    }

    private static LocalDate Open(LocalDate day) =>
        Enumerable.Range(0, 7).Select(day.PlusDays).First(d => SampleBakery.Shop.HoursOn(d).Count > 0);
}
