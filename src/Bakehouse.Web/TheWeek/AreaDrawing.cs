namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain.Methods;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>A stacked area with its strips, drawn.</summary>
/// <param name="LineY">The dashed line: all places.</param>
/// <param name="Base">y of the foot.</param>
/// <param name="PxPerPlace">Height of one place.</param>
/// <param name="Top">Corners of the upper edge.</param>
/// <param name="FullestX">Where the name of the fullest hour stands.</param>
public sealed record AreaDrawing(
    AreaLane Area,
    string Name,
    string Below,
    double Y,
    double High,
    double LineY,
    double Base,
    double PxPerPlace,
    IReadOnlyList<Strip> Strips,
    IReadOnlyList<(double X, double Y)> Top,
    string Fullest,
    double FullestX,
    IReadOnlyList<(double X, double Wide, string Says)> TooFull)
{
    /// <summary>Shelves that work which is no order has, under the line of all places: x, width, height.</summary>
    public IReadOnlyList<(double X, double Wide, double High)> Full { get; init; } = [];

    private const double FridgeHigh = 112;
    private const double FreezerHigh = 54;
    private const double NothingHigh = 30;
    private const double Head = 24;
    private const double Foot = 6;

    /// <summary>Fridges and freezer under the other lanes.</summary>
    public static IReadOnlyList<AreaDrawing> Of(PlanFacts facts, TimeAxis axis, double top)
    {
        var all = new List<AreaDrawing>();
        foreach (var (kind, name, high) in new[] { ("fridge", "Fridges", FridgeHigh), ("freezer", "Freezer", FreezerHigh) })
        {
            if (facts.Stores.Any(s => s.Kind == kind))
            {
                var area = AreaLane.Of(facts, kind, axis.From, axis.To);
                all.Add(One(facts, axis, area, name, top, area.Fullest is null ? NothingHigh : high));
                top += all[^1].High;
            }
        }

        return all;
    }

    private static AreaDrawing One(PlanFacts facts, TimeAxis axis, AreaLane area, string name, double y, double high)
    {
        var most = Math.Max(area.Places, area.Fullest?.Sum ?? 0);
        var px = (high - Head - Foot) / Math.Max(1, most);
        var foot = y + high - Foot;
        var edge = area.Levels.SelectMany(l => new[] { (axis.X(l.From), foot - (l.Sum * px)), (axis.X(l.To), foot - (l.Sum * px)) });
        var words = Words.Of(facts.Shop);
        var fullest = area.Fullest is { } f
            ? $"fullest: {Share(f.Sum, area)} of the shelves, {words.Local(f.From).ToString("ddd", Culture)} {words.Time(words.Local(f.From).TimeOfDay)}"
            : "nothing there on these days";
        var x = area.Fullest is { } at ? (axis.X(at.From) + axis.X(at.To)) / 2 : axis.Width / 2;
        var half = fullest.Length * 4.2;
        return new AreaDrawing(
            area, name, $"{ShelfRoom.SquareMetres(area.Places).ToString("0.#", Culture)} m² of shelf", y, high, foot - (area.Places * px), foot, px, StripsOf(facts, axis, area, foot, px), [.. edge],
            fullest, Math.Clamp(x, half, Math.Max(half, axis.Width - half)),
            [.. area.TooFull.Select(t => (axis.X(t.From), axis.X(t.To) - axis.X(t.From), $"{Share(t.TooMany, area)} more than there is in the {(area.Kind == "fridge" ? "fridges" : "freezer")}, {Hour(words, t.From)} to {Hour(words, t.To)}"))])
        {
            Full =
            [
                .. from chore in facts.Chores
                   where axis.Shows(chore.From, chore.To)
                   let places = facts.Stores.Where(s => s.Kind == area.Kind && chore.Shelves.Contains(s.Id)).Sum(s => s.Places)
                   where places > 0
                   select (axis.X(chore.From), axis.X(chore.To) - axis.X(chore.From), places * px),
            ],
        };
    }

    private static readonly System.Globalization.CultureInfo Culture = System.Globalization.CultureInfo.GetCultureInfo("en-GB");

    private static string Share(int places, AreaLane area) => $"{(100m * places / Math.Max(1, area.Places)).ToString("0", Culture)} %";

    private static string Hour(Words words, Instant at) => $"{words.Local(at).ToString("ddd", Culture)} {words.Time(words.Local(at).TimeOfDay)}";

    /// <summary>Rectangles by cake; neighbours in time at the same height are joined.</summary>
    private static IReadOnlyList<Strip> StripsOf(PlanFacts facts, TimeAxis axis, AreaLane area, double foot, double px)
    {
        var colours = area.Colours();
        var numbers = facts.Cakes.ToDictionary(c => c.Id, c => c.Number);
        var open = new Dictionary<string, Strip>(StringComparer.Ordinal);
        var all = new List<Strip>();
        foreach (var level in area.Levels)
        {
            var below = 0;
            foreach (var part in level.Parts)
            {
                var (x, end) = (axis.X(level.From), axis.X(level.To));
                var strip = new Strip(
                    part.Cake, numbers[part.Cake], colours[part.Cake], part.Places, x, foot - ((below + part.Places) * px), end - x, part.Places * px);
                below += part.Places;
                if (open.TryGetValue(part.Cake, out var before) && before.Continues(strip))
                {
                    open[part.Cake] = before with { Wide = end - before.X };
                    continue;
                }

                if (before is not null)
                {
                    all.Add(before);
                }

                open[part.Cake] = strip;
            }
        }

        return [.. all, .. open.Values];
    }
}

/// <summary>Places of one cake for a while.</summary>
public sealed record Strip(string Cake, string Number, int Colour, int Places, double X, double Y, double Wide, double High)
{
    /// <summary>True if the number fits at 15 px.</summary>
    public bool FitsNumber => High >= 15.5 && Wide >= (Number.Length * 9.2) + 8;

    /// <summary>True if the other begins where this one ends, at the same height.</summary>
    public bool Continues(Strip next) =>
        Math.Abs(X + Wide - next.X) < 0.01 && Math.Abs(Y - next.Y) < 0.01 && Math.Abs(High - next.High) < 0.01;
}
