namespace Bakehouse.Domain.Planning;

using System.Globalization;
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
            [.. root.Rows("people").Select(Person)],
            [.. root.Rows("tools").Select(r => new Tool(r.Text("id"), r.Number("count"), r.Spans("down")))],
            [.. root.Rows("machines").Select(Machine)],
            [.. root.Rows("families").Select(r => new Family(r.Text("id"), r.Amounts("limit")))],
            [.. root.Rows("air").Select(r => new Air(r.Text("allergen"), r.Number("settle")))],
            [.. root.Rows("stores").Select(r => new Store(r.Text("id"), r.Text("kind"), r.Flag("cold"), r.Number("clear"), r.Number("places"), r.Spans("down")))],
            [.. root.Rows("choices").Select(r => new Choice(r.Text("id"), r.Texts("options")))],
            [.. root.Rows("steps").Select(Step)],
            [.. root.Rows("holds").Select(Hold)],
            [.. root.Rows("clocks").Select(r => new FoodClock(r.Text("id"), r.Texts("steps"), r.Texts("holds"), r.Number("limit")))],
            [.. root.Rows("ages").Select(r => new Age(r.Text("id"), r.Text("from"), r.Text("to"), r.Number("most"), r.Flag("hard")))],
            [.. root.Rows("orders").Select(Order)],
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
        new(r.Text("id"), r.Text("name"), r.Texts("skills"), r.Spans("shifts"), r.Spans("extra"), r.Flag("share"));

    private static Machine Machine(JsonRow r)
    {
        var turns = r.Rows("turn");
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
            r.Text("id"),
            kind == "oven" ? MachineKind.Oven : MachineKind.Bowl,
            turns.Count > 0 ? r.Turn(0) : 0,
            turns.Count > 1 ? r.Turn(1) : 0,
            r.Spans("down"),
            r.Below("clean") is { } clean ? new CleanDown(clean.Number("minutes"), clean.Text("skill")) : null,
            r.Number("levels", 0),
            fits.Where(f => int.TryParse(f.Key, NumberStyles.None, CultureInfo.InvariantCulture, out _))
                .ToDictionary(f => int.Parse(f.Key, CultureInfo.InvariantCulture), f => f.Value));
    }

    private static Step Step(JsonRow r) => new(
        r.Text("id"),
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
        r.Text("id"),
        r.Text("from"),
        r.Text("to"),
        r.Number("places", 1),
        r.Number("height", 0),
        [.. r.Rows("in").Select(i => i.TextAndNumbers(2)).Select(i => new Standing(i.Text, i.Numbers[0], i.Numbers[1]))],
        TakenOf(r));

    private static Taken? TakenOf(JsonRow r) => r.Texts("if") is { Count: 2 } pair ? new Taken(pair[0], pair[1]) : null;

    private static WeekOrder Order(JsonRow r)
    {
        var edge = r.Text("edge");
        if (edge is not ("start" or "end" or ""))
        {
            r.Say("edge", edge, "The promised edge is start or end.", "Write start or end.");
        }

        return new WeekOrder(
            r.Text("id"),
            r.Text("name"),
            r.Text("ready"),
            r.Text("out"),
            edge == "end",
            r.Number("from"),
            r.Number("to"),
            r.Number("rank", 1),
            r.Number("buffer", 0),
            [.. r.Rows("fresh").Select(f => f.TextAndNumbers(1)).Select(f => new Fresh(f.Text, f.Numbers[0]))]);
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
