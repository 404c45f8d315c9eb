namespace Bakehouse.Book.Tables;

using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>A step of the plan on the wall.</summary>
internal sealed record WallStepRow
{
    public required string Step { get; init; }

    public required Instant Start { get; init; }

    /// <summary>Ids with a space between.</summary>
    public required string People { get; init; }

    public string? Machine { get; init; }

    public string? Batch { get; init; }
}

/// <summary>Where something stands meanwhile.</summary>
internal sealed record WallHoldRow
{
    public required string Hold { get; init; }

    public required string Store { get; init; }
}

/// <summary>A wet clean-down.</summary>
internal sealed record WallCleanRow
{
    public required string Machine { get; init; }

    public required Instant Start { get; init; }

    public required string People { get; init; }
}

/// <summary>A choice that the plan made.</summary>
internal sealed record WallChoiceRow
{
    public required string Choice { get; init; }

    public required string Taken { get; init; }
}

internal sealed class WallStepTable : IEntityTypeConfiguration<WallStepRow>
{
    public void Configure(EntityTypeBuilder<WallStepRow> builder)
    {
        builder.ToTable("wall_steps");
        builder.HasKey(r => r.Step);
    }
}

internal sealed class WallHoldTable : IEntityTypeConfiguration<WallHoldRow>
{
    public void Configure(EntityTypeBuilder<WallHoldRow> builder)
    {
        builder.ToTable("wall_holds");
        builder.HasKey(r => r.Hold);
    }
}

internal sealed class WallCleanTable : IEntityTypeConfiguration<WallCleanRow>
{
    public void Configure(EntityTypeBuilder<WallCleanRow> builder)
    {
        builder.ToTable("wall_cleans");
        builder.HasKey(r => new { r.Machine, r.Start });
    }
}

internal sealed class WallChoiceTable : IEntityTypeConfiguration<WallChoiceRow>
{
    public void Configure(EntityTypeBuilder<WallChoiceRow> builder)
    {
        builder.ToTable("wall_choices");
        builder.HasKey(r => r.Choice);
    }
}
