namespace Bakehouse.Domain.Tests.Freezer;

using Bakehouse.Domain.Freezer;
using Bakehouse.Testing;
using CsCheck;
using NodaTime;

/// <summary>Stock by count and taking, oldest first ("first in, first out", as every food hygiene guide asks; from memory).</summary>
public sealed class FreezerStockTests
{
    private static readonly Instant Monday = Instant.FromUtc(2026, 10, 12, 7, 0);

    [Fact]
    public void The_oldest_goes_first_and_a_new_count_settles_what_was_taken_before()
    {
        var (old, fresh) = (Some(day: 1, count: 3), Some(day: 8, count: 4));
        CountedSpares[] counts = [new(fresh, Monday), new(old, Monday)];
        var took = FreezerStock.Take(FreezerStock.Left(counts, []), "vanilla", 8, 5);
        Assert.Equal([old with { Count = 3 }, fresh with { Count = 2 }], took);

        var left = FreezerStock.Left(counts, took.Select(t => new TakenSpares(t, Monday + Duration.FromHours(1))));
        Assert.Equal([fresh with { Count = 2 }], left);

        var counted = FreezerStock.Left([.. counts, new(fresh with { Count = 6 }, Monday + Duration.FromHours(2))], took.Select(t => new TakenSpares(t, Monday + Duration.FromHours(1))));
        Assert.Equal([fresh with { Count = 6 }], counted);
    }

    [Fact]
    public void Only_the_same_sponge_and_pan_will_do_and_fewer_are_taken_where_fewer_are_there()
    {
        SpareSponges[] stock = [Some(day: 1, count: 2), Some(day: 1, count: 9) with { Pan = 6 }, Some(day: 1, count: 9) with { Sponge = "lemon" }];
        Assert.Equal([Some(day: 1, count: 2)], FreezerStock.Take(stock, "vanilla", 8, 4));
        Assert.Empty(FreezerStock.Take(stock, "chocolate", 8, 4));
        Assert.Empty(FreezerStock.Take(stock, "vanilla", 8, 0));
    }

    /// <summary>Nothing is made and nothing is lost: what is left and what was taken are what was counted.</summary>
    [Fact]
    public void What_is_left_and_what_is_taken_are_what_was_counted() =>
        Gen.Select(Gen.Int[1, 28], Gen.Int[0, 9], Gen.Bool.Select(b => b ? "vanilla" : "lemon"), Gen.Bool.Select(b => b ? 6 : 8)).Array[1, 8]
            .Select(Gen.Int[0, 20], (bakings, wanted) => (Bakings: bakings.DistinctBy(b => (b.Item1, b.Item3, b.Item4)).ToList(), Wanted: wanted))
            .Each(500, drawn =>
            {
                var counts = drawn.Bakings.Select(b => new CountedSpares(new SpareSponges(b.Item3, b.Item4, new LocalDate(2026, 9, b.Item1), b.Item2), Monday)).ToList();
                var took = FreezerStock.Take(FreezerStock.Left(counts, []), "vanilla", 8, drawn.Wanted);
                var left = FreezerStock.Left(counts, took.Select(t => new TakenSpares(t, Monday)));
                var there = counts.Where(c => c.Spares is { Sponge: "vanilla", Pan: 8 }).Sum(c => c.Spares.Count);
                Assert.Equal(Math.Min(drawn.Wanted, there), took.Sum(t => t.Count));
                Assert.Equal(counts.Sum(c => c.Spares.Count), left.Sum(s => s.Count) + took.Sum(t => t.Count));
                Assert.All(left, s => Assert.True(s.Count > 0));
            });

    [Fact]
    public void Each_wrong_value_of_a_count_is_named()
    {
        var today = new LocalDate(2026, 10, 14);
        Assert.Empty(SpareChecks.Problems(Some(day: 14, count: 0), today));
        Assert.Empty(SpareChecks.Problems(Some(day: 1, count: 2) with { Pan = 13009 }, today));
        Assert.Equal(["sponge", "pan", "count", "frozen"], SpareChecks.Problems(new SpareSponges("marble", 3, new LocalDate(2026, 10, 15), -1), today).Select(p => p.Where));
        Assert.Equal(["pan", "count", "frozen"], SpareChecks.Problems(new SpareSponges("lemon", 40, new LocalDate(2025, 10, 1), 201), today).Select(p => p.Where));
    }

    private static SpareSponges Some(int day, int count) => new("vanilla", 8, new LocalDate(2026, 10, day), count);
}
