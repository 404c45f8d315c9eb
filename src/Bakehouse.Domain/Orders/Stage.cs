namespace Bakehouse.Domain.Orders;

/// <summary>Where an order stands in its life.</summary>
public enum Stage
{
    /// <summary>Somebody asked; holds nothing.</summary>
    Enquiry,

    /// <summary>A price was named; holds nothing.</summary>
    Quoted,

    /// <summary>The day is kept, unpaid; holds its places in the plan.</summary>
    Kept,

    /// <summary>Agreed; planned.</summary>
    Booked,

    /// <summary>The first making step is done.</summary>
    InWork,

    /// <summary>Boxed.</summary>
    Ready,

    /// <summary>With the customer.</summary>
    HandedOver,

    /// <summary>Not wanted any more.</summary>
    Cancelled,
}

/// <summary>Which stage may follow which, as data. Moves that need money come with the money.</summary>
public static class Stages
{
    private static readonly Dictionary<Stage, Stage[]> Next = new()
    {
        [Stage.Enquiry] = [Stage.Quoted, Stage.Kept, Stage.Booked, Stage.Cancelled],
        [Stage.Quoted] = [Stage.Kept, Stage.Booked, Stage.Cancelled],
        [Stage.Kept] = [Stage.Quoted, Stage.Booked, Stage.Cancelled],
        [Stage.Booked] = [Stage.InWork, Stage.Cancelled],
        [Stage.InWork] = [Stage.Booked, Stage.Ready, Stage.Cancelled],
        [Stage.Ready] = [Stage.InWork, Stage.HandedOver, Stage.Cancelled],
        [Stage.HandedOver] = [Stage.Ready],
        [Stage.Cancelled] = [Stage.Enquiry],
    };

    /// <summary>The stages that may follow.</summary>
    public static IReadOnlyList<Stage> After(Stage stage) => Next[stage];

    /// <summary>True if the order takes part in the plan.</summary>
    public static bool IsPlanned(Stage stage) => stage == Stage.Kept || IsTaken(stage);

    /// <summary>True if the cake is promised and still here: what may not be promised stops it.</summary>
    public static bool IsTaken(Stage stage) => stage is Stage.Booked or Stage.InWork or Stage.Ready;
}
