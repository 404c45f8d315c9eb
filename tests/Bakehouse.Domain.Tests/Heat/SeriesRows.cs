namespace Bakehouse.Domain.Tests.Heat;

using System.Globalization;

/// <summary>Rows that the judge of the grid must meet before it judges: eigenvalues, textbooks, reference cakes.</summary>
internal static class SeriesRows
{
    private const double Crumb = 1.42857e-7, Layer = 0.1016;

    public static IEnumerable<(string Id, Func<double> Found)> All => [.. Coefficients, .. Textbooks, .. Cakes, .. TwoLayers];

    internal static SeriesDisc Ck1 { get; } = new(Layer, 0.025, 0.12, Crumb, 8);

    internal static SeriesDisc Ck2 { get; } = new(Layer, 0.025, 0.12, Crumb, 6);

    internal static SeriesDisc Ck3 { get; } = new(Layer, 0.05, 0.12, Crumb, 8);

    internal static SeriesDisc Ck5 { get; } = new(Layer, 0.12, 0.2, 0.2 / (600 * 2400), 8);

    internal static SeriesTwoLayers Ck8 { get; } = new((0.05, 0.12, 8.4e5), (0.01, 0.22, 2.56e6), 8);

    private static IEnumerable<(string, Func<double>)> Coefficients =>
    [
        .. HeatRow.All.Where(r => r.Id.StartsWith("TC-", StringComparison.Ordinal)).Select(r => (r.Id, (Func<double>)(() => Coefficient(r.Id)))),
        ("FJ-slab-inf-j", () => Series.Slab(1e9).Factor(1)),
        ("FJ-cyl-inf-f", () => Math.Log(10) / Math.Pow(Series.Cylinder(1e9).Zero(1), 2)),
        ("FJ-cyl-inf-j", () => Series.Cylinder(1e9).Factor(1)),
    ];

    private static double Coefficient(string id)
    {
        var part = id.Split('-');
        var biot = part[2] == "Biinfinite" ? 1e9 : double.Parse(part[2][2..], CultureInfo.InvariantCulture);
        var series = part[1] switch { "slab" => Series.Slab(biot), "cyl" => Series.Cylinder(biot), _ => Series.Sphere(biot) };
        var n = part[3][1] - '0';
        return part[3][0] == 'z' ? series.Zero(n) : series.Factor(n);
    }

