namespace Bakehouse.Book.Keeping.Auditing;

using System.Text.Unicode;
using Microsoft.Data.Sqlite;

/// <summary>
/// Looks at a book file with plain SQL, one query a rule, and shares no code with what writes the book: a fault that the one
/// makes, the other does not make too. Reads only.
/// </summary>
public static class BookAudit
{
    /// <summary>Every rule in the order in which they are looked at.</summary>
    public static IReadOnlyList<AuditRule> Rules { get; } = [.. CommandRules.All, .. OrderRules.All, .. HandRules.All, .. PlanRules.All, .. ByHandRules.All, .. CookbookRules.All];

    private static readonly AuditRule Pages = new("P1", "Every page and every index of the file is whole.", "PRAGMA integrity_check");

    // The engine does not look into texts: a damaged one reads as another text. One query for each column.
    private static readonly AuditRule Texts = new("P2", "Every text is text (UTF-8).", """
        SELECT 'SELECT ' || quote(t.name || '.' || c.name || ' row ') || ' || rowid, CAST("' || c.name || '" AS BLOB) FROM "' || t.name
               || '" WHERE ''text'' = typeof("' || c.name || '")'
          FROM sqlite_master t, pragma_table_info(t.name) c
         WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite_%'
        """);

    /// <summary>
    /// Every place where the book breaks a rule; empty if it breaks none. All rules look at the same moment of a book that is in use.
    /// If pages of the file are damaged, only those are told.
    /// </summary>
    /// <exception cref="BookClosedException">The file can't be read, or is no book of this version.</exception>
    public static IReadOnlyList<AuditFault> Examine(string path)
    {
        if (!File.Exists(path))
        {
            throw new BookClosedException($"There is no book {path}.");
        }

        try
        {
            using var book = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false, DefaultTimeout = 5 }.ToString());
            book.Open();
            using var moment = book.BeginTransaction(deferred: true);
            var damaged = Lines(book, Pages.Sql).Where(l => l != "ok").Select(l => new AuditFault(Pages, l)).Concat(NoText(book)).ToList();
            return damaged.Count > 0 ? damaged : [.. Rules.SelectMany(r => Lines(book, r.Sql).Select(l => new AuditFault(r, l)))];
        }
        catch (SqliteException trouble)
        {
            throw new BookClosedException($"{path} can't be audited: {trouble.Message}", trouble);
        }
    }

    private static IEnumerable<AuditFault> NoText(SqliteConnection book) => Lines(book, Texts.Sql)
        .SelectMany(column => Rows(book, column, r => (Where: r.GetString(0), Text: r.GetFieldValue<byte[]>(1))))
        .Where(r => !Utf8.IsValid(r.Text))
        .Select(r => new AuditFault(Texts, r.Where));

    private static List<string> Lines(SqliteConnection book, string sql) => Rows(book, sql, r => r.GetString(0));

    private static List<T> Rows<T>(SqliteConnection book, string sql, Func<SqliteDataReader, T> read)
    {
        using var query = book.CreateCommand();
#pragma warning disable CA2100 // The rules are constant text of this folder.
        query.CommandText = sql;
#pragma warning restore CA2100
        using var rows = query.ExecuteReader();
        var all = new List<T>();
        while (rows.Read())
        {
            all.Add(read(rows));
        }

        return all;
    }
}
