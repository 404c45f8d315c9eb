namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Works out a build sheet from tiers that are right.</summary>
internal sealed class Builder(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures)
{
    public BuildSheet Build()
    {
        List<CakeTier> stack = [.. tiers.Where(t => !t.StandsBeside)];
        var made = new TierMaker(stack, finish, figures);
        var standing = stack.Select(made.Tier).ToList();
        List<TierBuild> all = [.. standing, .. tiers.Where(t => t.StandsBeside).Select(t => CupcakeMaker.Of(t, figures))];
        var drum = stack.Count == 0 ? null : Board.Drum(stack[0].Shape, stack.Count, figures);
        var parts = drum is null ? [] : Parts(standing, drum).ToList();
        var height = parts.Count == 0 ? default : parts[^1].Foot + parts[^1].Height;
        var centre = parts.Count == 0 ? default : Balance.CentreOfGravity(parts);
        var cake = standing.Aggregate(Mass.FromGrams(0), (sum, t) => sum + t.Mass);
        return new BuildSheet(
            all,
            figures,
            ColourBatch.Of(all.SelectMany(b => b.Colours).Where(c => c.Needed + c.Seams > Volume.Zero), figures),
            drum,
            drum is null ? null : Box.For(drum, height, figures),
            stack.Count >= 3 ? 1 : 0,
            cake,
            parts.Aggregate(Mass.FromGrams(0), (sum, p) => sum + p.Mass) - cake,
            height,
            centre,
            parts.Count == 0 ? 0 : Balance.TipsAt(Foot(stack[0].Shape), centre));
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
