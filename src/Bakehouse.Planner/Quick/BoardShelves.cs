namespace Bakehouse.Planner.Quick;

/// <summary>Whether something can be put down beside what stands on a shelf, by its real size (rule S7).</summary>
internal sealed partial class Board
{
    private readonly int[] sizes;
    private readonly (int From, int To, int Size)[] beside;

    /// <summary>What stands in each store.</summary>
    public Neighbours OnShelf { get; }

    /// <summary>Last grain in [from, to) at which it can't stand beside the others, or -1.</summary>
    private int CrowdedLast(int store, int from, int to, Link link)
    {
        var (count, size) = Beside(store, from, to, link);
        for (var at = to - 1; count > 0 && at >= from;)
        {
            var (stand, change) = StandAt(store, at, count, size, from - 1, forward: false);
            if (!stand)
            {
                return at;
            }

            at = change;
        }

        return -1;
    }

    /// <summary>First grain in [from, to) at which it can't stand beside the others, or <paramref name="to"/>.</summary>
    private int CrowdedFirst(int store, int from, int to, Link link)
    {
        var (count, size) = Beside(store, from, to, link);
        for (var at = from; count > 0 && at < to;)
        {
            var (stand, change) = StandAt(store, at, count, size, to, forward: true);
            if (!stand)
            {
                return at;
            }

            at = change;
        }

        return to;
    }

    /// <summary>
    /// Lists what stands there in those grains. Returns how many, 0 if all of it and the new one stand together, and the new one's size.
    /// </summary>
    private (int Count, int Size) Beside(int store, int from, int to, Link link)
    {
        var size = shop.Floors.Size(store, link);
        if (size < 0 || to <= from || stores.AsSpan((store * grains) + from, to - from).IndexOfAnyExcept((short)0) < 0)
        {
            return (0, size);
        }

        var count = 0;
        for (var i = OnShelf.First(store); i >= 0; i = OnShelf.Next(i))
        {
            var other = shop.Links[i];
            var (begins, ends) = (End(shop.Acts[other.From]), Rows[other.To].Start);
            if (begins < to && from < ends && begins < ends && i != link.Index && shop.Floors.Size(store, other) is >= 0 and var its)
            {
                sizes[count] = its;
                beside[count++] = (begins, ends, its);
            }
        }

        sizes[count] = size;
        return (count > 0 && shop.Floors.Fit(store, sizes.AsSpan(0, count + 1)) ? 0 : count, size);
    }

    /// <summary>Whether it stands beside what is there at one grain, and the next grain, onwards or back, at which something else is there.</summary>
    private (bool Stand, int Change) StandAt(int store, int at, int count, int size, int edge, bool forward)
    {
        var (here, change) = (0, edge);
        for (var i = 0; i < count; i++)
        {
            var (begins, ends, its) = beside[i];
            if (begins <= at && at < ends)
            {
                sizes[here++] = its;
            }

            change = forward
                ? Math.Min(change, begins > at ? begins : ends > at ? ends : edge)
                : Math.Max(change, ends <= at ? ends - 1 : begins <= at ? begins - 1 : edge);
        }

        sizes[here] = size;
        return (here == 0 || shop.Floors.Fit(store, sizes.AsSpan(0, here + 1)), change);
    }
}
