namespace Bakehouse.Web.TheKitchen;

using NodaTime;
using NodaTime.Text;

/// <summary>
/// When a tick was made that a screen kept while it had no connection. The clock of a screen may be an hour off; the time that it counts
/// between the tap and the sending is right all the same.
/// </summary>
/// <param name="Done">By the clock of the book; null for now.</param>
/// <param name="IsLost">True if the screen's clock was set back in between, so that nobody can tell: the tick counts as of now.</param>
internal sealed record KeptTime(Instant? Done, bool IsLost)
{
    /// <summary>What is said then.</summary>
    public const string Lost = "Written as done now: the clock of this screen was set back while the tick waited. Put its time right on the cake’s page.";

    /// <summary>Null if it can't be read.</summary>
    /// <param name="done">When the tap was made by the screen's clock, ISO 8601 in UTC; null for now.</param>
    /// <param name="sent">When it was sent, by the same clock; null if the screen does not say: then its clock is taken for right.</param>
    /// <param name="here">Now, by the clock of the book.</param>
    public static KeptTime? Of(string? done, string? sent, Instant here)
    {
        if (done is null)
        {
            return new(null, false);
        }

        if (!InstantPattern.ExtendedIso.Parse(done).TryGetValue(default, out var tapped))
        {
            return null;
        }

        if (sent is null)
        {
            return new(tapped, false);
        }

        return !InstantPattern.ExtendedIso.Parse(sent).TryGetValue(default, out var left) ? null
            : left < tapped ? new(null, true)
            : new(here - (left - tapped), false);
    }
}
