namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>What the supports in one tier carry.</summary>
/// <param name="Tier">Counted from the bottom, 0 and up.</param>
/// <param name="Carried">All tiers above with their boards.</param>
/// <param name="Newtons">Its weight.</param>
/// <param name="Apart">From support to neighbour on their circle.</param>
/// <param name="Carries">Load at which one support fails, newtons.</param>
/// <param name="Punches">Load on one support at which the board above is punched, newtons.</param>
/// <param name="SagMillimetres">Of the board above, as if the supports stood at its rim; null where nothing is published for it.</param>
/// <param name="CrumbGives">Without supports: the share of its height that the crumb would give, at its stiffest and softest.</param>
public sealed record TierLoad(
    int Tier, Mass Carried, double Newtons, Supports Supports, Length Apart, double Carries, double Punches, double? SagMillimetres, (double Least, double Most) CrumbGives)
{
    /// <summary>On each support, newtons, evenly shared.</summary>
    public double Each => Newtons / Supports.Count;

    /// <summary>How many times its load a support carries before it fails.</summary>
    public double Factor => Carries / Each;

    /// <summary>
    /// Tilt in degrees where the supports on one side are shorter by so much: the reason for one mark and one length.
    /// </summary>
    public double Lean(Length shorter) => Math.Atan2((double)shorter.Millimetres, (double)Supports.RingDiameter.Millimetres) * 180 / Math.PI;
}

/// <summary>The loads of a stack from the bottom up, and what to look at.</summary>
public static class StackLoads
{
    /// <summary>Sag of a board that is looked at: 1 mm, or its width by 300 if that is more (from memory).</summary>
    public static double SagLimit(Length width) => Math.Max(1, (double)width.Millimetres / 300);

    /// <summary>A load for every tier that has supports.</summary>
    public static IReadOnlyList<TierLoad> Of(BuildSheet sheet, SupportKind kind, TierBoard board) =>
        [.. sheet.Stack.Select((t, i) => (t, i)).Where(t => t.t.Supports is not null).Select(t => Load(sheet, t.i, kind, board))];

    /// <summary>What a baker should look at; none of it stops anything.</summary>
    public static IEnumerable<Look> Looks(BuildSheet sheet, SupportKind kind, TierBoard board)
    {
        foreach (var load in Of(sheet, kind, board))
        {
            var where = Invariant($"Tier {load.Tier + 1}");
            if (load.Each > load.Punches)
            {
                yield return new Look(
                    where, Invariant($"{load.Each:0.#} N on each of {load.Supports.Count}"), Invariant($"{board.Name} over {kind.Name.ToLowerInvariant()}s may be punched from about {load.Punches:0.#} N each."), "Look: use hard board, wider supports or more of them.", board.Source);
            }

            var above = sheet.Stack[load.Tier + 1];
            if (load.SagMillimetres is { } sag && sag > SagLimit(above.Board.Diameter))
            {
                yield return new Look(where, Invariant($"{sag:0.#} mm"), Invariant($"The board above may sag by more than {SagLimit(above.Board.Diameter):0.#} mm."), "Look: use a thicker board or more supports.", "From memory");
            }

            if (kind == SupportKind.Straw && (above.Tier.Diameter.Inches > 6 || load.Tier + 2 < sheet.Stack.Count))
            {
                yield return new Look(where, kind.Name, "Straws are for light stacks, a 6 in tier on an 8 in one.", "Look: use dowels or wide tubes.", "Common practice, no source");
            }
        }
    }

    private static TierLoad Load(BuildSheet sheet, int tier, SupportKind kind, TierBoard board)
    {
        var supports = sheet.Stack[tier].Supports!;
        var above = sheet.Stack.Skip(tier + 1).ToList();
        var carried = above.Aggregate(Mass.FromGrams(0), (sum, t) => sum + t.Mass + (sheet.Figures.BoardDensity * t.Board.Volume));
        var newtons = Crumb.Newtons(carried);
        return new TierLoad(
            tier,
            carried,
            newtons,
            supports,
            supports.Apart,
            kind.Carries(supports.Length),
            kind.Punches(board),
            board.Material is { Poisson: { } poisson } m
                ? new Plate((double)above[0].Board.Diameter.Millimetres / 2, (double)board.Thickness.Least.Millimetres, m.Stiffness, poisson).SagOnPoints(newtons, Math.Max(3, supports.Count))
                : null,
            Crumb.Gives(Crumb.Pressure(carried, above[0].Shape.Area)));
    }
}
