namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Heat;
using CsCheck;

/// <summary>What holds for every body: no new extremes, even cooling, heat kept, alike on both sides, slower the bigger.</summary>
public sealed class HeatLawTests
{
    private static readonly HeatMaterial Butter = new(
        "melts and freezes", 900,
        [new(-30, 0, 0.9), new(-12, 36_000, 0.9), new(-5, 120_000, 0.4), new(0, 135_000, 0.3), new(20, 220_000, 0.25), new(34, 290_000, 0.22), new(100, 430_000, 0.2)], "made up for the law");

    private static readonly Gen<HeatMaterial> Stuff = Gen.OneOf(
        Gen.Const(Butter), Gen.Select(Gen.Double[0.08, 0.4], Gen.Double[200, 1300], Gen.Double[1500, 3500]).Select((k, r, c) => HeatMaterial.Steady("stuff", k, r, c, "any")));

    private static readonly Gen<Surroundings> Around = Gen.Select(Gen.Double[-25, 35], Gen.Double[2, 30], Gen.Bool, Gen.Bool, Gen.Bool).Select((c, h, still, shut, boxed) =>
        new Surroundings(c) { Blown = still ? null : h, Stirred = 1, IsBaseShut = shut, Cover = boxed ? 0.15 : 0 });

    private static readonly Gen<HeatBody> Body = Gen.Select(Stuff, Stuff, Stuff, Gen.Double[0.05, 0.16], Gen.Double[0.02, 0.12], Gen.Double[0.002, 0.01], Gen.Bool).Select((cake, coat, board, wide, high, thick, block) =>
    {
        HeatSlab Slab(double t, HeatMaterial of, HeatMaterial? side) => new(t, wide, of) { HalfDepth = block ? wide * 1.2 : null, Coat = side, CoatThickness = thick };
        return new HeatBody([Slab(0.004, board with { IsEaten = false }, null), Slab(high, cake, coat with { IsCoat = true }), Slab(thick, coat with { IsCoat = true }, null)]);
    });

    // A law holds on any grid: a coarse one is quick.
    private static readonly HeatDetail Coarse = new(0.02);

    [Fact]
    public void Heat_is_kept_to_a_millionth() => Gen.Select(Body, Around, Around, Gen.Double[-20, 95]).Sample(
        (body, first, second, start) =>
        {
            var curve = Conduction.Run(body, new HeatStart(start, 20), [new Stay(90, first), new Stay(200, second)], null, null, Coarse);
            var scale = body.Slabs.Sum(s => Math.PI * s.HalfWidth * s.HalfWidth * s.Thickness) * 1e6;
            Assert.Equal(curve.HeatGained, curve.HeatCameIn, 1e-6 * Math.Max(scale, Math.Abs(curve.HeatGained)));
        }, iter: 60);

    [Fact]
    public void No_place_gets_warmer_or_colder_than_what_it_began_with_and_what_is_around() => Gen.Select(Body, Around, Around, Gen.Double[-20, 95], Gen.Double[0, 25]).Sample(
        (body, first, second, start, coat) =>
        {
            var curve = Conduction.Run(body, new HeatStart(start, coat), [new Stay(90, first), new Stay(200, second)], null, null, Coarse);
            double[] all = [start, coat, first.Celsius, second.Celsius];
            Assert.All(curve.Celsius[(int)HeatSpot.Coldest], t => Assert.True(t >= all.Min() - 1e-6));
            Assert.All(curve.Celsius[(int)HeatSpot.Warmest], t => Assert.True(t <= all.Max() + 1e-6));
            Assert.All(curve.Celsius, row => Assert.All(row, t => Assert.True(double.IsFinite(t))));
        }, iter: 60);

    [Fact]
    public void An_evenly_warm_body_in_one_colder_place_only_gets_colder() => Gen.Select(Body, Around, Gen.Double[1, 80]).Sample(
        (body, around, above) =>
        {
            var curve = Conduction.Run(body, HeatStart.Even(around.Celsius + above), [new Stay(300, around)], null, null, Coarse);
            foreach (var spot in new[] { HeatSpot.Mean, HeatSpot.Warmest })
            {
                var row = curve.Celsius[(int)spot];
                Assert.All(row.Zip(row.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1e-8, $"{spot}: {pair.First} then {pair.Second}"));
            }
        }, iter: 60);

    [Fact]
    public void A_body_open_on_both_faces_is_alike_above_and_below() => Gen.Select(Stuff, Gen.Double[0.05, 0.16], Gen.Double[0.02, 0.12], Gen.Double[-18, 30], Gen.Double[-18, 95]).Sample(
        (of, wide, high, air, start) =>
        {
            var curve = Conduction.Run(new HeatBody([new HeatSlab(high, wide, of)]), HeatStart.Even(start), [new Stay(120, new Surroundings(air) { Blown = 8 })], [new HeatProbe(0, high / 5), new HeatProbe(0, high * 4 / 5)]);
            Assert.Equal(curve.Celsius[(int)HeatSpot.Top][^1], curve.Celsius[(int)HeatSpot.Base][^1], 1e-6);
            Assert.Equal(curve.ProbeAt(120, 0), curve.ProbeAt(120, 1), 1e-6);
        }, iter: 40);

    [Fact]
    public void A_wider_or_higher_body_takes_longer() => Gen.Select(Gen.Double[0.05, 0.12], Gen.Double[0.03, 0.1], Gen.Double[1.05, 1.5], Gen.Bool).Sample(
        (wide, high, times, wider) =>
        {
            var crumb = HeatMaterial.Steady("crumb", 0.12, 400, 2600, "any");
            double Takes(double w, double h) => Conduction.Run(
                new HeatBody([new HeatSlab(h, w, crumb)]), HeatStart.Even(22), [new Stay(6000, new Surroundings(4) { Blown = 8 })], null, [new HeatGoal(HeatSpot.Mean, 10)]).MinutesTo(HeatSpot.Mean, 10)!.Value;
            Assert.True(Takes(wider ? wide * times : wide, wider ? high : high * times) > Takes(wide, high));
        }, iter: 40);

    [Fact]
    public void Two_grids_agree_within_one_in_a_hundred() => Gen.Select(Body.Where(b => !b.IsBlock && b.Height > 0.05), Around, Gen.Double[40, 60]).Sample(
        (body, around, above) =>
        {
            var (start, usual) = (around.Celsius + above, HeatDetail.Usual);
            HeatCurve Run(HeatDetail detail) => Conduction.Run(body, HeatStart.Even(start), [new Stay(240, around)], null, null, detail);
            var thin = Math.Clamp(Math.Min(body.Height, 2 * body.Slabs[0].HalfWidth) / 12, 0.003, 0.012);
            var (one, two) = (Run(usual), Run(new HeatDetail(thin / 1.5, 2.5, 0.01, 100)));
            Assert.All([60.0, 120, 240], m => Assert.Equal(two.At(m, HeatSpot.Mean), one.At(m, HeatSpot.Mean), 0.01 * above));
        }, iter: 10);
}
