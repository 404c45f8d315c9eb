namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>How far plans to the minute reach. What is handed over later is counted in hours and places only.</summary>
public static class PlanReach
{
    /// <summary>An order may be taken so many days ahead: about two years (weddings 2 to 24 months, common practice, no source).</summary>
    public const int MostDays = 800;

    /// <summary>The last day whose cakes have plans.</summary>
    public static LocalDate Last(Shop shop, LocalDate today) => today.PlusDays(shop.Settings.PlanDays);

    /// <summary>True if the order is handed over after the last planned day.</summary>
    public static bool IsFar(Order order, Shop shop, LocalDate today) => order.Handover.At.Date > Last(shop, today);

    /// <summary>True if it takes part in the plan: its stage asks for it, and its day is near, or something of it is made already.</summary>
    public static bool IsIn(Order order, Shop shop, LocalDate today, IReadOnlyList<Tick> done)
    {
        var id = order.Id.ToString("N");
        return Stages.IsPlanned(order.Stage) && (!IsFar(order, shop, today) || done.Any(t => t.Step.StartsWith(id, StringComparison.Ordinal)));
    }

    /// <summary>The first day on which the order gets its plan.</summary>
    public static LocalDate PlannedFrom(Order order, Shop shop) => order.Handover.At.Date.PlusDays(-shop.Settings.PlanDays);
}
