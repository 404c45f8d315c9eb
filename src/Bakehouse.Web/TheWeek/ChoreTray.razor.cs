namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Entries;
using Bakehouse.Domain;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>The chores of the book; one at a time is written, changed or taken away.</summary>
public partial class ChoreTray
{
    private ChoreForm? form;
    private IReadOnlyList<Problem> problems = [];
    private WhatMoves? what;
    private bool looked;
    private bool wrong;
    private string said = "";

    /// <summary>The tray was closed.</summary>
    [Parameter]
    public EventCallback OnClose { get; set; }

    [CascadingParameter]
    private Who Here { get; set; } = new("", "");

    private Shop Shop => Book.State.Shop!;

    private LocalDate Today => Words.Of(Shop).Now(Clock).Date;

    private void Open(ChoreForm opened)
    {
        (form, said) = (opened, "");
        Changed();
    }

    /// <summary>What was looked at does not hold for what stands there now.</summary>
    private void Changed() => (what, looked, problems) = (null, false, []);

    private async Task Look()
    {
        var (chore, wrongs) = form!.Read(Shop);
        problems = wrongs;
        if (chore is null)
        {
            return;
        }

        (looked, what) = (true, null);
        var foreseen = await Book.Foresee(new WriteChore(Guid.NewGuid(), Here.Person, Here.Device, chore));
        if (foreseen.Answer.Kind == AnswerKind.Accepted)
        {
            what = WhatMoves.Of(Book.State, foreseen, Clock.GetCurrentInstant());
            Tell(foreseen.Answer.Message, false);
            return;
        }

        looked = false;
        Refused(foreseen.Answer);
    }

    private Task Write()
    {
        var (chore, wrongs) = form!.Read(Shop);
        problems = wrongs;
        return chore is null ? Task.CompletedTask : Enter(chore, $"{chore.Name} is written down.");
    }

    private Task Drop() => form!.Read(Shop).Chore is { } chore ? Enter(chore with { Dropped = true }, $"{chore.Name} is taken away.") : Task.CompletedTask;

    private async Task Enter(Chore chore, string done)
    {
        var answer = await Book.Enter(new WriteChore(Guid.NewGuid(), Here.Person, Here.Device, chore));
        if (answer.Kind != AnswerKind.Accepted)
        {
            Refused(answer);
            return;
        }

        form = null;
        Changed();
        Tell($"{done} {answer.Message}".Trim(), false);
    }

    private void Refused(Answer answer)
    {
        problems = answer.Problems;
        Tell(answer.Problems.Count > 0 ? "" : answer.Message, true);
    }

    private void Tell(string words, bool isWrong) => (said, wrong) = (words, isWrong);
}
