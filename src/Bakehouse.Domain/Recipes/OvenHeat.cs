namespace Bakehouse.Domain.Recipes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;

/// <summary>Degrees to set, by the kind of oven.</summary>
/// <param name="Least">Degrees Celsius.</param>
/// <param name="Most">The same as least where there is no range.</param>
public sealed record OvenHeat(int Least, int Most)
{
    /// <summary>A fan oven is set 15 to 20 degrees lower than one without (common practice, no source).</summary>
    public static OvenHeat For(Baking bakes, OvenKind kind) =>
        kind == OvenKind.Fan ? new(bakes.Heat - 20, bakes.Heat - 15) : new(bakes.Heat, bakes.Heat);

    /// <summary>Minutes for a pan of that diameter that bakes so high: the first row that is deep and wide enough, else the last.</summary>
    public static int Minutes(Baking bakes, int inches, Length height) =>
        (bakes.Times.FirstOrDefault(t => height.Centimetres <= t.ToCentimetres && inches <= t.ToInches) ?? bakes.Times[^1]).Minutes;
}
