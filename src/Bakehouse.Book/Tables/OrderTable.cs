namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Orders;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using NodaTime;

/// <summary>One version of an order. Append only; (id, version) is unique, so of two writers one loses.</summary>
internal sealed class OrderRow
{
    public long Seq { get; init; }

    public required Guid Id { get; init; }

    public required int Version { get; init; }

    public required int Number { get; init; }

    public required string Stage { get; init; }

    public required LocalDateTime Handover { get; init; }

    /// <summary>Folded words by which it is found.</summary>
    public required string Search { get; init; }

    /// <summary>Format of the document.</summary>
    public required int Format { get; init; }

    public required string Document { get; init; }

    public required string Person { get; init; }

    public required string Device { get; init; }

    public required Instant Written { get; init; }

    public static OrderRow Of(Order order, string person, string device, Instant written) => new()
    {
        Id = order.Id,
        Version = order.Version,
        Number = order.Number,
        Stage = order.Stage.ToString(),
        Handover = order.Handover.At,
        Search = SearchText.Of(order),
        Format = Tables.Document.Format,
        Document = Tables.Document.Write(order),
        Person = person,
        Device = device,
        Written = written,
    };

    public Order Order() => Tables.Document.ReadOrder(Format, Document);
}

internal sealed class OrderTable : IEntityTypeConfiguration<OrderRow>
{
    public void Configure(EntityTypeBuilder<OrderRow> builder)
    {
        builder.ToTable("orders");
        builder.HasKey(r => r.Seq);
        builder.HasIndex(r => new { r.Id, r.Version }).IsUnique();
        builder.HasIndex(r => new { r.Number, r.Version }).IsUnique();
        builder.HasIndex(r => r.Handover);
    }
}
