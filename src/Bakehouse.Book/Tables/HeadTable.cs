namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>The one row that every accepted change moves on by one: the gate where two writers meet.</summary>
internal sealed class HeadRow
{
    public required int Id { get; init; }

    public required int Version { get; init; }

    /// <summary>Minute 0 of the plan on the wall, or null if nothing is planned.</summary>
    public Instant? Epoch { get; init; }

    /// <summary>Name of the week that the plan is for.</summary>
    public required string Week { get; init; }
}

internal sealed class HeadTable : IEntityTypeConfiguration<HeadRow>
{
    public const int Only = 1;

    public void Configure(EntityTypeBuilder<HeadRow> builder)
    {
        builder.ToTable("plan_head");
        builder.HasKey(r => r.Id);
        builder.Property(r => r.Id).ValueGeneratedNever();
        builder.HasData(new HeadRow { Id = Only, Version = 0, Week = "" });
    }
}
