namespace Bakehouse.Domain.Planning;

using System.Globalization;

/// <summary>What can be wrong with a week, field by field: numbers and grains, doubled ids, spans. Names are in the other part.</summary>
internal static partial class WeekChecks
{
    public static IEnumerable<Problem> Of(Week week) =>
        Minutes(week)
            .Concat(Counts(week))
            .Concat(Doubles(week))
            .Concat(SpansOf(week))
            .Concat(Names(week))
            .Concat(Conditions(week))
            .Concat(Rings(week));

    private static IEnumerable<Problem> Minutes(Week week)
    {
        if (week.Grain <= 0)
        {
            yield return new Problem("tick", Text(week.Grain), "The grain is at least 1 minute.", "Use 5.");
            yield break;
        }

        foreach (var (where, value, least) in Lengths(week).Concat(Moments(week)))
        {
            if (value < least)
            {
                yield return new Problem(where, Text(value), $"This is below {Text(least)} minutes.", $"Give at least {Text(least)}.");
            }
            else if (value % week.Grain != 0)
            {
                yield return new Problem(where, Text(value), $"This is no multiple of {Text(week.Grain)} minutes.", $"Round it to {Text((value + week.Grain - 1) / week.Grain * week.Grain)}.");
            }
        }
    }

    /// <summary>Lengths, gaps and limits in minutes, each with the least that it may be.</summary>
    private static IEnumerable<(string Where, int Value, int Least)> Lengths(Week week) =>
        week.Steps.Select(s => ($"steps {s.Id}.minutes", s.Minutes, 1))
            .Concat(week.Holds.SelectMany(h => h.In.SelectMany((i, n) => new[] { ($"holds {h.Id}.in[{n}]", i.Least, 0), ($"holds {h.Id}.in[{n}]", i.Most, i.Least) })))
            .Concat(week.Clocks.Select(c => ($"clocks {c.Id}.limit", c.Limit, 0)))
            .Concat(week.Ages.Select(a => ($"ages {a.Id}.most", a.Most, 0)))
            .Concat(week.Machines.SelectMany(m => new[] { ($"machines {m.Id}.turn", m.TurnSame, 0), ($"machines {m.Id}.turn", m.TurnOther, 0), ($"machines {m.Id}.clean.minutes", m.Clean?.Minutes ?? week.Grain, 1) }))
            .Concat(week.Air.Select(a => ($"air {a.Allergen}.settle", a.Settle, 0)))
            .Concat(week.Orders.SelectMany(o => o.Fresh.Select((f, n) => ($"orders {o.Id}.fresh[{n}]", f.Most, 0)).Append(($"orders {o.Id}.buffer", o.Buffer, 0))))
            .Append(("horizon", week.Horizon, 1));

    /// <summary>Moments in minutes of the week.</summary>
    private static IEnumerable<(string Where, int Value, int Least)> Moments(Week week) =>
        week.Orders.SelectMany(o => new[] { ($"orders {o.Id}.from", o.From, 0), ($"orders {o.Id}.to", o.To, 0) })
            .Concat(week.Fixed.Select((f, n) => ($"fixed[{n}].start", f.Start ?? 0, 0)))
            .Append(("now", week.Now, 0))
            .Append(("free_from", week.FreeFrom, 0));

