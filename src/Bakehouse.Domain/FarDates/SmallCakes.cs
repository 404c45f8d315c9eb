namespace Bakehouse.Domain.FarDates;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Shops;

/// <summary>
/// The small cakes that come in any week and are ordered late: room is left for them, so many a week by month
/// (<see cref="ShopSettings.SmallCakes"/>). Those that are in the book already count as some of them.
/// </summary>
internal static class SmallCakes
{
    // Pickups of birthday cakes by weekday: Fri 30 %, Sat 45 %, Sun 10 % (common practice, no source); the rest over four days.
    private static readonly Dictionary<IsoDayOfWeek, double> Shares = new()
    {
        [IsoDayOfWeek.Friday] = 0.30, [IsoDayOfWeek.Saturday] = 0.45, [IsoDayOfWeek.Sunday] = 0.10,
    };

    /// <summary>The tier that stands for one: 8 in across, 10 cm high, three layers.</summary>
    public static CakeTier Tier { get; } = new(
        new Guid(1, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]), Length.FromInches(8), Length.FromCentimetres(10), 3, "vanilla", "raspberry-jam", [new CoatColour("White", "#FFFFFF", 1)]);

    /// <summary>True for a cake of one tier.</summary>
    public static bool IsOne(Order order) => order.Stack.Count == 1;

    /// <summary>How many are wont to be handed over from one day to another, both included; a part of a cake counts as such.</summary>
    public static double Usual(Shop shop, LocalDate from, LocalDate to)
    {
        if (shop.Settings.SmallCakes is not { } byMonth)
        {
            return 0;
        }

        var usual = 0.0;
        for (var day = from; day <= to; day = day.PlusDays(1))
        {
            usual += byMonth[day.Month - 1] * Share(shop, day);
        }

        return usual;
    }

    /// <summary>What of the week's small cakes leaves on that day: by weekday, among the days on which the shop opens.</summary>
    private static double Share(Shop shop, LocalDate day)
    {
        if (shop.HoursOn(day).Count == 0)
        {
            return 0;
        }

        var open = shop.Hours.Select(h => h.Day).Distinct().Sum(Weight);
        return Weight(day.DayOfWeek) / open;
    }

    private static double Weight(IsoDayOfWeek day) => Shares.GetValueOrDefault(day, 0.15 / 4);

    /// <summary>Minutes of one by skill.</summary>
    public static IReadOnlyDictionary<string, int> Minutes(Shop shop, Order like) => FarLoad.MinutesOf(
        like with
        {
            Tiers = [Tier],
            Finish = Finish.Smooth,
            Decoration = Decoration.Medium,
            Handover = like.Handover with { Way = Way.Collect, Address = "", RouteMinutes = 0 },
        },
        shop);
}
