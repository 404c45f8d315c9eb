namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Works out a build sheet from tiers that are right.</summary>
internal sealed class Builder(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures)
{
    public BuildSheet Build()
    {
        var made = new TierMaker(tiers, finish, figures);
        var builds = tiers.Select(made.Tier).ToList();
        var drum = Board.Drum(tiers[0].Shape, tiers.Count, figures);
        var parts = Parts(builds, drum).ToList();
        var height = parts[^1].Foot + parts[^1].Height;
        var centre = Balance.CentreOfGravity(parts);
        var cake = builds.Aggregate(Mass.FromGrams(0), (sum, t) => sum + t.Mass);
        return new BuildSheet(
            builds,
            figures,
            ColourBatch.Of(builds.SelectMany(b => b.Colours).Where(c => c.Needed > Volume.Zero), figures),
            drum,
            Box.For(drum, height, figures),
            tiers.Count >= 3 ? 1 : 0,
            cake,
            parts.Aggregate(Mass.FromGrams(0), (sum, p) => sum + p.Mass) - cake,
            height,
            centre,
            Balance.TipsAt(Foot(tiers[0].Shape), centre));
    }

    /// <summary>The narrower way over which a foot tips.</summary>
    private static Length Foot(Shape shape) => shape.Deep < shape.Wide ? shape.Deep : shape.Wide;

    // From the table up: the drum, the bottom tier, then for each upper tier the free height, its board and itself.
    private IEnumerable<StackPart> Parts(IReadOnlyList<TierBuild> builds, Board drum)
    {
        var foot = Length.FromMillimetres(0);
        foreach (var build in builds)
        {
            foot += build == builds[0] ? default : build.Separator;
            var board = build == builds[0] ? drum : build.Board;
            yield return new StackPart(figures.BoardDensity * board.Volume, foot, board.Thickness);
            foot += board.Thickness;
            yield return new StackPart(build.Mass, foot, build.Finished.Height);
            foot += build.Finished.Height;
        }
    }
}
