namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Answers;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
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

    [Parameter, EditorRequired]
    public Shop Shop { get; set; } = default!;

    /// <summary>The answer to "can we?", or null as long as there is too little to ask.</summary>
    [Parameter]
    public CanWe? Can { get; set; }

    /// <summary>True while a newer answer is worked out: this one is shown greyed.</summary>
    [Parameter]
    public bool Wondering { get; set; }

    /// <summary>True while others ask, too, and this answer waits for its turn.</summary>
    [Parameter]
    public bool InTurn { get; set; }

    [Parameter]
    public EventCallback<Offer> TakeThis { get; set; }

    /// <summary>The offer that was taken and for which other cakes move when the order is written; null if none do.</summary>
    [Parameter]
    public Offer? Moving { get; set; }

    [Parameter]
    public EventCallback<Stage> Save { get; set; }

    [Parameter]
    public EventCallback ReadBackYes { get; set; }

    [Parameter]
    public EventCallback ReadBackNo { get; set; }

    [Parameter]
    public EventCallback Again { get; set; }

    /// <summary>Address of the page without its host, for links within it.</summary>
    [Parameter]
    public string Page { get; set; } = "";

    /// <summary>Null when there is nothing to take back.</summary>
    [Parameter]
    public Action? Undo { get; set; }

    /// <summary>What must be avoided and stands against taking it, or null. Whatever the plan says, this comes first.</summary>
    [Parameter]
    public Weighed? Against { get; set; }

    /// <summary>What no recipe lists and the kitchen uses: the customer must hear it before saying yes.</summary>
    [Parameter]
    public IReadOnlyList<Weighed> Kitchen { get; set; } = [];

    /// <summary>The cake serves fewer than were asked for, and nobody was told; null where that is not so.</summary>
    [Parameter]
    public Serves? Few { get; set; }

    /// <summary>A day is to be kept for a cake that would be late: it is asked first, whoever keeps it.</summary>
    private bool asksLate;

    /// <summary>No day makes it right: nothing is offered that would have to be refused.</summary>
    private bool IsRefused => Against is { Verdict: Verdict.Refuse };

    private string Take => Form.Number > 0 ? "Write the change"
        : IsRefused ? "Take the order"
        : Answer is { Wished: { Proof: not null, IsYes: false } } ? "Take it late"
        : Answer is { Wished: { Budget: not null, IsYes: false } } ? "Take it all the same" : "Take the order";

    private bool IsLate => Answer is { Wished: { IsYes: false, Proof: not null } or { IsYes: false, Budget: not null } };

    /// <inheritdoc/>
    protected override void OnParametersSet() => asksLate &= IsLate;

    private Task Keep()
    {
        asksLate = IsLate;
        return asksLate ? Task.CompletedTask : Save.InvokeAsync(Stage.Kept);
    }

    private Task KeepLate()
    {
        asksLate = false;
        return Save.InvokeAsync(Stage.Kept);
    }

    private AnswerWords Says => new(Shop, Today);

    /// <summary>Yes once others move for it.</summary>
    private CanWe? Answer => Can is { Wished.IsYes: false } && Moving is { } offer ? Can with { Wished = offer.Fit } : Can;

    private string Move => Answer is { Wished.IsYes: true } && Can is { Wished.IsYes: false } && Moving is { } offer ? $" {Says.Differs(offer)}." : "";

    private MarkKind Mark => Against is { Verdict: Verdict.Refuse } ? MarkKind.Late : Against is not null ? MarkKind.NotKnown : Few is not null ? MarkKind.Tight : Can is null || Wondering ? MarkKind.NotKnown : Says.Mark(Answer!);

    private string Word => Against is { Verdict: Verdict.Refuse } ? "Not this" : Against is not null ? "Not yet" : Few is not null ? "Short" : Answer is not null ? Says.Word(Answer) : Form.Number > 0 ? $"Order {Form.Number}" : "New order";

    /// <summary>What was assumed because nobody has said it yet; "" if nothing.</summary>
    private string Assumed => Can is not null && Form.IsUnbuilt
        ? $" For {Words.Whole(Can.Wished.Order.Tiers)}, as nothing else was said."
        : "";

    private string Headline => Against is { } avoid ? $"{(avoid.Told.Length == 0 ? "" : Form.Avoid.Contains(avoid.Told) ? $"Avoid {avoid.Told}. " : $"{avoid.Told}. ")}{avoid.Reason}"
        : Few is { } few ? $"Serves {few.ToCut} of {few.Asked}: {few.Missing} short" : Planned;

    private string Planned => Answer is not null ? Says.Headline(Answer) : When is { } at ? $"{Words.LongDay(at.Date, Today)} at {Words.Time(at.TimeOfDay)}" : "Say the day and how many";

    private string DayItself => Answer is null ? "" : $" The day itself: {Says.Word(Answer).ToLowerInvariant()}, {Planned.TrimEnd('.')}.";

    private string Second => InTurn ? $"Others are asking as well: this answer comes in its turn. {Known}" : Known;

    private string Known => Against is { } avoid ? avoid.Try + DayItself : Few is not null ? "What can be done stands under How many." + DayItself : Answer is not null ? Says.Second(Answer) + Assumed + Move : When is { } at
        ? $"{Words.InDays(Today, at.Date)}. {(Form.Count.Length > 0 ? $"{Form.Count} {(Form.Cut == Cut.Dessert ? "dessert slices" : "with coffee")}." : "How many?")}"
        : "What you type is kept on this screen.";

    private string NoPlanYet => Standing is not null || !Stages.IsPlanned(Taken!.Stage) ? ""
        : PlanReach.IsFar(Taken, Shop, Today) ? $"Hours and places are kept; its plan is made on {Words.Day(PlanReach.PlannedFrom(Taken, Shop), Today)}."
        : "It is not in the plan yet.";

    private string Until => Taken!.KeptUntil is { } until ? $" until {Words.DayAndTime(Words.Local(until), Today)}" : "";

    private string TakenSays
    {
        get
        {
            var head = Taken!.Stage switch
            {
                Stage.Enquiry => $"Enquiry {Taken.Number} is written down.",
                Stage.Kept => $"The day is kept for {Taken.Number}{Until}.",
                _ when Taken.Version > 1 => $"Order {Taken.Number} is changed, version {Taken.Version}.",
                _ => $"Order {Taken.Number} is taken.",
            };
            return Standing is null ? head : $"{head} Ready {Words.DayAndTime(Words.Local(Standing.Ready))}, {Standing.Word}.";
        }
    }
}
