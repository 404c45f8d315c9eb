namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Lanes of people, ovens and bowls that have something to do in the window.</summary>
internal static class LaneDrawing
{
    private const double PersonHigh = 29;
    private const double MachineHigh = 31;
    private const double Air = 4;

    /// <summary>The lanes from the top.</summary>
    public static IReadOnlyList<Lane> Of(PlanFacts facts, TimeAxis axis)
    {
        var work = facts.Work.Where(s => axis.Shows(s.From, s.To)).ToList();
        var lanes = new List<Lane>();
        var y = 0.0;
        foreach (var person in facts.People)
        {
            var own = work.Where(s => s.People.Contains(person.Id)).ToList();
            var chores = Chores(facts, axis, c => c.People.Contains(person.Id), y, PersonHigh);
            if (own.Count + chores.Count > 0)
            {
                lanes.Add(new Lane(person.Name, Hours(facts, person, axis), y, PersonHigh, Blocks(facts, axis, own, y, PersonHigh), [.. Off(person, axis)]) { Person = person.Id, Chores = chores });
                y += PersonHigh;
            }
        }

        foreach (var oven in new[] { true, false })
        {
            var machines = facts.Machines.Where(m => m.IsOven == oven).ToList();
            var own = work.Where(s => machines.Any(m => m.Id == s.Machine)).ToList();
            var chores = Chores(facts, axis, c => machines.Any(m => c.Machines.Contains(m.Id)), y, MachineHigh);
            if (own.Count + chores.Count > 0)
            {
                var used = machines.Where(m => own.Any(s => s.Machine == m.Id)).Select(m => m.Name).ToList();
                var name = oven ? (machines.Count > 1 ? "Ovens" : "Oven") : "Mixers";
                lanes.Add(new Lane(name, used.Count > 1 ? $"{used.Count} in use" : "", y, MachineHigh, Blocks(facts, axis, own, y, MachineHigh), []) { Chores = chores });
                y += MachineHigh;
            }
        }

        return lanes;
    }

    /// <summary>Work that is no order: a low band, so that a load in another oven can stand over it.</summary>
    private static IReadOnlyList<ChoreBand> Chores(PlanFacts facts, TimeAxis axis, Func<ChoreFacts, bool> takes, double y, double high) =>
    [
        .. from chore in facts.Chores
           where takes(chore) && axis.Shows(chore.From, chore.To)
           let x = axis.X(chore.From)
           let wide = axis.X(chore.To) - x - 1
           where wide > 1
           select new ChoreBand(wide >= (chore.Name.Length * 8.2) + 6 ? chore.Name : "", x, y + 2, wide, high - 4),
    ];

    /// <summary>One block for a step or a whole batch: its start to the end of its longest step.</summary>
    private static IReadOnlyList<Block> Blocks(PlanFacts facts, TimeAxis axis, IEnumerable<StepFacts> steps, double y, double high)
    {
        var cakes = facts.Cakes.ToDictionary(c => c.Id);
        var runs = steps
            .GroupBy(s => s.Batch is null ? s.Id : $"{s.Machine} {s.Batch}")
            .Select(batch => batch.MaxBy(s => s.To)! with { Done = batch.All(s => s.Done) })
            .OrderBy(s => s.From)
            .ToList();
        return [.. Abreast.Of(runs).Select(run =>
        {
            var (step, (x, wide)) = (run.Step, RowDrawing.Place(axis, run.Step.From, run.Step.To));
            var (top, tall) = Abreast.Place(y + Air, high - (2 * Air), run.Track, run.Of);
            var cake = cakes.GetValueOrDefault(step.Cake);
            var text = cake is not null && run.Of == 1 && RowDrawing.InkOf(step, cake) != Ink.Late && step.Look == StepLook.Hands && wide >= (cake.Number.Length * 9.2) + 5 ? cake.Number : "";
            return new Block(step, x, top, wide, tall, RowDrawing.InkOf(step, cake), text);
        })];
    }

    /// <summary>"07:00–15:00" if every day drawn has the same hours, else "hours vary".</summary>
    private static string Hours(PlanFacts facts, PersonFacts person, TimeAxis axis)
    {
        var words = Words.Of(facts.Shop);
        var days = axis.Stretches.Where(s => s.Day is not null)
            .Select(s => person.Shifts.Where(i => i.Start < s.To && i.End > s.From).ToList())
            .Where(d => d.Count > 0)
            .Select(d => $"{words.Time(words.Local(d[0].Start).TimeOfDay)}–{words.Time(words.Local(d[^1].End).TimeOfDay)}")
            .Distinct().ToList();
        return days.Count switch { 0 => "off", 1 => days[0], _ => "hours vary" };
    }

    private static IEnumerable<(double X, double Wide)> Off(PersonFacts person, TimeAxis axis)
    {
        foreach (var day in axis.Stretches.Where(s => s.Day is not null))
        {
            var from = day.From;
            foreach (var shift in person.Shifts.Where(s => s.Start < day.To && s.End > day.From).OrderBy(s => s.Start))
            {
                if (shift.Start > from)
                {
                    yield return (axis.X(from), axis.X(shift.Start) - axis.X(from));
                }

                from = shift.End > from ? shift.End : from;
            }

            if (from < day.To)
            {
                yield return (axis.X(from), axis.X(day.To) - axis.X(from));
            }
        }
    }
}
