namespace Bakehouse.Planner.Tests;

using System.Globalization;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using NodaTime;

/// <summary>
/// What a baker expects of any plan, on ten builds, each for Saturday 14:00. Read off the rows of the plan alone, not off the waits that
/// made it. The order of work and its gaps: common practice, no source.
/// </summary>
public sealed class TradeOrderTests
{
    public static TheoryData<string, string, string, Finish, Decoration> Builds => new()
    {
        { "6", "vanilla", "raspberry-jam", Finish.Smooth, Decoration.Simple },
        { "8", "lemon", "lemon-curd", Finish.Smooth, Decoration.Medium },
        { "10", "carrot", "cream-cheese", Finish.Textured, Decoration.Simple },
        { "8", "genoise", "buttercream", Finish.SemiNaked, Decoration.Simple },
        { "6+9", "chocolate", "ganache", Finish.Smooth, Decoration.Simple },
        { "6+8", "vanilla", "buttercream", Finish.SemiNaked, Decoration.Rich },
        { "6+8+10", "vanilla", "raspberry-jam", Finish.Smooth, Decoration.Simple },
        { "6+8+10", "chocolate", "buttercream", Finish.Textured, Decoration.Rich },
        { "8+10+12", "lemon", "raspberry-jam", Finish.Smooth, Decoration.Medium },
        { "6+8+10+12", "vanilla", "buttercream", Finish.Smooth, Decoration.Simple },
    };

    [Theory]
    [MemberData(nameof(Builds))]
    public void A_plan_keeps_the_order_of_the_trade(string sizes, string sponge, string filling, Finish finish, Decoration decoration)
    {
        var order = Build(sizes, sponge, filling, finish, decoration);
        var week = Week.From([order], SampleBakery.Shop, [], null, Cakes.Now);
        var outcome = new QuickPlanner().Insert(week, TestContext.Current.CancellationToken);
        Assert.Empty(outcome.Reasons);
        Assert.Empty(outcome.Late);
        Assert.Empty(Judge.Examine(week, outcome.Plan!).Breaches);

        var plan = new ReadPlan(week, outcome.Plan!);
        var coated = finish == Finish.SemiNaked ? "crumb" : "coat";
        foreach (var tier in order.Tiers)
        {
            ColdBeforeFilling(plan, tier.Id);
            CrumbSetBeforeTheFinalCoat(plan, tier.Id, finish);
            var next = order.Tiers.Count > 1 ? "stack" : "decorate";
            Assert.True(plan.Start(null, next) - plan.End(tier.Id, coated) >= 120, "Two hours cold before it is stacked or decorated.");
            Assert.True(plan.Start(null, "handover") - plan.End(tier.Id, coated) <= (finish == Finish.SemiNaked ? 24 : 48) * 60, "Coated so late that it is still fresh.");
        }

        LargestFirst(plan, order);
        DecorAfterStacking(plan, order);
        BoxedBeforeTheShiftEnds(plan);
        Assert.InRange(plan.Start(null, "handover") - plan.End(null, "leavefridge"), 0, 15);
        Assert.InRange(plan.Start(null, "leavefridge") - plan.End(null, "box"), 0, 2 * 1440);
    }

    private static void ColdBeforeFilling(ReadPlan plan, Guid tier)
    {
        var fill = plan.Start(tier, "fill");
        foreach (var wrap in plan.All(tier, "wrap"))
        {
            var gap = fill - plan.EndOf(wrap);
            var kind = plan.KindBetween(wrap, plan.Key(tier, "fill"));
            Assert.True(kind == "fridge" ? gap is >= 60 and <= 3 * 1440 : kind == "freezer" && gap is >= 30 and <= 60, $"{gap} min in the {kind} before filling");
        }
    }

