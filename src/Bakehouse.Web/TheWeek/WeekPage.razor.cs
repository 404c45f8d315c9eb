namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain.Orders;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

/// <summary>Do all cakes get out, and where is it narrow? Live: the book's changes and each minute draw it anew.</summary>
public partial class WeekPage
{
    private const double UsualWidth = 1410;
    private const double NarrowWidth = 760;

    private ElementReference tray;
    private ITimer? timer;
    private IJSObjectReference? module;
    private DotNetObjectReference<WeekPage>? self;
    private double width = UsualWidth;
    private int later;
    private bool asTable;
    private bool narrow;
    private bool watching;
    private string? cake;
    private string? step;

    /// <summary>What is drawn; null without a shop.</summary>
    public WeekPicture? Picture { get; private set; }

    [Inject]
    private NavigationManager Navigation { get; set; } = default!;

    private IReadOnlyList<Order> NoRoom => [.. Book.State.Orders.Where(o => Standing.FoundNoRoom(Book.State, o))];

    private StepFacts? ChosenStepFacts => ChosenCake?.Steps.FirstOrDefault(s => s.Id == step);

    private CakeFacts? ChosenCake => Picture?.Facts.Cakes.FirstOrDefault(c => c.Id == cake);

    private string Heading
    {
        get
        {
            if (Picture is not { Window: var window })
            {
                return "The week";
            }

            var words = Words.Of(Picture.Facts.Shop);
            var first = words.Day(window.First);
            return $"{(window.First.Month == window.Last.Month ? first[..^4] : first)} to {words.Day(window.Last)[..^4]} {words.LongDay(window.Last).Split(' ')[^1]}";
        }
    }

    /// <summary>The browser says how wide the drawing may be.</summary>
    [JSInvokable]
    public void Wide(double px)
    {
        if (Math.Abs(px - width) >= 1)
        {
            width = px;
            narrow = px < NarrowWidth;
            Draw(Book.State);
            StateHasChanged();
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Book.Changed -= Changed;
        timer?.Dispose();
        undoEnds?.Dispose();
        self?.Dispose();
        if (module is not null)
        {
            try
            {
                await module.DisposeAsync();
            }
            catch (JSDisconnectedException)
            {
                // The screen is gone, and its script with it.
            }
        }

        GC.SuppressFinalize(this);
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        Book.Changed += Changed;
        Draw(Book.State);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            var now = Clock.GetCurrentInstant().ToUnixTimeMilliseconds();
            var toMinute = TimeSpan.FromMilliseconds(60_000 - (now % 60_000));
            timer = Time.CreateTimer(state => _ = InvokeAsync(Minute), null, toMinute, TimeSpan.FromMinutes(1));
            self = DotNetObjectReference.Create(this);
            module = await Js.InvokeAsync<IJSObjectReference>("import", "/js/week.js");
        }

        var drawn = Picture is { Rows.Count: > 0 } && !asTable;
        var begin = drawn && !watching && module is not null;
        watching = drawn && module is not null;
        if (begin)
        {
            await module!.InvokeVoidAsync("watch", tray, self);
        }
    }

    private void Changed(BookState state) => _ = InvokeAsync(async () =>
    {
        Draw(state);
        await Follow(state);
        StateHasChanged();
    });

    private void Minute()
    {
        Draw(Book.State);
        StateHasChanged();
    }

    private void Draw(BookState state)
    {
        var heads = narrow ? WeekInk.NarrowHead : WeekInk.HeadWide;
        Picture = WeekPicture.Of(state, Clock.GetCurrentInstant(), later, width - heads);
    }

    private void Move(int windows)
    {
        later += windows;
        Draw(Book.State);
    }

    private void Choose((string? Cake, string? Step) chosen)
    {
        (cake, step) = chosen;
        EndMove();
    }

    private void Open(CakeFacts opened)
    {
        if (opened.Order is { } order)
        {
            Navigation.NavigateTo($"/cakes/{order.Number}");
        }
    }
}
