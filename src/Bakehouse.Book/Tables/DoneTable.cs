namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>A command that was answered, and the answer: sent again, it hears the same.</summary>
internal sealed class DoneRow
{
    public required Guid Id { get; init; }

    public required int Format { get; init; }

    public required string Answer { get; init; }

    public required Instant At { get; init; }
}

internal sealed class DoneTable : IEntityTypeConfiguration<DoneRow>
{
    public void Configure(EntityTypeBuilder<DoneRow> builder)
    {
        builder.ToTable("done");
        builder.HasKey(r => r.Id);
        builder.Property(r => r.Id).ValueGeneratedNever();
    }
}
