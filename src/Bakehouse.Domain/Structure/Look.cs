namespace Bakehouse.Domain.Structure;

/// <summary>Something about a build that a baker should look at. It stops nothing: the figures are too rough for that, and the baker knows the cake.</summary>
/// <param name="Where">The tier or part, as it is called on screen.</param>
/// <param name="Value">The figure that was worked out.</param>
/// <param name="Sentence">What it means, with the limit.</param>
/// <param name="Try">What to do.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record Look(string Where, string Value, string Sentence, string Try, string Source)
{
    /// <summary>Stands beside every one of them, and beside the loads.</summary>
    public const string Caution = "Worked out from averages: no proof of strength. Your own judgement and local rules come first.";

    /// <inheritdoc/>
    public override string ToString() => $"{Where} ({Value}): {Sentence} {Try}";
}
