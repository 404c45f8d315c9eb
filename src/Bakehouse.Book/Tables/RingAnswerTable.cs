namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Reminders;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>An answer to a ring. A ring may be answered once each time it rings; the first answer wins.</summary>
internal sealed class RingAnswerRow
{
    public long Seq { get; init; }

    public required string Ring { get; init; }

    /// <summary>1 for the first time it rang, 2 after "later", and so on.</summary>
    public required int Turn { get; init; }

    public required Guid Order { get; init; }

    public required string Kind { get; init; }

    public required string Reason { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant At { get; init; }

    public Instant? Until { get; init; }

    /// <summary>Set when the tick that came with it was taken back: the ring may ring again.</summary>
    public Instant? Undone { get; set; }

    public RingAnswer Answer() => new(Ring, Enum.Parse<RingAnswerKind>(Kind), Reason, Person, At, Until);
}

internal sealed class RingAnswerTable : IEntityTypeConfiguration<RingAnswerRow>
{
    public void Configure(EntityTypeBuilder<RingAnswerRow> builder)
    {
        builder.ToTable("ring_answers");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => new { r.Ring, r.Turn }).IsUnique();
        builder.HasIndex(r => r.Order);
    }
}
