namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>Takes an order or changes one. What is typed is kept within two seconds and comes back after a reload.</summary>
public sealed partial class OrderPage : IAsyncDisposable
{
    private static readonly TimeSpan UndoFor = TimeSpan.FromSeconds(10);
    private ITimer? undoing;
    private Guid command = Guid.NewGuid();

    /// <summary>What drawing, price and answer were last worked out for.</summary>
    private string drawn = "";

    /// <summary>The order to change, or null for a new one.</summary>
    [Parameter]
    public Guid? Id { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private OrderForm Form { get; set; } = new();

    private OrderForm? Before { get; set; }

    private Order? Taken { get; set; }

    private Order? Mine { get; set; }

    private Order? Clash { get; set; }

    private Stage? Asking { get; set; }

    private bool Busy { get; set; }

    private IReadOnlyList<Problem> Problems { get; set; } = [];

    /// <summary>The last build that could be worked out of what is typed; null as long as there was none.</summary>
    private BuildSheet? Sheet { get; set; }

    /// <summary>True while what is typed can't be built, so that the drawing is older.</summary>
    private bool Behind { get; set; }

    private IReadOnlyList<CakeTier> Tiers { get; set; } = [];

    /// <summary>What is asked for it; null as long as it can't be made here or the shop has no prices.</summary>
    private CakePrice? Price { get; set; }

    /// <summary>The stage in which it was last tried to write it.</summary>
    private Stage? Tried { get; set; }

    private Shop Shop => Book.State.Shop ?? throw new InvalidOperationException("The order page is open without a shop.");

    private Words Said => Words.Of(Shop);

    private LocalDateTime Now => Said.Now(Clock);

    private bool IsOwner => Shop.PersonOf(Here.Person)?.Role == Role.Owner;

    private FormReader Reader => new(Shop, Clock.GetCurrentInstant(), IsOwner, Book.State.Orders, Recipes);

    /// <summary>What the cap of the day says, or null.</summary>
    private Problem? DayFull => Reader.DayFull(Form, InBook);

    /// <summary>The version that is changed, as the book has it.</summary>
    private Order? InBook => Id is null ? null : Book.State.Orders.FirstOrDefault(o => o.Id == Id);

    /// <summary>The recipes of an order: those that it keeps, or for a new one those that stand.</summary>
    private Cookbook Recipes(Order order) => order.MadeFrom is null ? Book.State.Cookbook : Book.State.CookbookOf(order);

    /// <summary>Tiers, finish and decoration as typed, in an order of which nothing else is asked.</summary>
    private Order Draft => new(Form.Id, 0, 0, Stage.Enquiry, new Customer("", ""), new Handover(Way.Collect, default, "", 0), null, new Portions(1, Form.Cut), Tiers, Form.Finish, Form.Decoration, FormReader.Allergies(Form), "", "") { OnTop = Form.OnTop.Drawn, Eaters = Form.Eaters.Read };

    private LocalDateTime? When => Reader.When(Form);

    private Standing? Standing => Taken is null ? null : Standing.Of(Book.State, Taken);

    private HashSet<string> Wrong => [.. Problems.Select(p => p.Where)];

    private string Path => new Uri(Navigation.Uri).AbsolutePath;

    private string DraftOf => Id is null ? Here.Device : $"{Here.Device}:{Id:N}";

    private bool WiderAbove => Form.WiderAboveAgreed || Draft.Stack.Zip(Draft.Stack.Skip(1)).Any(pair => OrderChecks.IsWider(pair.Second, pair.First));

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Book.Changed -= AskAnew;
        inquiry?.Cancel();
        foreach (var timer in new[] { undoing, soon }.OfType<ITimer>())
        {
            await timer.DisposeAsync();
        }

        await KeepLast();
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        Form = Fresh();
        if (await Book.Draft(DraftOf) is { Length: > 0 } draft && JsonSerializer.Deserialize<OrderForm>(draft) is { } kept)
        {
            Form = kept;
        }

        if (Asks is { } again)
        {
            // Kept before the address is left, so that a reload does not begin it once more.
            (Taken, Asking, Moving) = (null, null, null);
            LayAside(FormOf(again));
            await WriteDraft(JsonSerializer.Serialize(Form));
            Navigation.NavigateTo("/order", replace: true);
        }

        Draw();
        AskSoon();
    }

