namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>One tier as typed; sizes in the shop's unit, the height in centimetres.</summary>
public sealed class TierForm
{
    public Guid Id { get; set; } = Guid.NewGuid();

    public string Diameter { get; set; } = "";

    /// <summary>From above; a square and a rectangle, a figure and a letter are typed alike.</summary>
    public OutlineKind Outline { get; set; }

    /// <summary>Only of a rectangle: from front to back.</summary>
    public string Deep { get; set; } = "";

    /// <summary>Only of a sign: one figure or capital letter.</summary>
    public string Sign { get; set; } = "";

    public string Height { get; set; } = "10";

    public string Layers { get; set; } = "3";

    public string Sponge { get; set; } = "vanilla";

    public string Filling { get; set; } = "raspberry-jam";

    public IList<ColourForm> Colours { get; set; } = [new()];

    /// <summary>Foam: coated, not eaten.</summary>
    public bool IsFalse { get; set; }

    /// <summary>Free height below it on pillars, in centimetres; "" where it stands on the tier below.</summary>
    public string Apart { get; set; } = "";

    /// <summary>Each layer from the foot up, in centimetres with spaces between; "" for equal ones.</summary>
    public string LayerHeights { get; set; } = "";

    /// <summary>Width of a ring of buttercream around the filling, in centimetres; "" for none.</summary>
    public string Dam { get; set; } = "";

    /// <summary>Bead around the foot, across, in centimetres; "" for none.</summary>
    public string FootBead { get; set; } = "";

    /// <summary>Bead around the top edge, across, in centimetres; "" for none.</summary>
    public string TopBead { get; set; } = "";

    /// <summary>True if something is typed that few tiers need.</summary>
    internal bool HasMore => Apart.Length + LayerHeights.Length + Dam.Length + FootBead.Length + TopBead.Length > 0;

    internal static TierForm Of(CakeTier tier, bool inches) => new()
    {
        Id = tier.Id,
        Diameter = (inches ? tier.Diameter.Inches : tier.Diameter.Centimetres).ToString("0.##", CultureInfo.InvariantCulture),
        Outline = tier.Special?.Outline?.Kind ?? OutlineKind.Round,
        Deep = tier.Special?.Outline?.Deep is { } deep ? (inches ? deep.Inches : deep.Centimetres).ToString("0.##", CultureInfo.InvariantCulture) : "",
        Sign = tier.Special?.Outline?.Sign ?? "",
        Height = tier.Height.Centimetres.ToString("0.##", CultureInfo.InvariantCulture),
        Layers = tier.Layers.ToString(CultureInfo.InvariantCulture),
        Sponge = tier.Sponge,
        Filling = tier.Filling,
        IsFalse = tier.IsFalse,
        Apart = Said(tier.Special?.Separator),
        LayerHeights = string.Join(' ', (tier.Special?.LayerHeights ?? []).Select(l => Said(l))),
        Dam = Said(tier.Special?.Dam),
        FootBead = Said(tier.Special?.FootBead),
        TopBead = Said(tier.Special?.TopBead),
        Colours = [.. tier.Colours.Select(ColourForm.Of)],
    };

    /// <summary>Centimetres to the thousandth of a millimetre, so that what is read again is what stands; "" for nothing.</summary>
    private static string Said(Length? length) => length is { Millimetres: > 0 } l ? l.Centimetres.ToString("0.####", CultureInfo.InvariantCulture) : "";
}

/// <summary>One colour of a coat as typed; the share in percent.</summary>
public sealed class ColourForm
{
    public string Name { get; set; } = "Ivory";

    public string Swatch { get; set; } = "#F7F0E1";

    public string Share { get; set; } = "100";

    internal static ColourForm Of(CoatColour colour) => new() { Name = colour.Name, Swatch = colour.Swatch, Share = (colour.Share * 100).ToString("0.##", CultureInfo.InvariantCulture) };

    /// <summary>The same, to be changed by itself.</summary>
    internal ColourForm Copied() => new() { Name = Name, Swatch = Swatch, Share = Share };

    /// <summary>Takes another colour of the page; one that it does not have keeps its swatch.</summary>
    internal void Paint(string name)
    {
        Name = name;
        Swatch = Builds.Colours.FirstOrDefault(c => c.Name == name).Swatch ?? Swatch;
    }
}
