namespace Bakehouse.Domain.Heat.Grid;

/// <summary>A field on its way through places, read after every step.</summary>
internal sealed class Journey
{
    private readonly Cells cells;
    private readonly Field field;
    private readonly HeatDetail detail;
    private readonly IReadOnlyList<HeatGoal> until;
    private readonly bool[] eaten;
    private readonly List<double> minutes = [];
    private readonly List<double>[] rows;

    public Journey(Cells cells, HeatStart start, HeatDetail detail, IReadOnlyList<HeatGoal> until)
    {
        (this.cells, this.detail, this.until) = (cells, detail, until);
        field = new Field(cells, start);
        var any = cells.Materials.Any(m => m.IsEaten);
        eaten = [.. cells.Material.Select(m => !any || cells.Materials[m].IsEaten)];
        rows = [.. Enumerable.Range(0, HeatCurve.Spots + cells.Spots.Probes.Count - 1).Select(_ => new List<double>())];
    }

    public HeatCurve Through(IReadOnlyList<Stay> stays)
    {
        var (began, now) = (field.Heat, 0.0);
        Read(0, stays[0].In, stays[0].In.Celsius);
        foreach (var stay in stays)
        {
            for (var gone = 0.0; gone < stay.Minutes * 60 && !IsThere();)
            {
                var step = Math.Min(Math.Clamp(gone * detail.Growth, detail.FirstStep, detail.LongestStep), (stay.Minutes * 60) - gone);
                // Air that changes counts as it is half way through the step.
                field.Step(step, stay.In, Air(stay, gone + (step / 2)));
                gone += step;
                Read(now + (gone / 60), stay.In, Air(stay, gone));
            }

            now += stay.Minutes;
        }

        return new HeatCurve(minutes, rows, field.CameIn, field.Heat - began);
    }

    private bool IsThere() => until.Count > 0 && until.All(goal =>
    {
        var row = rows[(int)goal.Spot];
        return row[0] > goal.Celsius ? row[^1] <= goal.Celsius : row[^1] >= goal.Celsius;
    });

    private static double Air(Stay stay, double seconds) =>
        stay.In.CelsiusAtEnd is { } end ? stay.In.Celsius + ((end - stay.In.Celsius) * seconds / (stay.Minutes * 60)) : stay.In.Celsius;

    private void Read(double at, Surroundings around, double air)
    {
        var (sum, volume, least, most) = (0.0, 0.0, double.MaxValue, double.MinValue);
        for (var i = 0; i < eaten.Length; i++)
        {
            if (eaten[i])
            {
                var t = field.Celsius[i];
                (sum, volume) = (sum + (t * cells.Volume[i]), volume + cells.Volume[i]);
                (least, most) = (Math.Min(least, t), Math.Max(most, t));
            }
        }

        minutes.Add(at);
        var spots = cells.Spots;
        double[] all =
        [
            spots.Probes[0].Of(field.Celsius), sum / volume, field.Surface(spots.Top, around, air), field.Surface(spots.Side, around, air),
            field.Surface(spots.Base, around, air), least, most, .. spots.Probes.Skip(1).Select(p => p.Of(field.Celsius)),
        ];
        for (var i = 0; i < all.Length; i++)
        {
            rows[i].Add(all[i]);
        }
    }
}
