namespace Bakehouse.Book.Tables;

using System.Globalization;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using NodaTime;
using NodaTime.Text;

/// <summary>An instant as microseconds since 1970 in a 64-bit integer.</summary>
internal sealed class InstantColumn() : ValueConverter<Instant, long>(i => Microseconds(i), m => FromMicroseconds(m))
{
    /// <summary>Whole microseconds: what survives a round trip.</summary>
    public static long Microseconds(Instant instant) => instant.ToUnixTimeTicks() / 10;

    private static Instant FromMicroseconds(long microseconds) => Instant.FromUnixTimeTicks(microseconds * 10);
}

/// <summary>A local date and time as ISO text to the second, so that text order is time order.</summary>
internal sealed class LocalDateTimeColumn() : ValueConverter<LocalDateTime, string>(t => Text(t), t => Read(t))
{
    private static readonly LocalDateTimePattern Pattern = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss");

    private static string Text(LocalDateTime time) => Pattern.Format(time);

    private static LocalDateTime Read(string text) => Pattern.Parse(text).Value;
}

/// <summary>An id as 32 hex digits, as it stands in the keys of steps.</summary>
internal sealed class GuidColumn() : ValueConverter<Guid, string>(g => g.ToString("N", CultureInfo.InvariantCulture), t => Guid.ParseExact(t, "N"));
