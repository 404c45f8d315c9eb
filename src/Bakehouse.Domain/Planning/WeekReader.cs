namespace Bakehouse.Domain.Planning;

using System.Globalization;
using Bakehouse.Domain.Cakes.Packing;
using NodaTime.Text;

/// <summary>Field by field from a file's rows to a week; the defaults are those of the format.</summary>
internal sealed class WeekReader(JsonRow root)
{
    public Week Week()
    {
        if (root.Text("format") is { Length: > 0 } format && format != WeekFile.Format)
        {
            root.Say("format", format, $"This program reads {WeekFile.Format}.", "Write the file in that format.");
        }

        return new Week(
            root.Text("name"),
            Epoch(),
            root.Text("zone", "UTC"),
            root.Number("tick", 5),
            root.Number("horizon"),
            root.Number("now", 0),
            root.Number("free_from", 0),
            [.. root.Rows("people", true).Select(Person)],
            [.. root.Rows("tools", true).Select(r => new Tool(r.Id(), r.Number("count"), r.Spans("down")))],
            [.. root.Rows("machines", true).Select(Machine)],
            [.. root.Rows("families", true).Select(r => new Family(r.Id(), r.Amounts("limit", true)))],
            [.. root.Rows("air").Select(r => new Air(r.Text("allergen"), r.Number("settle")))],
            [.. root.Rows("stores", true).Select(r => new Store(r.Id(), r.Text("kind"), r.Flag("cold", true), r.Number("clear"), r.Number("places"), r.Spans("down")) { Floor = r.Sizes("floor") })],
            [.. root.Rows("choices").Select(r => new Choice(r.Id(), r.Texts("options", true)))],
            [.. root.Rows("steps", true).Select(Step)],
            [.. root.Rows("holds", true).Select(Hold)],
            [.. root.Rows("clocks", true).Select(r => new FoodClock(r.Id(), r.Texts("steps", true), r.Texts("holds", true), r.Number("limit")))],
            [.. root.Rows("ages", true).Select(r => new Age(r.Id(), r.Text("from"), r.Text("to"), r.Number("most"), r.Flag("hard", true)))],
            [.. root.Rows("orders", true).Select(Order)],
            [.. root.Rows("fixed").Select(Fixed)],
            root.Below("reference") is { } plan ? PlanOf(plan) : null,
            root.Below("query")?.Text("kind", "plan") == "repair");
    }

    public static Plan PlanOf(JsonRow r) => new(
        r.Text("week", ""),
        r.Words("choices"),
        [.. r.Rows("steps").Select(s => new StepRow(s.Text("step"), s.Number("start"), s.Texts("people"), s.TextOrNull("machine"), s.TextOrNull("batch")))],
        [.. r.Rows("holds").Select(h => new HoldRow(h.Text("hold"), h.Text("store")))],
        [.. r.Rows("cleans").Select(c => new CleanRow(c.Text("machine"), c.Number("start"), c.Texts("people")))]);

    private Instant Epoch()
    {
        var text = root.Text("epoch");
        var parsed = InstantPattern.ExtendedIso.Parse(text);
        if (!parsed.Success && text.Length > 0)
        {
            root.Say("epoch", text, "This is no instant.", "Write it as 2026-05-31T23:00:00Z.");
        }

        return parsed.Success ? parsed.Value : Instant.FromUnixTimeSeconds(0);
    }

    private static WeekPerson Person(JsonRow r) =>
        new(r.Id(), r.Text("name"), r.Texts("skills", true), r.Spans("shifts", true), r.Spans("extra"), r.Flag("share"));

    private static Machine Machine(JsonRow r)
    {
        var turn = r.Pair("turn");
        var kind = r.Text("kind");
        if (kind is not ("bowl" or "oven" or ""))
        {
            r.Say("kind", kind, "A machine is a bowl or an oven.", "Write bowl or oven.");
        }

        var fits = r.Amounts("fits");
        foreach (var pan in fits.Keys.Where(p => !int.TryParse(p, NumberStyles.None, CultureInfo.InvariantCulture, out _)))
        {
            r.Say("fits", pan, "A pan is named by its diameter in whole inches.", "Write \"8\": 2.");
        }

        return new Machine(
            r.Id(),
            kind == "oven" ? MachineKind.Oven : MachineKind.Bowl,
            turn[0],
            turn[1],
            r.Spans("down"),
            r.Below("clean") is { } clean ? new CleanDown(clean.Number("minutes"), clean.Text("skill")) : null,
            r.Number("levels", 0),
            fits.Where(f => int.TryParse(f.Key, NumberStyles.None, CultureInfo.InvariantCulture, out _))
                .ToDictionary(f => int.Parse(f.Key, CultureInfo.InvariantCulture), f => f.Value))
        {
            Deck = r.Sizes("deck"),
        };
    }

    private static Step Step(JsonRow r) => new(
        r.Id(),
        r.Text("order"),
        r.Text("tier", ""),
        r.Text("name"),
        r.Number("minutes"),
        r.TextOrNull("skill"),
        r.Number("count", 1),
        r.Texts("tools"),
        r.Below("mix") is { } mix ? new Mix(mix.Text("family"), mix.Number("size")) : null,
        r.Below("bake") is { } bake ? new Bake(bake.Text("heat"), bake.Whole("pans")) : null,
        r.Texts("has"),
        r.Texts("avoid"),
        TakenOf(r));

    private static Hold Hold(JsonRow r) => new(
        r.Id(),
        r.Text("from"),
        r.Text("to"),
        r.Number("places", 1),
        r.Number("height", 0),
        [.. r.Rows("in", true).Select(i => i.TextAndNumbers(2)).Select(i => new Standing(i.Text, i.Numbers[0], i.Numbers[1]))],
        TakenOf(r))
    {
        Piece = r.Sizes("round") is { } round ? Piece.Round(round.Wide) : r.Sizes("square") is { } square ? new Piece(square.Wide, square.Deep, false) : null,
    };

    private static Taken? TakenOf(JsonRow r)
    {
        var pair = r.Texts("if");
        if (r.Has("if") && pair.Count != 2)
        {
            r.Say("if", string.Join(", ", pair), "This must be a choice and its option.", "Write it as [\"choice\", \"option\"].");
        }

        return pair.Count == 2 ? new Taken(pair[0], pair[1]) : null;
    }

    private static WeekOrder Order(JsonRow r)
    {
        var edge = r.Text("edge");
        if (edge is not ("start" or "end" or ""))
        {
            r.Say("edge", edge, "The promised edge is start or end.", "Write start or end.");
        }

        return new WeekOrder(
            r.Id(),
            r.Text("name"),
            r.Text("ready"),
            r.Text("out"),
            edge == "end",
            r.Number("from"),
            r.Number("to"),
            r.Number("rank", 1),
            r.Number("buffer", 0),
            [.. r.Rows("fresh", true).Select(f => f.TextAndNumbers(1)).Select(f => new Fresh(f.Text, f.Numbers[0]))]);
    }

    private static Fixed Fixed(JsonRow r) => new(
        r.TextOrNull("step"),
        r.NumberOrNull("start"),
        r.Has("people") ? r.Texts("people") : null,
        r.TextOrNull("machine"),
        r.TextOrNull("hold"),
        r.TextOrNull("store"),
        r.Text("why", "pinned"));
}
