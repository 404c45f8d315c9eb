namespace Bakehouse.Testing;

using CsCheck;

/// <summary>
/// A law tried on random draws. CsCheck's own sample keeps its seed for the first draw alone; here every draw follows from
/// <see cref="Seeds"/>, so that the usual run always takes the same ones and a failure can be had again.
/// </summary>
public static class Draws
{
    /// <summary>Draws so many times and asks the law of each.</summary>
    /// <param name="gen">What is drawn.</param>
    /// <param name="times">How many draws.</param>
    /// <param name="law">Throws where it does not hold.</param>
    /// <param name="threads">So many draws at once; 1 for a law that counts.</param>
    public static void Each<T>(this Gen<T> gen, int times, Action<T> law, int threads = 1)
    {
        var seed = Seeds.Of();
        Parallel.For(0, times, new ParallelOptions { MaxDegreeOfParallelism = threads }, n =>
        {
            var drawn = gen.Generate(new PCG((uint)n, (ulong)seed), null, out _);
            try
            {
                law(drawn);
            }
            catch (Exception broken)
            {
                throw new InvalidOperationException($"Draw {n} of seed {seed}: {drawn}: {broken.Message}", broken);
            }
        });
    }
}
