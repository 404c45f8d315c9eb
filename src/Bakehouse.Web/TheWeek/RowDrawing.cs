namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Draws one cake: its work, its waiting, its flag.</summary>
internal sealed class RowDrawing(PlanFacts facts, TimeAxis axis)
{
    private const double BlockHigh = 24;
    private const double BandHigh = 8;
    private const double Least = 4;
    private const double LetterWide = 9.4;

    /// <summary>Kinds of waiting that are drawn, the coldest first. A tub of cream is not the cake.</summary>
    private static readonly string[] Kinds = ["freezer", "fridge", "cool", "rack", "bench", "van"];

    private readonly Words words = Words.Of(facts.Shop);

    /// <summary>The row with its top at y.</summary>
    public CakeRow Row(CakeFacts cake, double y)
    {
        var middle = y + (WeekPicture.RowHigh / 2);
        var drawn = cake.Steps.Where(s => s.Id != cake.Out && s.Operation != "return" && axis.Shows(s.From, s.To)).ToList();
        var flag = cake.Flag <= axis.To && cake.Flag >= axis.From ? FlagOf(cake) : null;
        double? spare = flag is not null && cake.Standing.Ready < cake.Flag && cake.Flag > axis.From ? axis.X(cake.Standing.Ready) : null;
        return new CakeRow(
            cake,
            y,
            [.. Abreast.Of(drawn).Select(a => BlockOf(cake, a.Step, a.Track, a.Of, middle))],
            [.. Bands(cake, middle)],
            spare,
            flag,
            cake.Flag > axis.To ? $"to {words.Day(cake.Flag.InZone(words.Zone).Date)}" : "");
    }

    /// <summary>Width that such a piece of time has, at least 4 px and one less than its time, so that neighbours stay apart.</summary>
    public static (double X, double Wide) Place(TimeAxis axis, Instant from, Instant to)
    {
        var x = axis.X(from);
        var wide = Math.Max(Least, axis.X(to) - x - 1);
        return (Math.Min(x, axis.Width - Least), wide);
    }

    /// <summary>Late is work that ends after the cake should have left; leaving and driving back are not meant.</summary>
    public static Ink InkOf(StepFacts step, CakeFacts? cake) =>
        step.Done ? Ink.Done
        : cake is not null && step.Id != cake.Out && step.Operation != "return" && step.To > cake.Flag ? Ink.Late
        : Ink.Plain;

    private Flag FlagOf(CakeFacts cake)
    {
        var time = words.Time(cake.Flag.InZone(words.Zone).TimeOfDay);
        var pole = axis.X(cake.Flag);
        return new Flag(pole, cake.Late > 0 ? Math.Max(pole, axis.X(cake.Last) + 3) : pole, time, cake.Says, cake.State);
    }

    private Block BlockOf(CakeFacts cake, StepFacts step, int track, int of, double middle)
    {
        var (y, high) = Abreast.Place(middle - (BlockHigh / 2), BlockHigh, track, of);
        var (x, wide) = Place(axis, step.From, step.To);
        return new Block(step, x, y, wide, high, InkOf(step, cake), of > 1 || InkOf(step, cake) == Ink.Late ? "" : Text(step, wide));
    }

    private string Text(StepFacts step, double wide)
    {
        if (step.Look != StepLook.Hands)
        {
            return "";
        }

        var initials = string.Concat(step.People.Select(p => facts.NameOf(p)[..1]));
        var verb = step.Verb.Split(' ')[0];
        return wide >= (verb.Length * LetterWide) + 10 ? verb : wide >= (initials.Length * LetterWide) + 4 ? initials : "";
    }

    /// <summary>Bands by kind; kinds at the same time lie under each other around the middle line.</summary>
    private IEnumerable<Band> Bands(CakeFacts cake, double middle)
    {
        var waits = cake.Waits.Where(w => w.To > w.From && Kinds.Contains(w.Kind) && axis.Shows(w.From, w.To)).ToList();
        var cuts = waits.SelectMany(w => new[] { w.From, w.To }).Distinct().Order().ToList();
        var open = new Dictionary<(string Kind, double Y), (double X, double End)>();
        foreach (var (from, to) in cuts.Zip(cuts.Skip(1)))
        {
            var kinds = Kinds.Where(k => waits.Any(w => w.Kind == k && w.From <= from && w.To >= to)).ToList();
            var top = middle - (kinds.Count * BandHigh / 2) - (kinds.Count - 1);
            for (var i = 0; i < kinds.Count; i++)
            {
                var key = (kinds[i], top + (i * (BandHigh + 2)));
                var (x, end) = (axis.X(from), axis.X(to));
                if (open.TryGetValue(key, out var before) && Math.Abs(before.End - x) < 0.01)
                {
                    open[key] = (before.X, end);
                    continue;
                }

                if (before.End > before.X)
                {
                    yield return new Band(key.Item1, before.X, key.Item2, before.End - before.X, BandHigh);
                }

                open[key] = (x, end);
            }
        }

        foreach (var ((kind, y), (x, end)) in open.Where(o => o.Value.End > o.Value.X))
        {
            yield return new Band(kind, x, y, end - x, BandHigh);
        }
    }
}
