namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Methods;

/// <summary>What may be chosen for a tier, in the words of the methods.</summary>
public static class Flavours
{
    /// <summary>Sponges: id and words.</summary>
    public static IReadOnlyList<(string Id, string Name)> Sponges { get; } = [.. Sponge.All.Select(s => (s.Id, s.Name))];

    /// <summary>Fillings: id and words.</summary>
    public static IReadOnlyList<(string Id, string Name)> Fillings { get; } = [.. Filling.All.Select(f => (f.Id, f.Name))];

    /// <summary>"Vanilla butter cake".</summary>
    public static string Say(string sponge) => Sponge.Of(sponge)?.Name ?? sponge;

    /// <summary>"Vanilla butter cake, raspberry jam"; an id that is not known any more is shown as it stands.</summary>
    public static string Say(string sponge, string filling) =>
        $"{Say(sponge)}, {(Filling.Of(filling)?.Name ?? filling).ToLowerInvariant()}";
}
