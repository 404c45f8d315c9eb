namespace Bakehouse.Domain.Structure;

/// <summary>Heights of the hands in the filter of the British authority.</summary>
public enum HandHeight
{
    /// <summary>From the floor to the middle of the lower leg.</summary>
    Floor,

    /// <summary>From there to the knuckles of a hanging hand.</summary>
    LowerLeg,

    /// <summary>From the knuckles to the elbow.</summary>
    Knuckle,

    /// <summary>From the elbow to the shoulder.</summary>
    Elbow,

    /// <summary>From the shoulder to the top of the head.</summary>
    Shoulder,
}

/// <summary>
/// The lifting filter of the Health and Safety Executive (INDG143, figure 1; the middle heights and arm's length at the knuckles are from
/// memory). Within it a lift needs no closer look; beyond it, look closer. It is no limit.
/// </summary>
public static class LiftingFilter
{
    private static readonly Dictionary<HandHeight, (int Close, int Out)> Men = new()
    {
        [HandHeight.Floor] = (10, 5), [HandHeight.LowerLeg] = (20, 10), [HandHeight.Knuckle] = (25, 15), [HandHeight.Elbow] = (20, 10), [HandHeight.Shoulder] = (10, 5),
    };

    private static readonly Dictionary<HandHeight, (int Close, int Out)> Women = new()
    {
        [HandHeight.Floor] = (7, 3), [HandHeight.LowerLeg] = (13, 7), [HandHeight.Knuckle] = (16, 10), [HandHeight.Elbow] = (13, 7), [HandHeight.Shoulder] = (7, 3),
    };

    /// <summary>Kilograms of the filter.</summary>
    /// <param name="armsOut">True at arm's length: a cake is always held so.</param>
    public static int Kilograms(HandHeight height, bool woman, bool armsOut)
    {
        var (close, outwards) = (woman ? Women : Men)[height];
        return armsOut ? outwards : close;
    }

    /// <summary>Per cent less for a twist: 10 beyond 45 degrees, 20 beyond 90.</summary>
    public static int LessForTwist(double degrees) => degrees > 90 ? 20 : degrees > 45 ? 10 : 0;

    /// <summary>Per cent less for lifting again and again: 30 from once a minute, 50 from five times, 80 beyond twelve times.</summary>
    public static int LessForFrequency(double perMinute) => perMinute > 12 ? 80 : perMinute >= 5 ? 50 : perMinute >= 1 ? 30 : 0;
}
