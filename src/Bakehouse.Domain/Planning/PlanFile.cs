namespace Bakehouse.Domain.Planning;

using System.Text.Json;

/// <summary>Reads a plan from its file and writes one.</summary>
public static class PlanFile
{
    /// <summary>The format that this reads and writes.</summary>
    public const string Format = "bakery-plan/1";

    private static readonly JsonWriterOptions Indented = new() { Indented = true };

    /// <summary>The plan, or null and every problem found. Names that no week knows are the Judge's matter (W0).</summary>
    public static (Plan? Plan, IReadOnlyList<Problem> Problems) Read(string text)
    {
        var problems = new List<Problem>();
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = new JsonRow(document.RootElement, "", problems);
            if (root.Text("format") is { Length: > 0 } format && format != Format)
            {
                root.Say("format", format, $"This program reads {Format}.", "Write the file in that format.");
            }

            var plan = WeekReader.PlanOf(root);
            return (problems.Count == 0 ? plan : null, problems);
        }
        catch (JsonException broken)
        {
            return (null, [new Problem("file", Problem.Shown(text), $"This is not JSON: {broken.Message}", "Write the file again.")]);
        }
    }

    /// <summary>The plan as text, rows in the plan's order.</summary>
    public static string Write(Plan plan)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
        {
            WriteRows(json, plan);
        }

        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    internal static void WriteRows(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteString("week", plan.Week);
        json.WriteStartObject("choices");
        foreach (var (choice, option) in plan.Choices.OrderBy(c => c.Key, StringComparer.Ordinal))
        {
            json.WriteString(choice, option);
        }

        json.WriteEndObject();
        WriteSteps(json, plan);
        WriteHolds(json, plan);
        json.WriteEndObject();
    }

    private static void WriteSteps(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("steps");
        foreach (var row in plan.Steps)
        {
            json.WriteStartObject();
            json.WriteString("step", row.Step);
            json.WriteNumber("start", row.Start);
            WritePeople(json, row.People);
            WriteIfGiven(json, "machine", row.Machine);
            WriteIfGiven(json, "batch", row.Batch);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteHolds(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("holds");
        foreach (var row in plan.Holds)
        {
            json.WriteStartObject();
            json.WriteString("hold", row.Hold);
            json.WriteString("store", row.Store);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("cleans");
        foreach (var row in plan.Cleans)
        {
            json.WriteStartObject();
            json.WriteString("machine", row.Machine);
            json.WriteNumber("start", row.Start);
            WritePeople(json, row.People);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePeople(Utf8JsonWriter json, IReadOnlyList<string> people)
    {
        if (people.Count > 0)
        {
            json.WriteStartArray("people");
            foreach (var person in people)
            {
                json.WriteStringValue(person);
            }

            json.WriteEndArray();
        }
    }

    private static void WriteIfGiven(Utf8JsonWriter json, string name, string? value)
    {
        if (value is not null)
        {
            json.WriteString(name, value);
        }
    }
}
