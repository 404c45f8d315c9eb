namespace Bakehouse.Planner.Quick;

/// <summary>How far the search for one step's place has come: first shared runs, then places of its own, each latest first.</summary>
internal struct Seat
{
    public int Low;
    public int High;
    public int At;
    public bool Sharing;
    public UInt128 Blame;

    /// <summary>Allowed starts by hold and store.</summary>
    public List<(Link Link, Gap[] Gaps)> Holds;
}

/// <summary>Starts from Low to High at which a hold can stand in one store.</summary>
internal readonly record struct Gap(Place Place, int Low, int High);
