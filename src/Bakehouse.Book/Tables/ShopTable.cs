namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Shops;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One version of the shop. Append only.</summary>
internal sealed class ShopRow
{
    public required int Version { get; init; }

    public required int Format { get; init; }

    public required string Document { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public static ShopRow Of(Shop shop, string person, string device, Instant written) => new()
    {
        Version = shop.Version,
        Format = Tables.Document.Format,
        Document = Tables.Document.Write(shop),
        Person = person,
        Device = device,
        Written = written,
    };

    public Shop Shop() => Tables.Document.ReadShop(Format, Document);
}

internal sealed class ShopTable : IEntityTypeConfiguration<ShopRow>
{
    public void Configure(EntityTypeBuilder<ShopRow> builder)
    {
        builder.ToTable("shops");
        builder.HasKey(r => r.Version);
        builder.Property(r => r.Version).ValueGeneratedNever();
    }
}
