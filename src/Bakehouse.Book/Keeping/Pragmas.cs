namespace Bakehouse.Book.Keeping;

using System.Data.Common;
using System.Globalization;
using Microsoft.EntityFrameworkCore.Diagnostics;

/// <summary>
/// Sets on every open what keeps an acknowledged entry through a pulled plug, and reads it back: a write-ahead log that is
/// synced at each commit, foreign keys, and five seconds of patience with another program.
/// </summary>
internal sealed class Pragmas : DbConnectionInterceptor
{
    private const string Set =
        "PRAGMA busy_timeout=5000; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";

    /// <summary>What must stand after the open: synchronous 2 is FULL.</summary>
    private static readonly (string Name, string Value)[] Wanted =
        [("busy_timeout", "5000"), ("journal_mode", "wal"), ("synchronous", "2"), ("foreign_keys", "1")];

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Apply(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Apply(connection);
        return Task.CompletedTask;
    }

    /// <summary>Every setting as it reads now.</summary>
    public static IReadOnlyDictionary<string, string> Read(DbConnection connection) =>
        Wanted.ToDictionary(w => w.Name, w => Value(connection, w.Name), StringComparer.Ordinal);

    private static void Apply(DbConnection connection)
    {
        using (var set = connection.CreateCommand())
        {
            set.CommandText = Set;
            set.ExecuteNonQuery();
        }

        var read = Read(connection);
        foreach (var (name, value) in Wanted.Where(w => read[w.Name] != w.Value))
        {
            throw new BookClosedException($"The book asked for {name} {value} and reads {read[name]}: it would not be kept well. Put it on a local disk.", why: WhyClosed.Unfit);
        }
    }

    private static string Value(DbConnection connection, string name)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"PRAGMA {name}";
        return Convert.ToString(command.ExecuteScalar(), CultureInfo.InvariantCulture) ?? "";
    }
}
