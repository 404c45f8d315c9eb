using System.Numerics;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>The levels of what stands on a board, counted by the search itself (the Judge counts again).</summary>
internal static class Score
{
    /// <summary>Levels of the whole board; Broken counts jobs that do not stand. Changes are not counted.</summary>
    public static Levels Of(Shop shop, Board board, Build?[] builds)
    {
        var sum = new Levels(builds.Count(b => b is null), 0, 0, 0, 0, 0, 0);
        foreach (var job in shop.Jobs)
        {
            if (builds[job.Index] is { } build)
            {
                var one = OfJob(shop, board, job, build);
                sum = sum with { Late = sum.Late + one.Late, Stale = sum.Stale + one.Stale, Fresh = sum.Fresh + one.Fresh };
            }
        }

        return sum with { Overtime = Overtime(shop, board), Uneven = Uneven(shop, board) };
    }

    public static Levels OfJob(Shop shop, Board board, Job job, Build build)
    {
        long stale = 0, late = 0, fresh = 0;
        foreach (var order in job.Outs)
        {
            var over = MinutesLate(shop, board, order);
            (late, fresh) = order.Order.Rank == 1 ? (late + over, fresh) : (late, fresh + over);
        }

        foreach (var act in build.Acts)
        {
            foreach (var cap in act.CapsOut)
            {
                if (cap.Kind == CapKind.Hard || board.Rows[cap.To].Start < 0)
                {
                    continue;
                }

                var age = board.Rows[cap.To].Start - board.End(act);
                var over = Math.Max(0, cap.Kind == CapKind.Buffer ? cap.Grains - age : age - cap.Grains) * shop.Grain;
                (stale, fresh) = cap.Kind == CapKind.Soft ? (stale + over, fresh) : (stale, fresh + over);
            }
        }

        return new Levels(0, late, stale, 0, fresh, 0, 0);
    }

    public static int MinutesLate(Shop shop, Board board, Out order)
    {
        var start = board.Rows[order.Act].Start;
        return start < 0 ? 0 : Math.Max(0, (start * shop.Grain) + (order.Order.EdgeIsEnd ? shop.Acts[order.Act].Step.Minutes : 0) - order.Order.To);
    }

    public static long Overtime(Shop shop, Board board)
    {
        long grains = 0;
        for (var p = 0; p < shop.Shift.Length; p++)
        {
            var busy = board.Busy(p);
            for (var w = 0; w < busy.Length; w++)
            {
                grains += BitOperations.PopCount(busy[w] & shop.Extra[p][w]);
            }
        }

        return grains * shop.Grain;
    }

    private static long Uneven(Shop shop, Board board)
    {
        var (least, most, count) = (long.MaxValue, 0L, 0);
        for (var p = 0; p < shop.Shift.Length; p++)
        {
            if (shop.Week.People[p].Share)
            {
                long minutes = 0;
                foreach (var word in board.Busy(p))
                {
                    minutes += BitOperations.PopCount(word) * shop.Grain;
                }

                (least, most, count) = (Math.Min(least, minutes), Math.Max(most, minutes), count + 1);
            }
        }

        return count < 2 ? 0 : most - least;
    }
}