    private static IEnumerable<(string, Func<double>)> Textbooks =>
    [
        .. Both("TX-01", () => 210 * 6 / (8500 * 320 * 0.001)),
        ("TX-01b", () => Math.Log(100) / (210 * 6 / (8500 * 320 * 0.001))),
        .. Both("TX-02", () => Math.Log(350.0 / 50) * 7800 * 460 * 0.05 / (6 * 10)),
        .. Both("TX-03", () => 394.3 + (305.6 * Ball(3600))),
        ("TX-03b", () => 7849 * 460.6 * 4 / 3 * Math.PI * Math.Pow(0.0254, 3) * 305.6 * (1 - Ball(3600))),
        .. Both("TX-04", () => 2 + (48 * Math.Exp(-550 * 0.102 * 60 / (2702 * 896 * Math.PI * 0.025 * 0.025 * 0.6)))),
        .. Both("TX-06", () => Quench(Series.Sphere(1.5), 6.66e-6 / 2.5e-5, 30.0 / 315, 20)),
        ("TX-06b", () => Math.Log(380.0 / 315) * 3000 * 1000 * 0.005 / (3 * 10)),
        .. Both("TX-07", () => Series.Moment(x => SeriesDeep.Left(x, 60 * 86400, 0.52 / (2050 * 1840)), 15.0 / 35, 5)),
        .. Both("TX-09", () => 500 - (480 * Series.Slab(120 * 0.02 / 110).At(33.9e-6 * 420 / 4e-4, 1))),
        .. Both("TX-11", () => 25 + (95 * Brass.Theta(900, 0, 0))),
        .. Both("TX-11t", () => 25 + (95 * Brass.Theta(900, 0, 0.06))),
        .. Both("TX-11q", () => 8530 * 0.380 * Math.PI * 0.0025 * 0.12 * 95 * (1 - Brass.Mean(900))),
        .. Both("TX-14", () => Series.Moment(t => 200 - (130 * SeriesDeep.Share(0.04, t, 215, 8.4e-5, 525)), 120, 20_000)),
        .. Both("TX-15", () => 70 + (130 * Series.Slab(525 * 0.025 / 215).At(8.4e-5 * 60 / 6.25e-4, 0.5))),
        .. Both("TX-16", () => 70 + (130 * Series.Cylinder(525 * 0.025 / 215).At(8.4e-5 * 60 / 6.25e-4, 0.5))),
        .. Both("TX-17", () => 70 + (130 * Aluminium.Theta(60, 0.0125, 0.05 - 0.00625))),
        .. Both("TX-17q", () => 2707 * 0.896 * Math.PI * 6.25e-4 * 0.1 * 130 * (1 - Aluminium.Mean(60))),
        .. Both("TX-19", () => 115.6 - (86.2 * Series.Cylinder(4540 * 0.03405 / 0.83).At(2.007e-7 * 2700 / (0.03405 * 0.03405), 0))),
        .. Both("TX-21", () => Quench(Series.Slab(39.7 * 0.1015 / 0.498), 0.498 / (1073 * 3480) / (0.1015 * 0.1015), 8.3 / 36.1, 4e5) / 3600),
        .. Both("TX-22", () => 15.6 - (33.4 * SeriesDeep.Share(0, 18_000, 0.865, 4.65e-7, 11.36))),
        .. Both("TX-22d", () => Series.Moment(x => 15.6 - (33.4 * SeriesDeep.Share(x, 18_000, 0.865, 4.65e-7, 11.36)), 0, 1)),
        .. Both("TX-23", () => 50 + (350 * Series.Cylinder(0.5).At(1e-5 * 1200 / 0.01, 0))),
        .. Both("TX-25", () => AppleTo10),
        ("TX-25c", () => 5 + (25 * Apple(3600).At)),
        .. Both("TX-25q", () => 0.9976 * 4180 * 4 / 3 * Math.PI * Math.Pow(0.05, 3) * 25 * (1 - Apple(AppleTo10).Mean)),
        ("TX-29", () => Math.Log(17.0 / 5) * 996 * 4178 * (0.15 * 1.7 / (2 * (1.7 + 0.15))) / 8 / 3600),
        ("TX-30", () => ((Series.Slab(1).Factor(1) * Math.Exp(-Math.Pow(Series.Slab(1).Zero(1), 2) * 0.2) / Series.Slab(1).At(0.2, 0)) - 1) * 100),
        ("TX-31", () => 0.22 + (0.55 * (1 - 0.22))),
        .. new[] { 0.1, 0.5, 1.0, 2.0 }.Select(x => (string.Create(CultureInfo.InvariantCulture, $"TX-erf-{x:0.0}"), (Func<double>)(() => SeriesDeep.Left(2 * x, 1, 1)))),
    ];

    private static double Quench(Series body, double perSecond, double wanted, double latest) => Series.Moment(t => body.At(perSecond * t, 0), wanted, latest);

    private static SeriesDisc Brass { get; } = new(0.05, 0.06, 110, 3.39e-5, 60);

    private static SeriesDisc Aluminium { get; } = new(0.025, 0.05, 215, 8.4e-5, 525);

    private static double Ball(double seconds) => Math.Exp(-11.36 * 3 * seconds / (7849 * 460.6 * 0.0254));

    private static (double At, double Mean) Apple(double seconds)
    {
        var fourier = 0.603 / (997.6 * 4180) * seconds / 0.0025;
        return (InFridge.At(fourier, 0), InFridge.Mean(fourier));
    }

    private static Series InFridge { get; } = Series.Sphere(6 * 0.05 / 0.603);

    private static double AppleTo10 => Series.Moment(t => Apple(t).At, 0.2, 1e5);

