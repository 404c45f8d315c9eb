namespace Bakehouse.Benchmarks.Measured;

/// <summary>Where results go if nothing else is named: beside the sources, found from the program's own folder upwards.</summary>
internal static class ResultFolder
{
    public static string Path { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(System.IO.Path.Combine(folder.FullName, "Bakehouse.sln")))
        {
            folder = folder.Parent;
        }

        return System.IO.Path.Combine(folder?.FullName ?? AppContext.BaseDirectory, "tests", "Bakehouse.Benchmarks", "results");
    }
}
