using Bakehouse.Domain;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Sheets;

namespace Bakehouse.Web.Verbs;

/// <summary>Reads week, plan and order files for the verbs; everything wrong goes to the error stream, one line each.</summary>
internal static class Files
{
    /// <summary>Exit code when a file can't be read.</summary>
    public const int Unreadable = 2;

    public static Week? Week(string path) => Read(path, WeekFile.Read);

    public static Plan? Plan(string path) => Read(path, PlanFile.Read);

    public static SheetAsked? Order(string path) => Read(path, SheetFile.Read);

    /// <summary>Prints text, or writes it to a file if one is named. Returns the exit code.</summary>
    public static int Deliver(string text, string? path)
    {
        if (path is null)
        {
            Console.Out.WriteLine(text);
            return 0;
        }

        return Write(path, text) ? 0 : Unreadable;
    }

    /// <summary>Writes text to a file; false, with the reason told, if it can't be written.</summary>
    private static bool Write(string path, string text)
    {
        try
        {
            File.WriteAllText(path, text);
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            Console.Error.WriteLine($"{path} can't be written: {trouble.Message}");
            return false;
        }
    }

    private static T? Read<T>(string path, Func<string, (T? Value, IReadOnlyList<Problem> Problems)> read)
        where T : class
    {
        try
        {
            var (value, problems) = read(File.ReadAllText(path));
            foreach (var problem in problems)
            {
                Console.Error.WriteLine($"{path}: {problem}");
            }

            return problems.Count == 0 ? value : null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            Console.Error.WriteLine($"{path} can't be read: {trouble.Message}");
            return null;
        }
    }
}
