using Bakehouse.Testing;

namespace Bakehouse.Benchmarks.Measured;

/// <summary>A fixed loop in the same process, by which speeds of two machines, or of one that is busy, can be compared.</summary>
internal static class Yardstick
{
    private const int Steps = 50_000_000;

    /// <summary>Million steps of the loop in a second that this thread works: each step is three shifts, three exclusive ors and one addition.</summary>
    public static double MillionSteps()
    {
        var work = ThreadTime.Start();
        var (state, sum) = (2463534242u, 0u);
        for (var n = 0; n < Steps; n++)
        {
            state ^= state << 13;
            state ^= state >> 17;
            state ^= state << 5;
            sum += state;
        }

        var seconds = work.Seconds;
        return sum == 0 ? throw new InvalidOperationException("The loop was not run.") : Steps / 1e6 / seconds;
    }
}
