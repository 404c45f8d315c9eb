namespace Bakehouse.Planner.Quick;

/// <summary>What one try at placing a job may use and must keep.</summary>
/// <param name="Overtime">Hands may work beyond their shifts.</param>
/// <param name="Age">Grains by which soft ages may be passed; <see cref="Any"/> lets them go.</param>
/// <param name="Fresh">The same for freshness and buffer.</param>
/// <param name="From">Grains by which the pickup is later than promised, at least.</param>
/// <param name="To">At most.</param>
/// <param name="Tries">Places of steps that may be tried.</param>
/// <param name="Twist">0, or a number that shuffles which person and store is tried first.</param>
/// <param name="Early">Of 256 steps, so many begin their search earlier than they need to.</param>
internal readonly record struct Terms(bool Overtime, int Age, int Fresh, int From, int To, int Tries, uint Twist, uint Early = 0)
{
    /// <summary>So long that a wish is let go.</summary>
    public const int Any = int.MaxValue;

    public bool Keeps(CapKind kind) => kind == CapKind.Hard || (kind == CapKind.Soft ? Age : Fresh) != Any;

    /// <summary>Grains that these terms give a kept limit.</summary>
    public int Limit(Cap cap) => cap.Kind switch
    {
        CapKind.Hard => cap.Grains,
        CapKind.Soft => cap.Grains + Age,
        CapKind.Fresh => cap.Grains + Fresh,
        _ => Math.Max(0, cap.Grains - Fresh),
    };
}
