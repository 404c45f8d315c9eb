namespace Bakehouse.Domain.Planning;

/// <summary>What keeps a step from a time.</summary>
public enum StopKind
{
    /// <summary>That time is over.</summary>
    Past,

    /// <summary>What comes before it is not done, or has not waited long enough.</summary>
    TooSoon,

    /// <summary>What comes after it would begin too late, or would have waited too short.</summary>
    TooLate,

    /// <summary>What it must not be older than, or must not wait longer for.</summary>
    TooOld,

    /// <summary>The customer comes at the agreed time, not before.</summary>
    Agreed,

    /// <summary>The cake would be late.</summary>
    Promise,

    /// <summary>Nobody who can do it is at work.</summary>
    Nobody,

    /// <summary>Somebody is not at work.</summary>
    Away,

    /// <summary>Somebody has a step that is pinned or running.</summary>
    Busy,

    /// <summary>The machine, or the tool, is out of use.</summary>
    Shut,

    /// <summary>A step that is pinned or running is on the machine, or has the last tool.</summary>
    Taken,

    /// <summary>The week ends.</summary>
    End,
}

/// <summary>Why a step can't stand earlier, or later.</summary>
/// <param name="Minute">
/// TooSoon: the first minute at which it can begin. TooLate, Promise: the last at which it may end. TooOld: the first or last at which it
/// may begin. Past, Agreed, Nobody: the first or last at which it can begin. Away, Busy, Shut, Taken: as <paramref name="From"/> and To.
/// </param>
/// <param name="Person">Away, Busy: who.</param>
/// <param name="Place">Shut, Taken: the machine or tool. TooSoon, TooLate: the kind of place where it waits, if it waits.</param>
/// <param name="Step">TooSoon: the step before. TooLate, TooOld: the step after or before. Busy, Taken: the step that stands.</param>
/// <param name="Wait">Least minutes between the two.</param>
/// <param name="From">Away, Busy, Shut, Taken: since when.</param>
/// <param name="To">Away, Busy, Shut, Taken: until when.</param>
public sealed record Stop(StopKind Kind, int Minute, string? Person = null, string? Place = null, string? Step = null, int Wait = 0, int From = 0, int To = 0);
