namespace Bakehouse.Web.TakeOrder;

/// <summary>What may be chosen for a tier, with the words of the counter.</summary>
public static class Flavours
{
    /// <summary>Sponges: id and words.</summary>
    public static IReadOnlyList<(string Id, string Name)> Sponges { get; } =
        [("vanilla", "Vanilla"), ("lemon", "Lemon"), ("chocolate", "Chocolate"), ("carrot", "Carrot")];

    /// <summary>Fillings: id and words.</summary>
    public static IReadOnlyList<(string Id, string Name)> Fillings { get; } =
        [("raspberry-jam", "Raspberry jam"), ("buttercream", "Buttercream"), ("lemon-curd", "Lemon curd")];

    /// <summary>"Vanilla, raspberry jam"; an id that is not known any more is shown as it stands.</summary>
    public static string Say(string sponge, string filling) =>
        $"{NameOf(Sponges, sponge)}, {NameOf(Fillings, filling).ToLowerInvariant()}";

    private static string NameOf(IReadOnlyList<(string Id, string Name)> list, string id) =>
        list.FirstOrDefault(x => x.Id == id).Name ?? id;
}
