namespace Bakehouse.Web.TheRecipes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>One ingredient, and its packs with what their labels say.</summary>
public sealed partial class IngredientPage
{
    private readonly Dictionary<string, AllergenStatus> chosen = new(StringComparer.Ordinal);
    private string lot = "";
    private string sulphites = "";
    private string message = "";

    /// <summary>Id of the ingredient.</summary>
    [Parameter]
    public string Id { get; set; } = "";

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private IReadOnlyList<Problem> Problems { get; set; } = [];

    private Ingredient? Ingredient => Book.State.Cookbook.Ingredient(Id);

    private Shop Shop => Book.State.Shop ?? throw new InvalidOperationException("An ingredient is open without a shop.");

    private Words Said => Words.Of(Shop);

    private bool IsOwner => Shop.PersonOf(Here.Person)?.Role == Role.Owner;

    /// <summary>Planned cakes that it goes into.</summary>
    private IReadOnlyList<Order> Cakes =>
        [.. Book.State.Orders.Where(o => Stages.IsPlanned(o.Stage) && Book.State.CookbookOf(o) is var book && CakeContents.Of(o, book, Shop.Allergens, CakeFigures.Of(Shop))?.Uses(book).Contains(Id) == true)];

    private bool MayOpen => EntryRights.May(typeof(OpenPack), Shop.PersonOf(Here.Person)?.Role);

    /// <inheritdoc/>
    public void Dispose() => Book.Changed -= Refresh;

    /// <inheritdoc/>
    protected override void OnInitialized() => Book.Changed += Refresh;

    /// <inheritdoc/>
    protected override void OnParametersSet() => Fill();

    private void Refresh(BookState state) => _ = InvokeAsync(StateHasChanged);

    /// <summary>Begins with what the pack in use says.</summary>
    private void Fill()
    {
        lot = Ingredient?.InUse?.Lot ?? "";
        Fill(Ingredient?.InUse);
    }

    /// <summary>Another pack begins with what was read of it before; with nothing known if it is a new one, since its label may differ.</summary>
    private void OtherLot() => Fill(Ingredient?.Packs.FirstOrDefault(p => p.Lot == lot.Trim()));

    private void Fill(Pack? pack)
    {
        sulphites = pack?.Facts?.SulphitesMgPerKg is { } known ? Amounts.Text(known) : "";
        foreach (var allergen in Shop.Allergens.All)
        {
            chosen[allergen.Id] = pack?.Facts?.Of(allergen.Id) ?? AllergenStatus.Unknown;
        }
    }

    private void OthersNot()
    {
        foreach (var id in chosen.Where(c => c.Value == AllergenStatus.Unknown).Select(c => c.Key).ToList())
        {
            chosen[id] = AllergenStatus.HasNot;
        }

        sulphites = sulphites.Trim().Length == 0 ? "0" : sulphites;
    }

    private async Task Open()
    {
        message = "";
        decimal? milligrams = null;
        if (sulphites.Trim().Length > 0)
        {
            if (Amounts.Read(sulphites) is not { } read)
            {
                Problems = [new Problem("sulphites", Problem.Shown(sulphites), "That is no figure.", "Write milligrams of SO2 in a kilogram, such as 0 or 12.5, or leave it empty.")];
                return;
            }

            milligrams = read;
        }

        string[] With(AllergenStatus status) => [.. chosen.Where(c => c.Value == status && c.Key != KnownAllergens.Sulphites).Select(c => c.Key)];
        var facts = new AllergenFacts(With(AllergenStatus.Has), With(AllergenStatus.May), With(AllergenStatus.HasNot), milligrams);
        var answer = await Book.Enter(new OpenPack(Guid.NewGuid(), Here.Person, Here.Device, Id, new Pack(lot.Trim(), facts)));
        Problems = answer.Kind == AnswerKind.Accepted ? [] : answer.Problems.Count > 0 ? answer.Problems : [new Problem("pack", lot, answer.Message, "Try again.")];
        message = answer.Kind == AnswerKind.Accepted ? (answer.Message.Length > 0 ? answer.Message : "Written. It counts from now on.") : "";
    }
}
