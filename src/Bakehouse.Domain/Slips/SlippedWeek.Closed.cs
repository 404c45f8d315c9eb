namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Planning;

/// <content>People and equipment that are not there, and work that takes longer.</content>
internal sealed partial class SlippedWeek
{
    /// <summary>
    /// A fridge whose door stays shut keeps its cold for about four hours (USDA FSIS, "Keep your food safe during emergencies"): so
    /// long, what stands in it may stay, and somebody reads the thermometer.
    /// </summary>
    private const int ShutDoor = 4 * 60;

    private Span Times(Slip slip) => new(
        Math.Max(0, time.Minute(slip.From!.Value)) / WeekTime.Grain * WeekTime.Grain, Math.Min(time.Horizon, WeekTime.Up(time.Minute(slip.Until!.Value))));

    private void Close(string id, Slip slip)
    {
        var shut = Times(slip);
        if (shut.From >= shut.To)
        {
            return;
        }

        week = week with
        {
            Machines = [.. week.Machines.Select(m => m.Id == id ? m with { Down = m.Down.Joined(AfterLoad(m, shut)) } : m)],
            Stores = shut.Minutes <= ShutDoor ? week.Stores : [.. week.Stores.Select(s => s.Id == id ? s with { Down = s.Down.Joined(shut) } : s)],
        };
    }

    /// <summary>What is in the oven stays in it with the door shut, unless it was told as lost: the oven is closed to what comes next.</summary>
    private Span AfterLoad(Machine machine, Span shut)
    {
        var running = rows.Values.Where(r => r.Machine == machine.Id && r.Start < shut.From && !IsTicked(r.Step))
            .Select(r => (Row: r, Step: week.Steps.FirstOrDefault(s => s.Id == r.Step))).Where(r => r.Step is not null).Select(r => r.Row.Start + r.Step!.Minutes);
        return shut with { From = Math.Min(shut.To, running.Where(end => end > shut.From).Append(shut.From).Max()) };
    }

    private void SendHome(string person, Slip slip)
    {
        var away = Times(slip);
        week = week with
        {
            People = [.. week.People.Select(p => p.Id == person ? p with { Shifts = p.Shifts.Without(away), Extra = p.Extra.Without(away) } : p)],
        };
    }

    /// <summary>
    /// The step lasts from when it began until it will be done; who does it stays so long, if need be over the hour. Once that time is
    /// over and it is not ticked, nobody knows how long it takes, and it counts as planned.
    /// </summary>
    private void Lengthen(string id, Slip slip)
    {
        var step = week.Steps.FirstOrDefault(s => s.Id == id);
        var whole = Times(slip);
        if (step is null || IsTicked(id) || whole.To <= time.Now || whole.Minutes <= step.Minutes)
        {
            return;
        }

        var who = rows.TryGetValue(id, out var row) && row.Start == whole.From ? row.People : [];
        week = week with
        {
            Steps = [.. week.Steps.Select(s => s.Id == id ? s with { Minutes = whole.Minutes } : s)],
            People = [.. week.People.Select(p => who.Contains(p.Id) ? p with { Extra = Stay(p, whole) } : p)],
        };
    }

    private static IReadOnlyList<Span> Stay(WeekPerson person, Span whole)
    {
        IReadOnlyList<Span> missing = [whole];
        missing = person.Shifts.Concat(person.Extra).Aggregate(missing, SpanLists.Without);
        return missing.Aggregate(person.Extra, SpanLists.Joined);
    }
}
