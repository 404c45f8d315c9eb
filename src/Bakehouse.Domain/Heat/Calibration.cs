namespace Bakehouse.Domain.Heat;

using static System.FormattableString;

/// <summary>A probe in the middle of a cake, or somebody who found it still cold there.</summary>
/// <param name="Body">The cake.</param>
/// <param name="Start">How warm it was when it came to that place.</param>
/// <param name="Came">When it came there.</param>
/// <param name="Read">When it was read.</param>
/// <param name="Celsius">°C of the core.</param>
public sealed record ProbeReading(HeatBody Body, HeatStart Start, Instant Came, Instant Read, double Celsius)
{
    /// <summary>K that it may be off: 1 for a probe, 4 for "still cold in the middle".</summary>
    public double Off { get; init; } = 1;

    /// <summary>"Still cold in the middle": about 10 °C, give or take 4.</summary>
    public static ProbeReading StillCold(HeatBody body, HeatStart start, Instant came, Instant read) => new(body, start, came, read, 10) { Off = 4 };
}

/// <summary>What readings say about one place and about the shop's cakes.</summary>
/// <param name="PlaceTimes">Convection there, by so many times what is usual.</param>
/// <param name="CakeTimes">Conductivity of the cakes, by so many times.</param>
/// <param name="Before">°C that were expected, one for each reading.</param>
/// <param name="After">°C with both factors.</param>
/// <param name="Problems">Why readings were refused, with how to read anew; then the factors are 1.</param>
public sealed record Calibration(double PlaceTimes, double CakeTimes, IReadOnlyList<double> Before, IReadOnlyList<double> After, IReadOnlyList<Problem> Problems)
{
    // How far a place and a cake lie from the usual, as a share: what readings have to argue against.
    private const double PlacePrior = 0.30, CakePrior = 0.15, Step = 0.02, MostTimes = 3;
    private const int Rounds = 12;

    /// <summary>
    /// Factors by least squares: how far readings are off against how far the factors lie from 1 (Gauss and Newton, on logarithms). One
    /// reading moves them a little, many agreeing ones as far as they say.
    /// </summary>
    public static Calibration Of(IReadOnlyList<ProbeReading> readings, HeatPlace place)
    {
        Problem[] problems =
        [
            .. place.Problems(),
            .. readings.Count > 0 ? [] : new[] { new Problem("readings", "none", "Nothing was read.", "Push a probe into the middle and read it.") },
            .. readings.SelectMany((r, i) => Wrong(r, i + 1, place)),
        ];
        if (problems.Length > 0)
        {
            return new Calibration(1, 1, [], [], problems);
        }

        var (p, c) = Fitted(readings, place);
        var (before, after) = (Expected(readings, place, 0, 0), Expected(readings, place, p, c));
        return Math.Max(Math.Abs(p), Math.Abs(c)) < Math.Log(MostTimes)
            ? new Calibration(Math.Exp(p), Math.Exp(c), before, after, [])
            : new Calibration(1, 1, before, before, [TooFar(Math.Exp(p), Math.Exp(c))]);
    }

    private static Problem TooFar(double place, double cake) => new(
        "readings", Invariant($"{place:0.0} and {cake:0.0} times"), Invariant($"They would make place or cake more than {MostTimes:0} times what is usual, or a third of it."),
        "Look at the times, and read again with the probe in the middle.");

    private static (double Place, double Cake) Fitted(IReadOnlyList<ProbeReading> readings, HeatPlace place)
    {
        var (p, c) = (0.0, 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            var (byPlace, byCake) = Towards(readings, place, p, c);
            // No round goes further than half as much again.
            var furthest = Math.Max(Math.Abs(byPlace), Math.Abs(byCake));
            var share = furthest > 0.4 ? 0.4 / furthest : 1;
            (p, c) = (p + (byPlace * share), c + (byCake * share));
            if (furthest < 1e-4)
            {
                break;
            }
        }

        return (p, c);
    }

    /// <summary>One step of Gauss and Newton: two equations, the prior on their diagonal.</summary>
    private static (double Place, double Cake) Towards(IReadOnlyList<ProbeReading> readings, HeatPlace place, double p, double c)
    {
        var (now, byPlace, byCake) = (Expected(readings, place, p, c), Expected(readings, place, p + Step, c), Expected(readings, place, p, c + Step));
        var (pp, pc, cc) = (1 / (PlacePrior * PlacePrior), 0.0, 1 / (CakePrior * CakePrior));
        var (gp, gc) = (-p * pp, -c * cc);
        for (var i = 0; i < readings.Count; i++)
        {
            var weight = 1 / (readings[i].Off * readings[i].Off);
            var (dp, dc, off) = ((byPlace[i] - now[i]) / Step, (byCake[i] - now[i]) / Step, readings[i].Celsius - now[i]);
            (pp, pc, cc) = (pp + (weight * dp * dp), pc + (weight * dp * dc), cc + (weight * dc * dc));
            (gp, gc) = (gp + (weight * dp * off), gc + (weight * dc * off));
        }

        var determinant = (pp * cc) - (pc * pc);
        return (((cc * gp) - (pc * gc)) / determinant, ((pp * gc) - (pc * gp)) / determinant);
    }

    private static IReadOnlyList<double> Expected(IReadOnlyList<ProbeReading> readings, HeatPlace place, double p, double c)
    {
        var there = place with { Times = place.Times * Math.Exp(p) };
        return [.. readings.Select(r =>
        {
            var body = r.Body.With(m => m.IsEaten ? m.Conducting(Math.Exp(c)) : m);
            var minutes = (r.Read - r.Came).TotalMinutes;
            var around = there.Around(HeatSide.Typical, place.Celsius > r.Start.Inside, false);
            return Conduction.Run(body, r.Start, [new Stay(minutes, around)]).At(minutes, HeatSpot.Core);
        })];
    }

    private static IEnumerable<Problem> Wrong(ProbeReading reading, int number, HeatPlace place)
    {
        var where = Invariant($"reading {number}");
        double[] ends = [reading.Start.Inside, reading.Start.Coat, place.Celsius];
        return
        [
            .. reading.Read > reading.Came ? [] : new[] { new Problem(where, "read before it came", "The cake was read before it was baked or came there.", "Look at both times.") },
            .. HeatChecks.Between($"{where}, hours", (reading.Read - reading.Came).TotalHours, 0, 24 * 14, " h", "After two weeks a reading says nothing."),
            .. HeatPlace.Degrees(where, reading.Celsius, ends.Min() - 2, ends.Max() + 2),
            .. HeatChecks.Between($"{where}, off", reading.Off, 0.1, 10, " °C", "A probe is off by half a degree to two."),
        ];
    }
}
