namespace Bakehouse.Domain.Tests.Sheets;

using System.Text.Json.Nodes;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Structure;
using CsCheck;

/// <summary>An order's file and the sheet that comes of it.</summary>
public sealed class SheetFileTests
{
    // Everything that a file may say, so that each of it can be bent.
    private const string All = """
        {
          "number": 7, "version": 2, "finish": "Textured", "handover": { "routeMinutes": 20 },
          "choices": { "supports": "Wide plastic tube", "board": "Hardboard", "underlay": "Anti-slip mat" },
          "figures": {
            "fill": 0.5, "keptBackShare": 0.1, "keptBackLeast": 60, "petalShare": 0.7, "panDepths": [50.8, 76.2], "fillingThickness": 6, "crumbThickness": 2,
            "coatThickness": 5, "cutShort": 1, "boardThickness": 4, "drumThickness": 12, "drumMargin": 100, "singleBoardMargin": 50, "workingBoardMargin": 25,
            "boxClearance": 25, "spongeDensity": 0.4, "spongeDensities": { "genoise": 0.3 }, "icingDensity": 1, "fillingDensities": { "ganache": 1.15 },
            "dripDensity": 1.15, "foamDensity": 0.025, "boardDensity": 0.75, "twoCarryFrom": 10000, "twoLowerFrom": 8000, "portionRule": "Area"
          },
          "tiers": [
            { "diameter": 355.6, "height": 100, "layers": 4, "sponge": "vanilla", "filling": "ganache", "colours": [{ "name": "Ivory", "swatch": "#F7F0E1", "share": 0.5 }, { "name": "Sage", "swatch": "#D5DDC8", "share": 0.5 }],
              "special": { "outline": { "kind": "Rectangle", "wide": 355.6, "deep": 254 }, "dam": 10, "footBead": 10, "topBead": 8, "drip": 30 } },
            { "diameter": 228.6, "height": 78, "layers": 3, "sponge": "genoise", "filling": "lemon-curd", "colours": [{ "name": "Ivory", "share": 1 }],
              "special": { "outline": { "kind": "Petal", "wide": 228.6, "lobes": 8 }, "layerHeights": [20, 20, 26], "separator": 50, "paste": 4 } },
            { "diameter": 152.4, "height": 152.4, "layers": 1, "colours": [{ "name": "Ivory", "share": 1 }], "special": { "outline": { "kind": "Sign", "wide": 152.4, "sign": "7" }, "isFalse": true } },
            { "sponge": "chocolate", "colours": [{ "name": "Blush", "swatch": "#EAD0CC", "share": 1 }], "special": { "cupcakes": { "count": 30 } } }
          ]
        }
        """;

    private static readonly string[] Nasty =
    [
        "null", "0", "-1", "1.5", "1e300", "-1e-20", "99999999999999999999999999999999", "25", "300", "\"\"", "\"0,5\"", "\"Round\"", "\"Z\"", "\"vanilla\"", "true", "[]", "{}", "[null]", "[[1]]", "7",
    ];

    /// <summary>The golden order as a file gives the golden sheet, whose figures are held against published ones in <see cref="WrittenSheetTests"/>.</summary>
    [Fact]
    public void The_golden_order_gives_the_golden_sheet()
    {
        var (asked, problems) = SheetFile.Read(Kept("golden-order.json"));
        Assert.Empty(problems);
        Assert.Equal(Kept("golden-sheet.1.json"), SheetFile.Write(WrittenSheet.Of(asked!.Order, asked.Figures, asked.Choices)));
    }

    [Fact]
    public void Everything_that_it_says_is_read()
    {
        var (asked, problems) = SheetFile.Read(All);
        Assert.Empty(problems);
        Assert.Equal((SupportKind.WideTube, TierBoard.Hardboard, Underlay.Mat), (asked!.Choices.Supports, asked.Choices.Board, asked.Choices.Underlay));
        Assert.Equal((0.1, 0.3, 4m, PortionRule.Area), (asked.Figures.KeptBackShare, asked.Figures.Sponge("genoise").GramsPerMillilitre, asked.Figures.BoardThickness.Millimetres, asked.Figures.PortionRule));
        var sheet = WrittenSheet.Of(asked.Order, asked.Figures, asked.Choices);
        Assert.Equal(["slab", "petal", "sign"], sheet.Tiers.Select(t => t.Outline));
        Assert.Equal((254m, 50m, false), (sheet.Tiers[0].Deep, asked.Order.Tiers[1].Special!.Separator.Millimetres, sheet.Tiers[2].Eaten));
        Assert.Equal("on site", sheet.Travels!.Stacked);
    }

