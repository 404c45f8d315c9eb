namespace Bakehouse.Planner.Quick;

/// <summary>
/// Moves steps one by one, all others standing: those of cakes on time as late as may be, last step first, then those of late cakes as
/// early as may be, first step first. So gaps between steps become one gap where something fits, and what stood in overtime or too early
/// for its freshness finds a better place by the way.
/// </summary>
internal sealed class Justifying(Shop shop, Job[] movable, Board board, Dice dice)
{
    private const int Whole = 250;
    private readonly Placing placing = new(shop, board);

    public long Work => placing.Work;

    public void Go(Build?[] builds)
    {
        var (from, to) = Stretch();
        var steps = movable.Where(j => builds[j.Index] is not null)
            .SelectMany(j => builds[j.Index]!.Acts.Select((a, i) => (Job: j, Build: builds[j.Index]!, Act: a, At: i, board.Rows[a.Index].Start)))
            .Where(s => !s.Act.Standing && s.Start >= from && s.Start < to).ToList();
        var late = movable.Where(j => j.Outs.Any(o => Score.MinutesLate(shop, board, o) > 0)).ToHashSet();
        var twist = dice.Below(2) == 0 ? 0 : dice.Next();
        var strict = new Terms(false, 0, 0, 0, 0, int.MaxValue, twist);
        var fresher = dice.Below(2) == 0 ? strict : strict with { Fresh = Terms.Any };
        foreach (var (job, build, act, _, _) in steps.Where(s => !late.Contains(s.Job) && !s.Job.Outs.Any(o => o.Act == s.Act.Index)).OrderByDescending(s => s.Start).ThenBy(s => s.At))
        {
            placing.Move(job, build, act, act.CapsOut.Exists(c => c.Kind == CapKind.Buffer) ? strict : fresher, true);
        }

        var loose = new Terms(true, Terms.Any, Terms.Any, 0, shop.Grains, int.MaxValue, twist);
        foreach (var (job, build, act, _, _) in steps.Where(s => late.Contains(s.Job)).OrderBy(s => s.Start).ThenByDescending(s => s.At))
        {
            placing.Move(job, build, act, loose, false);
        }
    }

    /// <summary>The whole week of a small shop, two days of a large one.</summary>
    private (int From, int To) Stretch()
    {
        if (shop.Acts.Length <= Whole || movable.Length == 0)
        {
            return (0, shop.Grains);
        }

        var middle = movable[dice.Below(movable.Length)].Due - dice.Below(2 * 24 * 60 / shop.Grain);
        return (middle - (24 * 60 / shop.Grain), middle + (24 * 60 / shop.Grain));
    }
}
