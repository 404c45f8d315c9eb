namespace Bakehouse.Web.TheKitchen;

using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Access;
using Bakehouse.Web.Bell;
using NodaTime;

/// <summary>A tap in the kitchen.</summary>
/// <param name="Id">Made on the screen; the same tap sent twice counts once.</param>
/// <param name="Do">tick, undo, confirm (as planned, what was only assumed) or answer.</param>
/// <param name="Steps">Keys of the steps of a tick or undo: one, or all of a batch.</param>
/// <param name="By">Id of the person who did it; for a tick.</param>
/// <param name="Done">When, by the screen's clock, for a tick kept while there was no connection (ISO 8601, UTC); null for now.</param>
/// <param name="Ring">Id of the ring that is answered.</param>
/// <param name="Kind">Done, Later or Cannot.</param>
/// <param name="Reason">Why it can't be done.</param>
/// <param name="Now">What the screen's clock shows as it sends a kept tick; with it a wrong clock does not matter.</param>
public sealed record Tap(Guid Id, string Do, IReadOnlyList<string>? Steps, string? By, string? Done, string? Ring, string? Kind, string? Reason, string? Now = null);

/// <summary>What the screen hears about its tap.</summary>
public sealed record TapAnswer(bool Accepted, string Message);

/// <summary>
/// Takes taps over HTTP. A page of another site can't send them: the header must be there, which a browser adds to a foreign request
/// only after asking (Fetch standard, CORS preflight; we never agree), and what the browser says about the origin must be "same-origin".
/// </summary>
internal static class KitchenCommands
{
    /// <summary>The header that a tap must carry.</summary>
    public const string Header = "X-Bakehouse";

    private const int MostSteps = 40;

    public static async Task<IResult> Take(HttpContext context, IBook book, IClock clock, CancellationToken cancel)
    {
        if (!SameOrigin(context.Request) || !KitchenEvents.MayUse(context, book.State.Shop))
        {
            return Said(StatusCodes.Status403Forbidden, "This screen may not do that. Say who you are first.");
        }

        var tap = await Read(context.Request, cancel);
        if (tap is null || tap.Id == Guid.Empty || KeptTime.Of(tap.Done, tap.Now, clock.GetCurrentInstant()) is not { } time
            || await Enter(tap, time.Done, WhoAmI.Of(context), book, clock, cancel) is not { } answer)
        {
            return Said(StatusCodes.Status400BadRequest, "This tap can’t be read. Load the page again.");
        }

        return tap.Do == "tick" && time.IsLost && answer.Kind == AnswerKind.Accepted ? Results.Json(new TapAnswer(true, KeptTime.Lost)) : Heard(answer);
    }

    /// <summary>What the screen hears of the book's answer.</summary>
    internal static IResult Heard(Answer answer)
    {
        var message = answer.Problems.Count > 0 ? string.Join(' ', answer.Problems.Select(p => $"{p.Sentence} {p.Try}")) : answer.Message;
        return answer.Kind switch
        {
            AnswerKind.Accepted => Results.Json(new TapAnswer(true, message)),
            AnswerKind.Clash => Said(StatusCodes.Status409Conflict, message),
            AnswerKind.NotAllowed => Said(StatusCodes.Status403Forbidden, message),
            _ => Said(StatusCodes.Status422UnprocessableEntity, message),
        };
    }

    /// <summary>A screen says that its sound is on; it does so about twice a minute.</summary>
    public static IResult Hear(HttpContext context, IBook book, Ears ears)
    {
        if (!SameOrigin(context.Request) || !KitchenEvents.MayUse(context, book.State.Shop))
        {
            return Said(StatusCodes.Status403Forbidden, "This screen may not do that. Say who you are first.");
        }

        ears.Hear(WhoAmI.Of(context).Device);
        return Results.NoContent();
    }

    private static async Task<Tap?> Read(HttpRequest request, CancellationToken cancel)
    {
        try
        {
            return request.HasJsonContentType() ? await request.ReadFromJsonAsync<Tap>(cancel) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Enters it; null if it can't be read.</summary>
    private static async Task<Answer?> Enter(Tap tap, Instant? done, Who who, IBook book, IClock clock, CancellationToken cancel)
    {
        var steps = tap.Steps ?? [];
        var some = steps.Count is > 0 and <= MostSteps;
        return tap.Do switch
        {
            "tick" when some => await book.Tick(who, tap.Id, steps, tap.By ?? who.Person, done, cancel),
            "confirm" when some => await book.Confirm(who, tap.Id, steps, clock.GetCurrentInstant(), cancel),
            "undo" when some => await book.Undo(who, tap.Id, steps, cancel),
            "answer" when tap.Ring is { Length: > 0 } ring && Enum.TryParse<RingAnswerKind>(tap.Kind, out var kind) && Enum.IsDefined(kind) =>
                await book.Answer(who, tap.Id, ring, kind, tap.Reason ?? "", cancel),
            _ => null,
        };
    }

    /// <summary>True if the request comes from a page of ours.</summary>
    internal static bool SameOrigin(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        var origin = request.Headers.Origin.ToString();
        return request.Headers[Header] == "kitchen"
            && site is "" or "same-origin"
            && (origin.Length == 0 || origin == $"{request.Scheme}://{request.Host}");
    }

    /// <summary>A refusal in words.</summary>
    internal static IResult Said(int status, string message) => Results.Json(new TapAnswer(false, message), statusCode: status);
}
