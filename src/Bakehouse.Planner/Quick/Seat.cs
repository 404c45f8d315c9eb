namespace Bakehouse.Planner.Quick;

/// <summary>
/// How far the search for one step's place has come: first shared runs, then places of its own, each latest first. One for
/// each depth of the search, used again and again.
/// </summary>
internal sealed class Seat
{
    private Stay[] stays = [];

    public int Low { get; set; }

    public int High { get; set; }

    public int At { get; set; }

    public bool Sharing { get; set; }

    public UInt128 Blame { get; set; }

    /// <summary>Holds to steps that are placed already.</summary>
    public int Count { get; private set; }

    public ReadOnlySpan<Stay> Stays => stays.AsSpan(0, Count);

    public void Clear(int low, int high, bool sharing) => (Low, High, At, Sharing, Blame, Count) = (low, high, high, sharing, 0, 0);

    /// <summary>Room for so many gaps of one more hold.</summary>
    public Span<Gap> Add(Link link)
    {
        if (Count == stays.Length)
        {
            Array.Resize(ref stays, (2 * Count) + 4);
        }

        ref var stay = ref stays[Count++];
        stay.Link = link;
        stay.Gaps = stay.Gaps is { } known && known.Length >= link.In.Length ? known : new Gap[Math.Max(4, link.In.Length)];
        return stay.Gaps.AsSpan(0, link.In.Length);
    }
}

/// <summary>A hold and the starts that each of its stores allows.</summary>
internal struct Stay
{
    public Link Link;
    public Gap[] Gaps;

    public readonly ReadOnlySpan<Gap> Stores => Gaps.AsSpan(0, Link.In.Length);
}

/// <summary>Starts from Low to High at which a hold can stand in one store.</summary>
internal readonly record struct Gap(Place Place, int Low, int High);
