namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>The price of the cake as typed, with its parts.</summary>
public sealed partial class PriceTray
{
    /// <summary>What is typed.</summary>
    [Parameter, EditorRequired]
    public OrderForm Form { get; set; } = default!;

    /// <summary>Null as long as there is no cake, or the shop has no prices.</summary>
    [Parameter]
    public CakePrice? Price { get; set; }

    /// <summary>Whose prices.</summary>
    [Parameter, EditorRequired]
    public Shop Shop { get; set; } = default!;

    /// <summary>Ids of fields that are wrong.</summary>
    [Parameter]
    public IReadOnlySet<string> Wrong { get; set; } = new HashSet<string>();

    /// <summary>True if the owner types: she may go under the floor.</summary>
    [Parameter]
    public bool Owner { get; set; }

    /// <summary>The order that was just written, with what was agreed; null while one is typed.</summary>
    [Parameter]
    public Order? Taken { get; set; }

    /// <summary>Something was typed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>What else is said about its price.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private Words Words => Words.Of(Shop);

    private string Missing => Price!.Missing.Count <= 4 ? string.Join(", ", Price.Missing) : $"{string.Join(", ", Price.Missing.Take(3))} and {Price.Missing.Count - 3} more";

    /// <summary>Whose cost is shown; closed on every other order, since a customer may stand beside it.</summary>
    private Guid costOf;

    private bool showsCost;

    /// <summary>What was agreed: with the order that was taken, else as typed; null as long as there is none.</summary>
    private decimal? Agreed => Taken is { } taken ? taken.Price?.Amount : Typed;

    private decimal? Typed => decimal.TryParse(Form.Price.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var agreed) ? agreed : null;

    /// <summary>The floor, if what is agreed lies under it.</summary>
    private decimal? Under => Price?.Floor is { } floor && Typed < floor ? floor : null;

    /// <summary>The listed price, if more is asked.</summary>
    private decimal? Raised => Price is { Listed: { } listed, Asked: { } asked } && asked > listed ? listed : null;

    private IEnumerable<(string What, decimal Amount, bool Sum)> Listed =>
        [.. Price!.Lines.Select(l => (l.What, l.Amount, false)), ("By the price list", Price.Listed!.Value, true)];

    private IEnumerable<(string What, decimal Amount, bool Sum)> Costs
    {
        get
        {
            var cost = Price!.Cost;
            foreach (var kind in Enum.GetValues<CostKind>())
            {
                yield return (kind == CostKind.Hands ? $"Hands, {cost.Lines.Single(l => l.Kind == kind).Amount}" : kind == CostKind.Ingredient ? "Ingredients" : kind.ToString(), cost.Of(kind), false);
            }

            yield return ("Costs", cost.Cost, true);
            yield return ("Floor, with the least mark-up", cost.Floor, false);
            yield return ($"With {(cost.Rates.MarkUp * 100).ToString("0.##", CultureInfo.InvariantCulture)} % mark-up", cost.Price, false);
            if ((Agreed ?? Price.Asked) is { } price)
            {
                yield return (Agreed is null ? "Asked" : "Agreed", price, true);
                yield return ("Leaves after cost", cost.Earned(price), false);
            }
        }
    }

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        var now = Taken?.Id ?? Form.Id;
        showsCost &= costOf == now;
        costOf = now;
    }

    private Task Agree(decimal price)
    {
        Form.Price = price.ToString("0.##", CultureInfo.InvariantCulture);
        return Changed.InvokeAsync();
    }
}
