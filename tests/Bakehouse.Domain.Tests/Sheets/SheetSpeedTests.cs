namespace Bakehouse.Domain.Tests.Sheets;

using System.Diagnostics;
using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Sheets;

/// <summary>What a page waits for while somebody types: of many tries the one in the middle counts.</summary>
public sealed class SheetSpeedTests(ITestOutputHelper output)
{
    private const int Tries = 60;
    private const double Most = 20;

    [Fact]
    public void Five_tiers_of_five_shapes_are_a_sheet_within_twenty_milliseconds()
    {
        var order = Testing.Cakes.Good() with { Number = 1, Version = 1, Tiers = Mixed };
        WrittenSheet Sheet(int n) => WrittenSheet.Of(order with { Number = n }, CakeFigures.Usual, SheetChoices.Usual);
        Assert.Equal(5, Sheet(1).Tiers.Count);
        var took = Enumerable.Range(2, Tries).Select(n =>
        {
            var began = Stopwatch.GetTimestamp();
            Assert.Equal(n, Sheet(n).Number);
            return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        }).Order().ToList();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"a sheet of five mixed tiers: shortest {took[0]:0.00} ms, median {took[Tries / 2]:0.00} ms"));
        Assert.InRange(took[Tries / 2], 0, Most);
    }

    private static IReadOnlyList<CakeTier> Mixed =>
    [
        Tier(1, 14, new TierSpecial { Outline = new Outline(OutlineKind.Square, Length.FromInches(14)) }),
        Tier(2, 12, new TierSpecial { Outline = new Outline(OutlineKind.Hexagon, Length.FromInches(12)), IsFalse = true }),
        Tier(3, 10, new TierSpecial { Dam = Length.FromInches(0.5m), Drip = Length.FromCentimetres(3) }),
        Tier(4, 8, new TierSpecial { Outline = new Outline(OutlineKind.Petal, Length.FromInches(8)), FootBead = Length.FromCentimetres(1) }),
        Tier(5, 6, new TierSpecial { Outline = new Outline(OutlineKind.Heart, Length.FromInches(6)), Paste = Length.FromMillimetres(4) }),
    ];

    private static CakeTier Tier(int tier, int inches, TierSpecial special) => Testing.Cakes.Tier(1, tier, inches) with
    {
        Colours = [new CoatColour("Ivory", "#F7F0E1", 0.5m), new CoatColour("Sage", "#A9B89A", 0.3m), new CoatColour("Rose", "#E8B7B7", 0.2m)],
        Special = special,
    };
}
