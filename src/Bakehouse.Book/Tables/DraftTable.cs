namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>What is typed so far on one screen.</summary>
internal sealed class DraftRow
{
    public required string Device { get; init; }

    public required string Text { get; set; }

    public required string Person { get; set; }

    public required Instant Written { get; set; }
}

internal sealed class DraftTable : IEntityTypeConfiguration<DraftRow>
{
    public void Configure(EntityTypeBuilder<DraftRow> builder)
    {
        builder.ToTable("drafts");
        builder.HasKey(r => r.Device);
    }
}
