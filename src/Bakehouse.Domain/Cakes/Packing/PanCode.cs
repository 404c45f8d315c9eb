namespace Bakehouse.Domain.Cakes.Packing;

using Bakehouse.Domain.Measures;

/// <summary>
/// A pan as a whole number, as weeks and their files hold it: a round one by its inches, any other by the rectangle that it stands on, its
/// longer side × 1000 and its shorter (14010 is 14 × 10 in). All are rounded up to whole inches.
/// </summary>
public static class PanCode
{
    private const int Straight = 1000;

    /// <summary>The code of a pan of that outline.</summary>
    public static int Of(Shape shape)
    {
        if (shape is Round round)
        {
            return Up(round.Diameter);
        }

        var (wide, deep) = (Up(shape.Wide), Up(shape.Deep));
        return (Math.Max(wide, deep) * Straight) + Math.Min(wide, deep);
    }

    /// <summary>What it covers of a deck, without rim and gap.</summary>
    public static Piece Bare(int code) => code < Straight ? Piece.Round(Mm(code)) : new Piece(Mm(code / Straight), Mm(code % Straight), false);

    /// <summary>True if whatever stands in place of the larger pan leaves room for the smaller one.</summary>
    public static bool Covers(int larger, int smaller)
    {
        var (l, s) = (Bare(larger), Bare(smaller));
        return (l.IsRound, s.IsRound) switch
        {
            (true, false) => l.Wide >= Math.Sqrt((s.Wide * s.Wide) + (s.Deep * s.Deep)),
            _ => l.Wide >= s.Wide && l.Deep >= s.Deep,
        };
    }

    /// <summary>A round pan that covers it: the diagonal of a straight one, in whole inches up.</summary>
    public static int Around(int code) => code < Straight ? code : (int)Math.Ceiling(Math.Sqrt((double)((code / Straight * (code / Straight)) + (code % Straight * (code % Straight)))));

    private static int Up(Length length) => (int)Math.Ceiling(length.Inches);

    private static double Mm(int inches) => (double)Length.FromInches(inches).Millimetres;
}
