namespace Bakehouse.Domain.Planning;

using System.Globalization;
using System.Text.Json;

/// <summary>
/// One object of a file with its path; each wrong or missing field adds a problem and yields a harmless value, so that
/// reading goes on and everything wrong is told at once.
/// </summary>
internal readonly struct JsonRow(JsonElement element, string path, List<Problem> problems)
{
    public string Path { get; } = path;

    public bool IsObject => element.ValueKind == JsonValueKind.Object;

    public string Text(string name, string? fallback = null) => Field(name, JsonValueKind.String, fallback is null) is { } e ? e.GetString()! : fallback ?? "";

    public string? TextOrNull(string name) => Field(name, JsonValueKind.String, false) is { } e ? e.GetString() : null;

    public int Number(string name, int? fallback = null)
    {
        if (Field(name, JsonValueKind.Number, fallback is null) is not { } e)
        {
            return fallback ?? 0;
        }

        return Whole(e, Join(name), problems);
    }

    public int? NumberOrNull(string name) => Field(name, JsonValueKind.Number, false) is { } e ? Whole(e, Join(name), problems) : null;

    public bool Flag(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var e) && e.ValueKind == JsonValueKind.True;

    /// <summary>True if the field is there and not null.</summary>
    public bool Has(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var e) && e.ValueKind != JsonValueKind.Null;

    /// <summary>One of the two turn times.</summary>
    public int Turn(int index) => Whole("turn")[index];

    /// <summary>A list of whole numbers.</summary>
    public IReadOnlyList<int> Whole(string name)
    {
        var (where, say) = (Join(name), problems);
        return [.. Array(name).Select(e => Whole(e, where, say))];
    }

    public IReadOnlyList<string> Texts(string name)
    {
        var (all, where, say) = (new List<string>(), Join(name), problems);
        foreach (var e in Array(name))
        {
            if (e.ValueKind == JsonValueKind.String)
            {
                all.Add(e.GetString()!);
            }
            else
            {
                say.Add(new Problem(where, WeekFile.Short(e.GetRawText()), "This must be text.", "Put it in quotation marks."));
            }
        }

        return all;
    }

    public IReadOnlyList<Span> Spans(string name)
    {
        var spans = new List<Span>();
        foreach (var pair in Rows(name))
        {
            var numbers = pair.Numbers(2);
            spans.Add(new Span(numbers[0], numbers[1]));
        }

        return spans;
    }

    /// <summary>The elements of a list, each with its path; objects or lists.</summary>
    public IReadOnlyList<JsonRow> Rows(string name)
    {
        var (where, say) = (Join(name), problems);
        return [.. Array(name).Select((e, i) => new JsonRow(e, string.Create(CultureInfo.InvariantCulture, $"{where}[{i}]"), say))];
    }

    /// <summary>The object below this name, or null.</summary>
    public JsonRow? Below(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var e) && e.ValueKind == JsonValueKind.Object
            ? new JsonRow(e, Join(name), problems)
            : null;

    public IReadOnlyDictionary<string, int> Amounts(string name)
    {
        var (amounts, where, say) = (new Dictionary<string, int>(), Join(name), problems);
        if (Below(name) is { } below)
        {
            foreach (var property in below.Properties())
            {
                amounts[property.Name] = Whole(property.Value, $"{where}.{property.Name}", say);
            }
        }

        return amounts;
    }

    public IReadOnlyDictionary<string, string> Words(string name) =>
        Below(name) is { } below ? below.Properties().Where(p => p.Value.ValueKind == JsonValueKind.String).ToDictionary(p => p.Name, p => p.Value.GetString()!) : new Dictionary<string, string>();

    /// <summary>This element as a list that begins with so many whole numbers.</summary>
    public int[] Numbers(int count)
    {
        if (element.ValueKind != JsonValueKind.Array || element.GetArrayLength() < count)
        {
            Say("", WeekFile.Short(element.GetRawText()), $"This must be a list of {count} numbers.", "Write it as [a, b].");
            return new int[count];
        }

        var (path, say) = (Path, problems);
        return [.. element.EnumerateArray().Take(count).Select(e => Whole(e, path, say))];
    }

    /// <summary>This element as a list of a text and then whole numbers.</summary>
    public (string Text, int[] Numbers) TextAndNumbers(int count)
    {
        if (element.ValueKind != JsonValueKind.Array || element.GetArrayLength() != count + 1 || element[0].ValueKind != JsonValueKind.String)
        {
            Say("", WeekFile.Short(element.GetRawText()), $"This must be a name and {count} numbers.", "Write it as [\"name\", n].");
            return ("", new int[count]);
        }

        var (path, say) = (Path, problems);
        return (element[0].GetString()!, [.. element.EnumerateArray().Skip(1).Select(e => Whole(e, path, say))]);
    }

    public void Say(string name, string value, string sentence, string fix) => problems.Add(new Problem(name.Length == 0 ? Path : Join(name), value, sentence, fix));

    private IEnumerable<JsonProperty> Properties() => element.EnumerateObject();

    private IEnumerable<JsonElement> Array(string name)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty(name, out var e) || e.ValueKind == JsonValueKind.Null)
        {
            return [];
        }

        if (e.ValueKind != JsonValueKind.Array)
        {
            Say(name, WeekFile.Short(e.GetRawText()), "This must be a list.", "Put it in square brackets.");
            return [];
        }

        return e.EnumerateArray();
    }

    private JsonElement? Field(string name, JsonValueKind kind, bool needed)
    {
        if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty(name, out var e) || e.ValueKind == JsonValueKind.Null)
        {
            if (needed)
            {
                Say(name, "nothing", "This field is missing.", $"Give {name}.");
            }

            return null;
        }

        if (e.ValueKind != kind)
        {
            Say(name, WeekFile.Short(e.GetRawText()), $"This must be a {(kind == JsonValueKind.String ? "text" : "whole number")}.", "Write it so.");
            return null;
        }

        return e;
    }

    private static int Whole(JsonElement e, string where, List<Problem> say)
    {
        if (e.ValueKind == JsonValueKind.Number && e.TryGetInt32(out var whole))
        {
            return whole;
        }

        say.Add(new Problem(where, WeekFile.Short(e.GetRawText()), "This must be a whole number.", "Round it to whole minutes, places or cm."));
        return 0;
    }

    private string Join(string name) => Path.Length == 0 ? name : $"{Path}.{name}";
}
