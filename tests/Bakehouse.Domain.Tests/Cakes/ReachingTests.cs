namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

/// <summary>From guests to portions to builds.</summary>
public sealed class ReachingTests
{
    /// <summary>100 invited to a wedding: 80 come; plated all take cake, self-served 0.90, wrapped 0.67 (common practice, no source).</summary>
    [Theory]
    [InlineData(Occasion.Wedding, Serving.Plated, 80)]
    [InlineData(Occasion.Wedding, Serving.SelfServed, 72)]
    [InlineData(Occasion.Wedding, Serving.Wrapped, 54)]
    [InlineData(Occasion.Birthday, Serving.Plated, 90)]
    [InlineData(Occasion.Other, Serving.Plated, 100)]
    public void Guests_take_portions(Occasion occasion, Serving serving, int portions) => Assert.Equal(portions, new Guests(100, occasion, serving).Portions);

    [Fact]
    public void A_number_of_guests_that_is_none_is_named()
    {
        Assert.Contains("1 to 5000", Assert.Single(new Guests(0, Occasion.Other, Serving.Plated).Problems()).Sentence, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => new Guests(5001, Occasion.Other, Serving.Plated).Portions);
    }

    /// <summary>74 with coffee: 10+8+6 prints exactly 74 (common practice, no source), so it is there with nothing over.</summary>
    [Fact]
    public void The_build_that_gives_just_as_many_comes_first()
    {
        var best = Reaching.Three(74, Cut.Coffee, keepsTop: false, In(4), CakeFigures.Usual);
        Assert.Equal(0, best[0].Over(74));
        Assert.Contains(best, b => b.Diameters.SequenceEqual([In(10), In(8), In(6)]));
    }

    [Fact]
    public void A_top_tier_that_is_kept_is_not_cut() => Assert.All(
        Reaching.Three(62, Cut.Coffee, keepsTop: true, In(4), CakeFigures.Usual),
        b => Assert.True(b.Diameters.Count > 1 && b.WithTop > b.Portions && b.Portions >= 62));

    /// <summary>Compared with every stack of the sizes, counted by plain loops over sets.</summary>
    [Fact]
    public void No_other_stack_has_less_over() => Gen.Select(Gen.Int[1, 200], Gen.Enum<Cut>(), Gen.Bool).Sample(
        (asked, cut, keeps) =>
        {
            var best = Reaching.Three(asked, cut, keeps, In(4), CakeFigures.Usual);
            Assert.Equal(best.OrderBy(b => b.Portions).Select(b => b.Portions), best.Select(b => b.Portions));
            var least = AllStacks().Where(s => !keeps || s.Count > 1)
                .Select(s => s.Sum(d => PortionChart.Count(d, In(4), cut, CakeFigures.Usual)) - (keeps ? PortionChart.Count(s.Min(), In(4), cut, CakeFigures.Usual) : 0))
                .Where(p => p >= asked).DefaultIfEmpty(0).Min();
            Assert.Equal(least, best.Count == 0 ? 0 : best[0].Portions);
        },
        iter: 40);

    [Fact]
    public void Wedges_strips_and_grids()
    {
        // 8 in round, 2 in of rim a wedge: floor(12.57). Strips of 1 in, 2 in long: chords at ±0.5, 1.5, 2.5, 3.5 in hold 3, 3, 3, 1 each side.
        Assert.Equal(12, Slice.Wedges(In(8), In(2)));
        Assert.Equal(20, Slice.Of(Cut.Coffee).ByStrips(In(8)));
        Assert.Equal(54, Slice.Of(Cut.Coffee).ByGrid(new Slab(In(13), In(9))));
    }

    [Fact]
    public void Strips_never_give_more_than_the_area() => Gen.Int[60, 460].Sample(mm =>
        Assert.True(Slice.Of(Cut.Coffee).ByStrips(Length.FromMillimetres(mm)) <= Slice.Of(Cut.Coffee).ByArea(new Round(Length.FromMillimetres(mm * 1.05m)))));

    [Fact]
    public void A_wider_or_deeper_slab_never_gives_fewer() => Gen.Select(Gen.Int[50, 600], Gen.Int[50, 600], Gen.Int[0, 60], Gen.Int[0, 4]).Sample((wide, deep, more, habit) =>
    {
        var slice = SliceHabit.All[habit].Slice;
        int Count(int w, int d) => slice.ByGrid(new Slab(Length.FromMillimetres(w), Length.FromMillimetres(d)));
        Assert.True(Count(wide, deep) <= Count(wide + more, deep) && Count(wide, deep) == Count(deep, wide));
    });

    /// <summary>8 in round, 50.27 in² (computed): fingers of 1 × 1 in 50, of 1 × 1.25 in 40, large ones of 2 × 2 in 12.</summary>
    [Fact]
    public void Slices_of_any_habit_are_counted() => Assert.Equal(
        [50, 40, 25, 16, 12], SliceHabit.All.Select(h => TierPortions.Count(new Round(In(8)), In(4), h.Slice, CakeFigures.Usual with { PortionRule = PortionRule.Area })));

    [Fact]
    public void Straight_cuts_are_a_rule_of_their_own() =>
        Assert.Equal(20, TierPortions.Count(new Round(In(8)), In(4), Cut.Coffee, CakeFigures.Usual with { PortionRule = PortionRule.Strips }));

    private static IEnumerable<List<Length>> AllStacks() => Enumerable.Range(1, (1 << Reaching.Sizes.Count) - 1)
        .Select(bits => Reaching.Sizes.Where((_, i) => (bits & (1 << i)) != 0).OrderDescending().ToList())
        .Where(s => s.Zip(s.Skip(1)).All(p => (p.First - p.Second).Inches is >= 2 and <= 4));

    private static Length In(decimal inches) => Length.FromInches(inches);
}
