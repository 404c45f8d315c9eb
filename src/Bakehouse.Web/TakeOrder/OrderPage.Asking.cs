namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Cakes;

/// <summary>Asks "can we?" shortly after each change of what was typed, and again when the book changes.</summary>
public sealed partial class OrderPage
{
    // Nobody waits for so little, and whoever types on is not asked for after each letter.
    private static readonly TimeSpan AskAfter = TimeSpan.FromMilliseconds(100);
    private ITimer? soon;
    private CancellationTokenSource? inquiry;

    /// <summary>The newest answer, or null as long as day, hour and number are not known.</summary>
    private CanWe? Can { get; set; }

    /// <summary>True while too many others ask: the answer is asked for again each second.</summary>
    private bool InTurn { get; set; }

    /// <summary>True while a newer one is worked out.</summary>
    private bool Wondering { get; set; }

    /// <summary>The offer for which other cakes may move; gone as soon as something else is typed.</summary>
    private Offer? Moving { get; set; }

    /// <inheritdoc/>
    protected override void OnInitialized() => Book.Changed += AskAnew;

    // Shop, recipes or orders changed: what is drawn from them, too.
    private void AskAnew(BookState state) => _ = InvokeAsync(() =>
    {
        if (Taken is null && state.Shop is not null)
        {
            Draw();
        }

        AskSoon();
    });

    private void AskSoon()
    {
        inquiry?.Cancel();
        Wondering = Can is not null;
        soon ??= Time.CreateTimer(_ => _ = InvokeAsync(AskNow), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        soon.Change(AskAfter, Timeout.InfiniteTimeSpan);
    }

    /// <summary>First the wish, which is quick; then what decides it and what else could be; then what takes a moment.</summary>
    private async Task AskNow()
    {
        using var mine = inquiry = new CancellationTokenSource();
        var order = Taken is null && Book.State.Shop is not null ? Reader.Asked(Form, InBook) : null;
        try
        {
            InTurn = false;
            var known = Taken is null && Book.State.Shop is not null ? Reader.Known(Form, InBook) : null;
            ForgetDays(known);
            var first = order is null ? null : await Heard(() => Book.Ask(order, mine.Token), mine);
            await Show(first, mine);
            if (first is not null)
            {
                var whole = await Heard(() => Book.AskFurther(first, mine.Token), mine);
                await Show(whole, mine);
                await Show(whole.Wished.IsYes ? whole : await Heard(() => Book.AskLast(whole, mine.Token), mine), mine);
            }

            await AskDays(known, mine.Token);
        }
        catch (OperationCanceledException)
        {
            // Somebody typed on: the newer question is on its way.
        }
        finally
        {
            if (inquiry == mine)
            {
                inquiry = null;
            }
        }
    }

    /// <summary>An answer; while too many ask at once it is said that it is awaited, and asked again each second.</summary>
    private async Task<CanWe> Heard(Func<Task<CanWe?>> ask, CancellationTokenSource mine)
    {
        while (true)
        {
            if (await ask() is { } answer)
            {
                InTurn = false;
                return answer;
            }

            mine.Token.ThrowIfCancellationRequested();
            InTurn = true;
            await InvokeAsync(StateHasChanged);
            await Task.Delay(AgainAfter, Time, mine.Token);
        }
    }

    private Task Show(CanWe? answer, CancellationTokenSource mine)
    {
        mine.Token.ThrowIfCancellationRequested();
        (Can, Wondering) = (answer, false);
        return InvokeAsync(StateHasChanged);
    }

    /// <summary>Puts an offer into the form; the rest of what was typed stays.</summary>
    private void TakeThis(Offer taken)
    {
        var offer = taken.Fit;
        var read = OrderForm.Of(offer.Order, Shop);
        if (taken.Kind == OfferKind.Moves)
        {
            if (offer.Order.Handover.At != Can?.Wished.Order.Handover.At)
            {
                (Form.Day, Form.Hour) = (read.Day, read.Hour);
                Touched();
            }

            Moving = taken;
            return;
        }

        var kept = offer.Order.Tiers.Select(t => t.Id).ToHashSet();
        (Form.Day, Form.Hour, Form.Finish, Form.Decoration) = (read.Day, read.Hour, read.Finish, read.Decoration);
        Form.Tiers = Form.IsUnbuilt ? read.Tiers : [.. Form.Tiers.Where(t => kept.Contains(t.Id))];
        if (offer.Order.Tiers.Count < (Can?.Wished.Order.Tiers.Count ?? 0))
        {
            Form.ByGuests = false;
            Form.Count = BuildSheet.Of(offer.Order).Portions(Form.Cut).ToString(System.Globalization.CultureInfo.InvariantCulture);
        }

        Touched();
    }
}
