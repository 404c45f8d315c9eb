namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Works out a build sheet from tiers that are right.</summary>
internal sealed class Builder(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures)
{
    private const string Buttercream = "buttercream";

    public BuildSheet Build()
    {
        var builds = tiers.Select(Tier).ToList();
        var drum = Board.Drum(tiers[0].Diameter, tiers.Count, figures);
        var parts = Parts(builds, drum).ToList();
        var height = parts[^1].Foot + parts[^1].Height;
        var centre = Balance.CentreOfGravity(parts);
        var cake = builds.Aggregate(Mass.FromGrams(0), (sum, t) => sum + t.Mass);
        return new BuildSheet(
            builds,
            figures,
            ColourBatches(builds),
            drum,
            Box.For(drum.Diameter, height, figures),
            tiers.Count >= 3 ? 1 : 0,
            cake,
            parts.Aggregate(Mass.FromGrams(0), (sum, p) => sum + p.Mass) - cake,
            height,
            centre,
            Balance.TipsAt(tiers[0].Diameter, centre));
    }

    private TierBuild Tier(CakeTier tier, int index)
    {
        var shape = new Round(tier.Diameter);
        var fillings = tier.Layers - 1;
        var filling = shape.Area * (figures.FillingThickness * fillings);
        var sponge = (shape.Area * tier.Height) - filling;
        var coatThickness = figures.CoatFor(finish);
        var crumb = Coat.On(shape, tier.Height, figures.CrumbThickness).All;
        var coat = Coat.Over(shape, tier.Height, figures.CrumbThickness, coatThickness).All;
        var onTop = figures.CrumbThickness + coatThickness;
        var finished = new FinishedSize(tier.Diameter + (onTop * 2), tier.Height + onTop);
        return new TierBuild(
            tier,
            TierPans.Of(shape, tier.Height, tier.Layers, figures),
            fillings,
            figures.FillingThickness,
            sponge,
            filling,
            crumb,
            coat,
            ColourBatch.Split(finish == Finish.SemiNaked ? crumb : coat, tier.Colours),
            crumb + coat + (tier.Filling == Buttercream ? filling : Volume.Zero),
            finished,
            index == 0 ? Board.Drum(tier.Diameter, tiers.Count, figures) : Board.Under(tier.Diameter, figures),
            Board.Working(tier.Diameter, figures),
            (figures.Sponge(tier.Sponge) * sponge) + (figures.Filling(tier.Filling) * filling) + (figures.IcingDensity * (crumb + coat)),
            PortionChart.Count(tier.Diameter, tier.Height, Cut.Dessert, figures),
            PortionChart.Count(tier.Diameter, tier.Height, Cut.Coffee, figures),
            index + 1 < tiers.Count ? Supports.For(tier.Diameter, tiers[index + 1].Diameter, finished.Height) : null);
    }

    private IReadOnlyList<ColourBatch> ColourBatches(IEnumerable<TierBuild> builds) =>
        ColourBatch.Of(builds.SelectMany(b => b.Colours), figures);

    // From the table up: the drum, the bottom tier, then for each upper tier its board and itself.
    private IEnumerable<StackPart> Parts(IReadOnlyList<TierBuild> builds, Board drum)
    {
        var foot = Length.FromMillimetres(0);
        foreach (var build in builds)
        {
            var board = build == builds[0] ? drum : build.Board;
            yield return new StackPart(figures.BoardDensity * board.Volume, foot, board.Thickness);
            foot += board.Thickness;
            yield return new StackPart(build.Mass, foot, build.Finished.Height);
            foot += build.Finished.Height;
        }
    }
}