    [Theory]
    [InlineData("\"diameter\": 152.4", "\"diameter\": 0", "Tier 3.diameter", "0", "This is 76.2 to 457.2 mm.")]
    [InlineData("\"diameter\": 152.4", "\"diameter\": 152,4", "diameter", "152,4", "Write 152.4.")]
    [InlineData("\"diameter\": 152.4", "\"diameter\": \"152,4\"", "Tier 3.diameter", "\"152,4\"", "Write 152.4, without quotation marks.")]
    [InlineData("\"share\": 1 }] }\n  ]", "\"share\": 1.2 }] }\n  ]", "Tier 3, colour 1.share", "1.2", "This is 0 to 1.")]
    [InlineData("\"share\": 1 }] }\n  ]", "\"share\": 0.7 }] }\n  ]", "Tier 3", "70 %", "100 % together")]
    [InlineData("\"layers\": 2, \"sponge\"", "\"layers\": 9, \"sponge\"", "Tier 1.layers", "9", "1 to 8 layers")]
    [InlineData("\"sponge\": \"vanilla\"", "\"sponge\": \"granite\"", "Tier 1.sponge", "granite", "Write one of vanilla, lemon")]
    [InlineData("\"filling\": \"buttercream\"", "\"filling\": \"sand\"", "Tier 1.filling", "sand", "raspberry-jam")]
    [InlineData("\"finish\": \"Smooth\"", "\"finish\": \"Glossy\"", "finish", "Glossy", "Smooth, Textured, SemiNaked")]
    [InlineData("\"finish\": \"Smooth\"", "\"figures\": { \"spongeDensity\": 0 }", "figures.spongeDensity", "0 g/mL", "Weigh a level cup")]
    [InlineData("\"finish\": \"Smooth\"", "\"figures\": { \"spongeDensities\": { \"vanilla\": -1 } }", "figures.spongeDensities.vanilla", "-1 g/mL", "Weigh a level cup")]
    [InlineData("\"finish\": \"Smooth\"", "\"figures\": { \"spongeDensitys\": 1 }", "figures.spongeDensitys", "1", "This field is not known.")]
    [InlineData("\"finish\": \"Smooth\"", "\"figures\": { \"fill\": 1.4 }", "figures.fill", "1.4", "This is 0 to 1.")]
    [InlineData("\"finish\": \"Smooth\"", "\"choices\": { \"board\": \"Paper\" }", "choices.board", "Paper", "Double card")]
    [InlineData("\"layers\": 2, \"sponge\"", "\"special\": { \"outline\": { \"kind\": \"Petal\", \"wide\": 254, \"lobes\": 7 } }, \"layers\": 2, \"sponge\"", "Tier 1", "7", "an even number")]
    [InlineData("\"layers\": 2, \"sponge\"", "\"special\": { \"outline\": { \"kind\": \"Star\", \"wide\": 254 } }, \"layers\": 2, \"sponge\"", "Tier 1.special.outline.kind", "Star", "Hexagon")]
    [InlineData("\"layers\": 2, \"sponge\"", "\"special\": { \"outline\": { \"kind\": \"Rectangle\", \"wide\": 254 } }, \"layers\": 2, \"sponge\"", "Tier 1", "", "Give the depth.")]
    [InlineData("\"tiers\"", "\"tires\"", "tiers", "nothing", "This field is missing.")]
    public void What_is_wrong_is_named_with_its_value_and_what_to_do(string right, string wrong, string where, string value, string says)
    {
        var golden = Kept("golden-order.json");
        var at = golden.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right);
        var (asked, problems) = SheetFile.Read(golden[..at] + wrong + golden[(at + right.Length)..]);
        Assert.Null(asked);
        Assert.Contains(problems, p => p.Where == where && p.Value == value && $"{p.Sentence} {p.Try}".Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Everything_wrong_is_told_at_once()
    {
        var (_, problems) = SheetFile.Read("""{"finish":"Glossy","tiers":[{"diameter":5,"height":1,"layers":0,"sponge":"x","filling":"y","colours":[{"name":"a","share":2}]}]}""");
        Assert.Equal(["Tier 1, colour 1.share", "Tier 1.diameter", "Tier 1.filling", "Tier 1.height", "Tier 1.layers", "Tier 1.sponge", "finish"], problems.Select(p => p.Where).Order(StringComparer.Ordinal));
        Assert.All(problems, p => Assert.NotEqual("", p.Try));
    }

    /// <summary>Whatever stands in a file: a sheet, or what is wrong with it. Never a fault of ours.</summary>
    [Fact]
    public void A_bent_file_gives_a_sheet_or_problems() =>
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, Nasty.Length - 1]).Array[1, 3].Sample(bends =>
        {
            var root = JsonNode.Parse(All)!;
            foreach (var (at, with) in bends)
            {
                var places = Places(root).ToList();
                Replace(places[at % places.Count], JsonNode.Parse(Nasty[with]));
            }

            var (asked, problems) = SheetFile.Read(root.ToJsonString());
            Assert.Equal(asked is null, problems.Count > 0);
            Assert.All(problems, p => Assert.NotEqual("", p.Where + p.Value));
            if (asked is not null)
            {
                var sheet = JsonNode.Parse(SheetFile.Write(WrittenSheet.Of(asked.Order, asked.Figures, asked.Choices)))!;
                Assert.Equal(asked.Order.Tiers.Count, sheet["tiers"]!.AsArray().Count + sheet["cupcakes"]!.AsArray().Count);
            }
        }, iter: 3000);

    private static IEnumerable<JsonNode> Places(JsonNode node) => node switch
    {
        JsonObject o => o.Where(p => p.Value is not null).SelectMany(p => Places(p.Value!).Prepend(p.Value!)),
        JsonArray a => a.Where(e => e is not null).SelectMany(e => Places(e!).Prepend(e!)),
        _ => [],
    };

    private static void Replace(JsonNode old, JsonNode? now)
    {
        if (old.Parent is JsonObject o)
        {
            o[old.GetPropertyName()] = now;
        }
        else
        {
            old.Parent!.AsArray()[old.GetElementIndex()] = now;
        }
    }

    private static string Kept(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Sheets", file)).Trim();
}
