namespace Bakehouse.Domain.Measures;

/// <summary>Grams in one millilitre, double. More than zero, finite.</summary>
public readonly record struct Density
{
    private Density(double gramsPerMillilitre)
    {
        GramsPerMillilitre = double.IsFinite(gramsPerMillilitre) && gramsPerMillilitre > 0
            ? gramsPerMillilitre
            : throw new ArgumentOutOfRangeException(
                nameof(gramsPerMillilitre), gramsPerMillilitre, "A density is more than zero and finite.");
    }

    /// <summary>Grams per millilitre.</summary>
    public double GramsPerMillilitre { get; }

    /// <summary>A density of so many grams per millilitre.</summary>
    public static Density FromGramsPerMillilitre(double gramsPerMillilitre) => new(gramsPerMillilitre);

    /// <summary>The mass of a volume, rounded to the milligram so that it can be kept as a decimal.</summary>
    public static Mass operator *(Density density, Volume volume) =>
        Mass.FromGrams(Math.Round((decimal)(density.GramsPerMillilitre * volume.Millilitres), 3));
}
