namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;
using Microsoft.AspNetCore.Components;

/// <summary>The builds to tap, round ones first, and the fields of each tier.</summary>
public sealed partial class TierFields
{
    /// <summary>What is typed.</summary>
    [Parameter, EditorRequired]
    public OrderForm Form { get; set; } = default!;

    /// <summary>Whose pans and unit.</summary>
    [Parameter, EditorRequired]
    public Shop Shop { get; set; } = default!;

    /// <summary>Builds that serve the guests; empty while portions are typed.</summary>
    [Parameter]
    public IReadOnlyList<GuestBuild> ForGuests { get; set; } = [];

    /// <summary>Ids of fields that are wrong.</summary>
    [Parameter]
    public IReadOnlyCollection<string> Wrong { get; set; } = [];

    /// <summary>Something was typed or tapped.</summary>
    [Parameter]
    public EventCallback Changed { get; set; }

    private static readonly BuildSheet Heart = BuildSheet.Of([new CakeTier(Guid.Empty, Length.FromInches(8), Length.FromCentimetres(10), 3, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]) { Special = new TierSpecial { Outline = new Outline(OutlineKind.Heart, Length.FromInches(8)) } }], Finish.Smooth, CakeFigures.Usual);

    private bool others;

    private CakeFigures Figures => CakeFigures.Of(Shop);

    private FormReader Reader => new(Shop, default, false);

    /// <summary>One tier of another outline; flavours and colours stay.</summary>
    private Task Take(TierForm other)
    {
        var tier = Like(Form.Tiers.LastOrDefault());
        (tier.Outline, tier.Diameter, tier.Deep, tier.Sign, tier.Height, tier.Layers, tier.LayerHeights) = (other.Outline, other.Diameter, other.Deep, other.Sign, other.Height, other.Layers, "");
        Form.Tiers = [tier];
        others = false;
        return Changed.InvokeAsync();
    }

    private bool IsBuild(IReadOnlyList<int> build) => IsBuild(build.Select(d => d.ToString(CultureInfo.InvariantCulture)));

    private bool IsBuild(IEnumerable<string> sizes) => Form.Tiers.All(t => t.Outline == OutlineKind.Round) && Form.Tiers.Select(t => t.Diameter).SequenceEqual(sizes);

    /// <summary>A build keeps the flavours and colours of the tiers that were there, from the bottom up.</summary>
    private Task Take(IReadOnlyList<int> build)
    {
        Form.Tiers = Built(Form.Tiers, build);
        return Changed.InvokeAsync();
    }

    private Task Take(GuestBuild build)
    {
        Form.Tiers = build.Tiers;
        return Changed.InvokeAsync();
    }

    /// <summary>Round tiers of those sizes, top first, all eaten and none apart, else like the tiers that were there, from the bottom up; each keeps its id.</summary>
    internal static IList<TierForm> Built(IList<TierForm> tiers, IReadOnlyList<int> build)
    {
        var before = tiers.Reverse().ToList();
        return [.. build.Reverse().Select((d, i) => Rounded(Sized(i < before.Count ? Like(before[i], before[i].Id) : Like(before.LastOrDefault()), d))).Reverse()];
    }

    private static TierForm Sized(TierForm tier, int diameter)
    {
        tier.Diameter = diameter.ToString(CultureInfo.InvariantCulture);
        return tier;
    }

    private static TierForm Rounded(TierForm tier)
    {
        (tier.Outline, tier.Deep, tier.Sign) = (OutlineKind.Round, "", "");
        return tier;
    }

    private static TierForm Like(TierForm? other, Guid? id = null) => other is null ? new() : new()
    {
        Id = id ?? Guid.NewGuid(),
        Diameter = other.Diameter,
        Outline = other.Outline,
        Deep = other.Deep,
        Sign = other.Sign,
        Height = other.Height,
        Layers = other.Layers,
        Sponge = other.Sponge,
        Filling = other.Filling,
        LayerHeights = other.LayerHeights,
        Dam = other.Dam,
        FootBead = other.FootBead,
        TopBead = other.TopBead,
        Colours = [.. other.Colours.Select(c => c.Copied())],
    };

    private Task Add()
    {
        var above = Form.Tiers.FirstOrDefault();
        var step = Shop.Settings.Inches ? 2 : 5;
        var next = int.TryParse(above?.Diameter, NumberStyles.None, CultureInfo.InvariantCulture, out var d) ? Math.Max(step * 2, d - step) : step * 4;
        var tier = Sized(Like(above), next);
        // A slab gets narrower both ways; on a sign stands a round.
        tier.Deep = int.TryParse(tier.Deep, NumberStyles.None, CultureInfo.InvariantCulture, out var deep) ? Math.Max(step * 2, deep - step).ToString(CultureInfo.InvariantCulture) : tier.Deep;
        Form.Tiers.Insert(0, tier.Outline == OutlineKind.Sign ? Rounded(tier) : tier);
        return Changed.InvokeAsync();
    }

    private Task Move(int at, int by)
    {
        var to = at + by;
        if (to >= 0 && to < Form.Tiers.Count)
        {
            (Form.Tiers[at], Form.Tiers[to]) = (Form.Tiers[to], Form.Tiers[at]);
        }

        return Changed.InvokeAsync();
    }

    private Task Remove(int at)
    {
        Form.Tiers.RemoveAt(at);
        return Changed.InvokeAsync();
    }
}
