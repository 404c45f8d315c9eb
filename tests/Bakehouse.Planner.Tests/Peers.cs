using System.Globalization;

namespace Bakehouse.Planner.Tests;

/// <summary>A plain planner's figures on one week, judged by a judge written apart.</summary>
internal sealed record Peer(string Planner, string Limit, bool Feasible, long Late, long Stale, long Overtime, long Fresh);

/// <summary>Measured by the project on 25 Nov 2026, two cores.</summary>
internal static class Peers
{
    public static IReadOnlyList<Peer> Of(string week)
        => [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Weeks", "peers.csv"))
            .Select(l => l.Split(',')).Where(f => f[0] == week && f[13].Length > 0)
            .Select(f => new Peer(f[7], f[8], f[11] == "yes", Number(f[13]), Number(f[14]), Number(f[15]), Number(f[16])))];

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}
