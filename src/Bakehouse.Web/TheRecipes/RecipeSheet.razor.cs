namespace Bakehouse.Web.TheRecipes;

using System.Globalization;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>One recipe, weighed out for a mass or for the tier of a cake.</summary>
public sealed partial class RecipeSheet
{
    private const decimal Most = 1_000_000;
    private static readonly int[] Sizes = [6, 8, 10, 12];
    private string shown = "";
    private string typed = "";

    /// <summary>The recipe.</summary>
    [Parameter, EditorRequired]
    public Recipe Recipe { get; set; } = default!;

    /// <summary>The recipes around it.</summary>
    [Parameter, EditorRequired]
    public Cookbook Cookbook { get; set; } = default!;

    /// <summary>Its bowls, ovens and rules.</summary>
    [Parameter, EditorRequired]
    public Shop Shop { get; set; } = default!;

    /// <summary>Of which the planned cakes may be chosen to weigh out for.</summary>
    [Parameter]
    public IReadOnlyList<Order> Orders { get; set; } = [];

    /// <summary>What it contains.</summary>
    [Parameter, EditorRequired]
    public Contents Contents { get; set; } = default!;

    private Words Words => Words.Of(Shop);

    /// <summary>The mass that was typed, the recipe's own if nothing was; null if it is none.</summary>
    private Mass? Target => typed.Trim().Length == 0 ? Cookbook.Total(Recipe)
        : Amounts.ReadGrams(typed) is { } grams && grams is >= 0.1m and <= Most ? Mass.FromGrams(grams)
        : null;

    private Scaled Scaled => Domain.Recipes.Scaled.To(Recipe, Cookbook, Target ?? Cookbook.Total(Recipe));

    private IReadOnlyList<decimal>? Percents => BakersPercent.Of(Recipe, Cookbook);

    private IReadOnlyList<string> Alcohol => [.. AlcoholLeft.In(Recipe, Cookbook)];

    private string Egg => Recipe.Eggs switch
    {
        EggMethod.Cooked => "heated through (71 °C or more).",
        EggMethod.Pasteurised => "pasteurised, not heated further.",
        _ => "raw: who may eat it, local rules decide.",
    };

    /// <summary>Tiers of planned cakes that this goes into, with the grams for each.</summary>
    private IReadOnlyList<(string Name, string Grams)> Tiers =>
    [
        .. from order in Orders
           where Stages.IsPlanned(order.Stage)
           let sheet = BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(Shop))
           where sheet is not null
           let parts = CakeParts.Of(order, sheet)
           from tier in order.Tiers.Reverse()
           from part in parts[tier.Id]
           where part.Recipe == Recipe.Id && part.Made.Grams >= 0.1m
           let grams = decimal.Ceiling(part.Made.Grams)
           select ($"{order.Number} {order.Customer.Name}, {Words.Tier(tier)}: {Words.Number(grams)} g", grams.ToString(CultureInfo.InvariantCulture)),
    ];

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (shown != Recipe.Id)
        {
            (shown, typed) = (Recipe.Id, "");
        }
    }

    private string Loads(Bowl bowl)
    {
        var loads = BowlLoads.Of(Scaled.Total, bowl.Batter);
        return $"{loads.Count} × {Words.Number(decimal.Round(loads[0].Grams))} g";
    }

    private static string Heat(Baking bakes, OvenKind kind)
    {
        var heat = OvenHeat.For(bakes, kind);
        return FormattableString.Invariant($"{kind.ToString().ToLowerInvariant()} oven {(heat.Least == heat.Most ? $"{heat.Most}" : $"{heat.Least} to {heat.Most}")} °C");
    }

    private string Minutes(Baking bakes) => string.Join(", ", Sizes.Select(inches =>
        FormattableString.Invariant($"{Words.Size(Length.FromInches(inches))} {OvenHeat.Minutes(bakes, inches, Length.FromCentimetres(5))} min"))) + " (5 cm high).";

    private static string Kept(KeepTime kept) => FormattableString.Invariant($"{(kept.Hours % 24 == 0 ? $"{kept.Hours / 24} {(kept.Hours == 24 ? "day" : "days")}" : $"{kept.Hours} h")} {(kept.Place == KeepPlace.Room ? "in the room, wrapped" : kept.Place == KeepPlace.Fridge ? "in the fridge" : "frozen")}");
}
