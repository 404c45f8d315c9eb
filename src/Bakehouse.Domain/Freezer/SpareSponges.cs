namespace Bakehouse.Domain.Freezer;

using Bakehouse.Domain.Cakes.Packing;

/// <summary>Sponges of one baking that lie in the freezer and belong to no cake.</summary>
/// <param name="Sponge">Id of a sponge of the methods.</param>
/// <param name="Pan">The pan that they came from (<see cref="PanCode"/>): whole inches if round.</param>
/// <param name="Frozen">The day they went in.</param>
/// <param name="Count">How many, each as it came from its pan; 0 says that none is left.</param>
public sealed record SpareSponges(string Sponge, int Pan, LocalDate Frozen, int Count)
{
    /// <summary>Days that a wrapped sponge stays good in the freezer: a wish, no safety limit (common practice, no source: best within four weeks).</summary>
    public const int BestDays = 28;

    /// <summary>The last day on which it is at its best.</summary>
    public LocalDate BestUntil => Frozen.PlusDays(BestDays);

    /// <summary>True if the other is the same baking, however many are left of it.</summary>
    public bool IsSameAs(SpareSponges other) => Sponge == other.Sponge && Pan == other.Pan && Frozen == other.Frozen;
}
