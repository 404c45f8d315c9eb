namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
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

    /// <summary>Something was typed.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    /// <summary>What else is said about its price.</summary>
    [Parameter]
    public RenderFragment? ChildContent { get; set; }

    private Words Words => Words.Of(Shop);

    private string Missing => Price!.Missing.Count <= 4 ? string.Join(", ", Price.Missing) : $"{string.Join(", ", Price.Missing.Take(3))} and {Price.Missing.Count - 3} more";

    /// <summary>The floor, if what is agreed lies under it.</summary>
    private decimal? Under => Price?.Floor is { } floor
        && decimal.TryParse(Form.Price.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var agreed) && agreed < floor ? floor : null;

    private IEnumerable<(string What, decimal Amount, bool Sum)> Parts
    {
        get
        {
            var (cost, known) = (Price!.Cost, Price.Missing.Count == 0);
            foreach (var kind in known ? Enum.GetValues<CostKind>() : [])
            {
                yield return (kind == CostKind.Hands ? $"Hands, {cost.Lines.Single(l => l.Kind == kind).Amount}" : kind == CostKind.Ingredient ? "Ingredients" : kind.ToString(), cost.Of(kind), false);
            }

            if (known)
            {
                yield return ("Costs", cost.Cost, true);
                yield return ("Floor, with the least mark-up", cost.Floor, false);
                yield return ($"With {(cost.Rates.MarkUp * 100).ToString("0.##", CultureInfo.InvariantCulture)} % mark-up", cost.Price, false);
            }

            if (Price.Listed is { } listed)
            {
                yield return ("By the price list", listed, false);
            }

            if (Price.Asked is { } asked)
            {
                yield return ("Asked", asked, true);
                if (known)
                {
                    yield return ("Leaves after cost", cost.Earned(asked), false);
                }
            }
        }
    }

    private Task Agree(decimal price)
    {
        Form.Price = price.ToString("0.##", CultureInfo.InvariantCulture);
        return Changed.InvokeAsync();
    }
}
