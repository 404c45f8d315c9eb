namespace Bakehouse.Web.TakeOrder;

/// <summary>Builds that are asked for most, top first, in inches and in centimetres (common practice, no source).</summary>
public static class Builds
{
    /// <summary>The builds as diameters, top first.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Common(bool inches) => inches
        ? [[8], [6, 10], [6, 8, 10], [6, 8, 10, 12]]
        : [[20], [15, 25], [15, 20, 25], [15, 20, 25, 30]];

    /// <summary>Names of colours that are mixed most, with their swatches.</summary>
    public static IReadOnlyList<(string Name, string Swatch)> Colours { get; } =
    [
        ("Ivory", "#F7F0E1"), ("White", "#FFFFFF"), ("Blush", "#E6CFCB"), ("Sage", "#C7D5BD"), ("Sky", "#BFD7E4"),
        ("Lemon", "#F6E9A6"), ("Peach", "#F3CDB0"), ("Lilac", "#D5C7E2"), ("Cocoa", "#7A4D38"), ("Navy", "#2B3F63"),
    ];

    /// <summary>What may be left out; the words are the planner's.</summary>
    public static IReadOnlyList<string> Allergens { get; } = ["wheat", "egg", "milk", "nuts", "peanuts", "sesame", "soya", "sulphites"];
}
