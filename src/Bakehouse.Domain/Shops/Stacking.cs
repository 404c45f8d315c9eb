namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Structure;

/// <summary>What the shop stacks its cakes with, by name.</summary>
/// <param name="Supports">A <see cref="SupportKind"/>.</param>
/// <param name="Board">A <see cref="TierBoard"/>, under upper tiers.</param>
/// <param name="Underlay">An <see cref="Structure.Underlay"/>, under the box in the van.</param>
public sealed record Stacking(string Supports, string Board, string Underlay)
{
    /// <summary>What a sheet takes that says nothing else.</summary>
    public static Stacking Usual { get; } = new(SheetChoices.Usual.Supports.Name, SheetChoices.Usual.Board.Name, SheetChoices.Usual.Underlay.Name);

    /// <summary>Every name that is not known; empty if it can be used.</summary>
    public IReadOnlyList<Problem> Problems() =>
    [
        .. Unknown("supports", Supports, SupportKind.All.Select(s => s.Name)), .. Unknown("tier-board", Board, TierBoard.All.Select(b => b.Name)),
        .. Unknown("underlay", Underlay, Structure.Underlay.All.Select(u => u.Name)),
    ];

    private static IEnumerable<Problem> Unknown(string where, string name, IEnumerable<string> known) =>
        known.Contains(name, StringComparer.Ordinal) ? [] : [new Problem(where, Problem.Shown(name), "This name is not known.", $"Choose one of {string.Join(", ", known)}.")];
}
