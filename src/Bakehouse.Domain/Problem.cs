namespace Bakehouse.Domain;

/// <summary>One thing wrong with what was given.</summary>
/// <param name="Where">The field or row, as it is called on screen or in the file.</param>
/// <param name="Value">What was given, shortened to 80 characters.</param>
/// <param name="Sentence">What is wrong, with the limit.</param>
/// <param name="Try">What to do.</param>
public sealed record Problem(string Where, string Value, string Sentence, string Try)
{
    /// <summary>A value as it is shown: at most 80 characters.</summary>
    public static string Shown(string value) => value.Length <= 80 ? value : value[..79] + "…";

    /// <inheritdoc/>
    public override string ToString() => Value.Length > 0 ? $"{Where} ({Value}): {Sentence} {Try}" : $"{Where}: {Sentence} {Try}";
}
