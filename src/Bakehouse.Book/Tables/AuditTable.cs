namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One line for each command that was answered. Never changed; the counter orders them, whatever the clock did.</summary>
internal sealed class AuditRow
{
    public long Counter { get; init; }

    public required Instant At { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    /// <summary>Name of the command.</summary>
    public required string Command { get; init; }

    public required Guid CommandId { get; init; }

    /// <summary>Order, step or ring that it was about, by id; never a name.</summary>
    public required string Subject { get; init; }

    /// <summary>Accepted, refused, clash, not allowed.</summary>
    public required string Outcome { get; init; }
}

internal sealed class AuditTable : IEntityTypeConfiguration<AuditRow>
{
    public void Configure(EntityTypeBuilder<AuditRow> builder)
    {
        builder.ToTable("audit");
        builder.HasKey(r => r.Counter);
        builder.HasIndex(r => r.CommandId).IsUnique();
    }
}
