namespace Bakehouse.Domain.Answers;

/// <summary>How a day stands for a cake.</summary>
public enum DayStands
{
    /// <summary>The shop is shut.</summary>
    Shut,

    /// <summary>It fits at the hour that was wished, or at the last of the day if none was.</summary>
    Yes,

    /// <summary>It fits on that day, at another hour.</summary>
    OtherHour,

    /// <summary>It does not fit while the others stand still.</summary>
    No,
}

/// <summary>One day of those that are shown at the counter.</summary>
/// <param name="At">When it would be handed over; null unless it fits.</param>
public sealed record DayAnswer(LocalDate Day, DayStands Stands, LocalDateTime? At);
