namespace Bakehouse.Web.TheKitchen.Wrong;

using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Access;
using Bakehouse.Web.TheKitchen;
using NodaTime;

/// <summary>Takes what went wrong over HTTP, under the same rules as the kitchen's taps.</summary>
internal static class WrongCommands
{
    private const int MostThings = 40;

    /// <summary>Maps the address: another one than the page's, which answers to posts itself.</summary>
    public static void MapWrong(this WebApplication app) => app.MapPost("/kitchen/slips", Take);

    private static async Task<IResult> Take(HttpContext context, IBook book, IClock clock, CancellationToken cancel)
    {
        if (!KitchenCommands.SameOrigin(context.Request) || !KitchenEvents.MayUse(context, book.State.Shop))
        {
            return KitchenCommands.Said(StatusCodes.Status403Forbidden, "This screen may not do that. Say who you are first.");
        }

        return await Read(context.Request, cancel) is { } told && Command(told, WhoAmI.Of(context), new WrongHours(book.State.Shop!, clock.GetCurrentInstant())) is { } command
            ? KitchenCommands.Heard(await book.Enter(command, cancel))
            : KitchenCommands.Said(StatusCodes.Status400BadRequest, "This can’t be read. Load the page again.");
    }

    private static async Task<Telling?> Read(HttpRequest request, CancellationToken cancel)
    {
        try
        {
            return request.HasJsonContentType() ? await request.ReadFromJsonAsync<Telling>(cancel) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static Command? Command(Telling told, Who who, WrongHours hours)
    {
        if (told.Id == Guid.Empty)
        {
            return null;
        }

        if (told.Back is { } back)
        {
            return new TakeBackSlip(told.Id, who.Person, who.Device, back);
        }

        return Enum.TryParse<SlipKind>(told.Kind, out var kind) && Enum.IsDefined(kind) && told.About is { Count: > 0 and <= MostThings }
            ? new TellSlip(told.Id, who.Person, who.Device, new Slip(told.Id, kind, told.About, Instant.MinValue, who.Person, hours.Read(told.From), hours.Read(told.Until), told.Spare))
            : null;
    }
}
