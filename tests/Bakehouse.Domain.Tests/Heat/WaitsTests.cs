namespace Bakehouse.Domain.Tests.Heat;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using CsCheck;

/// <summary>Waits against common practice, in their words, in their range, and what is refused.</summary>
public sealed class WaitsTests(ITestOutputHelper output)
{
    internal static readonly Waits Shop = new(CakeFigures.Usual);
    private static readonly HeatPlace Room = HeatPlace.UsualRoom, Fridge = HeatPlace.UsualFridge, Freezer = HeatPlace.UsualFreezer;

    public static TheoryData<string, string, string> Practice => new()
    {
        { "PR-RACK", "8 in layers of 4 to 5 cm", "cool" },
        { "PR-CHILL-FRIDGE", "8 in layers of 4 to 5 cm", "chill" },
        { "PR-CHILL-FREEZER", "8 in layers of 4 to 5 cm", "freezer" },
        { "PR-CRUMB-SET", "8 in, 10 cm", "crumb" },
        { "PR-FIRM-STACK", "8 in, 10 cm", "stack" },
    };

    internal static CakeTier Tier(decimal inches, decimal centimetres, int layers = 2, string sponge = "vanilla") =>
        new(Guid.Empty, Length.FromInches(inches), Length.FromCentimetres(centimetres), layers, sponge, "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);

    [Theory]
    [MemberData(nameof(Practice))]
    public void Practice_lies_in_the_range_and_the_typical_within_thirty_in_a_hundred(string id, string what, string wait)
    {
        var row = HeatRow.Fields("practice.csv").Single(f => f[0] == id);
        var printed = double.Parse(row[3], CultureInfo.InvariantCulture);
        // Two layers and a filling of 6 mm: layers of 4.5 cm.
        var tier = wait is "crumb" or "stack" ? Tier(8, 10) : Tier(8, 9.635m);
        var answer = wait switch
        {
            "cool" => Shop.Cool(tier, Room),
            "chill" => Shop.FirmToFillIn(tier, Fridge),
            "freezer" => Shop.FirmToFillIn(tier, Freezer),
            "crumb" => Shop.SetCrumb(tier, Fridge),
            _ => Shop.FirmToStack(tier, Fridge),
        };
        var range = answer.Minutes!;
        output.WriteLine(FormattableString.Invariant($"{id} ({what}): {range.Low:0} / {range.Typical:0} / {range.High:0} min, practice {printed:0} ({row[4]}): {(range.Typical / printed) - 1:+0 %;-0 %}"));
        Assert.InRange(printed, range.Low, range.High);
        Assert.InRange(range.Typical, printed * 0.7, printed * 1.3);
        Assert.True(row[5] != "at least" || answer.Planned >= printed);
    }

    [Fact]
    public void Every_wait_says_why_in_one_sentence()
    {
        Assert.Equal("8 in, 10 cm: 2 h in fridge 1.", Shop.FirmToStack(Tier(8, 10), Fridge).Why);
        Assert.Matches(@"^8 in, 10 cm: 2 h \d\d in kitchen\.$", Shop.Cool(Tier(8, 10), Room).Why);
    }

    [Fact]
    public void A_wait_is_at_most_two_and_a_half_to_one_and_in_order() => Gen.Select(Gen.Int[4, 14], Gen.Int[6, 16], Gen.Int[2, 4], Gen.Double[0, 4]).Sample(
        (inches, high, layers, celsius) =>
        {
            var (tier, cold) = (Tier(inches, high, layers), Fridge with { Celsius = celsius });
            Assert.All([Shop.Cool(tier, Room), Shop.FirmToFillIn(tier, cold), Shop.SetCrumb(tier, cold), Shop.FirmToFillIn(tier, Freezer)], wait =>
            {
                var range = Assert.IsType<HeatRange>(wait.Minutes);
                Assert.InRange(range.Typical, range.Low, range.High);
                Assert.InRange(range.High, range.Low, range.Low * HeatRange.Widest);
                Assert.Equal(0, wait.Planned % 5);
            });
        }, iter: 12);

    [Fact]
    public void A_bigger_tier_waits_longer_and_a_fan_shortens()
    {
        Assert.True(Shop.FirmToTravel(Tier(10, 10), Fridge).Minutes!.Typical > Shop.FirmToTravel(Tier(6, 10), Fridge).Minutes!.Typical);
        Assert.True(Shop.FirmToStack(Tier(8, 10), Fridge with { Kind = HeatPlaceKind.FanFridge }).Minutes!.Typical < Shop.FirmToStack(Tier(8, 10), Fridge).Minutes!.Typical);
        Assert.True(Shop.Cool(Tier(8, 12), Room).Minutes!.Typical > Shop.Cool(Tier(8, 6), Room).Minutes!.Typical);
        Assert.True(Shop.Thaw(Tier(8, 10), Fridge).Minutes!.Typical > Shop.Thaw(Tier(8, 10), Room).Minutes!.Typical);
    }

    [Fact]
    public void A_square_tier_is_a_block_and_waits_longer_than_the_round_one_that_fits_in_it()
    {
        var square = Tier(8, 10) with { Special = new TierSpecial { Outline = new Outline(OutlineKind.Square, Length.FromInches(8)) } };
        Assert.True(CakeBodies.Tier(square, CoatState.Cream, CakeFigures.Usual).IsBlock);
        Assert.True(Shop.FirmToTravel(square, Fridge).Minutes!.Typical > Shop.FirmToTravel(Tier(8, 10), Fridge).Minutes!.Typical);
    }

    [Fact]
    public void Foam_and_layers_that_do_not_fit_have_no_wait()
    {
        Assert.Equal("tier", Assert.Single(Shop.Cool(Tier(8, 10) with { Special = new TierSpecial { IsFalse = true } }, Room).Problems).Where);
        Assert.Equal("Take fewer layers or more height.", Assert.Single(Shop.Cool(Tier(8, 5, 8), Room).Problems).Try);
    }

    [Fact]
    public void A_cake_is_followed_through_the_places_of_a_plan()
    {
        var curve = Conduction.Run(
            CakeBodies.Tier(Tier(8, 10), CoatState.Cream, CakeFigures.Usual), new HeatStart(18, 21), [Fridge.For(12 * 60), Room.For(30), Room.For(60, isBoxed: true), Fridge.For(60)]);
        Assert.Equal(13.5 * 60 + 60, curve.Minutes[^1], 1e-6);
        Assert.InRange(curve.At(720, HeatSpot.Core), 4, 6);
        Assert.InRange(curve.At(750, HeatSpot.Side), 11, 15);
        // In its carton it warms more slowly, and back in the fridge its outside is cold again while the core still follows.
        Assert.True(curve.At(780, HeatSpot.Mean) - curve.At(750, HeatSpot.Mean) < curve.At(750, HeatSpot.Mean) - curve.At(720, HeatSpot.Mean));
        Assert.True(curve.At(870, HeatSpot.Side) < curve.At(810, HeatSpot.Side) && curve.At(870, HeatSpot.Core) > curve.At(810, HeatSpot.Core));
        Assert.Equal((20, 24, 22, 20), (HeatPlace.HallIn(1).Celsius, HeatPlace.HallIn(7).Celsius, HeatPlace.HallIn(4).Celsius, HeatPlace.HallIn(7, isSouthern: true).Celsius));
    }

    [Fact]
    public void A_fridge_too_warm_for_the_wait_is_said_with_what_to_do()
    {
        var problem = Assert.Single(Shop.FirmToStack(Tier(8, 10), Fridge with { Celsius = 7.5 }).Problems);
        Assert.Equal("8 in, 10 cm (fridge 1 at 7.5 °C): It is to firm to stack at 8 °C, too close to the place for an honest time. Set fridge 1 to 4 °C or less, or use a colder place.", problem.ToString());
    }

    [Fact]
    public void Everything_wrong_is_told_at_once_with_limit_and_fix()
    {
        var wrong = Shop.FirmToStack(Tier(80, 10, 0), Fridge with { Celsius = 39, Humidity = 130 });
        Assert.Null(wrong.Minutes);
        Assert.Equal(0, wrong.Planned);
        Assert.Equal(
            [
                "Tier 1 (0): A tier has at least one layer. Give its layers.",
                "across (203.2 cm): Heat is worked out for 5 to 80 cm. Look at the figure: inches and centimetres are easily mixed up.",
                "fridge 1 (39 °C): It lies between -2 and 15 °C. Say if you mean Fahrenheit: 39 °F are 3.9 °C.",
                "fridge 1, humidity (130 %): It lies between 0 and 100 %. Give the relative humidity, 0 to 100 %.",
            ],
            wrong.Problems.Select(p => p.ToString()));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-300)]
    public void What_is_no_temperature_is_a_problem_and_never_a_number(double celsius) =>
        Assert.Single(Shop.Cool(Tier(8, 10), Room with { Celsius = celsius }).Problems);

    [Fact]
    public void A_body_of_nothing_or_of_a_material_without_figures_is_refused()
    {
        var bare = new HeatMaterial("mystery", double.NaN, [new HeatPoint(0, 0, 0)], "nobody");
        var body = new HeatBody([new HeatSlab(0.05, 0.1, bare)]);
        var problems = HeatChecks.Of(body, HeatStart.Even(20), []);
        Assert.Equal(["mystery, density", "mystery, heat", "mystery, conductivity", "stays"], problems.Select(p => p.Where));
        Assert.Throws<ArgumentException>(() => Conduction.Run(body, HeatStart.Even(20), []));
    }

    [Theory]
    [InlineData(0, 5, 0.02)]
    [InlineData(0.01, 0, 0)]
    [InlineData(double.NaN, 5, 0.02)]
    [InlineData(0.01, double.NaN, 0.02)]
    [InlineData(0.01, 5, -1)]
    public void Steps_that_would_never_end_are_refused(double cell, double step, double growth) => Assert.Throws<ArgumentException>(() => Conduction.Run(
        CakeBodies.Layer(Tier(8, 10), CakeFigures.Usual), HeatStart.Even(20), [Fridge.For(60)], null, null, new HeatDetail(cell, step, growth)));
}
