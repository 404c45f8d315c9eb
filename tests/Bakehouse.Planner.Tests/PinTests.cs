namespace Bakehouse.Planner.Tests;

using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using CsCheck;
using NodaTime;

/// <summary>What was set by hand stays: no insertion and no push moves a pinned step, and nothing is planned into a chore.</summary>
public sealed class PinTests(ITestOutputHelper output)
{
    private static readonly QuickPlanner Planner = new();
    private static readonly Instant Opened = Instant.FromUtc(2026, 10, 22, 7, 30);
    private static readonly OpenedSample Sample = OpenedSample.At(Opened, Planner);
    private static readonly string[] Rows = [.. Sample.Wall.Plan.Steps.Select(r => r.Step)];

    private static readonly Gen<int[]> Picks = Gen.Int[0, Rows.Length - 1].Array[1, 6];

    [Fact]
    public void A_pinned_step_never_moves_by_a_push_or_by_an_insertion()
    {
        var (held, planned) = (0, 0);
        Gen.Select(Picks, Picks, Gen.Int[0, 600]).Each(
            Seeds.Whole ? 2_000 : 60,
            drawn =>
            {
                var (pinned, ticked, ago) = drawn;
                var ticks = Sample.Ticks.Concat(ticked.Select(i => new Tick(Rows[i], Opened - Duration.FromMinutes(ago), "petra"))).ToList();
                var week = Week.From(Sample.Orders, Sample.Shop, ticks, Sample.Wall, Opened, new ByHand([.. pinned.Distinct().Select(PinOf)], []));
                var pins = week.Fixed.Where(f => f.Why == "pinned").ToList();
                held += pins.Count;
                foreach (var outcome in new[] { Planner.Push(week), Planner.Insert(week) }.Where(o => o.Plan is not null))
                {
                    planned++;
                    Assert.Empty(Judge.Examine(week, outcome.Plan!).Breaches);
                    Assert.All(pins, p => Assert.Equal((p.Start, p.Machine), (RowOf(outcome.Plan!, p.Step!).Start, RowOf(outcome.Plan!, p.Step!).Machine)));
                    Assert.All(pins, p => Assert.Equal(p.People!.Order(), RowOf(outcome.Plan!, p.Step!).People.Order()));
                }
            });
        output.WriteLine($"pins held {held}, plans {planned}");
        Assert.True(held > 60 && planned > 60, $"{held} pins held in {planned} plans.");
    }

    [Fact]
    public void A_pin_waits_for_nothing_that_is_not_there_any_more()
    {
        var late = Sample.Wall.Plan.Steps.First(r => Sample.Wall.Epoch + Duration.FromMinutes(r.Start) > Opened && r.People.Count > 0);
        var pin = new Pin(late.Step, Sample.Wall.Epoch + Duration.FromMinutes(late.Start), late.People, late.Machine);

        bool Holds(Pin of, Domain.Shops.Shop shop, Instant now) =>
            Week.From(Sample.Orders, shop, Sample.Ticks, Sample.Wall, now, new ByHand([of], [])).Fixed.Any(f => f.Step == of.Step && f.Why == "pinned");

        Assert.True(Holds(pin, Sample.Shop, Opened));
        Assert.False(Holds(pin with { Start = pin.Start + Duration.FromMinutes(5) }, Sample.Shop, Opened), "The wall has it elsewhere.");
        Assert.False(Holds(pin, Sample.Shop, pin.Start + Duration.FromHours(4)), "Its time is over.");
        var without = Sample.Shop with { People = [.. Sample.Shop.People.Where(p => !late.People.Contains(p.Id))] };
        Assert.False(Holds(pin, without, Opened), "Who it is pinned to has left.");
    }

    [Fact]
    public void Nothing_is_planned_into_a_chore()
    {
        var planned = 0;
        Gen.Select(Gen.Int[0, 4].Array[1, 3], Gen.Int[6, 17], Gen.Int[15, 180], Gen.Enum<IsoDayOfWeek>().Array[0, 4], Gen.Bool, Gen.Bool, Gen.Int[0, 11].Array[0, 4]).Each(
            Seeds.Whole ? 500 : 12,
            drawn =>
            {
                var (people, hour, minutes, days, oven, bowl, shelves) = drawn;
                var chore = ChoreOf(people, hour, minutes, days, [.. oven ? ["oven1"] : Array.Empty<string>(), .. bowl ? ["bowl20"] : Array.Empty<string>()], shelves);
                var bare = Week.From(Sample.Orders, Sample.Shop, Sample.Ticks, Sample.Wall, Opened, new ByHand([], [chore]));
                if (Planner.Plan(bare with { Reference = null }).Plan is not { } plan)
                {
                    return;
                }

                planned++;
                Assert.Empty(Judge.Examine(bare, plan).Breaches);
                AssertApart(bare, plan, chore);
            });
        Assert.True(planned >= 6, $"{planned} weeks were planned.");
    }

    private static void AssertApart(Week week, Plan plan, Chore chore)
    {
        var spans = chore.In(WeekTime.Of(week, DateTimeZoneProviders.Tzdb[week.Zone]));
        var steps = week.Steps.ToDictionary(s => s.Id);
        var given = week.Fixed.Select(f => f.Step).ToHashSet();
        foreach (var row in plan.Steps.Where(r => !given.Contains(r.Step) && (r.People.Any(chore.People.Contains) || chore.Machines.Contains(r.Machine ?? ""))))
        {
            Assert.DoesNotContain(spans, s => s.Meets(new Span(row.Start, row.Start + steps[row.Step].Minutes)));
        }

        var rows = plan.Steps.ToDictionary(r => r.Step);
        foreach (var hold in week.Holds.Where(h => chore.Shelves.Contains(plan.Holds.First(r => r.Hold == h.Id).Store)))
        {
            var stands = new Span(rows[hold.From].Start + steps[hold.From].Minutes, rows[hold.To].Start);
            Assert.DoesNotContain(spans, s => stands.Minutes > 0 && s.Meets(stands));
        }
    }

    private static Chore ChoreOf(int[] people, int hour, int minutes, IsoDayOfWeek[] days, string[] machines, int[] shelves) => new(
        Guid.NewGuid(), 1, ChoreKind.Other, "Counter bake", new LocalDate(2026, 10, 22), new LocalTime(hour, 0), new LocalTime(hour, 0).PlusMinutes(minutes),
        [.. days.Where(d => d != IsoDayOfWeek.None).Distinct()], null, [.. people.Distinct().Select(p => SampleBakery.Shop.People[p].Id)], machines,
        [.. shelves.Distinct().Select(s => SampleBakery.Shop.Shelves[s].Id)]);

    private static Pin PinOf(int index)
    {
        var row = Sample.Wall.Plan.Steps[index];
        return new Pin(row.Step, Sample.Wall.Epoch + Duration.FromMinutes(row.Start), row.People, row.Machine);
    }

    private static StepRow RowOf(Plan plan, string step) => plan.Steps.First(r => r.Step == step);
}
