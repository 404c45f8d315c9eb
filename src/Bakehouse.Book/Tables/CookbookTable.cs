namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Recipes;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One version of all recipes and ingredients. Append only: an order keeps the version that it is made from.</summary>
internal sealed class CookbookRow
{
    public required int Version { get; init; }

    public required int Format { get; init; }

    public required string Document { get; init; }

    /// <summary>Why it was changed; allergens demand a reason.</summary>
    public required string Why { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public static CookbookRow Of(Cookbook book, string why, string person, string device, Instant written) => new()
    {
        Version = book.Version,
        Format = Tables.Document.Format,
        Document = Tables.Document.Write(book),
        Why = why,
        Person = person,
        Device = device,
        Written = written,
    };

    public Cookbook Cookbook() => Tables.Document.ReadCookbook(Format, Document);
}

internal sealed class CookbookTable : IEntityTypeConfiguration<CookbookRow>
{
    public void Configure(EntityTypeBuilder<CookbookRow> builder)
    {
        builder.ToTable("cookbooks");
        builder.HasKey(r => r.Version);
        builder.Property(r => r.Version).ValueGeneratedNever();
    }
}
