namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Orders;

/// <summary>What a cake serves, held against what was asked.</summary>
/// <param name="Asked">Portions to be cut.</param>
/// <param name="All">Portions of all that is eaten.</param>
/// <param name="Kept">Of the top tier, if that is put by; else 0.</param>
public sealed record Serves(int Asked, int All, int Kept)
{
    /// <summary>Portions that are cut on the day.</summary>
    public int ToCut => All - Kept;

    /// <summary>Fewer than asked by so many; 0 if it serves them.</summary>
    public int Missing => Math.Max(0, Asked - ToCut);

    /// <summary>Of a build.</summary>
    /// <param name="keepsTop">True if the top tier is put by; of a cake of one tier nothing is.</param>
    public static Serves Of(BuildSheet sheet, Portions asked, bool keepsTop) =>
        new(asked.Count, sheet.Portions(asked.Cut), keepsTop && sheet.Stack.Count > 1 ? sheet.Stack[^1].Portions(asked.Cut) : 0);

    /// <summary>Of an order; null as long as its tiers can't be built.</summary>
    public static Serves? Of(Order order, CakeFigures figures) =>
        BuildSheet.Try(order.Tiers, order.Finish, figures) is { } sheet ? Of(sheet, order.Portions, order.Guests?.KeepsTop == true) : null;
}
