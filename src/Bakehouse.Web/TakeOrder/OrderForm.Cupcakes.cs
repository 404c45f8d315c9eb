namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Orders;

/// <content>What stands beside the tiers.</content>
public sealed partial class OrderForm
{
    /// <summary>Batches of cupcakes; empty if none are asked for.</summary>
    public IList<CupcakeForm> Cupcakes { get; set; } = [];

    /// <summary>True as long as nothing is chosen that could be made: no tier and no cupcakes.</summary>
    internal bool IsUnbuilt => Tiers.Count == 0 && Cupcakes.Count == 0;

    /// <summary>So many of one kind: the only batch gets that number, else a new one like the bottom tier. Who asked for no number of portions, asked for these.</summary>
    public void TakeCupcakes(int count)
    {
        if (Cupcakes.Count == 0)
        {
            AddCupcakes();
        }

        var (batch, was) = (Cupcakes[^1], Cupcakes[^1].Count);
        batch.Count = count.ToString(CultureInfo.InvariantCulture);
        if (Tiers.Count == 0 && Cupcakes.Count == 1 && !ByGuests && (Count.Trim().Length == 0 || Count.Trim() == was))
        {
            Count = batch.Count;
        }
    }

    /// <summary>One more batch, like the last one or the bottom tier.</summary>
    public void AddCupcakes()
    {
        var (sponge, colours) = Cupcakes.LastOrDefault() is { } last ? (last.Sponge, last.Colours) : Tiers.LastOrDefault() is { IsFalse: false } tier ? (tier.Sponge, tier.Colours) : ("vanilla", [new()]);
        Cupcakes.Add(new CupcakeForm { Count = "12", Sponge = sponge, Colours = [.. colours.Select(c => c.Copied())] });
    }

    internal static IList<CupcakeForm> BatchesOf(IReadOnlyList<CakeTier> tiers) => [.. tiers.Where(t => t.StandsBeside).Select(CupcakeForm.Of)];

    internal static IList<TierForm> StackOf(IReadOnlyList<CakeTier> tiers, bool inches) => [.. tiers.Where(t => !t.StandsBeside).Reverse().Select(t => TierForm.Of(t, inches))];

    private static IList<CupcakeForm> OwnIds(IList<CupcakeForm> batches)
    {
        foreach (var batch in batches)
        {
            batch.Id = Guid.NewGuid();
        }

        return batches;
    }
}
