using Bakehouse.Planner.Network;

namespace Bakehouse.Benchmarks.Published;

/// <summary>A folder of published instances, each with its name, in the order of its numbers.</summary>
internal static class ProjectSet
{
    /// <summary>All files of a folder that end so.</summary>
    /// <exception cref="InvalidDataException">One message with every problem of the first file that can't be read.</exception>
    public static List<(string Name, Net Net)> Read(string folder, string ending, Func<string, (Net? Net, IReadOnlyList<string> Wrong)> reader) =>
        [.. Directory.EnumerateFiles(folder)
            .Where(f => f.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            .OrderBy(f => Path.GetFileName(f).Length).ThenBy(f => f, StringComparer.Ordinal)
            .Select(f => (Path.GetFileNameWithoutExtension(f), Net(f, reader)))];

    private static Net Net(string path, Func<string, (Net? Net, IReadOnlyList<string> Wrong)> reader)
    {
        var (net, wrong) = reader(File.ReadAllText(path));
        return net ?? throw new InvalidDataException($"{path} can't be read: {string.Join(' ', wrong)}");
    }
}
