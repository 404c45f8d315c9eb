namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Microsoft.AspNetCore.Components;

/// <content>What is done by hand: pin, move, take back; and the tray of other work.</content>
public partial class WeekPage
{
    private static readonly TimeSpan UndoStays = TimeSpan.FromSeconds(10);

    private Moving? moving;
    private WhatMoves? what;
    private string said = "";
    private bool chores;
    private (Guid Move, string Words)? put;
    private ITimer? undoEnds;

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private Role? Mine => Book.State.Shop?.PersonOf(Here.Person)?.Role;

    private bool MayPlan => EntryRights.May(typeof(PinStep), Mine);

    private bool MayWriteChores => EntryRights.May(typeof(WriteChore), Mine);

    private bool MayTakePlan => EntryRights.May(typeof(TakePlan), Mine);

    private Pin? PinOf(string id) => Book.State.Pins.FirstOrDefault(p => p.Step == id);

    /// <summary>Shows where the chosen step can stand; a step that is done or running says so.</summary>
    private void BeginMove()
    {
        (moving, what) = (Moving.Of(Book.State, step!), null);
        said = moving is null ? "It is done or running, so it stays where it is." : "";
    }

    private void EndMove() => (moving, what, said) = (null, null, "");

    private async Task Picked()
    {
        (what, said) = (null, "");
        if (moving is { Start: not null } picked)
        {
            var foreseen = await Book.Foresee(picked.Command(Here));
            if (ReferenceEquals(picked, moving))
            {
                said = foreseen.Answer.Kind == AnswerKind.Accepted ? "" : foreseen.Answer.Message;
                what = said.Length == 0 ? WhatMoves.Of(Book.State, foreseen, Clock.GetCurrentInstant(), picked.Step) : null;
            }
        }
    }

    /// <summary>A lit place was tapped, on the cake's row or on somebody's lane.</summary>
    private async Task Place((string? Person, double X) tapped)
    {
        if (moving is null || Picture is null)
        {
            return;
        }

        if (tapped.Person is { } person)
        {
            moving.Take([person], moving.Machine);
        }

        moving.Pick(Picture.Axis.At(tapped.X));
        await Picked();
    }

    private async Task Put()
    {
        var command = moving!.Command(Here);
        var words = $"{ChosenStepFacts?.What} at {WhyThen.When(Shell.Words.Of(Book.State.Shop), command.Start)}";
        if (await Entered(command))
        {
            EndMove();
            ShowUndo(command.Id, words);
        }
    }

    private async Task PinHere()
    {
        if (Moving.Of(Book.State, step!) is { } here)
        {
            await Entered(here.Command(Here));
        }
        else
        {
            said = "It is done or running, so it stays where it is.";
        }
    }

    private Task Unpin() => Entered(new UnpinStep(Guid.NewGuid(), Here.Person, Here.Device, step!));

    private async Task TakeBack()
    {
        if (put is { } last)
        {
            put = null;
            await Entered(new TakeBackMove(Guid.NewGuid(), Here.Person, Here.Device, last.Move));
        }
    }

    private async Task<bool> Entered(Command command)
    {
        var answer = await Book.Enter(command);
        said = answer.Kind == AnswerKind.Accepted ? "" : answer.Message;
        return said.Length == 0;
    }

    private void ShowUndo(Guid move, string words)
    {
        put = (move, words);
        undoEnds?.Dispose();
        undoEnds = Time.CreateTimer(_ => _ = InvokeAsync(() => { put = null; StateHasChanged(); }), null, UndoStays, Timeout.InfiniteTimeSpan);
    }

    /// <summary>The plan moved on under a move that is going on: what lights up and what it would do are worked out anew.</summary>
    private async Task Follow(BookState state)
    {
        if (moving is not null && moving.Head != state.Head)
        {
            moving = moving.On(state);
            await Picked();
        }
    }
}
