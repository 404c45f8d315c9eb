namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Orders;
using Microsoft.AspNetCore.Components;

/// <summary>The same cake once more: from the page of a cake, or for a customer who was here before.</summary>
public sealed partial class OrderPage
{
    /// <summary>Number of the order whose cake is made again, from the address.</summary>
    [SupplyParameterFromQuery]
    public int? Again { get; set; }

    /// <summary>True if a cutting cake beside that order is asked for, from the address.</summary>
    [SupplyParameterFromQuery]
    public bool Beside { get; set; }

    /// <summary>The form of that order's cake, or of what is cut beside it.</summary>
    private OrderForm FormOf(Order order) => Beside && Builds.Beside(order, order.ShortTold, Shop) is [var cake, ..] ? OrderForm.Beside(order, cake, Shop) : OrderForm.Again(order, Shop);

    private Order? Asks => Again is { } number && Id is null ? Book.State.Orders.FirstOrDefault(o => o.Number == number) : null;

    /// <summary>Day and hour that were said already stay; what else was typed comes back by a tap.</summary>
    private void TakeAgain(Order order)
    {
        var (day, hour, phone) = (Form.Day, Form.Hour, Form.Phone);
        LayAside(OrderForm.Again(order, Shop));
        (Form.Day, Form.Hour, Form.Phone) = (day, hour, phone.Trim().Length > 0 ? phone : Form.Phone);
        Touched();
    }

    private void StartAgain()
    {
        LayAside(Fresh());
        Touched();
    }

    /// <summary>Another form takes the place of what was typed, which a tap brings back for ten seconds.</summary>
    private void LayAside(OrderForm next)
    {
        Before = Form.IsBlank ? null : Form;
        Form = next;
        (topAsked, eatersAsked) = (false, false);
        Problems = [];
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
