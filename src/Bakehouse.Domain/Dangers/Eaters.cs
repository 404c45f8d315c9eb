namespace Bakehouse.Domain.Dangers;

/// <summary>Who will eat, as far as it makes a difference.</summary>
/// <param name="SmallChildren">Children under five.</param>
/// <param name="Vulnerable">Somebody pregnant, old or ill.</param>
public sealed record Eaters(bool SmallChildren, bool Vulnerable)
{
    /// <summary>What somebody has asked about, in the words of <see cref="EaterQuestions"/>; other words are to be asked anew.</summary>
    public string Asked { get; init; } = "";

    /// <summary>The owner's word that her raw egg may be served to them; local rules decide.</summary>
    public bool RawEggAgreed { get; init; }

    /// <summary>Never prints who.</summary>
    public override string ToString() => "«kept out»";
}
