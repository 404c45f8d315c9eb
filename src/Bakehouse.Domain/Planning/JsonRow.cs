namespace Bakehouse.Domain.Planning;

using System.Globalization;
using System.Text.Json;
using Bakehouse.Domain.Cakes.Packing;

/// <summary>
/// One object of a file with its path; each wrong or missing field adds a problem and yields a harmless value, so that
/// reading goes on and everything wrong is told at once.
/// </summary>
internal readonly partial struct JsonRow(JsonElement element, string path, List<Problem> problems)
{
    /// <summary>Nothing in a bakery's fortnight is longer, heavier or more than this (minutes: 19 years; grams: 10 t).</summary>
    public const int Most = 10_000_000;

    public string Path { get; } = path;

    public bool IsObject => element.ValueKind == JsonValueKind.Object;

    public string Text(string name, string? fallback = null) => Field(name, JsonValueKind.String, fallback is null) is { } e ? Said(e) : fallback ?? "";

    public string? TextOrNull(string name) => Field(name, JsonValueKind.String, false) is { } e ? Said(e) : null;

    /// <summary>The row's own id, which can't be empty.</summary>
    public string Id()
    {
        var id = Text("id");
        if (id.Length == 0 && Has("id") && element.GetProperty("id").ValueKind == JsonValueKind.String)
        {
            Say("id", "nothing", "The id is empty.", "Give an id that stands once in its list.");
        }

        return id;
    }

    public int Number(string name, int? fallback = null)
    {
        if (Field(name, JsonValueKind.Number, fallback is null) is not { } e)
        {
            return fallback ?? 0;
        }

        return Whole(e, Join(name), problems);
    }

    public int? NumberOrNull(string name) => Field(name, JsonValueKind.Number, false) is { } e ? Whole(e, Join(name), problems) : null;

    /// <summary>True or false; false if it may be left out and is.</summary>
    public bool Flag(string name, bool needed = false)
    {
        if (!Has(name))
        {
            return needed && Missing(name);
        }

        var e = element.GetProperty(name);
        if (e.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
        {
            Say(name, Problem.Shown(e.GetRawText()), "This must be true or false.", "Write true or false, without quotation marks.");
        }

        return e.ValueKind == JsonValueKind.True;
    }

    /// <summary>True if the field is there and not null.</summary>
    public bool Has(string name) =>
        element.ValueKind == JsonValueKind.Object && element.TryGetProperty(name, out var e) && e.ValueKind != JsonValueKind.Null;

    /// <summary>The two turn times.</summary>
    public int[] Pair(string name) =>
        Has(name) || Missing(name) ? new JsonRow(element.GetProperty(name), Join(name), problems).Numbers(2) : [0, 0];

    /// <summary>Width and depth in millimetres, above 0 and at most 20 m; null if left out.</summary>
    public Floor? Sizes(string name)
    {
        if (!Has(name))
        {
            return null;
        }

        var e = element.GetProperty(name);
        List<double> sizes = e.ValueKind == JsonValueKind.Array ? [.. e.EnumerateArray().Select(n => n.ValueKind == JsonValueKind.Number && n.TryGetDouble(out var mm) && mm <= 20_000 ? mm : 0)] : [];
        if (sizes is [> 0, > 0])
        {
            return new Floor(sizes[0], sizes[1]);
        }

        Say(name, Problem.Shown(e.GetRawText()), "This must be width and depth in millimetres, above 0 and up to 20000.", "Write it as [550, 600].");
        return null;
    }

    /// <summary>A list of whole numbers that must be there.</summary>
    public IReadOnlyList<int> Whole(string name)
    {
        var (where, say) = (Join(name), problems);
        return [.. Array(name, true).Select(e => Whole(e, where, say))];
    }

    public IReadOnlyList<string> Texts(string name, bool needed = false)
    {
        var (all, where, say) = (new List<string>(), Join(name), problems);
        foreach (var e in Array(name, needed))
        {
            if (e.ValueKind == JsonValueKind.String)
            {
                all.Add(Said(e));
            }
            else
            {
                say.Add(new Problem(where, Problem.Shown(e.GetRawText()), "This must be text.", "Put it in quotation marks."));
            }
        }

        return all;
    }

    public IReadOnlyList<Span> Spans(string name, bool needed = false)
    {
        var spans = new List<Span>();
        foreach (var pair in Rows(name, needed))
        {
            var numbers = pair.Numbers(2);
            spans.Add(new Span(numbers[0], numbers[1]));
        }

        return spans;
    }

    /// <summary>The elements of a list, each with its path: by its id if it has one, else by its number from 0.</summary>
    public IReadOnlyList<JsonRow> Rows(string name, bool needed = false)
    {
        var (where, say) = (Join(name), problems);
        return [.. Array(name, needed).Select((e, i) => new JsonRow(e, Named(e) is { } id ? $"{where} {id}" : string.Create(CultureInfo.InvariantCulture, $"{where}[{i}]"), say))];
    }

    /// <summary>The object below this name, or null.</summary>
    public JsonRow? Below(string name, bool needed = false)
    {
        if (!Has(name))
        {
            _ = needed && Missing(name);
            return null;
        }

        var e = element.GetProperty(name);
        if (e.ValueKind == JsonValueKind.Object)
        {
            return new JsonRow(e, Join(name), problems);
        }

        Say(name, Problem.Shown(e.GetRawText()), "This must be an object.", "Put its fields in curly brackets.");
        return null;
    }

    public IReadOnlyDictionary<string, int> Amounts(string name, bool needed = false)
    {
        var (amounts, where, say) = (new Dictionary<string, int>(), Join(name), problems);
        if (Below(name, needed) is { } below)
        {
            foreach (var property in below.Properties())
            {
                amounts[property.Name] = Whole(property.Value, $"{where}.{property.Name}", say);
            }
        }

        return amounts;
    }

    /// <summary>Texts by name, such as the option taken for each choice.</summary>
    public IReadOnlyDictionary<string, string> Words(string name)
    {
        var words = new Dictionary<string, string>();
        if (Below(name) is { } below)
        {
            foreach (var property in below.Properties())
            {
                words[property.Name] = below.Text(property.Name);
            }
        }

        return words;
    }

    /// <summary>This element as a list that begins with so many whole numbers.</summary>
    public int[] Numbers(int count)
    {
        if (element.ValueKind != JsonValueKind.Array || element.GetArrayLength() < count)
        {
            Say("", Problem.Shown(element.GetRawText()), $"This must be a list of {count} numbers.", "Write it as [a, b].");
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
            Say("", Problem.Shown(element.GetRawText()), $"This must be a name and {count} numbers.", "Write it as [\"name\", n].");
            return ("", new int[count]);
        }

        var (path, say) = (Path, problems);
        return (element[0].GetString()!, [.. element.EnumerateArray().Skip(1).Select(e => Whole(e, path, say))]);
    }

    public void Say(string name, string value, string sentence, string fix) => problems.Add(new Problem(name.Length == 0 ? Path : Join(name), value, sentence, fix));

    private IEnumerable<JsonProperty> Properties() => element.EnumerateObject();

    private IEnumerable<JsonElement> Array(string name, bool needed = false)
    {
        if (!Has(name))
        {
            _ = needed && Missing(name);
            return [];
        }

        var e = element.GetProperty(name);
        if (e.ValueKind != JsonValueKind.Array)
        {
            Say(name, Problem.Shown(e.GetRawText()), "This must be a list.", "Put it in square brackets.");
            return [];
        }

        return e.EnumerateArray();
    }

    private JsonElement? Field(string name, JsonValueKind kind, bool needed)
    {
        if (!Has(name))
        {
            _ = needed && Missing(name);
            return null;
        }

        var e = element.GetProperty(name);
        if (e.ValueKind != kind)
        {
            Say(name, Problem.Shown(e.GetRawText()), $"This must be a {(kind == JsonValueKind.String ? "text" : "whole number")}.", "Write it so.");
            return null;
        }

        return e;
    }

    /// <summary>Says that a field is missing; always false, so that it can stand for the value.</summary>
    private bool Missing(string name)
    {
        Say(name, "nothing", "This field is missing.", $"Give {name}.");
        return false;
    }

    private string Said(JsonElement e)
    {
        try
        {
            return e.GetString()!;
        }
        catch (InvalidOperationException)
        {
            Say("", Problem.Shown(e.GetRawText()), "This text holds half a sign.", "Type it again.");
            return "";
        }
    }

    private static string? Named(JsonElement e) =>
        e.ValueKind == JsonValueKind.Object && e.TryGetProperty("id", out var id) && id.ValueKind == JsonValueKind.String && id.GetRawText().Length is > 2 and <= 80
            ? id.GetRawText()[1..^1]
            : null;

    private static int Whole(JsonElement e, string where, List<Problem> say)
    {
        if (e.ValueKind == JsonValueKind.Number && e.TryGetInt32(out var whole))
        {
            if (Math.Abs((long)whole) <= Most)
            {
                return whole;
            }

            say.Add(new Problem(where, Problem.Shown(e.GetRawText()), $"This is beyond {Most}.", "Give the number that was meant."));
            return 0;
        }

        say.Add(new Problem(where, Problem.Shown(e.GetRawText()), "This must be a whole number.", "Round it to whole minutes, places or cm."));
        return 0;
    }

    private string Join(string name) => Path.Length == 0 ? name : $"{Path}.{name}";
}
