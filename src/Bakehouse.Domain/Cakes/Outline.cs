namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using static System.FormattableString;

/// <summary>What a tier looks like from above.</summary>
public enum OutlineKind
{
    /// <summary>A circle.</summary>
    Round,

    /// <summary>A square, by its side.</summary>
    Square,

    /// <summary>A rectangle: slabs and sheets.</summary>
    Rectangle,

    /// <summary>A regular hexagon, by its size from corner to corner.</summary>
    Hexagon,

    /// <summary>A petal, by its size from tip to tip.</summary>
    Petal,

    /// <summary>A heart, by its width.</summary>
    Heart,

    /// <summary>Half of a round, by the diameter of the whole.</summary>
    HalfRound,

    /// <summary>A figure or letter cut from a slab, by its height.</summary>
    Sign,
}

/// <summary>An outline as it is written down: plain figures, so that it can stand in a document. <see cref="Shape"/> is the geometry.</summary>
/// <param name="Wide">Its size as it is named: diameter, side, width; of a sign its height.</param>
/// <param name="Deep">Only of a rectangle: from front to back.</param>
/// <param name="Lobes">Only of a petal.</param>
/// <param name="Sign">Only of a sign: one figure or capital letter.</param>
public sealed record Outline(OutlineKind Kind, Length Wide, Length? Deep = null, int Lobes = Petal.UsualLobes, string Sign = "")
{
    /// <summary>The geometry. Throws where <see cref="OutlineChecks"/> has a problem.</summary>
    public Shape ToShape() => Kind switch
    {
        OutlineKind.Round => new Round(Wide),
        OutlineKind.Square => Slab.Square(Wide),
        OutlineKind.Rectangle => new Slab(Wide, Deep ?? throw new InvalidOperationException("A rectangle has a depth, and none is given.")),
        OutlineKind.Hexagon => new Hexagon(Wide),
        OutlineKind.Petal => new Petal(Wide, Lobes),
        OutlineKind.Heart => new Heart(Wide),
        OutlineKind.HalfRound => new HalfRound(Wide),
        OutlineKind.Sign => new SignShape(Sign, Wide),
        _ => throw new InvalidOperationException($"Unknown outline {Kind}."),
    };
}

/// <summary>What keeps an outline from being a cake's.</summary>
public static class OutlineChecks
{
    /// <summary>The narrowest and the widest that a tier or slab is: 2 and 40 in (common practice, no source).</summary>
    public static readonly (Length Least, Length Most) Sizes = (Length.FromInches(2), Length.FromInches(40));

    /// <summary>Every problem; empty if it can be a tier.</summary>
    /// <param name="where">The field, as it is called on screen.</param>
    public static IEnumerable<Problem> Of(Outline outline, string where)
    {
        if (!Enum.IsDefined(outline.Kind))
        {
            yield return new Problem(where, Invariant($"{(int)outline.Kind}"), "This outline is not known.", "Choose round, square, rectangle, hexagon, petal, heart, half-round or a sign.");
        }

        if (Sized(outline.Wide, where) is { } wide)
        {
            yield return wide;
        }

        if (outline.Kind == OutlineKind.Rectangle)
        {
            if (outline.Deep is not { } deep)
            {
                yield return new Problem(where, "", "A rectangle has a depth, too.", "Give the depth.");
            }
            else if (Sized(deep, where) is { } depth)
            {
                yield return depth;
            }
        }

        if (outline.Kind == OutlineKind.Petal && (outline.Lobes is < 4 or > 16 || outline.Lobes % 2 == 1))
        {
            yield return new Problem(where, Invariant($"{outline.Lobes}"), "A petal has 4 to 16 lobes, an even number.", "8 is usual.");
        }

        if (outline.Kind == OutlineKind.Sign && Signs.Of(outline.Sign) is null)
        {
            yield return new Problem(where, Problem.Shown(outline.Sign), "There is no template for this sign.", "Give one figure or one capital letter, A to Z.");
        }
    }

    private static Problem? Sized(Length size, string where) => size >= Sizes.Least && size <= Sizes.Most ? null
        : new Problem(where, Invariant($"{size.Inches:0.##} in"), Invariant($"A tier or slab is {Sizes.Least.Inches:0} to {Sizes.Most.Inches:0} in each way."), "Choose a size of your pans.");
}
