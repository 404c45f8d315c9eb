namespace Bakehouse.Domain.Tests.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;
using Bakehouse.Domain.Tests.Cakes.Checks;
using CsCheck;

/// <summary>What a stack's supports carry, what the road and the hands say to it. Published values stand in build-checks.csv.</summary>
public sealed class StructureTests
{
    private static readonly BuildSheet Sheet = Golden.Sheet;

    /// <summary>The golden order: the bottom tier's six supports bear both upper tiers and their boards, the middle one's five the top (computed).</summary>
    [Fact]
    public void Each_tier_bears_all_above_it()
    {
        var loads = StackLoads.Of(Sheet, SupportKind.Dowel, TierBoard.Card);
        Assert.Equal([0, 1], loads.Select(l => l.Tier));
        Assert.Equal([6, 5], loads.Select(l => l.Supports.Count));
        Assert.Equal(Sheet.Mass - Sheet.Tiers[0].Mass - (Sheet.Figures.BoardDensity * Sheet.Drum!.Volume), loads[0].Carried);
        Assert.All(loads, l => Assert.Equal(l.Newtons, l.Each * l.Supports.Count, 9));
        Assert.All(loads, l => Assert.True(l.Factor > 100 && l.CrumbGives.Most > l.CrumbGives.Least));
    }

    /// <summary>Six 1/4 in dowels hold about 4.8 kg under plain card (0.25 MPa, from memory): 20 kg on them is told, never stopped.</summary>
    [Fact]
    public void Small_dowels_under_card_are_looked_at_and_hard_board_is_not()
    {
        var heavy = BuildSheet.Of([Golden.Tier(14), Golden.Tier(12), Golden.Tier(10)], Finish.Smooth, CakeFigures.Usual);
        var look = Assert.Single(StackLoads.Looks(heavy, SupportKind.Dowel, TierBoard.Card), l => l.Where == "Tier 1");
        Assert.Contains("use hard board", look.Try, StringComparison.Ordinal);
        Assert.DoesNotContain(StackLoads.Looks(heavy, SupportKind.Dowel, TierBoard.Hardboard), l => l.Sentence.Contains("punched", StringComparison.Ordinal));
        Assert.DoesNotContain(StackLoads.Looks(heavy, SupportKind.WideTube, TierBoard.Card), l => l.Sentence.Contains("punched", StringComparison.Ordinal));
        Assert.Empty(BuildProblems.Of([Golden.Tier(14), Golden.Tier(12), Golden.Tier(10)], CakeFigures.Usual));
    }

    [Fact]
    public void Straws_are_for_light_stacks() => Assert.Contains(StackLoads.Looks(Sheet, SupportKind.Straw, TierBoard.Card), l => l.Value == "Thick straw");

    /// <summary>2 mm short on one side of a ring of 5 in: atan(2/127) = 0.902 degrees (computed).</summary>
    [Fact]
    public void Uneven_supports_lean() =>
        Assert.Equal(0.9022, StackLoads.Of(Sheet, SupportKind.Dowel, TierBoard.Card)[0].Lean(Length.FromMillimetres(2)), 0.0001);

    /// <summary>Dowels of 100 and 200 mm carry 795 and 216 N; a straw of 12 mm with a wall of 0.3 mm 238 N over 100 mm (computed from the handbook's values).</summary>
    [Fact]
    public void Longer_supports_carry_less()
    {
        Assert.Equal(795, SupportKind.Dowel.Carries(Length.FromMillimetres(100)), 1.0);
        Assert.Equal(216, SupportKind.Dowel.Carries(Length.FromMillimetres(200)), 0.5);
        Assert.Equal(238, SupportKind.Straw.Carries(Length.FromMillimetres(100)), 0.5);
        Gen.Select(Gen.Int[20, 300], Gen.Int[1, 100], Gen.Int[0, 2]).Sample((mm, more, kind) =>
            Assert.True(SupportKind.All[kind].Carries(Length.FromMillimetres(mm)) >= SupportKind.All[kind].Carries(Length.FromMillimetres(mm + more))));
    }

    /// <summary>Four points sag 28 % more than a whole ring, six 8 % (computed); more points never sag more, and no fewer than the ring.</summary>
    [Fact]
    public void More_supports_sag_less()
    {
        var board = new Plate(152.4, 6, 4000, 0.25);
        Assert.Equal(1.28, board.SagOnPoints(49, 4) / board.RestingSag(49), 0.005);
        Assert.Equal(1.08, board.SagOnPoints(49, 6) / board.RestingSag(49), 0.005);
        Assert.Equal(0.398, board.SagOnPoints(Crumb.Newtons(Mass.FromKilograms(5)), 4), 0.001);
        Gen.Int[3, 20].Sample(n => Assert.True(board.SagOnPoints(49, n) > board.SagOnPoints(49, n + 1) && board.SagOnPoints(49, n) > board.RestingSag(49)));
    }

    /// <summary>Rim free, loaded evenly: the largest stress is in the middle, 3·(3+ν)·q·a²/(8·t²); held fast it is at the rim and smaller.</summary>
    [Fact]
    public void A_board_at_rest_bends_most_in_the_middle()
    {
        var board = new Plate(100, 6, 4000, 0.25);
        Assert.Equal(3 * 3.25 * 0.001 * 10_000 / (8 * 36), board.RestingStress(0.001 * Math.PI * 10_000), 1e-9);
        Assert.True(board.RestingStress(0.001 * Math.PI * 10_000) > board.ClampedRimStress(0.001));
    }

