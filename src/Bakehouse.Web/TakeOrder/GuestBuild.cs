namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;

/// <summary>A build that serves the guests, to be tapped.</summary>
/// <param name="Tiers">As they come into the form, top first.</param>
/// <param name="KeepsTop">True if the top tier shall be kept.</param>
/// <param name="Price">What is asked for it; null while that is not known.</param>
public sealed record GuestBuild(IList<TierForm> Tiers, BuildSheet Sheet, Portions Asked, bool KeepsTop, decimal? Price)
{
    /// <summary>"6+8+10", "one 12".</summary>
    public string Name => Tiers.Count == 1 ? $"one {Tiers[0].Diameter}" : string.Join('+', Tiers.Select(t => t.Diameter));

    /// <summary>"2 over", with all of it cut.</summary>
    public string Whole => Says(Serves.Of(Sheet, Asked, keepsTop: false));

    /// <summary>The same with the top tier kept; "" of one tier.</summary>
    public string TopKept => Sheet.Tiers.Count == 1 ? "" : $"top kept: {Says(Serves.Of(Sheet, Asked, keepsTop: true))}";

    private static string Says(Serves serves) => (serves.ToCut - serves.Asked) switch
    {
        >= 0 and var over => string.Create(CultureInfo.InvariantCulture, $"{over} over"),
        var missing => string.Create(CultureInfo.InvariantCulture, $"{-missing} short"),
    };
}
