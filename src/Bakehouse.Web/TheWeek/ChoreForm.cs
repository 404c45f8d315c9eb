namespace Bakehouse.Web.TheWeek;

using Bakehouse.Domain;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Shops;
using NodaTime;
using NodaTime.Text;

/// <summary>Work that is no order as it is typed; every field has a usual value.</summary>
public sealed class ChoreForm
{
    private static readonly LocalTimePattern Clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    private readonly Guid id;
    private readonly int version;

    private ChoreForm(Guid id, int version) => (this.id, this.version) = (id, version);

    /// <summary>True once it is in the book.</summary>
    public bool IsKept => version > 0;

    public ChoreKind Kind { get; private set; }

    public string Name { get; set; } = "";

    public string Day { get; set; } = "";

    public string From { get; set; } = "";

    public string To { get; set; } = "";

    /// <summary>Last day, or "" for no end.</summary>
    public string Last { get; set; } = "";

    public ICollection<IsoDayOfWeek> Days { get; init; } = [];

    public ICollection<string> People { get; init; } = [];

    public ICollection<string> Machines { get; init; } = [];

    public ICollection<string> Shelves { get; init; } = [];

    /// <summary>Words for each kind; also the usual name.</summary>
    public static IReadOnlyList<(ChoreKind Kind, string Words)> Kinds { get; } =
    [
        (ChoreKind.CounterBake, "Counter bake"), (ChoreKind.Delivery, "Delivery"), (ChoreKind.Cleaning, "Cleaning"), (ChoreKind.SchoolRun, "School run"), (ChoreKind.Other, "Something else"),
    ];

    /// <summary>A new one: a counter bake of an hour and a half, tomorrow, by whoever writes it.</summary>
    public static ChoreForm New(LocalDate today, string person)
    {
        var form = new ChoreForm(Guid.NewGuid(), 0) { Day = LocalDatePattern.Iso.Format(today.PlusDays(1)), From = "06:00", To = "07:30", People = { person } };
        form.Be(ChoreKind.CounterBake);
        return form;
    }

    /// <summary>One that is in the book.</summary>
    public static ChoreForm Of(Chore chore) => new(chore.Id, chore.Version)
    {
        Kind = chore.Kind,
        Name = chore.Name,
        Day = LocalDatePattern.Iso.Format(chore.First),
        From = Clock.Format(chore.From),
        To = Clock.Format(chore.To),
        Last = chore.Last is { } last ? LocalDatePattern.Iso.Format(last) : "",
        Days = [.. chore.Days],
        People = [.. chore.People],
        Machines = [.. chore.Machines],
        Shelves = [.. chore.Shelves],
    };

    /// <summary>Another kind; a name that was only the kind's goes with it.</summary>
    public void Be(ChoreKind kind)
    {
        if (Name.Length == 0 || Kinds.Any(k => k.Words == Name))
        {
            Name = kind == ChoreKind.Other ? "" : Kinds.First(k => k.Kind == kind).Words;
        }

        Kind = kind;
    }

    /// <summary>In if it was out, out if it was in.</summary>
    public static void Turn<T>(ICollection<T> list, T item)
    {
        if (!list.Remove(item))
        {
            list.Add(item);
        }
    }

    /// <summary>The chore, or every problem of it.</summary>
    public (Chore? Chore, IReadOnlyList<Problem> Problems) Read(Shop shop)
    {
        var typed = new List<Problem>();
        var day = Date("first day", Day, typed);
        var last = Last.Length == 0 ? null : Date("last day", Last, typed);
        var (from, to) = (Time("from", From, typed), Time("to", To, typed));
        if (day is null || from is null || to is null || typed.Count > 0)
        {
            return (null, typed);
        }

        var chore = new Chore(id, version, Kind, Name.Trim(), day.Value, from.Value, to.Value, [.. Days.Order()], Days.Count == 0 ? null : last, [.. People], [.. Machines], [.. Shelves]);
        var problems = ChoreChecks.Problems(chore, shop);
        return (problems.Count == 0 ? chore : null, problems);
    }

    private static LocalDate? Date(string where, string typed, List<Problem> problems)
    {
        var read = LocalDatePattern.Iso.Parse(typed);
        if (!read.Success)
        {
            problems.Add(new Problem(where, typed, "That is no day.", "Give day, month and year."));
        }

        return read.Success ? read.Value : null;
    }

    private static LocalTime? Time(string where, string typed, List<Problem> problems)
    {
        var read = Clock.Parse(typed.Length > 5 ? typed[..5] : typed);
        if (!read.Success)
        {
            problems.Add(new Problem(where, typed, "That is no time of day.", "Write it as 06:30."));
        }

        return read.Success ? read.Value : null;
    }
}
