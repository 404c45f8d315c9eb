namespace Bakehouse.Migrations.Sqlite;

using Bakehouse.Book.Tables;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

/// <summary>Lets the migrations tool see the tables without starting the app; it opens no file.</summary>
public sealed class MigrationBook : IDesignTimeDbContextFactory<BookContext>
{
    /// <inheritdoc/>
    public BookContext CreateDbContext(string[] args) => new(
        new DbContextOptionsBuilder<BookContext>()
            .UseSqlite("Data Source=:memory:", s => s.MigrationsAssembly(BookContext.Migrations))
            .Options);
}
