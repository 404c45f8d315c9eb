namespace Bakehouse.Domain.Planning;

using System.Text.Json;

/// <summary>Reads a week from its file, text in and value out. A broken file is told in one list that names everything wrong.</summary>
public static class WeekFile
{
    /// <summary>The format that this reads.</summary>
    public const string Format = "bakery-week/1";

    /// <summary>The week, or null and every problem found.</summary>
    public static (Week? Week, IReadOnlyList<Problem> Problems) Read(string text)
    {
        var problems = new List<Problem>();
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text);
        }
        catch (JsonException broken)
        {
            return (null, [new Problem("file", Short(text), $"This is not JSON: {broken.Message}", "Write the file again.")]);
        }

        using (document)
        {
            var read = new WeekReader(new JsonRow(document.RootElement, "", problems));
            var week = read.Week();
            if (problems.Count == 0)
            {
                problems.AddRange(WeekChecks.Of(week));
            }

            return (problems.Count == 0 ? week : null, problems);
        }
    }

    internal static string Short(string text) => text.Length <= 80 ? text : text[..79] + "…";
}

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
            var plan = WeekReader.PlanOf(new JsonRow(document.RootElement, "", problems));
            return (problems.Count == 0 ? plan : null, problems);
        }
        catch (JsonException broken)
        {
            return (null, [new Problem("file", WeekFile.Short(text), $"This is not JSON: {broken.Message}", "Write the file again.")]);
        }
    }

    /// <summary>The plan as text, rows in the plan's order.</summary>
    public static string Write(Plan plan)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Indented))
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

        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
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
