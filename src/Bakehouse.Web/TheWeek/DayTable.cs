namespace Bakehouse.Web.TheWeek;

using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>One day of the table beside the drawing.</summary>
public sealed record DayTable(LocalDate Day, string Heading, IReadOnlyList<DayLine> Lines)
{
    /// <summary>Every step, wait, flag, clean-down and fullest hour that the drawing shows, by the day on which it begins.</summary>
    public static IReadOnlyList<DayTable> Of(WeekPicture picture)
    {
        var words = Words.Of(picture.Facts.Shop);
        return [.. All(picture, words)
            .GroupBy(l => words.Local(l.At).Date)
            .OrderBy(g => g.Key)
            .Select(g => new DayTable(g.Key, words.LongDay(g.Key), [.. g.OrderBy(l => l.At).ThenBy(l => l.Cake, StringComparer.Ordinal)]))];
    }

    private static IEnumerable<DayLine> All(WeekPicture picture, Words words)
    {
        var (facts, axis) = (picture.Facts, picture.Axis);
        foreach (var cake in picture.Rows.Select(r => r.Cake))
        {
            foreach (var step in cake.Steps.Where(s => axis.Shows(s.From, s.To)))
            {
                yield return Work(facts, words, step, cake.Title);
            }

            foreach (var wait in cake.Waits.Where(w => w.To > w.From && w.Kind is not ("none" or "tubs") && axis.Shows(w.From, w.To)))
            {
                yield return new DayLine(wait.From, Between(words, wait.From, wait.To), cake.Title, $"waits {WhyThen.Where(wait.Kind)}", facts.PlaceOf(wait.Store), false, null, wait.Id);
            }

            if (cake.Flag >= axis.From && cake.Flag <= axis.To)
            {
                var door = cake.Door is { } at ? $", at the door {WhyThen.When(words, at)}" : "";
                var says = cake.Late > 0 ? cake.Says : $"{cake.Says} to spare";
                yield return new DayLine(cake.Flag, words.Time(words.Local(cake.Flag).TimeOfDay), cake.Title, $"leaves{door}: {says}", "", false, cake.State, "flag " + cake.Id);
            }
        }

        foreach (var clean in facts.Cleans.Where(c => axis.Shows(c.From, c.To)))
        {
            yield return Work(facts, words, clean, "");
        }

        foreach (var area in picture.Areas)
        {
            if (area.Area.Fullest is { } full)
            {
                yield return new DayLine(full.From, Between(words, full.From, full.To), "", $"{area.Name}, {area.Fullest}", "", false, null, area.Area.Kind);
            }
        }
    }

    private static DayLine Work(PlanFacts facts, Words words, StepFacts step, string cake)
    {
        var who = step.People.Select(facts.NameOf).Concat(step.Machine is { } m ? [facts.PlaceOf(m)] : []);
        return new DayLine(
            step.From, Between(words, step.From, step.To), cake, step.Done ? $"{step.What}, done" : step.What, string.Join(", ", who), step.Done, null, step.Id);
    }

    private static string Between(Words words, Instant from, Instant to)
    {
        var (a, b) = (words.Local(from), words.Local(to));
        return a.Date == b.Date ? $"{words.Time(a.TimeOfDay)}–{words.Time(b.TimeOfDay)}" : $"{words.Time(a.TimeOfDay)}–{WhyThen.When(words, to)}";
    }
}

/// <summary>One line of it.</summary>
/// <param name="Of">Id of the step, wait, flag or area that it tells of.</param>
public sealed record DayLine(Instant At, string When, string Cake, string What, string Where, bool Done, MarkKind? Mark, string Of)
{
    /// <summary>True for a step of a cake: it has a card.</summary>
    public bool IsStep => Domain.Methods.StepKey.Parse(Of) is { } key && Domain.Methods.Method.Operations.Any(o => o.Id == key.Operation);
}
