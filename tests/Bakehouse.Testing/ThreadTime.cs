namespace Bakehouse.Testing;

using System.Diagnostics;
using System.Globalization;

/// <summary>
/// How long this thread has worked: what else the machine does meanwhile is not counted. Linux tells it by thread; elsewhere it is
/// the elapsed time.
/// </summary>
public readonly record struct ThreadTime
{
    private const string Told = "/proc/thread-self/schedstat";

    private readonly long nanoseconds;

    private ThreadTime(long nanoseconds) => this.nanoseconds = nanoseconds;

    /// <summary>From now on, on this thread.</summary>
    public static ThreadTime Start() => new(Read());

    /// <summary>Seconds worked since the start; to be asked on the thread that started it.</summary>
    public double Seconds => (Read() - nanoseconds) / 1e9;

    private static long Read() => File.Exists(Told)
        ? long.Parse(File.ReadAllText(Told).Split(' ')[0], NumberStyles.None, CultureInfo.InvariantCulture)
        : (long)(Stopwatch.GetTimestamp() * 1e9 / Stopwatch.Frequency);
}
