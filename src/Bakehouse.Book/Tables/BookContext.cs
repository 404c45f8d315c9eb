namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>
/// The tables of the book. One short-lived context for each operation. Only whole numbers and text stand in columns that are
/// compared, so another engine could keep the same book.
/// </summary>
public sealed class BookContext(DbContextOptions<BookContext> options) : DbContext(options)
{
    /// <summary>Where the migrations of the SQLite book are.</summary>
    public const string Migrations = "Bakehouse.Migrations.Sqlite";

    internal DbSet<OrderRow> Orders => Set<OrderRow>();

    internal DbSet<ShopRow> Shops => Set<ShopRow>();

    internal DbSet<CookbookRow> Cookbooks => Set<CookbookRow>();

    internal DbSet<TickRow> Ticks => Set<TickRow>();

    internal DbSet<PinRow> Pins => Set<PinRow>();

    internal DbSet<ChoreRow> Chores => Set<ChoreRow>();

    internal DbSet<SlipRow> Slips => Set<SlipRow>();

    internal DbSet<SparesRow> Spares => Set<SparesRow>();

    internal DbSet<RingAnswerRow> RingAnswers => Set<RingAnswerRow>();

    internal DbSet<CalendarRow> Calendars => Set<CalendarRow>();

    internal DbSet<HeadRow> Heads => Set<HeadRow>();

    internal DbSet<WallStepRow> WallSteps => Set<WallStepRow>();

    internal DbSet<WallHoldRow> WallHolds => Set<WallHoldRow>();

    internal DbSet<WallCleanRow> WallCleans => Set<WallCleanRow>();

    internal DbSet<WallChoiceRow> WallChoices => Set<WallChoiceRow>();

    internal DbSet<DoneRow> Done => Set<DoneRow>();

    internal DbSet<AuditRow> Audit => Set<AuditRow>();

    internal DbSet<DraftRow> Drafts => Set<DraftRow>();

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder) =>
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(BookContext).Assembly);

    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder)
    {
        configurationBuilder.Properties<Instant>().HaveConversion<InstantColumn>();
        configurationBuilder.Properties<LocalDateTime>().HaveConversion<LocalDateTimeColumn>();
        configurationBuilder.Properties<Guid>().HaveConversion<GuidColumn>();
    }
}
