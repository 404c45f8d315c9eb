namespace Bakehouse.Web.TheCakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Structure;
using Bakehouse.Web.Shell;

/// <summary>Working boards, seams, and the room that a cake takes on a shelf in each state, as lines of the working.</summary>
internal static class WorkingRoom
{
    private const string Practice = "Common practice, no source";

    /// <summary>Each tier, the top one first, then the whole, then each part in its box.</summary>
    public static IEnumerable<WorkingLine> Lines(BuildSheet sheet, IReadOnlyList<TravelPart> parts, Words words) =>
    [
        .. Footprint.Of(sheet).Where(f => f.Tier is not null).Reverse().Select(f => InWork(f, sheet.Stack[f.Tier!.Value], words)),
        .. sheet.Stack.Where(t => t.Seam > Volume.Zero).Reverse().Select(t => Seam(t, words)),
        .. Footprint.Of(sheet).Where(f => f.As == StandsAs.OnDrum && parts.Count == 1).Select(f => new WorkingLine("On its drum", Room(f.Wide, f.Deep, f.Height, words), Hands("drum"), Practice)),
        .. parts.Select(p => Boxed(p, parts.Count == 1 ? "In its box" : $"{PartWords.Name(p, sheet, words)} in its box", words)),
    ];

    private static WorkingLine InWork(Footprint foot, TierBuild tier, Words words) => new(
        $"{words.Tier(tier.Tier)} on its working board", Room(foot.Wide, foot.Deep, foot.Height, words), $"board of {PartWords.Working(tier.WorkingBoard, words)}, {words.Thickness(tier.WorkingBoard.Thickness)} thick; {Hands("board")}", Practice);

    private static WorkingLine Seam(TierBuild tier, Words words) => new(
        $"Seam under the {words.Tier(tier.Tier)} tier", words.VolumeOf(tier.Seam), "a bead of 6 mm around its foot, π·d²/4 × outline, of the part kept back", Practice);

    private static WorkingLine Boxed(TravelPart part, string what, Words words)
    {
        var (wide, deep) = (part.Board.Shape.Wide + Footprint.BoxWalls, part.Board.Shape.Deep + Footprint.BoxWalls);
        return new WorkingLine(what, Room(wide, deep, part.Box.Height, words), $"board of {PartWords.Working(part.Board, words)}, {words.Centimetres(Footprint.BoxWalls)} more for the walls and the gap around them", Practice);
    }

    private static string Hands(string on) => $"{Footprint.Gap.Centimetres:0} cm more than the {on} for hands, {Footprint.ToLift.Centimetres:0} cm over it to lift";

    private static string Room(Length wide, Length deep, Length high, Words words) => $"{words.CutTo(wide)[..^3]} × {words.CutTo(deep)} of shelf, {words.CutTo(high)} high";
}
