namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Works out a batch of cupcakes as a row of a build sheet: it is neither stacked nor coated, and has a swirl on each.</summary>
internal static class CupcakeMaker
{
    public static TierBuild Of(CakeTier tier, CakeFigures figures)
    {
        var cupcakes = tier.Special!.Cupcakes!;
        var (batter, swirl) = (figures.CupcakeBatter * cupcakes.Count, figures.CupcakeSwirl * cupcakes.Count);
        var baked = batter * figures.Rise;
        return new TierBuild(
            tier,
            Pans(cupcakes, figures),
            0,
            figures.FillingThickness,
            baked,
            Volume.Zero,
            Volume.Zero,
            swirl,
            ColourBatch.Split(swirl, tier.Colours),
            swirl,
            new FinishedSize(Cupcakes.Across, Cupcakes.Baked + Cupcakes.SwirlHeight),
            Board.Under(Cupcakes.Tin, figures),
            Board.Under(Cupcakes.Tin, figures),
            (figures.Sponge(tier.Sponge) * baked) + (figures.IcingDensity * swirl),
            cupcakes.Count,
            cupcakes.Count,
            null);
    }

    private static TierPans Pans(Cupcakes cupcakes, CakeFigures figures) =>
        new(cupcakes.Tins, Cupcakes.Baked, Cupcakes.Baked, figures.CupcakeBatter * Cupcakes.InTin)
        {
            Own = [.. cupcakes.EachTin.Select(n => figures.CupcakeBatter * n)],
        };
}
