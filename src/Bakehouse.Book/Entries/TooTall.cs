namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>A cake that is too tall for every shelf: which one to pull out, where the owner said that it can be.</summary>
internal static class TooTall
{
    /// <summary>The reason with what to pull out first; as it is where pulling out does not help.</summary>
    public static Reason With(Reason reason, Week week, Shop shop)
    {
        var clear = week.Stores.ToDictionary(s => s.Id, s => s.Clear, StringComparer.Ordinal);
        var tall = week.Holds.FirstOrDefault(h => h.To == reason.Step && h.Piece is not null && h.In.All(i => clear[i.Store] < h.Height));
        return tall is not null && PulledShelf.For(shop, ShelfKind.Fridge, tall.Piece!.Value, tall.Height) is { } pulled
            ? reason with { Try = $"{pulled.Sentence} Write that height under Shop and take level {pulled.Out.Level} out there. Or: {reason.Try}" }
            : reason;
    }
}
