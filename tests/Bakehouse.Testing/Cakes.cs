namespace Bakehouse.Testing;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>Orders for tests: a good one, to be bent.</summary>
public static class Cakes
{
    /// <summary>Tuesday 13 October 2026, 11:30 in London.</summary>
    public static Instant Now { get; } = Instant.FromUtc(2026, 10, 13, 10, 30);

    /// <summary>6+8+10 in for Saturday 24 October, 14:00, numbered ids, as a new order.</summary>
    public static Order Good(int number = 1, params int[] inchesFromBelow)
    {
        int[] sizes = inchesFromBelow.Length == 0 ? [10, 8, 6] : inchesFromBelow;
        return new Order(
            Id(number, 0),
            0,
            0,
            Stage.Booked,
            new Customer("Okafor", "+442079460182"),
            new Handover(Way.Collect, new LocalDateTime(2026, 10, 24, 14, 0), "", 0),
            null,
            // Never more than it serves: nobody was told that some are missing.
            new Portions(Math.Min(40, sizes.Sum(i => PortionChart.Usual.Of(Length.FromInches(i), Cut.Dessert))), Cut.Dessert),
            [.. sizes.Select((inches, i) => Tier(number, i + 1, inches))],
            Finish.Smooth,
            Decoration.Simple,
            AllergyAnswer.NoneTold,
            "",
            "");
    }

    /// <summary>A round tier of four layers, 10 cm high.</summary>
    public static CakeTier Tier(int order, int tier, int inches) =>
        new(Id(order, tier), Length.FromInches(inches), Length.FromCentimetres(10), 4, "vanilla", "raspberry-jam", [new CoatColour("Ivory", "#F7F0E1", 1)]);

    /// <summary>An order with cupcakes beside it, a batch for each count; its portions are what it serves now.</summary>
    public static Order With(Order order, params int[] cupcakes)
    {
        var all = order with { Tiers = [.. order.Tiers, .. cupcakes.Select((count, i) => Batch(order, i + 1, count))] };
        return all with { Portions = all.Portions with { Count = BuildSheet.Of(all).Portions(all.Portions.Cut) } };
    }

    /// <summary>An order of cupcakes alone.</summary>
    public static Order Alone(int number, params int[] cupcakes) => With(Good(number) with { Tiers = [] }, cupcakes);

    /// <summary>Vanilla with a swirl in Blush.</summary>
    public static CakeTier Batch(Order order, int batch, int count, string sponge = "vanilla") =>
        Cupcakes.Batch(new Guid(order.Id.ToByteArray()[0] + 1, (short)(100 + batch), 7, 1, 2, 3, 4, 5, 6, 7, 9), count, sponge, [new CoatColour("Blush", "#EAD0CC", 1)]);

    private static Guid Id(int order, int tier) => new(order, (short)tier, 7, 1, 2, 3, 4, 5, 6, 7, 8);
}
