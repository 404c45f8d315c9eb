namespace Bakehouse.Domain.Orders;

using Bakehouse.Domain.Recipes;

/// <summary>The recipes that an order is made from. They stay until the owner moves it, whatever is written since.</summary>
/// <param name="Cookbook">Version of the cookbook; 0 if there was none.</param>
/// <param name="LookedAt">Up to which version somebody has looked at what changed; at least <paramref name="Cookbook"/>.</param>
/// <param name="Packs">Packs that are locked for it.</param>
public sealed record MadeFrom(int Cookbook, int LookedAt, IReadOnlyList<PackLock> Packs)
{
    /// <summary>From that version as it stands.</summary>
    public static MadeFrom Of(Cookbook book) => new(book.Version, book.Version, []);
}

/// <summary>What was said about allergies: who wrote it down, and who read it back to make sure. Stamped by the book.</summary>
/// <param name="By">Id of whoever wrote it.</param>
/// <param name="ReadBackBy">Id of whoever read it back, or null; the same person only where one works alone.</param>
public sealed record Statement(string By, Instant Written, string? ReadBackBy = null, Instant? ReadBack = null)
{
    /// <summary>Least time after which somebody who works alone may read back what that person wrote.</summary>
    public static Duration Alone { get; } = Duration.FromMinutes(10);

    /// <summary>True if it was read back by whoever wrote it.</summary>
    public bool SamePerson => ReadBackBy == By;

    /// <summary>Never prints who.</summary>
    public override string ToString() => ReadBack is null ? "written" : "read back";
}
