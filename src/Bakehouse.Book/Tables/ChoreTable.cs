namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Chores;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One version of a chore. Append only; (id, version) is unique, so of two writers one loses.</summary>
internal sealed class ChoreRow
{
    public long Seq { get; init; }

    public required Guid Id { get; init; }

    public required int Version { get; init; }

    /// <summary>Format of the document.</summary>
    public required int Format { get; init; }

    public required string Document { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public static ChoreRow Of(Chore chore, string person, string device, Instant written) => new()
    {
        Id = chore.Id,
        Version = chore.Version,
        Format = Tables.Document.Format,
        Document = Tables.Document.Write(chore),
        Person = person,
        Device = device,
        Written = written,
    };

    public Chore Chore() => Tables.Document.ReadChore(Format, Document);
}

internal sealed class ChoreTable : IEntityTypeConfiguration<ChoreRow>
{
    public void Configure(EntityTypeBuilder<ChoreRow> builder)
    {
        builder.ToTable("chores");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => new { r.Id, r.Version }).IsUnique();
    }
}
