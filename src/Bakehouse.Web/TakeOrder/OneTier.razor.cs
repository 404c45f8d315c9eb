namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Microsoft.AspNetCore.Components;

/// <summary>The fields of one tier: size, layers, flavour, colours with their shares, and its place in the stack.</summary>
public partial class OneTier
{
    [Parameter, EditorRequired]
    public TierForm Tier { get; set; } = default!;

    /// <summary>Counted from the top, 1 and up.</summary>
    [Parameter]
    public int At { get; set; }

    [Parameter]
    public int Of { get; set; }

    [Parameter]
    public bool Inches { get; set; }

    [Parameter]
    public bool Wrong { get; set; }

    [Parameter]
    public EventCallback Changed { get; set; }

    [Parameter]
    public EventCallback Up { get; set; }

    [Parameter]
    public EventCallback Down { get; set; }

    [Parameter]
    public EventCallback Remove { get; set; }

    /// <summary>What its first size is: "in", "in heart", "in high" of a sign, "in ×" of a slab.</summary>
    private string Across => (Inches ? "in" : "cm") + Tier.Outline switch
    {
        OutlineKind.Round => "",
        OutlineKind.Rectangle => " ×",
        OutlineKind.Sign => " sign",
        var kind => $" {TierNames.Word(kind)}",
    };

    /// <summary>True while what few tiers need is shown.</summary>
    private bool more;

    private Task Paint(ColourForm colour, string name)
    {
        colour.Paint(name);
        return Changed.InvokeAsync();
    }

    /// <summary>A new colour takes half of the last one's share, so that the sum stays.</summary>
    private Task AddColour()
    {
        var (name, swatch) = Builds.Colours.FirstOrDefault(c => Tier.Colours.All(t => t.Name != c.Name));
        var last = Tier.Colours[^1];
        var share = decimal.TryParse(last.Share, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var s) ? s : 0;
        var half = decimal.Round(share / 2);
        last.Share = (share - half).ToString(CultureInfo.InvariantCulture);
        Tier.Colours.Add(new ColourForm { Name = name ?? "Ivory", Swatch = swatch ?? "#F7F0E1", Share = half.ToString(CultureInfo.InvariantCulture) });
        return Changed.InvokeAsync();
    }

    private Task DropColour()
    {
        var gone = Tier.Colours[^1];
        Tier.Colours.RemoveAt(Tier.Colours.Count - 1);
        if (decimal.TryParse(gone.Share, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share)
            && decimal.TryParse(Tier.Colours[^1].Share, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var left))
        {
            Tier.Colours[^1].Share = (left + share).ToString(CultureInfo.InvariantCulture);
        }

        return Changed.InvokeAsync();
    }
}