    private static void CrumbSetBeforeTheFinalCoat(ReadPlan plan, Guid tier, Finish finish)
    {
        if (finish == Finish.SemiNaked)
        {
            return;
        }

        var gap = plan.Start(tier, "coat") - plan.End(tier, "crumb");
        var kind = plan.KindBetween(plan.Key(tier, "crumb"), plan.Key(tier, "coat"));
        Assert.True(kind == "fridge" ? gap >= 30 : kind == "freezer" && gap is >= 15 and <= 60, $"{gap} min in the {kind} before the final coat");
    }

    private static void LargestFirst(ReadPlan plan, Order order)
    {
        var largestFirst = order.Tiers.OrderByDescending(t => t.Diameter).ToList();
        foreach (var operation in (string[])["fill", "crumb"])
        {
            Assert.Equal(largestFirst.Select(t => t.Id), order.Tiers.OrderBy(t => plan.Start(t.Id, operation)).Select(t => t.Id));
        }
    }

    private static void DecorAfterStacking(ReadPlan plan, Order order)
    {
        foreach (var decor in plan.All(null, "decorate").Where(_ => order.Tiers.Count > 1))
        {
            Assert.True(plan.StartOf(decor) >= plan.End(null, "stack"), "Decor comes after stacking.");
        }

        Assert.All(plan.All(null, "decorate"), d => Assert.InRange(plan.EndOf(d) - plan.StartOf(d), 5, 120));
    }

    /// <summary>By the shop's own weekly hours on the wall, not by the week's spans.</summary>
    private static void BoxedBeforeTheShiftEnds(ReadPlan plan)
    {
        var (from, to) = (plan.Wall(plan.Start(null, "box")), plan.Wall(plan.End(null, "box")));
        Assert.Equal(from.Date, to.Date);
        Assert.All(plan.People(null, "box"), person => Assert.Contains(
            SampleBakery.Shop.PersonOf(person)!.Shifts.Concat(SampleBakery.Shop.PersonOf(person)!.Overtime),
            s => s.Day == from.DayOfWeek && s.From <= from.TimeOfDay && to.TimeOfDay <= s.To));
    }

    private static Order Build(string sizes, string sponge, string filling, Finish finish, Decoration decoration)
    {
        int[] fromBelow = [.. sizes.Split('+').Reverse().Select(s => int.Parse(s, CultureInfo.InvariantCulture))];
        var order = Cakes.Good(1, fromBelow);
        return order with
        {
            Number = 401,
            Version = 1,
            Finish = finish,
            Decoration = decoration,
            Tiers = [.. order.Tiers.Select(t => t with { Sponge = sponge, Filling = filling })],
        };
    }

    /// <summary>The rows of a plan of one order, by tier and operation.</summary>
    private sealed class ReadPlan(Week week, Plan plan)
    {
        private readonly Guid order = StepKey.Parse(week.Steps[0].Id)!.Value.Order;

        public string Key(Guid? tier, string operation) => new StepKey(order, tier, operation, 1).ToString();

        public IEnumerable<string> All(Guid? tier, string operation) =>
            plan.Steps.Select(r => r.Step).Where(s => StepKey.Parse(s)!.Value is var key && key.Tier == tier && key.Operation == operation);

        public int StartOf(string step) => plan.Steps.Single(r => r.Step == step).Start;

        public int EndOf(string step) => StartOf(step) + week.Steps.Single(s => s.Id == step).Minutes;

        public int Start(Guid? tier, string operation) => StartOf(Key(tier, operation));

        public int End(Guid? tier, string operation) => EndOf(Key(tier, operation));

        public IReadOnlyList<string> People(Guid? tier, string operation) => plan.Steps.Single(r => r.Step == Key(tier, operation)).People;

        public string KindBetween(string from, string to) =>
            week.Stores.Single(s => s.Id == plan.Holds.Single(h => h.Hold == $"{from}>{to}").Store).Kind;

        public LocalDateTime Wall(int minute) =>
            (week.Epoch + Duration.FromMinutes(minute)).InZone(DateTimeZoneProviders.Tzdb[week.Zone]).LocalDateTime;
    }
}
