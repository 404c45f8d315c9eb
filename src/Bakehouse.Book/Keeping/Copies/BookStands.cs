namespace Bakehouse.Book.Keeping.Copies;

using System.Globalization;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>Where a book file stands, read with plain SQL.</summary>
/// <param name="Shop">Name of the shop, or null in an empty book.</param>
/// <param name="Zone">Zone of the shop; UTC in an empty book.</param>
/// <param name="Head">How many changes it has taken.</param>
/// <param name="Orders">How many orders, of any stage.</param>
/// <param name="Last">When the last command was answered, or null if none was.</param>
public sealed record BookStands(string? Shop, DateTimeZone Zone, long Head, long Orders, Instant? Last)
{
    private const string Query = """
        SELECT (SELECT json_extract(Document, '$.name') FROM shops ORDER BY Version DESC LIMIT 1),
               (SELECT json_extract(Document, '$.zone') FROM shops ORDER BY Version DESC LIMIT 1),
               (SELECT Version FROM plan_head),
               (SELECT count(DISTINCT Id) FROM orders),
               (SELECT At FROM audit ORDER BY Counter DESC LIMIT 1)
        """;

    /// <summary>Reads it.</summary>
    /// <exception cref="SqliteException">The file can't be read, or is no book.</exception>
    public static BookStands Of(string path)
    {
        using var book = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 5 }.ToString());
        book.Open();
        using var query = book.CreateCommand();
        query.CommandText = Query;
        using var row = query.ExecuteReader();
        row.Read();
        var zone = row.IsDBNull(1) ? null : DateTimeZoneProviders.Tzdb.GetZoneOrNull(row.GetString(1));
        return new BookStands(
            row.IsDBNull(0) ? null : row.GetString(0),
            zone ?? DateTimeZone.Utc,
            row.GetInt64(2),
            row.GetInt64(3),
            row.IsDBNull(4) ? null : Instant.FromUnixTimeTicks(row.GetInt64(4) * 10));
    }

    /// <summary>"The book stands at 14:05 on Wednesday 14 October 2026: 12 orders, 40 changes."</summary>
    public override string ToString() => Last is { } last
        ? $"The book stands at {last.InZone(Zone).ToString("HH:mm 'on' dddd d MMMM uuuu", CultureInfo.InvariantCulture)}: {Orders} orders, {Head} changes."
        : "The book is empty.";
}
