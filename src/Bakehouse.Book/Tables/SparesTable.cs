namespace Bakehouse.Book.Tables;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Freezer;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One count of one baking in the freezer. Append only; the last of a baking is what stands.</summary>
internal sealed class SparesRow
{
    public long Seq { get; init; }

    /// <summary>Id of the command that told it.</summary>
    public required Guid Id { get; init; }

    /// <summary>Format of the document.</summary>
    public required int Format { get; init; }

    public required string Document { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public static SparesRow Of(CountSpares command, Instant written) => new()
    {
        Id = command.Id,
        Format = Tables.Document.Format,
        Document = Tables.Document.Write(command.Spares),
        Person = command.Person,
        Device = command.Device,
        Written = written,
    };

    public SpareSponges Spares() => Tables.Document.ReadSpares(Format, Document);
}

internal sealed class SparesTable : IEntityTypeConfiguration<SparesRow>
{
    public void Configure(EntityTypeBuilder<SparesRow> builder)
    {
        builder.ToTable("spares");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => r.Id).IsUnique();
    }
}
