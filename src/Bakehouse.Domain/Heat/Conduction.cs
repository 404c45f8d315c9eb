namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Heat.Grid;

/// <summary>How finely a body and its time are cut.</summary>
/// <param name="Cell">
/// Longest side of a cell, m; null for a twelfth of the thinnest way through, between 3 and 12 mm, and level at least a twentieth of the radius or a
/// fourteenth of half a block's side.
/// </param>
/// <param name="FirstStep">s, right after a change of place.</param>
/// <param name="Growth">Later steps: this share of the time since.</param>
/// <param name="LongestStep">s.</param>
public sealed record HeatDetail(double? Cell = null, double FirstStep = 5, double Growth = 0.02, double LongestStep = 300)
{
    /// <summary>As fine as the kitchen needs: temperatures within 1 % of the span, times of about 1 %, of those of a much finer one.</summary>
    public static HeatDetail Usual { get; } = new();
}

/// <summary>A spot at a temperature.</summary>
public readonly record struct HeatGoal(HeatSpot Spot, double Celsius);

/// <summary>
/// Heat through a body over time (Fourier's law on cells of finite volume, implicit in time). Not in it: water that evaporates from a hot crumb,
/// so a bare hot layer cools somewhat sooner than said. Pure; the same figures on every run.
/// </summary>
public static class Conduction
{
    /// <summary>Temperatures over all stays, one after the other.</summary>
    /// <param name="until">Stops when each of these spots has met its temperature.</param>
    /// <exception cref="ArgumentException">The body, the stays or the detail are nothing that <see cref="HeatChecks"/> lets pass.</exception>
    public static HeatCurve Run(
        HeatBody body, HeatStart start, IReadOnlyList<Stay> stays, IReadOnlyList<HeatProbe>? probes = null, IReadOnlyList<HeatGoal>? until = null, HeatDetail? detail = null)
    {
        detail ??= HeatDetail.Usual;
        Problem[] problems = [.. HeatChecks.Of(body, start, stays), .. HeatChecks.Of(detail)];
        if (problems.Length > 0)
        {
            throw new ArgumentException(string.Join(" ", problems.AsEnumerable()), nameof(body));
        }

        var cell = detail.Cell ?? Math.Clamp(ThinnestWay(body) / 12, 0.003, 0.012);
        var level = detail.Cell ?? Math.Max(cell, body.Slabs.Max(s => Math.Max(s.HalfWidth, s.HalfDepth ?? 0)) / (body.IsBlock ? 14 : 20));
        HeatProbe[] all = [new(0, body.CoreAt ?? (body.Height / 2)), .. probes ?? []];
        var cells = body.IsBlock ? BlockGrid.Of(body, cell, level, all) : DiscGrid.Of(body, cell, level, all);
        return new Journey(cells, start, detail, until ?? []).Through(stays);
    }

    private static double ThinnestWay(HeatBody body) => Math.Min(body.Height, 2 * body.Slabs.Max(s => Math.Min(s.HalfWidth, s.HalfDepth ?? s.HalfWidth)));
}
