namespace Bakehouse.Web.BetterPlan;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheWeek;
using Microsoft.AspNetCore.Components;

/// <summary>The offer of a better plan: asked for, looked at, taken or left.</summary>
public sealed partial class BetterTray
{
    private bool open;
    private bool busy;
    private string said = "";

    private Offer? Offered { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private Words Words => Words.Of(Book.State.Shop);

    private string Looked => Search.Last is { } last && said.Length == 0 ? $"Looked at {Words.DayAndTime(Words.Local(last.At))}: nothing better that is worth moving for." : "";

    /// <inheritdoc/>
    public void Dispose()
    {
        Book.Changed -= BookChanged;
        Search.Changed -= SearchChanged;
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Book.Changed += BookChanged;
        Search.Changed += SearchChanged;
        await See();
    }

    private void BookChanged(BookState state) => SearchChanged();

    private void SearchChanged() => _ = InvokeAsync(async () =>
    {
        await See();
        StateHasChanged();
    });

    /// <summary>What the offer does to the plan as it stands now; one that fits no more is put aside.</summary>
    private async Task See()
    {
        var (state, now) = (Book.State, Clock.GetCurrentInstant());
        Offered = null;
        if (Search.Last is { Plan: { } plan } found)
        {
            var command = new TakePlan(Guid.NewGuid(), Here.Person, Here.Device, plan, state.Head);
            var foreseen = await Book.Foresee(command);
            if (foreseen.Answer.Kind == AnswerKind.Accepted && PlanFacts.Of(state, now) is { } before && PlanFacts.Of(state with { Wall = foreseen.Wall }, now) is { } after)
            {
                Offered = new Offer(command, WhatMoves.Of(state, foreseen, now), GainWords.Of(before, after, found.Was, found.Becomes));
            }
            else if (foreseen.Answer.Kind == AnswerKind.Refused)
            {
                Search.PutAside();
            }
        }
    }

    private async Task Look()
    {
        said = "";
        await Search.Look();
    }

    private async Task Take(Offer offer)
    {
        busy = true;
        var answer = await Book.Enter(offer.Command);
        (busy, open) = (false, false);
        said = answer.Kind == AnswerKind.Accepted ? $"The new plan hangs since {Words.Time(Words.Local(Clock.GetCurrentInstant()).TimeOfDay)}." : answer.Message;
        if (answer.Kind != AnswerKind.Clash)
        {
            Search.PutAside();
        }
    }

    private void Leave()
    {
        open = false;
        Search.PutAside();
    }

    private sealed record Offer(TakePlan Command, WhatMoves What, string Gain);
}
