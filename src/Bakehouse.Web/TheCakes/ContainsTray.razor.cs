namespace Bakehouse.Web.TheCakes;

using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>What one cake contains, from the recipes that it keeps, and what stops work on it.</summary>
public sealed partial class ContainsTray
{
    /// <summary>The cake.</summary>
    [Parameter, EditorRequired]
    public Order Order { get; set; } = default!;

    /// <summary>How the shop says things.</summary>
    [Parameter, EditorRequired]
    public Words Words { get; set; } = default!;

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private IReadOnlyList<Problem> Problems { get; set; } = [];

    private Shop Shop => Book.State.Shop ?? throw new InvalidOperationException("A cake is open without a shop.");

    private Cookbook Recipes => Book.State.CookbookOf(Order);

    private CakeContents? Cake => Recipes.Version > 0 ? CakeContents.Of(Order, Recipes, Shop.Allergens, CakeFigures.Of(Shop)) : null;

    /// <summary>What it would contain if it were made from the recipes and packs as they stand now, its kept packs aside.</summary>
    private CakeContents? Renewed => CakeContents.Of(Order, Book.State.Cookbook.Using(KeptPacks), Shop.Allergens, CakeFigures.Of(Shop));

    private IEnumerable<PackLock> KeptPacks =>
        Order.MadeFrom?.Packs.Where(p => Book.State.Cookbook.Ingredient(p.Ingredient)?.Packs.Any(k => k.Lot == p.Lot) == true) ?? [];

    private bool IsOwner => Shop.PersonOf(Here.Person)?.Role == Role.Owner;

    private bool IsHit => BeforeWork.IsHit(Order, Recipes, Book.State.Cookbook, Shop);

    private IReadOnlyList<Problem> Stops => Stages.IsPlanned(Order.Stage) ? Book.State.StopsOf(Order) : [];

    private string Locked => Order.MadeFrom is { Packs.Count: > 0 } made
        ? $" Locked packs: {string.Join(", ", made.Packs.Select(p => $"{Recipes.Ingredient(p.Ingredient)?.Name ?? p.Ingredient} {p.Lot}"))}."
        : "";

    /// <summary>True if its label may be printed: it is settled from which recipes it is made, and everything about every tier is known.</summary>
    private bool HasLabel => !IsHit && Cake!.Tiers.All(t => t.Label.Waits.Count == 0);

    /// <summary>Each list of ingredients once, with the sizes of the tiers that share it; of a cake without a label what that waits for, once.</summary>
    private IEnumerable<(Label Label, string Sizes)> Labels => IsHit ? [] : Cake!.Tiers.Reverse()
        .GroupBy(t => t.Label.Text, StringComparer.Ordinal)
        .Select(g => (g.First().Label, string.Join(", ", g.Select(t => Words.Tier(t.Tier)))));

    private IReadOnlyList<Weighed> Against(CakeContents cake) => Weighing.Of(Order.Allergies, cake, Shop.Allergens);

    private string NameOf(string person) => Shop.PersonOf(person)?.Name ?? "Somebody";

    private Task Look(bool move) => Enter(new LookAtRecipes(Guid.NewGuid(), Here.Person, Here.Device, Order.Id, Order.Version, move, Order.MadeFrom?.Packs ?? []));

    private Task ReadBack() => Enter(new ReadBackAllergies(Guid.NewGuid(), Here.Person, Here.Device, Order.Id, Order.Version));

    private async Task Enter(Command command)
    {
        var answer = await Book.Enter(command);
        Problems = answer.Kind == AnswerKind.Accepted ? []
            : answer.Problems.Count > 0 ? answer.Problems
            : [new Problem("", "", answer.Message.Length > 0 ? answer.Message : "Somebody else changed it meanwhile.", "Look at it again.")];
    }
}
