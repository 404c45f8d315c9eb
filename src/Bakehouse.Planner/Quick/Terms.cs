namespace Bakehouse.Planner.Quick;

/// <summary>What one try at placing a job may use and must keep.</summary>
/// <param name="Overtime">Hands may work beyond their shifts.</param>
/// <param name="KeepAges">Soft ages are kept as if they were hard.</param>
/// <param name="KeepFresh">Freshness and buffer too.</param>
/// <param name="From">Grains by which the pickup is later than promised, at least.</param>
/// <param name="To">At most.</param>
/// <param name="Tries">Places of steps that may be tried.</param>
/// <param name="Twist">0, or a number that shuffles which person and store is tried first.</param>
internal readonly record struct Terms(bool Overtime, bool KeepAges, bool KeepFresh, int From, int To, int Tries, uint Twist)
{
    public bool Keeps(CapKind kind) => kind switch
    {
        CapKind.Hard => true,
        CapKind.Soft => KeepAges,
        _ => KeepFresh,
    };
}
