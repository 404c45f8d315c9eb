namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;

/// <summary>A reading as it is kept with the shop: enough to work it out again.</summary>
/// <param name="Number">Of the order.</param>
/// <param name="Coat">What covered it; <see cref="CoatState.Bare"/> for one layer.</param>
/// <param name="Unit">The fridge or freezer that it stood in, by name.</param>
/// <param name="Celsius">°C in the middle; null for "still cold in the middle".</param>
public sealed record KeptReading(int Number, CakeTier Tier, CoatState Coat, string Unit, Instant Came, Instant Read, double? Celsius)
{
    /// <summary>As the model takes it; a layer came wrapped, a tier with its coat as warm as coats go on.</summary>
    public ProbeReading ToProbe(CakeFigures figures)
    {
        var (body, start) = Coat switch
        {
            CoatState.Bare => (CakeBodies.Layer(Tier, figures), HeatStart.Even(Waits.Wrapped)),
            CoatState.Crumb => (CakeBodies.Tier(Tier, Coat, figures), new HeatStart(Waits.InsideAtCrumb, Waits.FreshCoat)),
            _ => (CakeBodies.Tier(Tier, Coat, figures), new HeatStart(Waits.InsideAtCoat, Waits.FreshCoat)),
        };
        return Celsius is { } c ? new ProbeReading(body, start, Came, Read, c) : ProbeReading.StillCold(body, start, Came, Read);
    }
}
