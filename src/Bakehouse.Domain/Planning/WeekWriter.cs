namespace Bakehouse.Domain.Planning;

using System.Globalization;
using System.Text.Json;
using Bakehouse.Domain.Cakes.Packing;
using NodaTime.Text;

/// <summary>Field by field from a week to its file; what has its default is left out where the format allows.</summary>
internal static class WeekWriter
{
    private static readonly JsonWriterOptions Indented = new() { Indented = true };

    public static string Write(Week week)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            json.WriteStartObject();
            Head(json, week);
            Shop(json, week);
            Work(json, week);
            Promises(json, week);
            json.WriteEndObject();
        }

        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Head(Utf8JsonWriter json, Week week)
    {
        json.WriteString("format", WeekFile.Format);
        json.WriteString("name", week.Name);
        json.WriteString("epoch", InstantPattern.ExtendedIso.Format(week.Epoch));
        json.WriteString("zone", week.Zone);
        json.WriteNumber("tick", week.Grain);
        json.WriteNumber("horizon", week.Horizon);
        json.WriteNumber("now", week.Now);
        json.WriteNumber("free_from", week.FreeFrom);
    }

    private static void Shop(Utf8JsonWriter json, Week week)
    {
        Rows(json, "people", week.People, p =>
        {
            Text(json, ("id", p.Id), ("name", p.Name));
            Texts(json, "skills", p.Skills);
            Spans(json, "shifts", p.Shifts);
            Spans(json, "extra", p.Extra);
            json.WriteBoolean("share", p.Share);
        });
        Rows(json, "tools", week.Tools, t =>
        {
            Text(json, ("id", t.Id));
            json.WriteNumber("count", t.Count);
            Spans(json, "down", t.Down);
        });
        Rows(json, "machines", week.Machines, m => Machine(json, m));
        Rows(json, "families", week.Families, f =>
        {
            Text(json, ("id", f.Id));
            Amounts(json, "limit", f.Limit);
        });
        Rows(json, "air", week.Air, a =>
        {
            Text(json, ("allergen", a.Allergen));
            json.WriteNumber("settle", a.Settle);
        });
        Rows(json, "stores", week.Stores, s =>
        {
            Text(json, ("id", s.Id), ("kind", s.Kind));
            json.WriteBoolean("cold", s.Cold);
            json.WriteNumber("clear", s.Clear);
            json.WriteNumber("places", s.Places);
            Sizes(json, "floor", s.Floor);
            Spans(json, "down", s.Down);
        });
        Rows(json, "choices", week.Choices, c =>
        {
            Text(json, ("id", c.Id));
            Texts(json, "options", c.Options);
        });
    }

    private static void Machine(Utf8JsonWriter json, Machine machine)
    {
        Text(json, ("id", machine.Id), ("kind", machine.Kind == MachineKind.Oven ? "oven" : "bowl"));
        Numbers(json, "turn", [machine.TurnSame, machine.TurnOther]);
        Spans(json, "down", machine.Down);
        if (machine.Clean is { } clean)
        {
            json.WriteStartObject("clean");
            json.WriteNumber("minutes", clean.Minutes);
            json.WriteString("skill", clean.Skill);
            json.WriteEndObject();
        }

        json.WriteNumber("levels", machine.Levels);
        Sizes(json, "deck", machine.Deck);
        Amounts(json, "fits", machine.Fits.Select(f => new KeyValuePair<string, int>(f.Key.ToString(CultureInfo.InvariantCulture), f.Value)));
    }

    private static void Work(Utf8JsonWriter json, Week week)
    {
        Rows(json, "steps", week.Steps, s => Step(json, s));
        Rows(json, "holds", week.Holds, h =>
        {
            Text(json, ("id", h.Id), ("from", h.From), ("to", h.To));
            json.WriteNumber("places", h.Places);
            json.WriteNumber("height", h.Height);
            if (h.Piece is { } piece)
            {
                Sizes(json, piece.IsRound ? "round" : "square", new Floor(piece.Wide, piece.Deep));
            }

            Pairs(json, "in", h.In.Select(i => (i.Store, new[] { i.Least, i.Most })));
            If(json, h.If);
        });
        Rows(json, "clocks", week.Clocks, c =>
        {
            Text(json, ("id", c.Id));
            Texts(json, "steps", c.Steps);
            Texts(json, "holds", c.Holds);
            json.WriteNumber("limit", c.Limit);
        });
        Rows(json, "ages", week.Ages, a =>
        {
            Text(json, ("id", a.Id), ("from", a.From), ("to", a.To));
            json.WriteNumber("most", a.Most);
            json.WriteBoolean("hard", a.Hard);
        });
    }

    private static void Step(Utf8JsonWriter json, Step step)
    {
        Text(json, ("id", step.Id), ("order", step.Order), ("tier", step.Tier), ("name", step.Name));
        json.WriteNumber("minutes", step.Minutes);
        Text(json, ("skill", step.Skill));
        json.WriteNumber("count", step.Count);
        Texts(json, "tools", step.Tools);
        if (step.Mix is { } mix)
        {
            json.WriteStartObject("mix");
            json.WriteString("family", mix.Family);
            json.WriteNumber("size", mix.Size);
            json.WriteEndObject();
        }

        if (step.Bake is { } bake)
        {
            json.WriteStartObject("bake");
            json.WriteString("heat", bake.Heat);
            Numbers(json, "pans", bake.Pans);
            json.WriteEndObject();
        }

        Texts(json, "has", step.Has);
        Texts(json, "avoid", step.Avoid);
        If(json, step.If);
    }

    private static void Promises(Utf8JsonWriter json, Week week)
    {
        Rows(json, "orders", week.Orders, o =>
        {
            Text(json, ("id", o.Id), ("name", o.Name), ("ready", o.Ready), ("out", o.Out), ("edge", o.EdgeIsEnd ? "end" : "start"));
            json.WriteNumber("from", o.From);
            json.WriteNumber("to", o.To);
            json.WriteNumber("rank", o.Rank);
            json.WriteNumber("buffer", o.Buffer);
            Pairs(json, "fresh", o.Fresh.Select(f => (f.Step, new[] { f.Most })));
        });
        Rows(json, "fixed", week.Fixed, f => Fixed(json, f));
        if (week.Reference is { } wall)
        {
            json.WritePropertyName("reference");
            PlanFile.WriteRows(json, wall);
        }

        json.WriteStartObject("query");
        json.WriteString("kind", week.Repair ? "repair" : "plan");
        json.WriteEndObject();
    }

    private static void Fixed(Utf8JsonWriter json, Fixed row)
    {
        Text(json, ("step", row.Step), ("machine", row.Machine), ("hold", row.Hold), ("store", row.Store), ("why", row.Why));
        if (row.Start is { } start)
        {
            json.WriteNumber("start", start);
        }

        if (row.People is { } people)
        {
            Texts(json, "people", people);
        }
    }

    private static void Rows<T>(Utf8JsonWriter json, string name, IEnumerable<T> rows, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var row in rows)
        {
            json.WriteStartObject();
            write(row);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Text(Utf8JsonWriter json, params (string Name, string? Value)[] fields)
    {
        foreach (var (name, value) in fields.Where(f => f.Value is not null))
        {
            json.WriteString(name, value);
        }
    }

    private static void If(Utf8JsonWriter json, Taken? taken)
    {
        if (taken is not null)
        {
            Texts(json, "if", [taken.Choice, taken.Option]);
        }
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts) => List(json, name, texts, json.WriteStringValue);

    private static void Numbers(Utf8JsonWriter json, string name, IEnumerable<int> numbers) => List(json, name, numbers, json.WriteNumberValue);

    /// <summary>Width and depth in millimetres.</summary>
    private static void Sizes(Utf8JsonWriter json, string name, Floor? floor)
    {
        if (floor is { } it)
        {
            List(json, name, [it.Wide, it.Deep], json.WriteNumberValue);
        }
    }

    private static void Spans(Utf8JsonWriter json, string name, IEnumerable<Span> spans) =>
        List(json, name, spans, s => List(json, null, [s.From, s.To], json.WriteNumberValue));

    private static void Pairs(Utf8JsonWriter json, string name, IEnumerable<(string Name, int[] Numbers)> pairs) =>
        List(json, name, pairs, p =>
        {
            json.WriteStartArray();
            json.WriteStringValue(p.Name);
            foreach (var number in p.Numbers)
            {
                json.WriteNumberValue(number);
            }

            json.WriteEndArray();
        });

    private static void List<T>(Utf8JsonWriter json, string? name, IEnumerable<T> values, Action<T> write)
    {
        if (name is not null)
        {
            json.WritePropertyName(name);
        }

        json.WriteStartArray();
        foreach (var value in values)
        {
            write(value);
        }

        json.WriteEndArray();
    }

    private static void Amounts(Utf8JsonWriter json, string name, IEnumerable<KeyValuePair<string, int>> amounts)
    {
        json.WriteStartObject(name);
        foreach (var (key, value) in amounts)
        {
            json.WriteNumber(key, value);
        }

        json.WriteEndObject();
    }
}
