namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

/// <summary>A shop's own figures may be wrong: all of it is said at once, nothing is bent silently.</summary>
public sealed class FigureCheckTests
{
    [Fact]
    public void The_usual_figures_are_right() => Assert.Empty(FigureChecks.Of(CakeFigures.Usual));

    [Fact]
    public void Wrong_figures_are_named_all_at_once_and_no_sheet_is_made()
    {
        var wrong = CakeFigures.Usual with
        {
            Fill = 0, KeptBackShare = 1.5, PetalShare = double.NaN, PanDepths = [], FillingThickness = Mm(40), CrumbThickness = Mm(20), CoatThickness = Mm(50), CutShort = Mm(5),
        };
        var problems = BuildProblems.Of([Checks.Golden.Tier(8) with { Height = Mm(200) }], wrong);
        Assert.Equal(["Fill", "Kept back", "Petals", "Pans", "Filling", "Crumb coat", "Final coat", "Supports cut short"], problems.Select(p => p.Where));
        Assert.All(problems, p => Assert.True(p.Value.Length > 0 && p.Try.Length > 0));
        Assert.Null(BuildSheet.Try([Checks.Golden.Tier(8)], Finish.Smooth, wrong));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(7)]
    public void A_density_that_is_none_is_named_with_what_to_do(double typed) =>
        Assert.Contains("Weigh", FigureChecks.OfDensity(typed, "Buttercream")!.Try, StringComparison.Ordinal);

    /// <summary>Whatever may stand becomes a density without a fault, and every density that the product offers may stand.</summary>
    [Fact]
    public void What_may_stand_is_a_density()
    {
        Gen.Double[-1, 3].Sample(typed =>
        {
            if (FigureChecks.OfDensity(typed, "x") is null)
            {
                Assert.Equal(typed, Density.FromGramsPerMillilitre(typed).GramsPerMillilitre);
            }
        });
        var usual = CakeFigures.Usual;
        Density[] offered = [usual.SpongeDensity, usual.IcingDensity, usual.DripDensity, usual.FoamDensity, usual.BoardDensity, PasteSheet.Paste, .. usual.SpongeDensities.Values, .. usual.FillingDensities.Values];
        Assert.All(offered, d => Assert.Null(FigureChecks.OfDensity(d.GramsPerMillilitre, "x")));
    }

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
