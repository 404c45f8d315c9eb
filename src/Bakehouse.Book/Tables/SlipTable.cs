namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Slips;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>Something that went wrong, as told; kept also when it was taken back.</summary>
internal sealed class SlipRow
{
    public long Seq { get; init; }

    /// <summary>Id of the command that told it.</summary>
    public required Guid Id { get; init; }

    public required string Kind { get; init; }

    /// <summary>Format of <see cref="Document"/> and <see cref="Before"/>.</summary>
    public required int Format { get; init; }

    public required string Document { get; init; }

    /// <summary>The rows of the plan that it moved, as they were before; null if nothing was planned.</summary>
    public string? Before { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public string? UndonePerson { get; set; }

    /// <summary>When it was taken back, or null if it stands.</summary>
    public Instant? Undone { get; set; }

    public Slip Slip() => Tables.Document.ReadSlip(Format, Document);

    public Wall? Moved() => Before is null ? null : Tables.Document.ReadWall(Format, Before);
}

internal sealed class SlipTable : IEntityTypeConfiguration<SlipRow>
{
    public void Configure(EntityTypeBuilder<SlipRow> builder)
    {
        builder.ToTable("slips");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => r.Id).IsUnique();
        builder.HasIndex(r => r.Written);
    }
}
