namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Orders;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>The strip on top: what is being promised, then where the taken order stands. One main button.</summary>
public partial class OrderAnswer
{
    [Parameter, EditorRequired]
    public OrderForm Form { get; set; } = default!;

    [Parameter, EditorRequired]
    public Words Words { get; set; } = default!;

    [Parameter]
    public LocalDateTime? When { get; set; }

    [Parameter]
    public LocalDate Today { get; set; }

    /// <summary>The order as the book has it, once it is written.</summary>
    [Parameter]
    public Order? Taken { get; set; }

    [Parameter]
    public Standing? Standing { get; set; }

    /// <summary>The stage that waits for the read-back, or null.</summary>
    [Parameter]
    public Stage? Asking { get; set; }

    [Parameter]
    public bool Busy { get; set; }

    [Parameter]
    public EventCallback<Stage> Save { get; set; }

    [Parameter]
    public EventCallback ReadBackYes { get; set; }

    [Parameter]
    public EventCallback ReadBackNo { get; set; }

    [Parameter]
    public EventCallback Again { get; set; }

    /// <summary>Null when there is nothing to take back.</summary>
    [Parameter]
    public Action? Undo { get; set; }

    private string Headline => When is { } at ? $"{Words.LongDay(at.Date)} at {Words.Time(at.TimeOfDay)}" : "Say the day and how many";

    private string Second => When is { } at
        ? $"{Words.InDays(Today, at.Date)}. {(Form.Count.Length > 0 ? $"{Form.Count} {(Form.Cut == Cut.Dessert ? "dessert slices" : "with coffee")}." : "How many?")}"
        : "What you type is kept on this screen.";

    private string TakenSays
    {
        get
        {
            var head = Taken!.Stage switch
            {
                Stage.Enquiry => $"Enquiry {Taken.Number} is written down.",
                Stage.Kept => $"The day is kept for {Taken.Number}.",
                _ when Taken.Version > 1 => $"Order {Taken.Number} is changed, version {Taken.Version}.",
                _ => $"Order {Taken.Number} is taken.",
            };
            return Standing is null ? head : $"{head} Ready {Words.DayAndTime(Words.Local(Standing.Ready))}, {Standing.Word}.";
        }
    }
}
