namespace Bakehouse.Web.TakeOrder;

using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>Takes an order or changes one. What is typed is kept within two seconds and comes back after a reload.</summary>
public sealed partial class OrderPage : IAsyncDisposable
{
    private static readonly TimeSpan KeepAfter = TimeSpan.FromSeconds(1.2);
    private static readonly TimeSpan UndoFor = TimeSpan.FromSeconds(10);
    private ITimer? keeping;
    private ITimer? undoing;
    private Guid command = Guid.NewGuid();

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

    private IReadOnlyList<CakeTier> Tiers { get; set; } = [];

    private Shop Shop => Book.State.Shop ?? throw new InvalidOperationException("The order page is open without a shop.");

    private Words Said => Words.Of(Shop);

    private LocalDateTime Now => Said.Now(Clock);

    private FormReader Reader => new(Shop, Now);

    private LocalDateTime? When => Reader.When(Form);

    private Standing? Standing => Taken is null ? null : Standing.Of(Book.State, Taken);

    private HashSet<string> Wrong => [.. Problems.Select(p => p.Where)];

    private string Path => new Uri(Navigation.Uri).AbsolutePath;

    private string DraftOf => Id is null ? Here.Device : $"{Here.Device}:{Id:N}";

    private bool WiderAbove => Tiers.Zip(Tiers.Skip(1)).Any(pair => pair.Second.Diameter > pair.First.Diameter);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (undoing is not null)
        {
            await undoing.DisposeAsync();
        }

        if (keeping is not null)
        {
            await keeping.DisposeAsync();
            await Keep();
        }
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        var order = Book.State.Orders.FirstOrDefault(o => o.Id == Id);
        Form = order is null ? new OrderForm() : OrderForm.Of(order, Shop);
        if (await Book.Draft(DraftOf) is { Length: > 0 } draft && JsonSerializer.Deserialize<OrderForm>(draft) is { } kept)
        {
            Form = kept;
        }

        Tiers = Reader.Drawn(Form);
    }

    private void Touched()
    {
        Taken = null;
        Asking = null;
        command = Guid.NewGuid();
        Tiers = Reader.Drawn(Form);
        if (Problems.Count > 0)
        {
            Problems = Reader.Read(Form, Form.Stage).Problems;
        }

        keeping ??= Time.CreateTimer(_ => _ = InvokeAsync(Keep), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        keeping.Change(KeepAfter, Timeout.InfiniteTimeSpan);
    }

    private Task Keep() => Taken is not null ? Task.CompletedTask : WriteDraft(Form.IsBlank ? null : JsonSerializer.Serialize(Form));

    private async Task WriteDraft(string? text) => await Book.Enter(new KeepDraft(Guid.NewGuid(), Here.Person, DraftOf, text));

    private async Task Save(Stage stage)
    {
        var (order, problems) = Reader.Read(Form, stage);
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
            var answer = await Book.Enter(new WriteOrder(command, Here.Person, Here.Device, order));
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
                Clash = null;
                keeping?.Change(Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
                await WriteDraft(null);
                Form = Id is null ? new OrderForm() : OrderForm.Of(Taken, Shop);
                Tiers = Taken.Tiers;
                command = Guid.NewGuid();
                break;
            case AnswerKind.Clash:
                (Mine, Clash) = (order, answer.Order);
                break;
            default:
                Problems = answer.Problems.Count > 0 ? answer.Problems : [new Problem("order", "", answer.Message, "")];
                command = Guid.NewGuid();
                break;
        }
    }

    private async Task KeepTheirs()
    {
        Form = OrderForm.Of(Clash!, Shop);
        (Clash, Mine) = (null, null);
        Tiers = Reader.Drawn(Form);
        command = Guid.NewGuid();
        await WriteDraft(null);
    }

    private async Task UseMine()
    {
        var order = Mine! with { Version = Clash!.Version };
        Form.Version = order.Version;
        (Clash, Mine) = (null, null);
        command = Guid.NewGuid();
        await Enter(order);
    }

    private void StartAgain()
    {
        Before = Form;
        var order = Book.State.Orders.FirstOrDefault(o => o.Id == Id);
        Form = order is null ? new OrderForm() : OrderForm.Of(order, Shop);
        Problems = [];
        Touched();
        undoing?.Dispose();
        undoing = Time.CreateTimer(_ => _ = InvokeAsync(() => { Before = null; StateHasChanged(); }), null, UndoFor, Timeout.InfiniteTimeSpan);
    }

    private void UndoStart()
    {
        Form = Before ?? Form;
        Before = null;
        Touched();
    }
}
