namespace Bakehouse.Web.IsAllWell;

using System.Net;

/// <summary>What a program on this machine may ask, for whoever watches Bakehouse.</summary>
internal static class Asking
{
    /// <summary>
    /// <c>/alive</c>: the bell's loop looked within 5 s. <c>/ready</c>: an entry could be taken now. 200 if so, else 503; to other
    /// machines there is no such page.
    /// </summary>
    public static void MapAsking(this WebApplication app)
    {
        app.MapGet("/alive", (HttpContext context, WellReader reader) => Say(context, reader.IsAlive));
        app.MapGet("/ready", (HttpContext context, WellReader reader) => Say(context, reader.IsReady));
    }

    private static IResult Say(HttpContext context, bool isSo) =>
        context.Connection.RemoteIpAddress is { } from && !IPAddress.IsLoopback(from) ? Results.NotFound()
        : isSo ? Results.Text("yes")
        : Results.Text("no", statusCode: StatusCodes.Status503ServiceUnavailable);
}
