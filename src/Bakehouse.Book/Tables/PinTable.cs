namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>A step that somebody put and pinned, kept also when it was let go.</summary>
internal sealed class PinRow
{
    public long Seq { get; init; }

    /// <summary>Id of the command: by it the move is taken back.</summary>
    public required Guid Move { get; init; }

    public required string Step { get; init; }

    public required Guid Order { get; init; }

    public required Instant Start { get; init; }

    /// <summary>Ids with a space between.</summary>
    public required string People { get; init; }

    public string? Machine { get; init; }

    /// <summary>Format of <see cref="Before"/>.</summary>
    public required int Format { get; init; }

    /// <summary>The rows of the plan that it moved, as they were before.</summary>
    public required string Before { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public string? UndonePerson { get; set; }

    /// <summary>When it was let go, or null if it stands.</summary>
    public Instant? Undone { get; set; }

    public Pin Pin() => new(Step, Start, People.Split(' ', StringSplitOptions.RemoveEmptyEntries), Machine);

    public Wall Moved() => Document.ReadWall(Format, Before);
}

internal sealed class PinTable : IEntityTypeConfiguration<PinRow>
{
    public void Configure(EntityTypeBuilder<PinRow> builder)
    {
        builder.ToTable("pins");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => r.Step).IsUnique().HasFilter("\"Undone\" IS NULL");
        builder.HasIndex(r => r.Move).IsUnique();
        builder.HasIndex(r => r.Order);
    }
}
