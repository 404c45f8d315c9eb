namespace Bakehouse.Book.Tests.Reading;

using Bakehouse.Domain.Orders;

public sealed class OrderSearchTests
{
    [Theory]
    [InlineData("alvarez", "401")]
    [InlineData("ÁLVAREZ", "401")]
    [InlineData("alv goncalves", "401")]
    [InlineData("strasse", "402")]
    [InlineData("402", "402")]
    [InlineData("07946 018 211", "402")]
    [InlineData("+44 20 7946 0182", "401")]
    [InlineData("2026-10-16", "402")]
    [InlineData("saturday", "401")]
    [InlineData("17 october", "401")]
    [InlineData("%", "")]
    [InlineData("  ", "")]
    [InlineData("nobody", "")]
    public async Task An_order_is_found_by_name_phone_number_or_day(string question, string numbers)
    {
        using var disk = new BookOnDisk();
        await disk.Write(Enquiry("Álvarez-Gonçalves", 17, "+442079460182"));
        await disk.Write(Enquiry("Anna Straße", 16, "+447946018211"));

        var found = await disk.Book.Find(question, TestContext.Current.CancellationToken);

        Assert.Equal(numbers, string.Join(' ', found.Select(f => f.Number)));
    }

    [Fact]
    public async Task An_order_is_found_by_what_stands_not_by_what_stood()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(Enquiry("Moss", 17, ""))).Order!;
        await disk.Write(order with { Customer = new Customer("Hale", "") });

        Assert.Empty(await disk.Book.Find("moss", TestContext.Current.CancellationToken));
        Assert.Equal("Hale", (await disk.Book.Find("hale", TestContext.Current.CancellationToken)).Single().Name);
    }

    [Theory]
    [InlineData("\U0001F382 Ирина 王 \"quoted\" <script>alert(1)</script>")]
    [InlineData("half a sign \uD83C")]
    [InlineData("O'Neill; DROP TABLE orders")]
    public async Task A_name_in_any_script_is_kept_as_it_was_written(string name)
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(Enquiry(name, 17, ""))).Order!;
        disk.Reopen();

        var kept = disk.Book.State.Orders.Single(o => o.Id == order.Id).Customer.Name;
        Assert.Equal(name.Replace('\uD83C', '\uFFFD').Length, kept.Length);
        Assert.Equal(string.Concat(name.EnumerateRunes()), kept);
    }

    private static Order Enquiry(string name, int day, string phone) =>
        BookOnDisk.Order(name, day, stage: Stage.Enquiry) with { Customer = new Customer(name, phone) };
}
