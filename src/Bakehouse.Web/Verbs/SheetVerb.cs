using System.CommandLine;
using Bakehouse.Domain.Sheets;

namespace Bakehouse.Web.Verbs;

/// <summary>
/// <c>sheet order.json [--out sheet.json]</c>: the build sheet of an order as JSON (<see cref="WrittenSheet"/>). Exit 0 with a sheet, 2 if the file
/// can't be read or what it asks for can't be built; then each problem is a line on the error stream.
/// </summary>
internal static class SheetVerb
{
    public static Command Build()
    {
        var order = new Argument<string>("order") { Description = "The order's file." };
        var outTo = new Option<string?>("--out") { Description = "Where to write the sheet; without it, the sheet is printed." };
        var verb = new Command("sheet", "Work out the build sheet of an order.") { order, outTo };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(order), parsed.GetValue(outTo)));
        return verb;
    }

    private static int Run(string path, string? outTo) => Files.Order(path) is { } asked
        ? Files.Deliver(SheetFile.Write(WrittenSheet.Of(asked.Order, asked.Figures, asked.Choices)), outTo)
        : Files.Unreadable;
}
