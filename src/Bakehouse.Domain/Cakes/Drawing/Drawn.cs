namespace Bakehouse.Domain.Cakes.Drawing;

/// <summary>What a line or an area stands for; whoever renders it gives it its stroke and fill.</summary>
public enum Part
{
    /// <summary>Icing; filled with its swatch, without a line.</summary>
    Coat,

    /// <summary>The edge of a tier; a line, not filled.</summary>
    Edge,

    /// <summary>Cut sponge, patterned by its food.</summary>
    Sponge,

    /// <summary>Cut filling, hatched, in the colour of its food.</summary>
    Filling,

    /// <summary>Foam of a false tier, cut.</summary>
    Foam,

    /// <summary>A board or the drum.</summary>
    Board,

    /// <summary>A support, cut or seen from its end.</summary>
    Dowel,

    /// <summary>A support that is hidden inside: a dashed outline.</summary>
    HiddenDowel,

    /// <summary>The rod in the centre line.</summary>
    Rod,

    /// <summary>A line that shows roundness.</summary>
    Roundness,

    /// <summary>A bead of the border.</summary>
    Bead,

    /// <summary>The centre line.</summary>
    CentreLine,

    /// <summary>The cross at the centre.</summary>
    Cross,

    /// <summary>The outline of the tier above: dashed.</summary>
    Above,

    /// <summary>The ruler in centimetres.</summary>
    Ruler,

    /// <summary>A fine line across at a full mark of the ruler.</summary>
    RulerLine,

    /// <summary>A dimension line and its words.</summary>
    Dimension,

    /// <summary>Words in a tier or beside it.</summary>
    Label,
}

/// <summary>A piece of a drawing.</summary>
public abstract record Drawn(Part Part)
{
    /// <summary>#RRGGBB of the order, or null.</summary>
    public string? Swatch { get; init; }

    /// <summary>The food whose colour and pattern fills it, or empty: vanilla, chocolate, raspberry-jam ...</summary>
    public string Food { get; init; } = "";

    /// <summary>0 to 1.</summary>
    public double Opacity { get; init; } = 1;
}

/// <summary>A rectangle by its lower left corner; the upper corners may be rounded.</summary>
public sealed record Rectangle(Part Part, double X, double Y, double Width, double Height) : Drawn(Part)
{
    /// <summary>Radius of the upper left corner.</summary>
    public double TopLeft { get; init; }

    /// <summary>Radius of the upper right corner.</summary>
    public double TopRight { get; init; }
}

/// <summary>A straight line.</summary>
public sealed record Segment(Part Part, double X1, double Y1, double X2, double Y2) : Drawn(Part);

/// <summary>A circle by its centre.</summary>
public sealed record Circle(Part Part, double X, double Y, double Radius) : Drawn(Part);

/// <summary>A closed line of several loops; inside a loop that lies in another is outside again.</summary>
public sealed record Patch(Part Part, IReadOnlyList<IReadOnlyList<Dot>> Loops) : Drawn(Part);

/// <summary>Where words stand, seen from their point.</summary>
public enum Place
{
    /// <summary>Centred on it.</summary>
    On,

    /// <summary>Ends left of it.</summary>
    Left,

    /// <summary>Begins right of it.</summary>
    Right,

    /// <summary>Centred under it.</summary>
    Below,

    /// <summary>Centred over it.</summary>
    Above,
}

/// <summary>Words at a point, in one line or two.</summary>
/// <param name="Text">The first line.</param>
/// <param name="Second">A quieter line under it, or empty.</param>
public sealed record Lettering(Part Part, double X, double Y, Place Place, string Text, string Second = "") : Drawn(Part)
{
    /// <summary>True if the first line is large.</summary>
    public bool Large { get; init; }

    /// <summary>Width in millimetres that the words must fit into, else the second line is left out, and if the first is still too
    /// wide, both; null if there is always room.</summary>
    public double? Room { get; init; }

    /// <summary>How they are written over what lies below. A plate has the colour of the swatch, or is white without one.</summary>
    public WordsOn Over { get; init; }
}