    [Fact]
    public void A_narrow_tall_stack_tips_and_a_smooth_floor_slides()
    {
        var barrel = BuildSheet.Of([Golden.Tier(6) with { Height = Length.FromInches(8), Layers = 4 }], Finish.Smooth, CakeFigures.Usual);
        Assert.Contains(Road.Looks(barrel, Underlay.Mat), l => l.Sentence.Contains("tips", StringComparison.Ordinal));
        Assert.Contains(Road.Looks(Sheet, Underlay.Foil), l => l.Sentence.Contains("slides", StringComparison.Ordinal));
        Assert.Empty(Road.Looks(BuildSheet.Of([Golden.Tier(10)], Finish.Smooth, CakeFigures.Usual), Underlay.Mat));
        Assert.Equal((0.5, true), Road.GivesWayAt(Sheet, Underlay.Card));
    }

    [Theory]
    [InlineData(new[] { 8 }, 200, StackedWhere.Shop, 1)]
    [InlineData(new[] { 10, 8, 6 }, 30, StackedWhere.Shop, 1)]
    [InlineData(new[] { 10, 8, 6 }, 120, StackedWhere.Site, 3)]
    [InlineData(new[] { 12, 10, 8, 6 }, 30, StackedWhere.Parts, 2)]
    [InlineData(new[] { 14, 12, 10, 8, 6 }, 0, StackedWhere.Site, 5)]
    public void Tiers_travel_together_in_parts_or_one_by_one(int[] inches, int minutes, StackedWhere where, int parts)
    {
        var travelling = Travelling.Of(BuildSheet.Of([.. inches.Select(Golden.Tier)], Finish.Smooth, CakeFigures.Usual), minutes);
        Assert.Equal((where, parts), (travelling.Where, travelling.Parts.Count));
        Assert.Equal(Enumerable.Range(0, inches.Length), travelling.Parts.SelectMany(p => p));
        Assert.Equal(where == StackedWhere.Shop, travelling.Why.Count == 0);
    }

    /// <summary>16 kg in a box of 40.6 cm from a bench: index 1.12 (computed from the equation); two settings of the shop tell of two people.</summary>
    [Fact]
    public void Heavy_cakes_ask_for_two()
    {
        Assert.Equal(1.12, Lifting.Index(16, Lift.FromBench(40.6)), 0.005);
        Assert.Empty(Carrying.Looks(Sheet with { Figures = CakeFigures.Usual }));
        var own = Sheet with { Figures = CakeFigures.Usual with { TwoCarryFrom = Mass.FromKilograms(5), TwoLowerFrom = Mass.FromKilograms(2) } };
        Assert.Equal(["Carrying", "Stacking"], Carrying.Looks(own).Select(l => l.Where));
    }

    /// <summary>The table of frequencies goes by where a lift begins, the grip by where it is looked at (NIOSH 94-110): 9 a minute all day from 70 cm is 0, from 75 cm 0.15.</summary>
    [Fact]
    public void How_often_goes_by_where_the_lift_begins()
    {
        var lift = new Lift(25, 75, 25, 0, 9, LiftingTime.Day, Grip.Fair);
        Assert.Equal(Lifting.LoadConstant * 0.15, Lifting.Recommended(lift), 1e-9);
        Assert.Equal(0, Lifting.Recommended(lift with { OriginCm = 70 }));
    }

    /// <summary>Farther out, lower, higher, longer, more twisted, more often, worse held: never more.</summary>
    [Fact]
    public void A_harder_lift_is_never_allowed_more()
    {
        var lift = Gen.Select(Gen.Double[20, 70], Gen.Double[0, 180], Gen.Double[0, 180], Gen.Double[0, 140], Gen.Double[0.1, 16], Gen.Enum<LiftingTime>(), Gen.Enum<Grip>(), (h, v, d, a, f, t, g) => new Lift(h, v, d, a, f, t, g));
        lift.Sample(l =>
        {
            var now = Lifting.Recommended(l);
            Assert.InRange(now, 0, Lifting.LoadConstant);
            Assert.True(Lifting.Recommended(l with { HorizontalCm = l.HorizontalCm + 1 }) <= now);
            Assert.True(Lifting.Recommended(l with { DistanceCm = l.DistanceCm + 1 }) <= now);
            Assert.True(Lifting.Recommended(l with { TwistDegrees = l.TwistDegrees + 1 }) <= now);
            Assert.True(Lifting.Recommended(l with { PerMinute = l.PerMinute + 0.3 }) <= now);
            Assert.True(Lifting.Recommended(l with { Time = LiftingTime.Day }) <= now && Lifting.Recommended(l with { Grip = Grip.Poor }) <= now);
        });
    }

    /// <summary>A pound-force on a square inch, against UnitsNet.</summary>
    [Fact]
    public void Pounds_on_inches_agree_with_UnitsNet() =>
        Assert.Equal(1000 * Material.MegapascalInPsi, UnitsNet.Pressure.FromPoundsForcePerSquareInch(1000).Megapascals, 6);
}
