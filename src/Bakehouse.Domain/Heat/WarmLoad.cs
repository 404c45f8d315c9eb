namespace Bakehouse.Domain.Heat;

using static System.FormattableString;

/// <summary>What warm cake does to a fridge with other food in it.</summary>
/// <param name="Watts">Heat that it gives off, mean of its first quarter of an hour.</param>
/// <param name="Rise">K that the air gets warmer meanwhile.</param>
/// <param name="Kilograms">Of this cake.</param>
/// <param name="MostKilograms">Of such cake at once.</param>
public sealed record WarmLoad(double Watts, double Rise, double Kilograms, double MostKilograms, string Why)
{
    /// <summary>
    /// W for each K that the air of a small fridge gets warmer: 6. It makes 2 kg of room-warm cake at once the most beside perishables (common
    /// practice, no source); a fridge's own figure can be had from its thermometer.
    /// </summary>
    public const double SmallFridge = 6;

    /// <summary>K that the air may get warmer beside perishables: 2.</summary>
    public const double MostRise = 2;

    /// <summary>True if it is more than the fridge takes at once.</summary>
    public bool IsTooMuch => Kilograms > MostKilograms;

    /// <summary>Of bodies that go in together.</summary>
    /// <param name="wattsPerKelvin">Above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing goes in, or it is no fridge.</exception>
    public static WarmLoad Of(IReadOnlyList<(HeatBody Body, double Celsius)> bodies, HeatPlace fridge, double wattsPerKelvin = SmallFridge)
    {
        if (bodies.Count == 0 || !fridge.IsCold || !(wattsPerKelvin > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(bodies), $"{bodies.Count} cakes in {fridge.Name}, {wattsPerKelvin} W/K", "Cakes go into something cold that takes heat.");
        }

        const double Quarter = 15;
        var around = fridge.Around(HeatSide.Typical, false, true);
        var watts = bodies.Sum(b => -Conduction.Run(b.Body, HeatStart.Even(b.Celsius), [new Stay(Quarter, around)]).HeatCameIn) / (Quarter * 60);
        var kilograms = bodies.Sum(b => b.Body.EatenMass);
        var (rise, most) = (watts / wattsPerKelvin, watts <= 0 ? double.MaxValue : kilograms * MostRise * wattsPerKelvin / watts);
        var takes = most > 50 ? "it takes that" : Invariant($"{most:0.#} kg at once are the most beside perishables");
        var why = Invariant($"{kilograms:0.#} kg warm cake: the air of {fridge.Name} gets about {rise:0.#} °C warmer; {takes}.");
        return new WarmLoad(watts, rise, kilograms, most, why);
    }
}
