namespace Bakehouse.Web.Access;

using System.Globalization;
using Bakehouse.Book.Reading;
using Microsoft.AspNetCore.Mvc;

/// <summary>Who stands at this screen.</summary>
/// <param name="Person">Id of the person, or "" if nobody has said.</param>
/// <param name="Device">Id of the screen, given at its first visit.</param>
public sealed record Who(string Person, string Device);

/// <summary>Who am I: one tap on picture and name, kept in a cookie of this screen. No PIN while only this machine is served.</summary>
internal static class WhoAmI
{
    private const string PersonCookie = "bakehouse-person";
    private const string DeviceCookie = "bakehouse-device";

    private static readonly CookieOptions Kept = new()
    {
        HttpOnly = true,
        SameSite = SameSiteMode.Strict,
        IsEssential = true,
        MaxAge = TimeSpan.FromDays(400),
    };

    /// <summary>Who sends this request.</summary>
    public static Who Of(HttpContext? context)
    {
        if (context is null)
        {
            return new Who("", "");
        }

        if (context.Items[DeviceCookie] is not string device)
        {
            device = context.Request.Cookies[DeviceCookie] ?? "";
            if (device.Length == 0)
            {
                device = Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture)[..12];
                if (!context.Response.HasStarted)
                {
                    context.Response.Cookies.Append(DeviceCookie, device, Kept);
                }
            }

            context.Items[DeviceCookie] = device;
        }

        return new Who(context.Request.Cookies[PersonCookie] ?? "", device);
    }

    /// <summary>The tap itself. An unknown person is nobody: the page asks again.</summary>
    public static void MapWho(this WebApplication app) => app.MapPost("/who/am", (
        [FromForm] string person, [FromForm] string? then, HttpContext context, IBook book) =>
    {
        if (book.State.Shop?.PersonOf(person) is not null)
        {
            context.Response.Cookies.Append(PersonCookie, person, Kept);
        }

        return Results.LocalRedirect(LocalOr(then, "/"));
    });

    private static string LocalOr(string? path, string otherwise) =>
        path is { Length: > 0 } && path[0] == '/' && !path.StartsWith("//", StringComparison.Ordinal) && !path.Contains('\\', StringComparison.Ordinal)
            ? path
            : otherwise;
}
