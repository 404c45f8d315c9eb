namespace Bakehouse.Domain.Tests.Heat;

using MathNet.Numerics;

/// <summary>
/// Heat through simple bodies by exact series: the judge of the grid, never in the product. Zeros by scanning and halving, Bessel functions by
/// a library. Times in seconds, lengths in metres; θ is (T - air)/(start - air).
/// </summary>
internal sealed class Series
{
    private readonly double[] zeros;
    private readonly double[] factors;
    private readonly Func<double, double, double> shape;
    private readonly Func<double, double> mean;

    private Series(Func<double, double> equation, Func<double, double> factor, Func<double, double, double> shape, Func<double, double> mean)
    {
        zeros = [.. Zeros(equation).Take(40)];
        factors = [.. zeros.Select(factor)];
        (this.shape, this.mean) = (shape, mean);
    }

    /// <summary>A slab of half thickness L: ζ tan ζ = Bi.</summary>
    public static Series Slab(double biot) => new(
        z => (z * Math.Sin(z)) - (biot * Math.Cos(z)), z => 4 * Math.Sin(z) / ((2 * z) + Math.Sin(2 * z)), (z, x) => Math.Cos(z * x), z => Math.Sin(z) / z);

    /// <summary>An endless cylinder: ζ J₁/J₀ = Bi.</summary>
    public static Series Cylinder(double biot) => new(
        z => (z * J(1, z)) - (biot * J(0, z)), z => 2 / z * J(1, z) / ((J(0, z) * J(0, z)) + (J(1, z) * J(1, z))), (z, x) => J(0, z * x), z => 2 * J(1, z) / z);

    /// <summary>A sphere: 1 - ζ cot ζ = Bi.</summary>
    public static Series Sphere(double biot) => new(
        z => ((1 - biot) * Math.Sin(z)) - (z * Math.Cos(z)),
        z => 4 * (Math.Sin(z) - (z * Math.Cos(z))) / ((2 * z) - Math.Sin(2 * z)),
        (z, x) => x == 0 ? 1 : Math.Sin(z * x) / (z * x),
        z => 3 * (Math.Sin(z) - (z * Math.Cos(z))) / (z * z * z));

    public double Zero(int n) => zeros[n - 1];

    public double Factor(int n) => factors[n - 1];

    /// <summary>θ at a share of the way from the middle to the surface.</summary>
    public double At(double fourier, double share) => zeros.Zip(factors).Sum(p => p.Second * shape(p.First, share) * Math.Exp(-p.First * p.First * fourier));

    public double Mean(double fourier) => zeros.Zip(factors).Sum(p => p.Second * mean(p.First) * Math.Exp(-p.First * p.First * fourier));

    /// <summary>The moment at which a falling or rising value meets another, s.</summary>
    public static double Moment(Func<double, double> value, double wanted, double latest)
    {
        var (low, high, falls) = (1e-9, latest, value(latest) < wanted);
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = value(middle) > wanted == falls ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }

    private static double J(int order, double z) => SpecialFunctions.BesselJ(order, z);

    internal static IEnumerable<double> Zeros(Func<double, double> f)
    {
        const double Step = 0.1;
        for (var z = 1e-6; z < 130; z += Step)
        {
            if (f(z) * f(z + Step) > 0)
            {
                continue;
            }

            var (low, high) = (z, z + Step);
            for (var i = 0; i < 100; i++)
            {
                var middle = (low + high) / 2;
                (low, high) = f(low) * f(middle) <= 0 ? (low, middle) : (middle, high);
            }

            yield return (low + high) / 2;
        }
    }
}

/// <summary>A round body with the same surface all over, by the product of a slab and a cylinder.</summary>
/// <param name="Half">m: half of the height, or all of it where the bottom is shut.</param>
internal sealed record SeriesDisc(double Radius, double Half, double K, double Alpha, double H)
{
    private readonly Series high = Series.Slab(H * Half / K);
    private readonly Series round = Series.Cylinder(H * Radius / K);

    public double Theta(double seconds, double fromAxis, double fromMiddle) =>
        high.At(Alpha * seconds / (Half * Half), fromMiddle / Half) * round.At(Alpha * seconds / (Radius * Radius), fromAxis / Radius);

