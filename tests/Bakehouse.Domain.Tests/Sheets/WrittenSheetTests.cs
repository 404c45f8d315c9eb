namespace Bakehouse.Domain.Tests.Sheets;

using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Structure;
using Bakehouse.Domain.Tests.Cakes.Checks;
using CsCheck;

/// <summary>The sheet as plain figures, from the golden order on.</summary>
public sealed class WrittenSheetTests
{
    private static readonly JsonSerializerOptions Indented = new(JsonSerializerDefaults.Web) { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly Order GoldenOrder = Testing.Cakes.Good() with { Number = 1042, Version = 3, Tiers = [Golden.Tier(10), Golden.Tier(8), Golden.Tier(6)] };

    private static readonly WrittenSheet Sheet = Write(GoldenOrder);

    /// <summary>The golden rows of build-checks.csv, found again in the written figures, each rounded to a tenth.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(8)]
    [InlineData(6)]
    public void The_golden_order_is_written_with_its_published_figures(int inches)
    {
        var tier = Sheet.Tiers.Single(t => t.Wide == inches * 25.4m);
        Close($"Z-{inches}-vol", tier.Volumes.Sponge, tier.Volumes.Filling, tier.Volumes.Crumb, tier.Volumes.Coat);
        Close($"Z-{inches}-mass", tier.Mass);
        Close($"Z-{inches}-batter", tier.Pans.All);
        Close("Z-mass", Sheet.Totals.Cake);
        Close("Z-bc", Sheet.Tiers.Sum(t => t.Volumes.Icing));
        Assert.Equal(CheckRow.Of("Z-drum").Numbers[0], (double)Sheet.Packed!.Drum.Wide / 25.4, 6);
        Assert.Equal((60, 74), (Sheet.Totals.Portions.Dessert, Sheet.Totals.Portions.Coffee));
        Assert.Equal((48, 62), (Sheet.Totals.WithoutTop.Dessert, Sheet.Totals.WithoutTop.Coffee));
    }

    /// <summary>The kept sheet of format 1. If this differs, what reads sheets may fail: raise the format, or keep the old names.</summary>
    [Fact]
    public void The_golden_order_is_written_as_it_was_kept() =>
        Assert.Equal(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Sheets", "golden-sheet.1.json")).Trim(), JsonSerializer.Serialize(Sheet, Indented));

    [Fact]
    public void The_kept_sheet_is_read_again()
    {
        var read = JsonSerializer.Deserialize<WrittenSheet>(JsonSerializer.Serialize(Sheet, Indented), Indented)!;
        Assert.Equal(WrittenSheet.CurrentFormat, read.Format);
        Assert.Equal(JsonSerializer.Serialize(Sheet), JsonSerializer.Serialize(read));
    }

    /// <summary>A shop that stacks on tubes: they are drawn as wide, called so and counted so; a name that nobody knows is told.</summary>
    [Fact]
    public void A_shop_stacks_with_what_it_has_set()
    {
        Assert.Equal(SheetChoices.Usual, SheetChoices.Of(SampleBakery.Shop));
        var shop = SampleBakery.Shop with { Stacking = new Stacking("Wide plastic tube", "Hardboard", "Anti-slip mat") };
        Assert.Equal(new SheetChoices(SupportKind.WideTube, TierBoard.Hardboard, Underlay.Mat), SheetChoices.Of(shop));
        var sheet = BuildSheet.Of(GoldenOrder, CakeFigures.Of(shop));
        Assert.Equal((Length.FromInches(0.75m), "tube"), (sheet.Figures.DowelDiameter, sheet.Figures.SupportWord));
        Assert.StartsWith("11 tubes, 2 boards, 1 rod", Domain.Dangers.HiddenParts.Of(GoldenOrder, sheet).ToString(), StringComparison.Ordinal);
        Assert.Empty(ShopChecks.Problems(shop));
        Assert.Equal(["supports", "tier-board", "underlay"], ShopChecks.Problems(shop with { Stacking = new Stacking("Bamboo", "", "Sand") }).Select(p => p.Where));
    }

    [Fact]
    public void It_tells_no_name_no_telephone_and_no_price()
    {
        var text = JsonSerializer.Serialize(Sheet);
        Assert.DoesNotContain(GoldenOrder.Customer.Name, text, StringComparison.Ordinal);
        Assert.DoesNotContain("price", text, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(Look.Caution, Sheet.Cautions);
        Assert.Contains(Supports.Caution, Sheet.Cautions);
    }

    [Fact]
    public void An_order_that_cannot_be_built_is_refused_with_every_problem()
    {
        var thrown = Assert.Throws<ArgumentException>(() => Write(GoldenOrder with { Tiers = [Golden.Tier(8) with { Layers = 0 }, Golden.Tier(6) with { Colours = [] }] }));
        Assert.Contains("Tier 1", thrown.Message, StringComparison.Ordinal);
        Assert.Contains("Tier 2", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_of_any_sheet_fit_together() =>
        Gen.Select(Gen.Int[4, 16].Array[1, 5], Gen.Int[40, 200], Gen.Int[1, 4], Gen.Enum<Finish>(), Gen.Int[0, 2], Gen.Int[0, 4]).Sample((inches, high, layers, finish, kind, board) =>
        {
            var order = GoldenOrder with { Finish = finish, Tiers = [.. inches.Select(i => Golden.Tier(i) with { Height = Length.FromMillimetres(high), Layers = layers })] };
            var sheet = WrittenSheet.Of(order, CakeFigures.Usual, new SheetChoices(SupportKind.All[kind], TierBoard.All[board], Underlay.Mat));
            Assert.Equal((double)sheet.Totals.Cake, (double)sheet.Tiers.Sum(t => t.Mass), 0.5);
            Assert.Equal(sheet.Totals.Portions.Coffee, sheet.Tiers.Sum(t => t.Portions.Coffee));
            Assert.Equal(sheet.Totals.Supports, sheet.Tiers.Sum(t => t.Carries?.Count ?? 0));
            Assert.Equal(Enumerable.Range(1, inches.Length), sheet.Travels!.Parts.SelectMany(p => p));
            Assert.All(sheet.Tiers, t => Assert.Equal(t.Tier < inches.Length, t.Carries is not null));
            Assert.All(sheet.Looks, l => Assert.StartsWith("Look", l.Try, StringComparison.Ordinal));
        });

    private static WrittenSheet Write(Order order) => WrittenSheet.Of(order, CakeFigures.Usual, SheetChoices.Usual);

    private static void Close(string id, params decimal[] found)
    {
        var row = CheckRow.Of(id);
        Assert.All(row.Numbers.Zip(found), pair => Assert.True(Math.Abs(pair.First - (double)pair.Second) <= 0.151, string.Create(CultureInfo.InvariantCulture, $"{row}: {pair.Second}")));
        Assert.Equal(row.Numbers.Length, found.Length);
    }
}
