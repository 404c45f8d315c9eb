namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>A tick, kept also when it was taken back.</summary>
internal sealed class TickRow
{
    public long Seq { get; init; }

    public required string Step { get; init; }

    public required Guid Order { get; init; }

    public required Instant Done { get; init; }

    /// <summary>In the place of who did it: somebody said that what was assumed is not done.</summary>
    public const string Nobody = "";

    /// <summary>Who did the step, or <see cref="Nobody"/>.</summary>
    public required string By { get; init; }

    /// <summary>Who tapped, on which screen, when.</summary>
    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public string? UndonePerson { get; set; }

    /// <summary>When it was taken back, or null if it stands.</summary>
    public Instant? Undone { get; set; }

    /// <summary>Why it was corrected, in the words of whoever did; null if it was only taken back, or stands.</summary>
    public string? Reason { get; set; }

    public Tick Tick() => new(Step, Done, By);
}

internal sealed class TickTable : IEntityTypeConfiguration<TickRow>
{
    public void Configure(EntityTypeBuilder<TickRow> builder)
    {
        builder.ToTable("ticks");
        builder.HasKey(r => r.Seq);
        // A step is done once: of two ticks that stand, the second can't be written.
        builder.HasIndex(r => r.Step).IsUnique().HasFilter("\"Undone\" IS NULL");
        builder.HasIndex(r => r.Order);
    }
}
