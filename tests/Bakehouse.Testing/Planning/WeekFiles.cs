namespace Bakehouse.Testing.Planning;

using Bakehouse.Domain.Planning;

/// <summary>The weeks and plans that stand beside the tests.</summary>
public static class WeekFiles
{
    private static string Folder => Path.Combine(AppContext.BaseDirectory, "Weeks");

    /// <summary>Names of the weeks that begin so: tiny, home, small, busy, ask, repair.</summary>
    public static IReadOnlyList<string> Names(string kind) =>
        [.. Directory.EnumerateFiles(Folder, kind + "-*.json").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    /// <summary>Text of a file in the folder.</summary>
    public static string Text(string name) => File.ReadAllText(Path.Combine(Folder, name));

    /// <summary>A week that must be readable.</summary>
    public static Week Week(string name)
    {
        var (week, problems) = WeekFile.Read(Text(name + ".json"));
        return week ?? throw new InvalidOperationException($"{name}: {string.Join(' ', problems)}");
    }

    /// <summary>A plan that must be readable, e.g. tiny-1.best.</summary>
    public static Plan Plan(string name)
    {
        var (plan, problems) = PlanFile.Read(Text(Path.Combine("plans", name + ".json")));
        return plan ?? throw new InvalidOperationException($"{name}: {string.Join(' ', problems)}");
    }

    /// <summary>Rows of a CSV in the folder by column name; no cell holds a comma.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Table(string name)
    {
        var lines = Text(name).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var head = lines[0].TrimEnd('\r').Split(',');
        return [.. lines.Skip(1).Select(l => head.Zip(l.TrimEnd('\r').Split(',')).ToDictionary(p => p.First, p => p.Second))];
    }
}
