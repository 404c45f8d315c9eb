namespace Bakehouse.Web.SetUpShop;

using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;

/// <summary>Sets the shop up or changes it. What is typed is kept within two seconds and comes back after a reload.</summary>
public sealed partial class ShopPage : IAsyncDisposable
{
    private static readonly TimeSpan KeepAfter = TimeSpan.FromSeconds(1.2);
    private static readonly IReadOnlyList<(bool, string)> Units = [(true, "inches"), (false, "cm")];
    private static readonly IReadOnlyList<(bool, string)> Clocks = [(true, "14:00"), (false, "2:00 pm")];
    private ITimer? keeping;
    private bool saved;

    /// <summary>The form of what the book has, and of what was typed and kept last, as text.</summary>
    private string asWritten = "";
    private string asKept = "";

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private ShopForm Form { get; set; } = new();

    private IReadOnlyList<Problem> Problems { get; set; } = [];

    private IReadOnlyList<string> Costs { get; set; } = [];

    private HashSet<string> Wrong => [.. Problems.Select(p => p.Where)];

    private string DraftOf => $"{Here.Device}:shop";

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (keeping is not null)
        {
            await keeping.DisposeAsync();
            await Keep();
        }
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Form = Fresh();
        asWritten = asKept = Text;
        // What was typed before there was a shop is the shop by now.
        if (await Book.Draft(DraftOf) is { Length: > 0 } draft && JsonSerializer.Deserialize<ShopForm>(draft) is { } kept && (kept.Version > 0 || Book.State.Shop is null))
        {
            Form = kept;
            Form.Figures ??= FiguresForm.Of(Book.State.Shop?.Figures);
            Form.Allergens ??= AllergensForm.Of(Book.State.Shop?.Allergens);
            asKept = draft;
        }
    }

    private string Text => JsonSerializer.Serialize(Form);

    private ShopForm Fresh() => Book.State.Shop is { } shop ? ShopReader.Form(shop, Book.State.Cookbook) : new ShopForm { Allergens = new(), Figures = new(), Prices = PricesReader.Form(null, true, Book.State.Cookbook) };

    private Problem? At(string field) => Problems.FirstOrDefault(p => string.Equals(p.Where, field, StringComparison.OrdinalIgnoreCase));

    private void Touched()
    {
        if (Text == asKept)
        {
            return;
        }

        (saved, Costs) = (false, []);
        keeping ??= Time.CreateTimer(_ => _ = InvokeAsync(Keep), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        keeping.Change(KeepAfter, Timeout.InfiniteTimeSpan);
    }

    private async Task Keep()
    {
        var text = Text;
        if (text != asKept)
        {
            asKept = text;
            await Book.Enter(new KeepDraft(Guid.NewGuid(), Here.Person, DraftOf, text == asWritten ? null : text));
            StateHasChanged();
        }
    }

    private async Task StartAgain()
    {
        Form = Fresh();
        (Problems, Costs) = ([], []);
        asWritten = Text;
        await Keep();
    }

    /// <summary>What the change would cost, before it counts: cakes that stop, turn late or find no room.</summary>
    private async Task<IReadOnlyList<string>> CostsOf(Shop shop)
    {
        var state = Book.State;
        List<string> stopped = [.. Stopped.By(shop, state)];
        if (state.Wall is null)
        {
            return stopped;
        }

        // What would be refused is told when it is written.
        var answer = (await Book.Foresee(new WriteShop(Guid.NewGuid(), Here.Person, Here.Device, shop))).Answer;
        var late = state.Orders
            .Where(o => answer.Late.GetValueOrDefault(o.Id.ToString("N")) > (Standing.Of(state, o)?.Late ?? 0))
            .Select(o => $"{o.Number} {o.Customer.Name} turns {Words.Late(answer.Late[o.Id.ToString("N")])} late.");
        return answer.Kind == AnswerKind.Accepted ? [.. stopped, .. late, .. new[] { answer.Message }.Where(m => m.Length > 0)] : [];
    }

    private async Task Save(bool agreed)
    {
        saved = false;
        var first = Book.State.Shop is null;
        var (shop, problems) = new ShopReader(Book.State.Shop).Read(Form);
        Problems = problems;
        if (shop is null)
        {
            return;
        }

        Costs = agreed ? [] : await CostsOf(shop);
        if (Costs.Count > 0)
        {
            return;
        }

        var answer = await Book.Enter(new WriteShop(Guid.NewGuid(), Here.Person, Here.Device, shop));
        if (answer.Kind != AnswerKind.Accepted)
        {
            Problems = answer.Problems.Count > 0 ? [.. answer.Problems.Select(ShopFields.OnPage)] : [new Problem("shop", "", answer.Message, "")];
            return;
        }

        await Written(first);
    }

    private async Task Written(bool first)
    {
        if (keeping is not null)
        {
            await keeping.DisposeAsync();
            keeping = null;
        }

        if (first)
        {
            Navigation.NavigateTo("/who", forceLoad: true);
            return;
        }

        saved = true;
        await StartAgain();
    }
}
