namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;

/// <summary>Boards and boxes: common practice, no source, except where a line says otherwise.</summary>
public sealed class BoardTests
{
    private static readonly CakeFigures Usual = CakeFigures.Usual;

    /// <summary>Board of a single cake 1.5 to 4 in wider; drum of a stack 3 to 4 in wider: 16 in under 12, 14 in under 10.</summary>
    [Fact]
    public void Drums_are_wider_than_the_cake()
    {
        Assert.InRange(Board.Drum(In(8), 1, Usual).Diameter.Inches, 9.5m, 12m);
        Assert.Equal(In(16), Board.Drum(In(12), 3, Usual).Diameter);
        Assert.Equal(In(14), Board.Drum(In(10), 3, Usual).Diameter);
        Assert.Equal(In(14), Board.Drum(In(10), 2, Usual).Diameter);
    }

    /// <summary>Card 1.5 to 2, double card 2.5 to 5, hardboard 4 to 6 mm; drum 12 mm (from memory).</summary>
    [Fact]
    public void Boards_have_the_usual_thickness()
    {
        Assert.InRange(Board.Under(In(8), Usual).Thickness.Millimetres, 2.5m, 5m);
        Assert.Equal(12, Board.Drum(In(8), 2, Usual).Thickness.Millimetres);
    }

    /// <summary>An upper tier's board has the tier's own diameter; a larger one carries it while it is coated.</summary>
    [Fact]
    public void Upper_boards_are_the_tiers_size()
    {
        Assert.Equal(In(8), Board.Under(In(8), Usual).Diameter);
        Assert.True(Board.Working(In(8), Usual).Diameter > In(8));
    }

    /// <summary>Drum 16 in, stack 12 in: box 16 to 18 in square, 13 to 14 in tall (1 to 2 in over the highest point).</summary>
    [Fact]
    public void A_box_takes_the_drum_and_clears_the_top()
    {
        var box = Box.For(In(16), In(12), Usual);
        Assert.InRange(box.Width.Inches, 16, 18);
        Assert.InRange(box.Height.Inches, 13, 14);
    }

    /// <summary>
    /// Usual boxes for one cake: 8 in 10×10×5, 9 in 11×11×5, 10 in 12×12×6, 12 in 14×14×6. The width is exact; the printed height
    /// clears a cake of 4 in by 1 to 2 in, ours by 1.
    /// </summary>
    [Theory]
    [InlineData(8, 10, 5)]
    [InlineData(9, 11, 5)]
    [InlineData(10, 12, 6)]
    [InlineData(12, 14, 6)]
    public void Boxes_for_one_cake(int cake, int wide, int high)
    {
        var box = Box.For(Board.Drum(In(cake), 1, Usual).Diameter, In(4), Usual);
        Assert.Equal(In(wide), box.Width);
        Assert.InRange(high - box.Height.Inches, 0, 1);
    }

    private static Length In(decimal inches) => Length.FromInches(inches);
}
