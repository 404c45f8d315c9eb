namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain.Planning;
using Bakehouse.Web.Shell;
using Microsoft.AspNetCore.Components;
using NodaTime;

/// <summary>The step that is chosen, and its way by hand to another place: what is picked goes up to the page.</summary>
public partial class MoveStep
{
    [Parameter, EditorRequired]
    public PlanFacts Facts { get; set; } = default!;

    [Parameter, EditorRequired]
    public StepFacts Step { get; set; } = default!;

    /// <summary>The move that is going on, or null.</summary>
    [Parameter]
    public Moving? Move { get; set; }

    /// <summary>The pin of the step, or null.</summary>
    [Parameter]
    public Pin? Pin { get; set; }

    /// <summary>What the pick would do; null while it is worked out.</summary>
    [Parameter]
    public WhatMoves? What { get; set; }

    /// <summary>Why the book says no, or "".</summary>
    [Parameter]
    public string Said { get; set; } = "";

    [Parameter]
    public EventCallback OnMove { get; set; }

    [Parameter]
    public EventCallback OnPin { get; set; }

    [Parameter]
    public EventCallback OnUnpin { get; set; }

    /// <summary>Another time, person or place was picked.</summary>
    [Parameter]
    public EventCallback OnPicked { get; set; }

    [Parameter]
    public EventCallback OnPut { get; set; }

    [Parameter]
    public EventCallback OnLeave { get; set; }

    private Words Words => Words.Of(Facts.Shop);

    private List<(string, string)> Crews => [.. Move!.Crews.Select(c => (Key(c), Who(c)))];

    private List<(string, string)> Machines => [.. Move!.Machines.Select(m => (m, Facts.PlaceOf(m)))];

    private static string Key(IReadOnlyList<string> people) => string.Join(' ', people.Order(StringComparer.Ordinal));

    private string Who(IReadOnlyList<string> people) => people.Count == 0 ? "no hands" : string.Join(" and ", people.Select(Facts.NameOf));

    private string Told(Span run) => run.From == run.To
        ? WhyThen.When(Words, Move!.At(run.From))
        : $"{WhyThen.When(Words, Move!.At(run.From))} to {Last(run)}";

    private string Last(Span run) => Words.Local(Move!.At(run.From)).Date == Words.Local(Move.At(run.To)).Date
        ? Words.Time(Words.Local(Move.At(run.To)).TimeOfDay)
        : WhyThen.When(Words, Move.At(run.To));

    private Task Take(IReadOnlyList<string> people, string? machine)
    {
        Move!.Take(people, machine);
        return OnPicked.InvokeAsync();
    }

    private Task Pick(Instant at)
    {
        Move!.Pick(at);
        return OnPicked.InvokeAsync();
    }
}
