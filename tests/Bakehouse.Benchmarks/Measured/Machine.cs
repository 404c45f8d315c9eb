using System.Globalization;

namespace Bakehouse.Benchmarks.Measured;

/// <summary>On what and when something was measured.</summary>
/// <param name="Date">Day of the run, UTC.</param>
/// <param name="Cores">Processors that this process may use.</param>
/// <param name="Processor">Its model as the system names it.</param>
/// <param name="DotNet">Version of the runtime.</param>
internal sealed record Machine(string Date, int Cores, string Processor, string DotNet)
{
    /// <summary>Names of the columns that <see cref="Cells"/> fills.</summary>
    public static readonly string[] Columns = ["date", "cores", "processor", "dotnet"];

    /// <summary>This machine, now.</summary>
    public static Machine Here()
    {
#pragma warning disable RS0030 // A measurement bears the day of the machine's clock.
        var now = TimeProvider.System.GetUtcNow();
#pragma warning restore RS0030
        return new(now.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Environment.ProcessorCount, Model(), Environment.Version.ToString());
    }

    /// <summary>In the order of <see cref="Columns"/>.</summary>
    public IEnumerable<string> Cells => [Date, Cores.ToString(CultureInfo.InvariantCulture), Processor, DotNet];

    private static string Model()
    {
        const string Told = "/proc/cpuinfo";
        var line = File.Exists(Told) ? File.ReadLines(Told).FirstOrDefault(l => l.StartsWith("model name", StringComparison.Ordinal)) : null;
        return line is null ? System.Runtime.InteropServices.RuntimeInformation.ProcessArchitecture.ToString() : line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim();
    }
}
