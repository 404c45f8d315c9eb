namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>The days that are shown with a mark each: asked one after the other, once the wish itself has its answer.</summary>
public sealed partial class OrderPage
{
    private static readonly TimeSpan AgainAfter = TimeSpan.FromSeconds(1);

    private readonly Dictionary<LocalDate, DayAnswer> days = [];

    /// <summary>What the marks were asked for; with other work they are gone.</summary>
    private string daysFor = "";

    /// <summary>Today, unless the day that was said would not be among the twelve.</summary>
    private LocalDate FirstDay => SaidDay is { } day && day >= Now.Date.PlusDays(DayStrip.Shown) ? day.PlusDays(-DayStrip.Shown / 2) : Now.Date;

    private LocalDate? SaidDay => TakeOrder.Days.Read(Form.Day, Now.Date, Shop.Settings.Country == "US").Day;

    /// <summary>True if enough is known to ask.</summary>
    private bool AsksDays { get; set; }

    /// <summary>Marks of another cake, or of the book as it stood before, are gone before anything else is asked.</summary>
    private void ForgetDays(Order? order)
    {
        AsksDays = order is not null;
        var work = $"{Form.Work} {Book.State.Head}";
        if (work != daysFor || order is null)
        {
            days.Clear();
            daysFor = work;
            StateHasChanged();
        }
    }

    private async Task AskDays(Order? order, CancellationToken cancel)
    {
        await InvokeAsync(() => ForgetDays(order));
        foreach (var day in Enumerable.Range(0, DayStrip.Shown).Select(FirstDay.PlusDays).Where(d => order is not null && !days.ContainsKey(d)).ToList())
        {
            DayAnswer? answer;
            while ((answer = await Book.AskDay(day, order!, Hours.OfHandover(Form.Hour), cancel)) is null)
            {
                await Task.Delay(AgainAfter, Time, cancel);
            }

            cancel.ThrowIfCancellationRequested();
            days[day] = answer;
            await InvokeAsync(StateHasChanged);
        }
    }

    /// <summary>Takes a day, and its hour where none was said or another fits.</summary>
    private void Pick(LocalDate day)
    {
        Form.Day = Said.Day(day, Now.Date);
        if (days.GetValueOrDefault(day)?.At is { } at)
        {
            Form.Hour = Said.Time(at.TimeOfDay);
        }

        Touched();
    }
}
