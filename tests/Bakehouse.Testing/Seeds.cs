namespace Bakehouse.Testing;

using System.Globalization;
using System.Security.Cryptography;

/// <summary>
/// Where random trials begin. BAKEHOUSE_SEED names a seed; without it the usual run takes always the same one and the long run a new
/// one. Each test prints the one it took.
/// </summary>
public static class Seeds
{
    private const int Usual = 20261014;

    /// <summary>True if BAKEHOUSE_LONG asks for tests at their full size.</summary>
    public static bool Whole => Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is not null;

    /// <summary>The seed of this run.</summary>
    public static int Of() => Environment.GetEnvironmentVariable("BAKEHOUSE_SEED") is { Length: > 0 } named
        ? int.Parse(named, NumberStyles.None, CultureInfo.InvariantCulture)
        : Whole ? RandomNumberGenerator.GetInt32(int.MaxValue) : Usual;
}
