namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;

/// <summary>A batch of cupcakes as typed.</summary>
public sealed class CupcakeForm
{
    public Guid Id { get; set; } = Guid.NewGuid();

    /// <summary>How many.</summary>
    public string Count { get; set; } = "24";

    public string Sponge { get; set; } = "vanilla";

    /// <summary>Colours of the swirls.</summary>
    public IList<ColourForm> Colours { get; set; } = [new()];

    internal static CupcakeForm Of(CakeTier batch) => new()
    {
        Id = batch.Id,
        Count = batch.Special!.Cupcakes!.Count.ToString(CultureInfo.InvariantCulture),
        Sponge = batch.Sponge,
        Colours = [.. batch.Colours.Select(ColourForm.Of)],
    };
}
