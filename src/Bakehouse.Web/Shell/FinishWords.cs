namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Orders;

/// <summary>How a cake is finished outside, in words.</summary>
public static class FinishWords
{
    /// <summary>"smooth", "semi-naked, a drip on the top tier", "sugar paste".</summary>
    public static string Say(Order order)
    {
        var coat = order.Tiers.Any(t => t.Special?.Paste is not null) ? "sugar paste" : order.Finish switch { Finish.SemiNaked => "semi-naked", Finish.Textured => "swirled or combed", _ => "smooth" };
        var dripped = order.Stack.Count(t => t.Special is { Drip.Millimetres: > 0 });
        return dripped == 0 ? coat : $"{coat}, a drip on {(dripped == order.Stack.Count ? dripped == 1 ? "it" : "each tier" : "the top tier")}";
    }
}
