namespace Bakehouse.Web.TheWeek;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Web.Access;
using NodaTime;

/// <summary>A step on its way to another place: where it may stand, which of it is picked, and why it goes no further.</summary>
public sealed class Moving
{
    private readonly BookState state;
    private readonly Week week;
    private readonly Reach reach;
    private readonly Step step;
    private readonly StopWords words;

    private Moving(BookState state, Reach reach, StepRow row)
    {
        (this.state, week, this.reach) = (state, state.Week!, reach);
        step = week.Steps.First(s => s.Id == row.Step);
        words = new StopWords(week, state.Shop!, state.Orders, state.Chores);
        (People, Machine, Stood, Crews) = (row.People, row.Machine, row.Start, reach.Crews());
        Runs = reach.Starts(People, Machine);
    }

    /// <summary>Id of the step.</summary>
    public string Step => step.Id;

    /// <summary>The head on which this was worked out.</summary>
    public int Head => state.Head;

    /// <summary>Who could do it, each as many as it needs.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Crews { get; }

    /// <summary>Ovens or bowls that take it; empty if it needs none.</summary>
    public IReadOnlyList<string> Machines => [.. reach.Machines().OfType<string>()];

    /// <summary>Who is picked.</summary>
    public IReadOnlyList<string> People { get; private set; }

    /// <summary>Which oven or bowl is picked.</summary>
    public string? Machine { get; private set; }

    /// <summary>First and last start of each stretch in which it can begin with who and what is picked, minutes of the week.</summary>
    public IReadOnlyList<Span> Runs { get; private set; }

    /// <summary>The start that is picked, or null.</summary>
    public int? Start { get; private set; }

    /// <summary>Where it stands now.</summary>
    public int Stood { get; }

    /// <summary>Of a step of the plan on the wall; null if it is done, running or not there.</summary>
    public static Moving? Of(BookState state, string step)
    {
        if (state is not { Week: { } week, Wall: { } wall, Shop: not null })
        {
            return null;
        }

        var plan = wall.From(week.Epoch);
        return plan.Steps.FirstOrDefault(r => r.Step == step) is { } row && Reach.Of(week, plan, step) is { } reach ? new Moving(state, reach, row) : null;
    }

    /// <summary>The same picks on a newer book, as far as they are still there; null if the step can't be moved any more.</summary>
    public Moving? On(BookState newer)
    {
        var moving = Of(newer, step.Id);
        if (moving is not null)
        {
            moving.Take(moving.Crews.FirstOrDefault(c => c.ToHashSet().SetEquals(People)) ?? moving.People, Machine);
            moving.Pick(Start is { } start ? At(start) : null);
        }

        return moving;
    }

    /// <summary>Somebody else, or another oven or bowl.</summary>
    public void Take(IReadOnlyList<string> people, string? machine)
    {
        (People, Machine) = (people, machine);
        Runs = reach.Starts(people, machine);
        Pick(Start is { } start ? At(start) : null);
    }

    /// <summary>Picks the possible start nearest to an instant; none if there is none, or for null.</summary>
    public void Pick(Instant? wished)
    {
        if (wished is not { } at || Runs.Count == 0)
        {
            Start = null;
            return;
        }

        var minute = (int)Math.Round((at - week.Epoch).TotalMinutes / week.Grain) * week.Grain;
        Start = Runs.Select(r => Math.Clamp(minute, r.From, r.To)).MinBy(s => Math.Abs(s - minute));
    }

    /// <summary>True if it can begin so many minutes from the start that is picked.</summary>
    public bool Can(int minutes) => Start is { } start && Runs.Any(r => r.From <= start + minutes && start + minutes <= r.To);

    /// <summary>Why it can't begin before the stretch that is picked, or where it stands; "" if nothing is known.</summary>
    public string NotEarlier => Why(Run.From - week.Grain, true);

    /// <summary>Why it can't begin after the stretch that is picked, or where it stands.</summary>
    public string NotLater => Why(Run.To + week.Grain, false);

    /// <summary>The instant of a minute of the week.</summary>
    public Instant At(int minute) => week.Epoch + Duration.FromMinutes(minute);

    /// <summary>The end of the step if it begins at that minute.</summary>
    public Instant End(int minute) => At(minute + step.Minutes);

    /// <summary>Stretches in which one person can begin it, for the lanes; empty if it needs more than one.</summary>
    public IReadOnlyList<Span> RunsOf(string person) =>
        Crews.Any(c => c is [var only] && only == person) ? reach.Starts([person], Machine) : [];

    /// <summary>The command that puts it there.</summary>
    public PinStep Command(Who who) => new(Guid.NewGuid(), who.Person, who.Device, step.Id, At(Start ?? Stood), People, Machine, Head);

    private Span Run => Runs.Count == 0 ? new Span(Stood, Stood) : Runs.MinBy(r => Math.Abs(Math.Clamp(Start ?? Stood, r.From, r.To) - (Start ?? Stood)));

    private string Why(int start, bool earlier) => reach.WhyNot(start, People, Machine) is { } stop ? words.Say(stop, earlier) : "";
}
