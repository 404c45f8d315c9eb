namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Planning;

/// <summary>Steps, hours and stops of the plan in words.</summary>
internal sealed class PlanWords(Desk desk)
{
    private readonly StopWords words = new(desk.State.Week!, desk.Shop, desk.State.Orders, desk.State.Chores);

    public string Name(string step) => words.Name(step);

    public string Say(Stop stop, bool earlier) => words.Say(stop, earlier);

    /// <summary>"“Wrap 8 in” of 409 stands at Thu 10:00 with Petra".</summary>
    public string Stands(StepRow row) =>
        $"{Name(row.Step)} stands at {words.Hour(row.Start)}{(row.People.Count > 0 ? $" with {string.Join(" and ", row.People.Select(desk.NameOf))}" : "")}";

    private static bool Is(StepRow row, Fixed given) => row.Start == given.Start && row.Machine == given.Machine && row.People.ToHashSet().SetEquals(given.People!);

    /// <summary>What could not stay pinned, each in a sentence; empty if all pins that held still do.</summary>
    public string Lost(Wall? wall)
    {
        var week = desk.State.Week!;
        var rows = (wall?.From(week.Epoch).Steps ?? []).ToDictionary(r => r.Step);
        var ticked = desk.State.Ticks.Select(t => t.Step).ToHashSet();
        return string.Join(' ', week.Fixed
            .Where(f => f.Why == "pinned" && !ticked.Contains(f.Step!) && rows.TryGetValue(f.Step!, out var row) && !Is(row, f))
            .Select(f => $"{Name(f.Step!)} could not stay pinned at {words.Hour(f.Start!.Value)}: now it {Stands(rows[f.Step!])[(Name(f.Step!).Length + 1)..]}."));
    }
}
