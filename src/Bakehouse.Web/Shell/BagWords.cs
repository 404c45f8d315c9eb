namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;

/// <summary>How what is kept back of a colour is put away.</summary>
internal static class BagWords
{
    /// <summary>"in 1 bag, for seams and repairs"; a second bag goes along with a cake that is put together elsewhere.</summary>
    public static string Of(BuildSheet sheet, Order order) => ColourBatch.Bags(Travelling.Of(sheet, order.Handover.RouteMinutes)) == 1
        ? sheet.Stack.Count > 1 ? "in 1 bag, for seams and repairs" : "in 1 bag, for repairs"
        : "in 2 bags: one stays for seams, one goes along";
}
