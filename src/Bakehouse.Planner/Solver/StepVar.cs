using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <summary>What the model may decide of one present step; of a step that stands still, its figures.</summary>
internal sealed class StepVar
{
    /// <summary>Grain at which it starts.</summary>
    public required LinearExpr Start { get; init; }

    /// <summary>Where that may lie, sorted; never empty.</summary>
    public required IReadOnlyList<Span> Possible { get; init; }

    /// <summary>True if the plan has the step.</summary>
    public required ILiteral On { get; init; }

    /// <summary>False if it stands still.</summary>
    public required bool Free { get; init; }

    /// <summary>First possible start.</summary>
    public int First => Possible[0].From;

    /// <summary>Last possible start.</summary>
    public int Last => Possible[^1].To - 1;

    /// <summary>By person: whether these hands do it.</summary>
    public Dictionary<int, ILiteral> Who { get; } = [];

    /// <summary>By machine: it opens a bowlful or an oven load there.</summary>
    public Dictionary<int, ILiteral> Leads { get; } = [];

    /// <summary>True if it opens one anywhere; null if it is in none.</summary>
    public ILiteral? Leading { get; set; }

    /// <summary>By the step that opens it: it is one of that bowlful or load.</summary>
    public Dictionary<int, BoolVar> Joins { get; } = [];

    /// <summary>By the bowlful or load that stands still: it is put to that.</summary>
    public Dictionary<int, BoolVar> Puts { get; } = [];

    /// <summary>True if it is put to none that stands still; null if it is in none.</summary>
    public ILiteral? Apart { get; set; }

    /// <summary>By machine: it is done there, whoever opened the run.</summary>
    public Dictionary<int, ILiteral> Machine { get; } = [];

    /// <summary>By its grains: whether the run that it opens takes so long. One entry for most.</summary>
    public Dictionary<int, ILiteral> Takes { get; } = [];
}