    private static IEnumerable<(string, Func<double>)> Cakes =>
    [
        .. new[] { 30, 60, 120, 180 }.Select(m => ($"CK1-c-{m}", (Func<double>)(() => 22 + (73 * Ck1.Theta(m * 60, 0, 0))))),
        .. new[] { 60, 120 }.SelectMany(m => new (string, Func<double>)[]
        {
            ($"CK1-t-{m}", () => 22 + (73 * Ck1.Theta(m * 60, 0, 0.025))),
            ($"CK1-s-{m}", () => 22 + (73 * Ck1.Theta(m * 60, Layer, 0))),
            ($"CK1-m-{m}", () => 22 + (73 * Ck1.Mean(m * 60))),
        }),
        .. new[] { 57, 40, 30, 25 }.SelectMany(c => new (string, Func<double>)[]
        {
            ($"CK1-time-{c}", () => Series.Moment(t => Ck1.Theta(t, 0, 0), (c - 22) / 73.0, 1e5) / 60),
            ($"CK3-time-{c}", () => Series.Moment(t => Ck3.Theta(t, 0, 0), (c - 22) / 73.0, 1e5) / 60),
        }),
        ("CK1-Q", () => 1 - Ck1.Mean(3600)),
        ("CK1-Qmax", () => 300 * 2.8 * Math.PI * Layer * Layer * 0.05 * 73),
        ("CK1-oneterm", () => 22 + (73 * Ck1.OneTerm(3600))),
        .. new[] { 60, 120, 180 }.Select(m => ($"CK3-c-{m}", (Func<double>)(() => 22 + (73 * Ck3.Theta(m * 60, 0, 0))))),
        .. new[] { 10, 8, 5, 4 }.Select(c => ($"CK2-time-{c}", (Func<double>)(() => Series.Moment(t => Ck2.Theta(t, 0, 0), (c - 3) / 19.0, 1e5) / 60))),
        .. new[] { 5, 8, 15, 21 }.Select(c => ($"CK5-b-{c}", (Func<double>)(() => Series.Moment(t => Ck5.Theta(t, 0, 0), (22 - c) / 18.0, 4e5) / 3600))),
        .. new[] { 15, 21 }.Select(c => ($"CK5-s-{c}", (Func<double>)(() => Series.Moment(t => Ck5.Theta(t, Layer, 0.06), (22 - c) / 18.0, 4e5) / 3600))),
        .. new[] { 1, 2, 4 }.SelectMany(h => new (string, Func<double>)[]
        {
            ($"CK5-mean-{h}", () => 22 - (18 * Ck5.Mean(h * 3600))),
            ($"CK5-mid-{h}", () => 22 - (18 * Ck5.Theta(h * 3600, 0, 0.06))),
        }),
        ("CK9-1", () => 4 + (18 * SeriesDeep.Left(0.02, 1800, Crumb))),
        ("CK9-2", () => 95 - (73 * SeriesDeep.Share(0, 600, 0.12, Crumb, 8))),
        ("CK9-3", () => 95 - (73 * SeriesDeep.Share(0.01, 600, 0.12, Crumb, 8))),
        ("CK11-1", () => Tray(0.05, 8, 4, 21)),
        ("CK11-2", () => Tray(0.025, 25, 3, 21)),
        ("CK11-3", () => Tray(0.025, 25, 3, 5)),
    ];

    private static double Tray(double thick, double h, double air, double wanted)
    {
        var slab = Series.Slab(h * thick / 0.55);
        return Series.Moment(t => slab.At(0.55 / (1080 * 3500.0) * t / (thick * thick), 0), (wanted - air) / (57 - air), 4e5) / 3600;
    }

    private static IEnumerable<(string, Func<double>)> TwoLayers =>
    [
        .. new[] { 1, 2, 4, 8 }.SelectMany(h => new[] { ("x0", 0.0), ("if", 0.05), ("sf", 0.06) }
            .Select(p => ($"CK8-{p.Item1}-{h}", (Func<double>)(() => 4 + (18 * Ck8.Theta(h * 3600, p.Item2)))))),
        ("CK8-tau", () => Ck8.SlowestSeconds / 3600),
    ];

    private static IEnumerable<(string, Func<double>)> Both(string id, Func<double> found) => [($"{id}-P", found), ($"{id}-X", found)];
}
