namespace Bakehouse.Web.TheCakes;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>One cake: all that is needed to build it, where it stands, and what changed.</summary>
public sealed partial class OneCakePage : IDisposable
{
    /// <summary>The order's number.</summary>
    [Parameter]
    public int Number { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private IReadOnlyList<OrderVersion> History { get; set; } = [];

    private IReadOnlyList<CakeLine> Log { get; set; } = [];

    private IReadOnlyList<Problem> Problems { get; set; } = [];

    private Order? Order => Book.State.Orders.FirstOrDefault(o => o.Number == Number);

    /// <summary>Null only for a build that was written down before it was checked as it is now.</summary>
    private BuildSheet? Sheet => Book.State.Shop is { } shop && Order is { } order ? BuildSheet.Try(order.Tiers, order.Finish, CakeFigures.Of(shop)) : null;

    private IReadOnlyList<Caution> Cautions => Book.State.Shop is { } shop && Order is { } order ? Caution.Of(order, Sheet, shop, Book.State.CookbookOf(order)) : [];

    private Words Said => Words.Of(Book.State.Shop);

    private string Country => Book.State.Shop?.Settings.Country ?? "GB";

    private Domain.Shops.Role? Role => Book.State.Shop?.PersonOf(Here.Person)?.Role;

    private LocalDate Today => Said.Now(Clock).Date;

    /// <summary>When it goes out of the door: a delivery leaves before it arrives.</summary>
    private string Leaves => Order!.Handover is { Way: Way.Deliver } route
        ? $"{Said.Day(route.At.PlusMinutes(-route.RouteMinutes).Date, Today)}, leave {Said.Time(route.At.PlusMinutes(-route.RouteMinutes).TimeOfDay)}"
        : Said.DayAndTime(Order.Handover.At, Today);

    private string How => Order!.Handover.Way == Way.Collect
        ? "collect."
        : $"deliver {Said.Time(Order.Handover.At.TimeOfDay)}, {Order.Handover.Address}.";

    /// <inheritdoc/>
    public void Dispose() => Book.Changed -= Refresh;

    /// <inheritdoc/>
    protected override void OnInitialized() => Book.Changed += Refresh;

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync() => await ReadHistory();

    private async Task ReadHistory()
    {
        History = Order is null ? [] : await Book.History(Order.Id);
        Log = Order is null ? [] : await Book.Log(Order.Id);
    }

    private void Refresh(BookState state) => _ = InvokeAsync(async () =>
    {
        await ReadHistory();
        StateHasChanged();
    });

    /// <summary>Back a stage that a tick brought: that tick is taken back, so that the work stands in the plan again. Null if no tick did.</summary>
    private string? TickOf(Stage to) => (Order!.Stage, to) switch
    {
        (Stage.HandedOver, Stage.Ready) => TickedStep("handover", "deliver"),
        (Stage.Ready, Stage.InWork) => TickedStep("box"),
        _ => null,
    };

    private string? TickedStep(params string[] operations) => Log
        .Where(l => StepKey.Parse(l.Step) is { } key && operations.Contains(key.Operation) && l.Deed is CakeDeed.Ticked or CakeDeed.Corrected or CakeDeed.TakenBack)
        .GroupBy(l => l.Step, StringComparer.Ordinal).Where(g => g.Last().Deed != CakeDeed.TakenBack).Select(g => g.Key).LastOrDefault();

    private async Task Move(Stage to)
    {
        var answer = await Book.Enter(TickOf(to) is { } tick
            ? new UndoTick(Guid.NewGuid(), Here.Person, Here.Device, tick)
            : new MoveStage(Guid.NewGuid(), Here.Person, Here.Device, Order!.Id, Order.Version, to));
        Problems = answer.Kind == AnswerKind.Accepted ? []
            : answer.Problems.Count > 0 ? answer.Problems
            : [new Problem("Stage", "", answer.Message.Length > 0 ? answer.Message : "Somebody else changed it meanwhile.", "")];
    }
}
