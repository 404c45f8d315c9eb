using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <content>Turns of wandering and settling in a small shop.</content>
internal sealed partial class Rounds
{
    /// <summary>Rounds of each turn.</summary>
    private const int Wandering = 1000;
    private const int Settling = 500;

    private bool wandering;
    private int inPhase;

    /// <summary>In a small shop the search wanders and settles by turns.</summary>
    private void Turn()
    {
        if (shop.Acts.Length > Small || ++inPhase < (wandering ? Wandering : Settling))
        {
            return;
        }

        (wandering, inPhase) = (!wandering, 0);
        if (!OnlyFreshness)
        {
            if (wandering && dice.Below(2) == 0)
            {
                GoOnFrom(Best, BestLevels);
            }

            Array.Fill(before, levels);
        }
        else if (wandering)
        {
            GoOnFrom(Best, BestLevels);
            var worse = dice.Below(4) == 0 ? levels with { Overtime = 30 << dice.Below(3) } : levels with { Fresh = levels.Fresh + (levels.Fresh >> dice.Below(4)) + 60 };
            Array.Fill(before, worse);
        }
    }

    private bool OnlyFreshness => BestLevels is { Broken: 0, Late: 0, Stale: 0, Overtime: 0 };

    /// <summary>While it wanders, levels after the first that the best plan still lacks do not count.</summary>
    private Levels Counted(Levels l) => !wandering || OnlyFreshness ? l
        : BestLevels.Broken > 0 ? new Levels(l.Broken, 0, 0, 0, 0, 0, 0)
        : BestLevels.Late > 0 ? new Levels(l.Broken, l.Late, 0, 0, 0, 0, 0)
        : new Levels(l.Broken, l.Late, l.Stale, BestLevels.Stale > 0 ? 0 : l.Overtime, 0, 0, 0);

    private int Compare(Levels a, Levels b) => Counted(a).CompareTo(Counted(b));
}
