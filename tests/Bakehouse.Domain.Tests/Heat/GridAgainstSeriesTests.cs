namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Heat;

/// <summary>The grid of the product against exact series: reference cakes made for it, and textbooks' examples.</summary>
public sealed class GridAgainstSeriesTests(ITestOutputHelper output)
{
    private static readonly HeatMaterial Crumb = HeatMaterial.Steady("crumb", 0.12, 300, 2800, "a reference case, not measured");
    private static readonly HeatMaterial Iced = HeatMaterial.Steady("iced tier", 0.2, 600, 2400, "a reference case, not measured");
    private static readonly HeatDetail Fine = new(0.002, 1, 0.003, 36);

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(180)]
    public void A_layer_on_a_rack(int minutes)
    {
        var curve = Cool(Crumb, 0.05, 95, Surroundings.Plain(22, 8), 240);
        Near(22 + (73 * SeriesRows.Ck1.Theta(minutes * 60, 0, 0)), curve.At(minutes, HeatSpot.Core), 0.05);
        Near(22 + (73 * SeriesRows.Ck1.Theta(minutes * 60, 0, 0.025)), curve.At(minutes, HeatSpot.Top), 0.05);
        Near(22 + (73 * SeriesRows.Ck1.Theta(minutes * 60, 0.1016, 0)), curve.At(minutes, HeatSpot.Side), 0.05);
        Near(22 + (73 * SeriesRows.Ck1.Mean(minutes * 60)), curve.At(minutes, HeatSpot.Mean), 0.05);
    }

    [Theory]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(180)]
    public void The_same_on_a_board_that_does_not_conduct(int minutes) =>
        Near(22 + (73 * SeriesRows.Ck3.Theta(minutes * 60, 0, 0)), Cool(Crumb, 0.05, 95, Surroundings.Plain(22, 8, true), 240).At(minutes, HeatSpot.Base), 0.05);

    [Theory]
    [InlineData(10)]
    [InlineData(8)]
    [InlineData(5)]
    public void A_layer_in_a_fridge(int celsius)
    {
        var found = Cool(Crumb, 0.05, 22, Surroundings.Plain(3, 6), 400).MinutesTo(HeatSpot.Core, celsius)!.Value;
        Near(Series.Moment(t => SeriesRows.Ck2.Theta(t, 0, 0), (celsius - 3) / 19.0, 1e5) / 60, found, 0.5);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    public void An_iced_tier_that_left_the_fridge(int hours)
    {
        var curve = Cool(Iced, 0.12, 4, Surroundings.Plain(22, 8, true), 300);
        Near(22 - (18 * SeriesRows.Ck5.Mean(hours * 3600)), curve.At(hours * 60, HeatSpot.Mean), 0.02);
        Near(22 - (18 * SeriesRows.Ck5.Theta(hours * 3600, 0, 0.06)), curve.At(hours * 60, HeatSpot.Core), 0.02);
        Near(22 - (18 * SeriesRows.Ck5.Theta(hours * 3600, 0, 0)), curve.At(hours * 60, HeatSpot.Base), 0.02);
    }

    [Fact]
    public void Cake_with_a_coat_of_other_stuff()
    {
        var coat = HeatMaterial.Steady("coat", 0.22, 1000, 2560, "a reference case, not measured");
        // So wide that its side is far away: a slab.
        var body = new HeatBody([new HeatSlab(0.05, 0.5, Crumb), new HeatSlab(0.01, 0.5, coat)]);
        var curve = Conduction.Run(body, HeatStart.Even(22), [new Stay(500, Surroundings.Plain(4, 8, true))], [new HeatProbe(0, 0.05)], null, Fine);
        foreach (var hours in new[] { 1, 2, 4, 8 })
        {
            Near(4 + (18 * SeriesRows.Ck8.Theta(hours * 3600, 0)), curve.At(hours * 60, HeatSpot.Base), 0.02);
            Near(4 + (18 * SeriesRows.Ck8.Theta(hours * 3600, 0.05)), curve.ProbeAt(hours * 60), 0.02);
            Near(4 + (18 * SeriesRows.Ck8.Theta(hours * 3600, 0.06)), curve.At(hours * 60, HeatSpot.Top), 0.02);
        }
    }

    [Fact]
    public void A_textbook_cylinder_of_brass_gives_off_the_heat_and_has_the_temperatures_of_the_exact_solution()
    {
        var brass = HeatMaterial.Steady("brass", 110, 8530, 110 / (8530 * 3.39e-5), "Cengel, example 4.8");
        var curve = Conduction.Run(new HeatBody([new HeatSlab(0.12, 0.05, brass)]), HeatStart.Even(120), [new Stay(15, Surroundings.Plain(25, 60))], null, null, new HeatDetail(0.004, 0.5, 0, 0.5));
        Near(HeatRow.Of("TX-11-X").Number, curve.At(15, HeatSpot.Core), 0.05);
        Near(HeatRow.Of("TX-11t-X").Number, curve.At(15, HeatSpot.Top), 0.05);
        Near(HeatRow.Of("TX-11q-X").Number, -curve.HeatCameIn / 1000 * 8530 * 380 / (110 / 3.39e-5), 0.15);
    }

    [Fact]
    public void A_textbook_cylinder_of_aluminium_away_from_its_axis()
    {
        var aluminium = HeatMaterial.Steady("aluminium", 215, 2707, 215 / (2707 * 8.4e-5), "Holman, example 4.9");
        var curve = Conduction.Run(
            new HeatBody([new HeatSlab(0.1, 0.025, aluminium)]), HeatStart.Even(200), [new Stay(1, Surroundings.Plain(70, 525))], [new HeatProbe(0.0125, 0.00625)], null, new HeatDetail(0.00125, 0.05, 0, 0.05));
        Near(HeatRow.Of("TX-17-X").Number, curve.ProbeAt(1), 0.1);
    }

    [Fact]
    public void A_textbook_slab_of_beef()
    {
        var beef = HeatMaterial.Steady("beef", 0.498, 1073, 3480, "Geankoplis, example 5.5-1");
        var body = new HeatBody([new HeatSlab(0.203, 1.5, beef)]);
        var found = Conduction.Run(body, HeatStart.Even(37.8), [new Stay(1500, Surroundings.Plain(1.7, 39.7))], null, [new HeatGoal(HeatSpot.Core, 10)], new HeatDetail(0.01, 20, 0.003, 60)).MinutesTo(HeatSpot.Core, 10)!.Value / 60;
        Near(HeatRow.Of("TX-21-X").Number, found, 0.05);
    }

    [Fact]
    public void Meat_freezes_in_the_time_of_Planks_formula()
    {
        // All its heat is latent, as the formula has it: Geankoplis, example 5.5-2.
        var meat = new HeatMaterial("meat", 1057, [new(-40, 0, 1.038), new(-2.8, 1860, 1.038), new(-2.7, 253_110, 1.038), new(20, 254_245, 1.038)], "Geankoplis, example 5.5-2");
        var curve = Conduction.Run(
            new HeatBody([new HeatSlab(0.0635, 0.5, meat)]), HeatStart.Even(-2.7), [new Stay(600, Surroundings.Plain(244.3 - 273.15, 17))], null, [new HeatGoal(HeatSpot.Core, -2.9)], new HeatDetail(0.004));
        Near(HeatRow.Of("FZ-1").Number, curve.MinutesTo(HeatSpot.Core, -2.81)!.Value * 60, 0.02 * 23_940);
    }

    [Fact]
    public void A_cube_is_three_slabs_at_once()
    {
        var body = new HeatBody([new HeatSlab(0.1, 0.05, Crumb) { HalfDepth = 0.05 }]);
        var curve = Conduction.Run(body, HeatStart.Even(95), [new Stay(200, Surroundings.Plain(22, 8))], null, null, new HeatDetail(0.004, 1, 0.005, 36));
        var slab = Series.Slab(8 * 0.05 / 0.12);
        foreach (var minutes in new[] { 60, 120, 180 })
        {
            Near(22 + (73 * Math.Pow(slab.At(1.42857e-7 * minutes * 60 / 0.0025, 0), 3)), curve.At(minutes, HeatSpot.Core), 0.15);
        }
    }

    [Fact]
    public void The_error_falls_with_the_square_of_the_cell()
    {
        double Error(double cell, double step) => Math.Abs(Conduction.Run(
            new HeatBody([new HeatSlab(0.05, 0.1, Crumb)]), HeatStart.Even(95), [new Stay(60, Surroundings.Plain(22, 8))], null, null, new HeatDetail(cell, step, 0, step)).At(60, HeatSpot.Mean)
            - 22 - (73 * new SeriesDisc(0.1, 0.025, 0.12, 0.12 / (300 * 2800), 8).Mean(3600)));
        // The step with the square of the cell, too: halved cells, a fourth of the step. Fo is 0.05 along the radius, 0.8 through the height.
        var (coarse, middle, fine) = (Error(0.01, 160), Error(0.005, 40), Error(0.0025, 10));
        output.WriteLine(FormattableString.Invariant($"errors of the mean: {coarse:0.0000}, {middle:0.0000}, {fine:0.0000} K: {coarse / middle:0.00} and {middle / fine:0.00} to 1"));
        Assert.InRange(coarse / middle, 3.4, 4.8);
        Assert.InRange(middle / fine, 3.4, 4.8);
    }

    [Fact]
    public void A_change_of_place_and_air_that_changes_evenly_follow_the_closed_forms()
    {
        // So good a conductor that it is equally warm all through; its time constant is one hour.
        var lump = HeatMaterial.Steady("lump", 400, 1000, 8 * 3600 * (2 / 0.05 + 2 / 0.1) / 1000, "lumped");
        var body = new HeatBody([new HeatSlab(0.1, 0.05, lump)]);
        var detail = new HeatDetail(0.02, 2, 0, 2);
        var ramp = Conduction.Run(body, HeatStart.Even(5), [new Stay(120, Surroundings.Plain(5, 8) with { CelsiusAtEnd = 25 })], null, null, detail);
        Near(5 + (20.0 / 2 * (2 - 1 + Math.Exp(-2))), ramp.At(120, HeatSpot.Mean), 0.01);
        var chain = Conduction.Run(body, HeatStart.Even(4), [new Stay(60, Surroundings.Plain(22, 8)), new Stay(120, Surroundings.Plain(4, 8))], null, null, detail);
        Near(15.378, chain.At(60, HeatSpot.Mean), 0.01);
        Near(5.540, chain.At(180, HeatSpot.Mean), 0.01);
    }

    private static HeatCurve Cool(HeatMaterial of, double high, double start, Surroundings to, double minutes) =>
        Conduction.Run(new HeatBody([new HeatSlab(high, 0.1016, of)]), HeatStart.Even(start), [new Stay(minutes, to)], null, null, Fine);

    private static void Near(double expected, double found, double within) => Assert.Equal(expected, found, within);
}
