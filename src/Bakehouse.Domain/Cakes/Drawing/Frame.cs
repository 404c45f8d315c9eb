namespace Bakehouse.Domain.Cakes.Drawing;

using System.Globalization;

/// <summary>What stands around an elevation: the ruler in centimetres at the left, fine lines every 5 cm, the dimension below.</summary>
internal sealed class Frame(Stack stack)
{
    private const double BesideDrum = 8, Below = 40, Serif = 6;

    public static Surround Surround { get; } = new(2.2, 2, 0.4, 0.8);

    public double RulerTop { get; } = Math.Ceiling((stack.Top + 20) / 50) * 50;

    public Extent Extent => new(RulerX - 8, -Below, stack.HalfWidth, RulerTop);

    private double RulerX => -stack.HalfWidth - BesideDrum;

    public IEnumerable<Drawn> Ruler()
    {
        for (var mm = 50; mm <= RulerTop; mm += 50)
        {
            yield return new Segment(Part.RulerLine, RulerX, mm, stack.HalfWidth, mm);
        }

        yield return new Segment(Part.Ruler, RulerX, 0, RulerX, RulerTop);
        yield return new Lettering(Part.Ruler, RulerX, RulerTop, Place.Above, "cm");
        for (var cm = 0; cm * 10 <= RulerTop; cm++)
        {
            var length = cm % 10 == 0 ? 8 : cm % 5 == 0 ? 6 : 3;
            yield return new Segment(Part.Ruler, RulerX - length, cm * 10, RulerX, cm * 10);
            if (cm % 10 == 0)
            {
                yield return new Lettering(Part.Ruler, RulerX - 8, cm * 10, Place.Left, cm.ToString(CultureInfo.InvariantCulture));
            }
        }
    }

    /// <summary>The bare bottom tier from side to side in both units.</summary>
    public IEnumerable<Drawn> Dimension()
    {
        var radius = stack.Bottom.BareRadius;
        var y = -Below + Serif;
        yield return new Segment(Part.Dimension, -radius, y, radius, y);
        yield return new Segment(Part.Dimension, -radius, y - Serif, -radius, y + Serif);
        yield return new Segment(Part.Dimension, radius, y - Serif, radius, y + Serif);
        yield return new Lettering(Part.Dimension, 0, y, Place.On, stack.BothSizes(stack.Bottom.Build.Shape.Wide)) { Over = WordsOn.Plate };
    }
}
