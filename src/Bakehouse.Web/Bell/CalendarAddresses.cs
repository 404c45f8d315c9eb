namespace Bakehouse.Web.Bell;

using System.Security.Cryptography;
using System.Text;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Access;
using NodaTime;

/// <summary>Secret addresses of calendars: whoever knows one may read, and nobody else. Only the hash of the secret is kept.</summary>
internal static class CalendarAddresses
{
    private const int SecretBytes = 32;

    /// <summary>Maps the calendars' addresses: /calendar/SECRET.ics.</summary>
    public static void MapCalendar(this WebApplication app) => app.MapGet("/calendar/{secret}.ics", Read);

    /// <summary>Gives a person a new address; its path is shown once, to whoever asked. Null with what the book said instead.</summary>
    public static async Task<(string? Path, Answer Answer)> NewCalendar(this IBook book, Who who, string person)
    {
        var secret = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(SecretBytes));
        var answer = await book.Enter(new RenewCalendar(Guid.NewGuid(), who.Person, who.Device, person, Hash(secret)));
        return (answer.Kind == AnswerKind.Accepted ? $"/calendar/{secret}.ics" : null, answer);
    }

    /// <summary>Hexadecimal SHA-256 in capitals.</summary>
    public static string Hash(string secret) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));

    private static IResult Read(string secret, HttpContext context, IBook book, Ringer ringer)
    {
        var hash = Hash(secret);
        var state = book.State;
        if (state.Shop is not { } shop || state.Calendars.FirstOrDefault(c => c.Secret == hash) is not { } address || shop.PersonOf(address.Person) is not { } person)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "no-store";
        return Results.Text(RingCalendar.Write(ringer.Look(), shop, person), "text/calendar; charset=utf-8", Encoding.UTF8);
    }
}
