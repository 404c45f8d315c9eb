namespace Bakehouse.Domain.Shops;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>
/// The sample bakery, Tolliver Row Cakes: a small shop with two ovens, three and a half pairs of hands and two upright fridges.
/// Everything in it is invented.
/// </summary>
public static class SampleBakery
{
    private static readonly IsoDayOfWeek[] Weekdays =
        [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday];

    /// <summary>The shop.</summary>
    public static Shop Shop { get; } = new(
        1,
        "Tolliver Row Cakes",
        "Europe/London",
        [.. Weekdays.Skip(1).Select(d => new OpeningHours(d, new LocalTime(9, 0), new LocalTime(17, 30))), new(IsoDayOfWeek.Saturday, new LocalTime(8, 0), new LocalTime(16, 0))],
        [],
        People(),
        [
            new Oven("oven1", "Oven 1", OvenKind.Fan, 3, Length.FromCentimetres(46), Length.FromCentimetres(33)),
            new Oven("oven2", "Oven 2", OvenKind.Fan, 2, Length.FromCentimetres(60), Length.FromCentimetres(40)),
        ],
        [
            new Bowl("bowl7", "7 L bowl", 7, Mass.FromKilograms(2), 2600),
            new Bowl("bowl20", "20 L bowl", 20, Mass.FromKilograms(9), 9000),
        ],
        Shelves(),
        30,
        3,
        3,
        new ShopSettings(SmallCakes: [5, 6, 6, 6, 7, 8, 7, 6, 6, 6, 7, 8]),
        IsSample: true)
    {
        HouseCakes = SampleOrders.HouseCakes,
        Prices = SamplePrices.All,
        Cold = new(21, 55, [], FoodClocks.FoodRules.UnitedKingdom.Id, [new("ganache", FoodClocks.FamilyKept.Fridge)]),
    };

    private static List<Person> People() =>
    [
        new("ines", "Ines", "star", Role.Owner, Skills.All, Shifts(9, 12, 12.5, 17, Weekdays), Shifts(17, 19, 0, 0, Weekdays)),
        new("petra", "Petra", "whisk", Role.Baker, [Skills.Bake, Skills.Coat, Skills.Box, Skills.Clean], [.. Shifts(6, 10, 10.5, 14, Weekdays), .. Shifts(6, 11, 0, 0, [IsoDayOfWeek.Saturday])], Shifts(14, 16, 0, 0, Weekdays)),
        new("dov", "Dov", "rose", Role.Decorator, [Skills.Coat, Skills.Decorate, Skills.Box], [.. Shifts(9, 12.5, 13, 17, [.. Weekdays.Skip(1)]), .. Shifts(7, 13, 0, 0, [IsoDayOfWeek.Saturday])], Shifts(17, 19, 0, 0, [.. Weekdays.Skip(1)])),
        new("wren", "Wren", "bell", Role.Counter, [Skills.Counter, Skills.Box, Skills.Clean], [.. Shifts(9, 13, 13.5, 17.5, [.. Weekdays.Skip(1)]), .. Shifts(8, 10.5, 11, 16, [IsoDayOfWeek.Saturday])], []),
        new("sal", "Sal", "key", Role.Driver, [Skills.Drive, Skills.Box], Shifts(7, 15, 0, 0, [IsoDayOfWeek.Saturday]), []),
    ];

    private static List<Shelf> Shelves()
    {
        var shelves = new List<Shelf>();
        foreach (var fridge in new[] { 1, 2 })
        {
            for (var level = 1; level <= 4; level++)
            {
                // The lowest level is the tall one: a stacked cake is lifted in at the waist, not over the head.
                shelves.Add(new Shelf($"f{fridge}l{level}", ShelfKind.Fridge, $"Fridge {fridge}", level, Length.FromCentimetres(55), Length.FromCentimetres(60), Length.FromCentimetres(level == 1 ? 50 : 20)));
            }
        }

        shelves.AddRange(Enumerable.Range(1, 3).Select(level =>
            new Shelf($"z1l{level}", ShelfKind.Freezer, "Freezer", level, Length.FromCentimetres(50), Length.FromCentimetres(60), Length.FromCentimetres(20))));
        shelves.Add(new Shelf("c1l1", ShelfKind.CoolRoom, "Cool room", 1, Length.FromCentimetres(120), Length.FromCentimetres(60), Length.FromCentimetres(60)));
        return shelves;
    }

    private static List<Shift> Shifts(double from, double breakFrom, double again, double to, IReadOnlyList<IsoDayOfWeek> days) =>
    [
        .. days.SelectMany(d => again > 0
            ? new[] { new Shift(d, Hour(from), Hour(breakFrom)), new Shift(d, Hour(again), Hour(to)) }
            : [new Shift(d, Hour(from), Hour(breakFrom))]),
    ];

    private static LocalTime Hour(double hour) => LocalTime.Midnight.PlusMinutes((long)(hour * 60));
}
