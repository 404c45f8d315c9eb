using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Testing.Planning;
using CsCheck;

namespace Bakehouse.Planner.Tests;

/// <summary>What stands on a shelf together is worked out while it is planned (rule S7), not after.</summary>
public class ShelfTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>
    /// One shelf of 50 × 32 cm and two cakes for the same hour. A 10 in and a 6 in tier on their working boards, 29.9 + 19.7 cm, wait there together;
    /// a 10 in and an 8 in one, 29.9 + 24.8 cm, can't: then one of the two waits there before or after the other.
    /// </summary>
    [Theory]
    [InlineData(197.4, true)]
    [InlineData(248.2, false)]
    public void Two_cakes_share_a_shelf_just_where_both_can_be_put_down(double second, bool together)
    {
        var week = Week((299, 600), (second, 600));
        var outcome = new QuickPlanner().Plan(week, Cancel);
        Assert.True(Judge.Examine(week, outcome.Plan!).Feasible);
        Assert.Equal(together, outcome.Late.Count == 0);
        Assert.Equal(together, Shelving.Of(week, outcome.Plan!).Any(s => s.Holds.Count == 2));
    }

    [Fact]
    public void Any_cakes_on_any_shelf_make_a_plan_that_can_be_put_down() =>
        Gen.Select(Gen.Int[300, 700], Gen.Int[300, 600], Gen.Select(Gen.Int[0, 3], Gen.Int[20, 80]).Array[2, 9]).Each(60, drawn =>
        {
            var (wide, deep, cakes) = drawn;
            var week = Week([.. cakes.Select(c => (new[] { 197.4, 248.2, 273.6, 299 }[c.Item1], c.Item2 * 10))]);
            week = week with { Stores = [.. week.Stores.Select(s => s with { Floor = new Floor(wide, deep), Places = 99 })] };
            var outcome = new QuickPlanner(2_000).Plan(week, Cancel);
            Assert.Equal("", string.Join(' ', Judge.Examine(week, outcome.Plan!).Breaches));
            Assert.Empty(Shelving.Crowded(week, outcome.Plan!));
        });

    /// <summary>Without sizes the count alone decides, as before.</summary>
    [Fact]
    public void Where_no_size_is_known_places_are_counted()
    {
        var week = Week((299, 600), (248.2, 600));
        week = week with { Holds = [.. week.Holds.Select(h => h with { Piece = null })] };
        Assert.Empty(new QuickPlanner().Plan(week, Cancel).Late);
    }

    /// <summary>Each cake is coated in 20 min, stands 200 min and more on the one shelf, and is served in 10 at its minute.</summary>
    private static Week Week(params (double Across, int At)[] cakes)
    {
        var builder = new WeekBuilder().Store("f1", 99, true);
        for (var i = 0; i < cakes.Length; i++)
        {
            builder = builder.Person($"p{i}");
        }

        var week = builder.Build() with { Horizon = 10_000 };
        Step Work(int i, string name, int minutes) => new($"o{i}.{name}", $"o{i}", "", name, minutes, "hand", 1, [], null, null, [], [], null);
        return week with
        {
            People = [.. week.People.Select(p => p with { Shifts = [new Span(0, 10_000)] })],
            Stores = [week.Stores[0] with { Floor = new Floor(500, 320) }],
            Steps = [.. cakes.SelectMany((_, i) => new[] { Work(i, "coat", 20), Work(i, "out", 10) })],
            Holds = [.. cakes.Select((c, i) => new Hold($"o{i}.sets", $"o{i}.coat", $"o{i}.out", 1, 0, [new Domain.Planning.Standing("f1", 200, 9_000)], null) { Piece = Piece.Round(c.Across) })],
            Orders = [.. cakes.Select((c, i) => new WeekOrder($"o{i}", $"Cake {i}", $"o{i}.coat", $"o{i}.out", false, c.At - 15, c.At, 1, 0, []))],
        };
    }
}
