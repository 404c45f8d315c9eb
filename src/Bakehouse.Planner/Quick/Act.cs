using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>A step in grains and numbers: what the search reads. Masks have one bit per person or allergen.</summary>
internal sealed class Act
{
    public required int Index { get; init; }

    public required Step Step { get; init; }

    /// <summary>Grains from start to end.</summary>
    public required int Grains { get; init; }

    /// <summary>People who can do it; 0 if it needs no hands.</summary>
    public ulong Hands { get; init; }

    /// <summary>Those people, specialists first.</summary>
    public int[] Able { get; init; } = [];

    public int Count { get; init; }

    public int[] Tools { get; init; } = [];

    /// <summary>Bowls or ovens that can do it, smallest first; empty if it needs none.</summary>
    public int[] Machines { get; init; } = [];

    public bool OnMachine { get; init; }

    public bool IsMix { get; init; }

    /// <summary>Number of its family or heat.</summary>
    public int Code { get; init; } = -1;

    public int Size { get; init; }

    /// <summary>Eight bits of count for each diameter.</summary>
    public ulong Pans { get; init; }

    /// <summary>One bit for each tool and, above them, each machine that it may use.</summary>
    public ulong Kit { get; init; }

    public ulong Has { get; init; }

    public ulong Avoid { get; init; }

    public List<Link> Out { get; } = [];

    public List<Link> In { get; } = [];

    /// <summary>Limits from the end of this step to the start of another.</summary>
    public List<Cap> CapsOut { get; } = [];

    public List<Cap> CapsIn { get; } = [];

    public int PinStart { get; set; } = -1;

    public ulong PinPeople { get; set; }

    public int PinMachine { get; set; } = -1;

    /// <summary>True if every field that it needs is pinned, so that it stands before any search.</summary>
    public bool Standing { get; set; }
}

/// <summary>A hold in grains.</summary>
internal sealed record Link(int Index, Hold Hold, int From, int To, int Places, Place[] In)
{
    public int[] Clocks { get; set; } = [];

    /// <summary>True if both its steps stand before any search, so that it is never taken off.</summary>
    public bool Settled { get; set; }

    public int PinStore { get; set; } = -1;

    /// <summary>Grains out of the cold that no choice of store avoids.</summary>
    public int WarmLeast { get; set; }

    public int Least => In.Length == 0 ? 0 : In.Min(p => p.Least);

    public int Most => In.Length == 0 ? 0 : In.Max(p => p.Most);
}

/// <summary>One store of a hold, gaps in grains. Passing: too tall or too big for it, so only a hold of length 0.</summary>
internal readonly record struct Place(int Store, int Least, int Most, bool Passing);

internal enum CapKind
{
    Hard,
    Soft,
    Fresh,
    Buffer,
}

/// <summary>At most (a buffer: at least) so many grains from the end of one step to the start of another.</summary>
internal sealed record Cap(int From, int To, int Grains, CapKind Kind);

/// <summary>Everything that must be placed together: usually one order.</summary>
internal sealed class Job
{
    public required int Index { get; init; }

    public required WeekOrder[] Orders { get; init; }

    public required Build[] Builds { get; init; }

    /// <summary>The handovers of its orders.</summary>
    public required Out[] Outs { get; init; }

    /// <summary>Latest promise in grains, or the horizon.</summary>
    public required int Due { get; init; }
}

/// <summary>The step that hands an order over, and from when to when it may start on time.</summary>
internal readonly record struct Out(WeekOrder Order, int Act, int From, int To);

/// <summary>A job with its choices made: the steps that exist, in the order in which they are placed (last step first).</summary>
/// <param name="ShortlyBefore">By place in Acts: the steps that must come within hours before it, first step first.</param>
internal sealed record Build(IReadOnlyDictionary<string, string> Choices, Act[] Acts, Link[] Links, Act[][] ShortlyBefore);
