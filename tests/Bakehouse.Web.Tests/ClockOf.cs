namespace Bakehouse.Web.Tests;

using NodaTime;

/// <summary>The clock of a time that a test moves.</summary>
internal sealed class ClockOf(TimeProvider time) : IClock
{
    public Instant GetCurrentInstant() => Instant.FromDateTimeOffset(time.GetUtcNow());
}
