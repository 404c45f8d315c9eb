using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <summary>What the model may decide of one present step; of a step that stands still, its figures.</summary>
internal sealed class StepVar
{
    /// <summary>Grain at which it starts.</summary>
    public required LinearExpr Start { get; init; }

    /// <summary>True if the plan has the step.</summary>
    public required ILiteral On { get; init; }

    /// <summary>False if it stands still.</summary>
    public required bool Free { get; init; }

    /// <summary>By person: whether these hands do it.</summary>
    public Dictionary<int, BoolVar> Who { get; } = [];

    /// <summary>By machine: it opens a bowlful or an oven load there.</summary>
    public Dictionary<int, BoolVar> Leads { get; } = [];

    /// <summary>True if it opens one anywhere.</summary>
    public BoolVar? Leading { get; set; }

    /// <summary>By the step that opens it: it is one of that bowlful or load.</summary>
    public Dictionary<int, BoolVar> Joins { get; } = [];

    /// <summary>By the bowlful or load that stands still: it is put to that.</summary>
    public Dictionary<int, BoolVar> Puts { get; } = [];

    /// <summary>True if it is put to none that stands still.</summary>
    public ILiteral? Apart { get; set; }

    /// <summary>By machine: it is done there, whoever opened the run.</summary>
    public Dictionary<int, BoolVar> Machine { get; } = [];

    /// <summary>By its grains: whether the run that it opens takes so long. One entry for most.</summary>
    public Dictionary<int, ILiteral> Takes { get; } = [];
}
