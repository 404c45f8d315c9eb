namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>The making of one order as a load on hands: so many minutes by skill, some time within a few days.</summary>
/// <param name="First">First day on which it may be worked on.</param>
/// <param name="Last">Last day.</param>
/// <param name="Minutes">By skill, of the skills that make cakes.</param>
public sealed record FarLoad(Order Order, LocalDate First, LocalDate Last, IReadOnlyDictionary<string, int> Minutes)
{
    /// <summary>From the first bake to the handover: baked Tuesday for Saturday (common practice, no source).</summary>
    private const int DaysBefore = 4;

    /// <summary>Skills that make a cake; selling and driving go beside it.</summary>
    public static IReadOnlyList<string> Making { get; } = [Skills.Bake, Skills.Coat, Skills.Decorate, Skills.Box];

    /// <summary>The load of an order. A cake that leaves in the morning has no hours on that day.</summary>
    public static FarLoad Of(Order order, Shop shop)
    {
        var at = order.Handover.At;
        return new FarLoad(order, at.Date.PlusDays(-DaysBefore), at.TimeOfDay < LocalTime.Noon ? at.Date.PlusDays(-1) : at.Date, MinutesOf(order, shop));
    }

    /// <summary>Minutes of hands by skill; two people count twice.</summary>
    public static IReadOnlyDictionary<string, int> MinutesOf(Order order, Shop shop) => CakeSteps.Of(order, shop).Steps
        .Where(s => s.Skill is { } skill && Making.Contains(skill))
        .GroupBy(s => s.Skill!).ToDictionary(g => g.Key, g => g.Sum(s => s.Minutes * s.Count));
}
