namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Orders;

/// <summary>The stages as they are said.</summary>
public static class StageNames
{
    /// <summary>"in work".</summary>
    public static string Say(Stage stage) => stage switch
    {
        Stage.InWork => "in work",
        Stage.HandedOver => "handed over",
        Stage.Kept => "day kept",
        _ => stage.ToString().ToLowerInvariant(),
    };

    /// <summary>The word on the button that moves an order there.</summary>
    public static string Move(Stage to, Stage from) => to switch
    {
        Stage.Quoted => from == Stage.Kept ? "Let the day go" : "A price was named",
        Stage.Kept => "Keep the day",
        Stage.Booked => from == Stage.InWork ? "Not begun after all" : "Take the order",
        Stage.InWork => from == Stage.Ready ? "Not ready after all" : "Work has begun",
        Stage.Ready => from == Stage.HandedOver ? "Not handed over after all" : "It is boxed",
        Stage.HandedOver => "Handed over",
        Stage.Cancelled => "Cancel the order",
        _ => "Back to an enquiry",
    };
}
