namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>A secret address under which a person's calendar may be read.</summary>
internal sealed class CalendarRow
{
    public long Seq { get; init; }

    public required string Person { get; init; }

    /// <summary>SHA-256 of the secret in hexadecimal: whoever reads the book can't read the calendar's address in it.</summary>
    public required string Secret { get; init; }

    public required Instant Made { get; init; }

    /// <summary>When it was stopped, or null if it is open.</summary>
    public Instant? Ended { get; set; }
}

internal sealed class CalendarTable : IEntityTypeConfiguration<CalendarRow>
{
    public void Configure(EntityTypeBuilder<CalendarRow> builder)
    {
        builder.ToTable("calendars");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => r.Secret).IsUnique();
        // One address a person is open at a time.
        builder.HasIndex(r => r.Person).IsUnique().HasFilter("\"Ended\" IS NULL");
    }
}
