namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>Fills an empty book with the sample bakery as it stands this morning.</summary>
internal static class SampleEntry
{
    public static Outcome Decide(OpenSample command, Desk desk)
    {
        if (desk.State.Shop is { } shop)
        {
            return Outcome.Refused("sample", new Problem(
                "book", shop.Name, $"This book belongs to {shop.Name} already; the sample opens in an empty book only.", "Name another file for the book, or move this one away."));
        }

        var sample = OpenedSample.At(desk.Now, desk.Planner);
        return Outcome.Accepted("sample", new Change(sample.Wall, book => Write(book, command, desk, sample)));
    }

    private static void Write(BookContext book, OpenSample command, Desk desk, OpenedSample sample)
    {
        book.Shops.Add(ShopRow.Of(sample.Shop, command.Person, command.Device, desk.Now));
        book.Cookbooks.Add(CookbookRow.Of(Starter.Sample, "The sample's recipes", command.Person, command.Device, desk.Now));
        book.Orders.AddRange(sample.Orders.Select(o => OrderRow.Of(o, command.Person, command.Device, desk.Now)));
        book.Ticks.AddRange(sample.Ticks.Select(t => new TickRow
        {
            Step = t.Step,
            Order = StepKey.Parse(t.Step)!.Value.Order,
            Done = t.Done,
            By = t.Person,
            Person = command.Person,
            Device = command.Device,
            Written = desk.Now,
        }));
    }
}
