namespace Bakehouse.Book.Entries;

using System.Collections.Immutable;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;

/// <summary>What ticks moved on the wall, while the app is open, so that one taken back at once leaves the plan as it was.</summary>
internal sealed class TickMoves
{
    /// <summary>By step: the rows as they were before its tick.</summary>
    public ImmutableDictionary<string, Wall> Rows { get; private set; } = ImmutableDictionary<string, Wall>.Empty;

    /// <summary>Keeps what new ticks moved; a tick that does not stand any more is forgotten.</summary>
    public void Remember(BookState before, BookState after)
    {
        var known = before.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        var standing = after.Ticks.Select(t => t.Step).ToHashSet(StringComparer.Ordinal);
        if (before.Wall is { } was && after.Wall is { } now && standing.Except(known).ToList() is { Count: > 0 } fresh)
        {
            var rows = WallMoves.Before(was, now);
            Rows = Rows.SetItems(fresh.Select(s => KeyValuePair.Create(s, rows)));
        }

        Rows = Rows.RemoveRange(Rows.Keys.Where(s => !standing.Contains(s)));
    }
}
