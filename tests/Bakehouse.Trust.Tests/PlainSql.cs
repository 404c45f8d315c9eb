namespace Bakehouse.Trust.Tests;

using Microsoft.Data.Sqlite;

/// <summary>Reads the file of a book without any of the book's code.</summary>
internal static class PlainSql
{
    public static List<T> Rows<T>(SqliteConnection book, string sql, Func<SqliteDataReader, T> make)
    {
        using var command = book.CreateCommand();
#pragma warning disable CA2100 // Constant text of whoever asks, never of a person.
        command.CommandText = sql;
#pragma warning restore CA2100
        using var reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read())
        {
            rows.Add(make(reader));
        }

        return rows;
    }
}
