namespace Bakehouse.Domain.Structure;

/// <summary>
/// A thin round board, evenly thick, small sag (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells; Roark's Formulas).
/// Consistent units: millimetres, newtons, megapascal, or inches, pounds, psi.
/// </summary>
/// <param name="Radius">a.</param>
/// <param name="Thickness">t.</param>
/// <param name="Stiffness">E.</param>
/// <param name="Poisson">ν.</param>
public sealed record Plate(double Radius, double Thickness, double Stiffness, double Poisson)
{
    private const int Terms = 4000;

    /// <summary>D = E·t³/(12·(1−ν²)).</summary>
    public double Rigidity => Stiffness * Math.Pow(Thickness, 3) / (12 * (1 - (Poisson * Poisson)));

    /// <summary>Sag in the middle under an even pressure, rim held fast: q·a⁴/(64·D).</summary>
    public double ClampedSag(double pressure) => pressure * Math.Pow(Radius, 4) / (64 * Rigidity);

    /// <summary>Bending stress at the rim under an even pressure, rim held fast: 3/4·q·a²/t².</summary>
    public double ClampedRimStress(double pressure) => 0.75 * pressure * Radius * Radius / (Thickness * Thickness);

    /// <summary>Sag in the middle under a load there, rim held fast: W·a²/(16·π·D).</summary>
    public double ClampedSagOfPoint(double load) => load * Radius * Radius / (16 * Math.PI * Rigidity);

    /// <summary>Bending stress at the rim under a load in the middle, rim held fast: 3·W/(2·π·t²).</summary>
    public double ClampedRimStressOfPoint(double load) => 3 * load / (2 * Math.PI * Thickness * Thickness);

    /// <summary>Sag in the middle under an even load in all, rim resting all around: (5+ν)·q·a⁴/(64·(1+ν)·D).</summary>
    /// <param name="load">Pressure times area.</param>
    public double RestingSag(double load) => RingShare(Poisson) * load * Radius * Radius / Rigidity;

    /// <summary>Sag in the middle under a load there, rim resting all around: (3+ν)·W·a²/(16·π·(1+ν)·D).</summary>
    public double RestingSagOfPoint(double load) => PointRingShare(Poisson) * load * Radius * Radius / Rigidity;

    /// <summary>Bending stress in the middle under an even load in all, rim resting: 3·(3+ν)·q·a²/(8·t²), the largest there is.</summary>
    public double RestingStress(double load) =>
        3 * (3 + Poisson) * (load / (Math.PI * Radius * Radius)) * Radius * Radius / (8 * Thickness * Thickness);

    /// <summary>Sag in the middle under an even load in all, resting on points spread evenly on the rim.</summary>
    /// <param name="points">3 and up.</param>
    public double SagOnPoints(double load, int points) => OnPoints(points, Poisson) * load * Radius * Radius / Rigidity;

    /// <summary>
    /// k in w = k·P·a²/D for an even load on a plate with a free rim on n points: a rim resting all around, and for each harmonic m = n, 2n, …
    /// of the supports' push what r^m and r^(m+2) give where no moment acts on the rim.
    /// </summary>
    public static double OnPoints(int points, double poisson) => RingShare(poisson) + Harmonics(points, poisson);

    /// <summary>The same for a load in the middle.</summary>
    public static double PointOnPoints(int points, double poisson) => PointRingShare(poisson) + Harmonics(points, poisson);

    private static double RingShare(double poisson) => (5 + poisson) / (64 * Math.PI * (1 + poisson));

    private static double PointRingShare(double poisson) => (3 + poisson) / (16 * Math.PI * (1 + poisson));

    private static double Harmonics(int points, double poisson)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(points, 3);
        return Enumerable.Range(1, Terms).Reverse().Select(k => (double)k * points).Sum(m =>
            (((m + 1) * (m + 2 - (poisson * (m - 2))) / (m * (m - 1) * (1 - poisson))) - 1) / (2 * Math.PI * m * (m + 1) * (3 + poisson)));
    }
}