    public double Mean(double seconds) => high.Mean(Alpha * seconds / (Half * Half)) * round.Mean(Alpha * seconds / (Radius * Radius));

    /// <summary>Product of the first terms only: wrong for a wide shallow layer.</summary>
    public double OneTerm(double seconds) => First(high, Alpha * seconds / (Half * Half)) * First(round, Alpha * seconds / (Radius * Radius));

    private static double First(Series s, double fourier) => s.Factor(1) * Math.Exp(-s.Zero(1) * s.Zero(1) * fourier);
}

/// <summary>Two layers on each other, nothing through the face at 0, air at the other: eigenfunctions of both together.</summary>
internal sealed class SeriesTwoLayers
{
    private readonly (double Thick, double K, double Capacity) lower, upper;
    private readonly double[] modes;
    private readonly double[] factors;

    public SeriesTwoLayers((double Thick, double K, double Capacity) lower, (double Thick, double K, double Capacity) upper, double h)
    {
        (this.lower, this.upper) = (lower, upper);
        // β in units of 1/√s; scanned in units in which the zeros lie a few apart.
        modes = [.. Series.Zeros(z => Leaving(z * Unit, h)).Take(40).Select(z => z * Unit)];
        factors = [.. modes.Select(b => Integral(x => X(b, x)) / Integral(x => X(b, x) * X(b, x)))];
    }

    private const double Unit = 5e-3;

    public double SlowestSeconds => 1 / (modes[0] * modes[0]);

    public double Theta(double seconds, double x) => modes.Zip(factors).Sum(m => m.Second * X(m.First, x) * Math.Exp(-m.First * m.First * seconds));

    private static double Root((double Thick, double K, double Capacity) of) => Math.Sqrt(of.K / of.Capacity);

    private double X(double b, double x)
    {
        var (inner, ratio) = (b * lower.Thick / Root(lower), lower.K / Root(lower) / (upper.K / Root(upper)));
        var outer = b * (x - lower.Thick) / Root(upper);
        return x <= lower.Thick ? Math.Cos(b * x / Root(lower)) : (Math.Cos(inner) * Math.Cos(outer)) - (ratio * Math.Sin(inner) * Math.Sin(outer));
    }

    private double Leaving(double b, double h)
    {
        var (inner, ratio) = (b * lower.Thick / Root(lower), lower.K / Root(lower) / (upper.K / Root(upper)));
        var outer = b * upper.Thick / Root(upper);
        var slope = upper.K * b / Root(upper) * ((-Math.Cos(inner) * Math.Sin(outer)) - (ratio * Math.Sin(inner) * Math.Cos(outer)));
        return slope + (h * X(b, lower.Thick + upper.Thick));
    }

    private double Integral(Func<double, double> f) =>
        (lower.Capacity * Simpson(f, 0, lower.Thick)) + (upper.Capacity * Simpson(f, lower.Thick + 1e-15, lower.Thick + upper.Thick));

    private static double Simpson(Func<double, double> f, double from, double to)
    {
        const int Parts = 600;
        var step = (to - from) / Parts;
        return Enumerable.Range(0, Parts + 1).Sum(i => f(from + (i * step)) * (i is 0 or Parts ? 1 : i % 2 == 1 ? 4 : 2)) * step / 3;
    }
}

/// <summary>A body without end behind its surface.</summary>
internal static class SeriesDeep
{
    /// <summary>Share of the way to the air's temperature at a depth: erfc(η) - exp(hx/k + h²αt/k²) erfc(η + h√(αt)/k).</summary>
    public static double Share(double depth, double seconds, double k, double alpha, double h)
    {
        var (eta, b) = (depth / (2 * Math.Sqrt(alpha * seconds)), h * Math.Sqrt(alpha * seconds) / k);
        return SpecialFunctions.Erfc(eta) - (Math.Exp((h * depth / k) + (b * b)) * SpecialFunctions.Erfc(eta + b));
    }

    /// <summary>What is left of the start at a depth after the surface was set to another temperature: erf(η).</summary>
    public static double Left(double depth, double seconds, double alpha) => SpecialFunctions.Erf(depth / (2 * Math.Sqrt(alpha * seconds)));
}
