namespace Bakehouse.Domain.Planning;

/// <summary>
/// The next hours as they hang on the wall: nothing moves there by itself, since whoever works must be able to trust the screen.
/// </summary>
public static class Calm
{
    /// <summary>So long after now (common practice, no source).</summary>
    public const int Minutes = 120;

    /// <summary>The word that such a row carries among what is given: <see cref="Fixed.Why"/>.</summary>
    public const string Why = "calm";

    /// <summary>The week in which every row of its reference that starts before that minute stays, and nothing else may start before it.</summary>
    /// <param name="minute">Minute of the week; rounded up to the grain.</param>
    public static Week Until(Week week, int minute)
    {
        var until = (minute + week.Grain - 1) / week.Grain * week.Grain;
        var given = week.Fixed.Where(f => f.Step is not null).ToDictionary(f => f.Step!, StringComparer.Ordinal);
        var calm = (week.Reference?.Steps ?? []).Where(r => r.Start < until && given.GetValueOrDefault(r.Step)?.Start is null).ToList();
        var steps = calm.Select(r => r.Step).ToHashSet(StringComparer.Ordinal);
        return week with
        {
            FreeFrom = Math.Max(week.FreeFrom, until),
            Fixed =
            [
                .. week.Fixed.Where(f => f.Step is null || !steps.Contains(f.Step)),
                .. calm.Select(r => new Fixed(r.Step, r.Start, r.People, r.Machine, null, null, Why)),
            ],
        };
    }
}