    private OrderForm Fresh() => InBook is { } order ? OrderForm.Of(order, Shop) : new OrderForm();

    /// <summary>A build that can't be worked out leaves the last one standing, so that nothing flickers while somebody types.</summary>
    private void Draw()
    {
        drawn = Form.Asked;
        Tiers = Reader.Drawn(Form) ?? Tiers;
        var sheet = BuildSheet.Try(Tiers, Form.Finish, CakeFigures.Of(Shop));
        Behind = !Form.IsUnbuilt && (sheet is null || Reader.Drawn(Form) is null);
        Sheet = Form.IsUnbuilt ? null : sheet ?? Sheet;
        Contents = Recipes(InBook ?? Draft) is { Version: > 0 } recipes ? CakeContents.Of(Draft, recipes, Shop.Allergens, CakeFigures.Of(Shop)) : null;
        Price = Form.IsUnbuilt ? null : CakePrice.Of(Draft, Recipes(InBook ?? Draft), Shop) ?? Price;
        Count();
    }

    private void Touched()
    {
        var anew = Taken is not null;
        (Taken, Asking, Moving) = (null, null, null);
        command = Guid.NewGuid();
        Form.BeyondCapAgreed &= DayFull is not null || InBook?.BeyondCapAgreed == true;
        // A name or a note that is typed changes no drawing, no price and no answer.
        if (anew || Form.Asked != drawn)
        {
            Draw();
            AskSoon();
        }

        if (Problems.Count > 0)
        {
            Problems = Reader.Read(Form, Tried ?? Form.Stage, InBook).Problems;
        }

        KeepSoon();
    }

    private async Task Save(Stage stage)
    {
        Tried = stage;
        if (stage == Stage.Booked && Form.Price.Trim().Length == 0 && Price?.Asked is { } asked)
        {
            // Taken without a word on the price, it is taken as asked: that stood beside it.
            Form.Price = asked.ToString("0.##", CultureInfo.InvariantCulture);
        }

        var (order, problems) = Reader.Read(Form, stage, InBook);
        Problems = problems;
        if (order is null)
        {
            return;
        }

        if (Stages.IsPlanned(stage) && order.Allergies.Kind == AllergyKind.Avoid && Asking is null)
        {
            Asking = stage;
            return;
        }

        Asking = null;
        await Enter(order);
    }

    private async Task SaidYes()
    {
        if (Asking is { } stage)
        {
            await Save(stage);
        }
    }

    private async Task Enter(Order order)
    {
        Busy = true;
        try
        {
            var answer = await Book.Enter(new WriteOrder(command, Here.Person, Here.Device, order, Moving is not null));
            await Hear(answer, order);
        }
        finally
        {
            Busy = false;
        }
    }

    private async Task Hear(Answer answer, Order order)
    {
        switch (answer.Kind)
        {
            case AnswerKind.Accepted:
                Taken = answer.Order ?? order;
                (Clash, Can, Moving) = (null, null, null);
                KeepNoMore();
                await WriteDraft(null);
                Form = Id is null ? new OrderForm() : OrderForm.Of(Taken, Shop);
                (Tiers, Sheet, Behind) = (Taken.Tiers, BuildSheet.Try(Taken.Tiers, Taken.Finish, CakeFigures.Of(Shop)), false);
                command = Guid.NewGuid();
                break;
            case AnswerKind.Clash:
                (Mine, Clash) = (order, answer.Order);
                break;
            default:
                Problems = answer.Problems.Count > 0 ? [.. answer.Problems.Select(p => FieldNames.OnPage(p, Form.Tiers.Count))] : [new Problem("order", "", answer.Message, "")];
                command = Guid.NewGuid();
                break;
        }
    }
}
