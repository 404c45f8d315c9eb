namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>B: boards and boxes; the weight of a cake on them.</summary>
internal static class BoardRows
{
    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("B-DRUM1", r => r.Is(Board.Drum(In(8), 1, CakeFigures.Usual).Diameter.Inches - 8)),
        ("B-DRUMT", r => r.Is(Board.Drum(In(r.Given[0]), 3, CakeFigures.Usual).Diameter.Inches)),
        ("B-THICK", Thick),
        ("B-BOX", Tall),
        .. new[] { 8, 9, 10, 12 }.Select(d => ($"B-BOX-{d}", (Action<CheckRow>)(r => Usual(r, d)))),
        ("B-WT-8", r => r.Is(BuildSheet.Of([Golden.Tier(8) with { Height = In(3.5) }], Finish.Smooth, CakeFigures.Usual).Cake.Kilograms)),
    ];

    // Ranges from card to drum; one number where least and most are one.
    private static void Thick(CheckRow r) =>
        Assert.Equal(r.Numbers, TierBoard.All.SelectMany(b => new[] { b.Thickness.Least, b.Thickness.Most }.Distinct()).Select(t => (double)t.Millimetres));

    private static void Tall(CheckRow r)
    {
        var box = Box.For(In(r.Given[0]), In(r.Given[1]), CakeFigures.Usual);
        Assert.InRange((double)box.Width.Inches, r.Numbers[0], r.Numbers[1]);
        Assert.InRange((double)box.Height.Inches, r.Numbers[2], r.Numbers[3]);
    }

    // The smallest box that is sold for a cake 4 in high on its board.
    private static void Usual(CheckRow r, int inches)
    {
        var box = Box.For(Board.Drum(In(inches), 1, CakeFigures.Usual).Diameter, In(4), CakeFigures.Usual).AsSold!;
        r.Is(box.Width.Inches, box.Width.Inches, box.Height.Inches);
    }
}
