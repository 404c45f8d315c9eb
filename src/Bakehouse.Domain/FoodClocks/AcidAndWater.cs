namespace Bakehouse.Domain.FoodClocks;

/// <summary>
/// What measured acid and water say by the Food Code's definition of food that needs time and temperature control (FDA Food Code 1-201.10, tables A and
/// B; the column heads of B below 4.6 from memory). Iced cakes are of table B. A laboratory measures, licensed practice decides.
/// </summary>
public static class AcidAndWater
{
    /// <summary>True if the product must be assessed: it is on the clock until a laboratory says otherwise. False if the tables do not ask for it.</summary>
    /// <param name="waterActivity">aw, 0 to 1.</param>
    /// <param name="acid">pH, 0 to 14.</param>
    /// <param name="cookedAndPacked">True for table A: heated so that nothing lives, and then packed.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such aw or pH.</exception>
    public static bool MustBeAssessed(double waterActivity, double acid, bool cookedAndPacked)
    {
        if (!(waterActivity is >= 0 and <= 1 && acid is >= 0 and <= 14))
        {
            throw new ArgumentOutOfRangeException(nameof(waterActivity), $"aw {waterActivity}, pH {acid}", "Water activity lies between 0 and 1, pH between 0 and 14.");
        }

        return cookedAndPacked ? ByTableA(waterActivity, acid) : ByTableB(waterActivity, acid);
    }

    private static bool ByTableA(double aw, double acid) => aw switch
    {
        <= 0.92 => false,
        <= 0.95 => acid > 5.6,
        _ => acid > 4.6,
    };

    private static bool ByTableB(double aw, double acid) => aw switch
    {
        < 0.88 => false,
        <= 0.90 => acid > 5.0,
        <= 0.92 => acid > 4.6,
        _ => acid >= 4.2,
    };
}