    private static IEnumerable<Problem> Counts(Week week)
    {
        var counts = week.Tools.Select(t => ($"tools {t.Id}.count", t.Count, 0))
            .Concat(week.Stores.SelectMany(s => new[] { ($"stores {s.Id}.places", s.Places, 0), ($"stores {s.Id}.clear", s.Clear, 0) }))
            .Concat(week.Holds.SelectMany(h => new[] { ($"holds {h.Id}.places", h.Places, 0), ($"holds {h.Id}.height", h.Height, 0) }))
            .Concat(week.Machines.SelectMany(m => m.Fits.Select(f => ($"machines {m.Id}.fits.{Text(f.Key)}", f.Value, 0)).Append(($"machines {m.Id}.levels", m.Levels, m.Kind == MachineKind.Oven ? 1 : 0))))
            .Concat(week.Families.SelectMany(f => f.Limit.Select(l => ($"families {f.Id}.limit.{l.Key}", l.Value, 0))))
            .Concat(week.Steps.Select(s => ($"steps {s.Id}.count", s.Count, 1)))
            .Concat(week.Steps.Where(s => s.Mix is not null).Select(s => ($"steps {s.Id}.mix.size", s.Mix!.Size, 0)))
            .Concat(week.Steps.SelectMany(s => (s.Bake?.Pans ?? []).Select(p => ($"steps {s.Id}.bake.pans", p, 1))));
        var low = counts.Where(c => c.Item2 < c.Item3)
            .Select(c => new Problem(c.Item1, Text(c.Item2), $"This is below {Text(c.Item3)}.", $"Give at least {Text(c.Item3)}."));
        return low.Concat(week.Orders.Where(o => o.Rank is not (1 or 2))
            .Select(o => new Problem($"orders {o.Id}.rank", Text(o.Rank), "A rank is 1, promised, or 2, wished.", "Write 1 or 2.")));
    }

    private static IEnumerable<Problem> Doubles(Week week) =>
        Twice("people", week.People.Select(p => p.Id))
            .Concat(Twice("tools", week.Tools.Select(t => t.Id)))
            .Concat(Twice("machines", week.Machines.Select(m => m.Id)))
            .Concat(Twice("families", week.Families.Select(f => f.Id)))
            .Concat(Twice("stores", week.Stores.Select(s => s.Id)))
            .Concat(Twice("choices", week.Choices.Select(c => c.Id)))
            .Concat(Twice("steps", week.Steps.Select(s => s.Id)))
            .Concat(Twice("holds", week.Holds.Select(h => h.Id)))
            .Concat(Twice("clocks", week.Clocks.Select(c => c.Id)))
            .Concat(Twice("ages", week.Ages.Select(a => a.Id)))
            .Concat(Twice("orders", week.Orders.Select(o => o.Id)));

    private static IEnumerable<Problem> Twice(string list, IEnumerable<string> ids) =>
        ids.GroupBy(i => i).Where(g => g.Count() > 1 && g.Key.Length > 0)
            .Select(g => new Problem($"{list} {g.Key}.id", g.Key, $"The id stands {Text(g.Count())} times in {list}.", "Give each its own id."));

    private static IEnumerable<Problem> SpansOf(Week week) =>
        week.People.SelectMany(p => Spans(week, $"people {p.Id}.shifts", p.Shifts).Concat(Spans(week, $"people {p.Id}.extra", p.Extra)))
            .Concat(week.Tools.SelectMany(t => Spans(week, $"tools {t.Id}.down", t.Down)))
            .Concat(week.Machines.SelectMany(m => Spans(week, $"machines {m.Id}.down", m.Down)))
            .Concat(week.Stores.SelectMany(s => Spans(week, $"stores {s.Id}.down", s.Down)));

    private static IEnumerable<Problem> Spans(Week week, string where, IReadOnlyList<Span> spans)
    {
        for (var i = 0; i < spans.Count; i++)
        {
            var (row, value, span) = ($"{where}[{Text(i)}]", $"[{Text(spans[i].From)}, {Text(spans[i].To)}]", spans[i]);
            if (span.From >= span.To)
            {
                yield return new Problem(row, value, "A span ends after it begins.", "Turn the two round, or leave it out.");
            }

            if (week.Grain > 0 && (span.From % week.Grain != 0 || span.To % week.Grain != 0))
            {
                yield return new Problem(row, value, $"This is no multiple of {Text(week.Grain)} minutes.", "Round both ends.");
            }

            if (i > 0 && span.From < spans[i - 1].To)
            {
                yield return new Problem(row, value, $"It begins before the one before it ends ({Text(spans[i - 1].To)}).", "Sort the spans and keep them apart.");
            }
        }
    }

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
