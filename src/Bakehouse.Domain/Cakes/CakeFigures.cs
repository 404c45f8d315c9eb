namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Sheets;
using Bakehouse.Domain.Shops;

/// <summary>
/// The figures behind a build sheet. Each is a default that a shop may change; where no published source is named, it is
/// common practice and should be corrected by the shop's own scales.
/// </summary>
public sealed record CakeFigures
{
    /// <summary>All defaults.</summary>
    public static CakeFigures Usual { get; } = new();

    /// <summary>The usual ones with what the shop has set for itself: from which mass on two people carry, what it stacks with, and what it has measured.</summary>
    public static CakeFigures Of(Shop shop)
    {
        var supports = SheetChoices.Of(shop).Supports;
        return (shop.Figures?.In(Usual) ?? Usual) with { TwoCarryFrom = Mass.FromKilograms(shop.Settings.TwoPeopleFromKg), DowelDiameter = supports.Across, SupportWord = supports.Word, WidestPan = DeckFit.Widest(shop.Ovens) };
    }

    /// <summary>Depths of the shop's pans: 2 in and 3 in (common practice, no source).</summary>
    public IReadOnlyList<Length> PanDepths { get; init; } = [Length.FromInches(2), Length.FromInches(3)];

    /// <summary>The widest round pan that an oven of the shop takes; wider tiers are baked in two halves. Null if any fits.</summary>
    public Length? WidestPan { get; init; }

    /// <summary>
    /// Batter as a share of the height baked: 0.50. Charts that say "two thirds full" work out at 0.43 to 0.62 of the brim, median
    /// about 0.50 (common practice, no source). Half rises to a whole: specific gravity of batter 0.75 (0.72-0.81, Molecules 2022
    /// 27:1124) × 0.9 left after baking (from memory) ÷ 0.33 g/mL baked (J. Food Eng. 2015 159:36) = 2.05.
    /// </summary>
    public double Fill { get; init; } = 0.5;

    /// <summary>
    /// Butter cakes lie between these, g/mL: 0.35 to 0.45 (weights of two-layer cakes of 8 to 9 in without frosting, USDA SR28, layers
    /// of 1.5 in).
    /// </summary>
    public static readonly (double Least, double Most) ButterCakes = (0.35, 0.45);

    /// <summary>How many times its batter a baked cake fills: 2, half rises to a whole (see <see cref="Fill"/>).</summary>
    public double Rise => 1 / Fill;

    /// <summary>One filling: 1/4 in (common practice, no source; 6 to 10 mm in use).</summary>
    public Length FillingThickness { get; init; } = Length.FromInches(0.25m);

    /// <summary>Crumb coat: 2 mm (common practice, no source; 1.2 to 3 mm in use).</summary>
    public Length CrumbThickness { get; init; } = Length.FromMillimetres(2);

    /// <summary>Final coat over the crumb coat: 5 mm (common practice, no source; 3 to 6 mm in use).</summary>
    public Length CoatThickness { get; init; } = Length.FromMillimetres(5);

    /// <summary>Share of each colour that is kept back: 0.08 (common practice, no source; 0.05 to 0.10 in use).</summary>
    public double KeptBackShare { get; init; } = 0.08;

    /// <summary>Least of each colour that is kept back: 60 mL (common practice, no source).</summary>
    public Volume KeptBackLeast { get; init; } = Volume.FromMillilitres(60);

    /// <summary>
    /// Baked sponge: butter cakes 0.40 g/mL (0.33 to 0.45 from the weights of two-layer cakes in USDA National Nutrient
    /// Database SR28 and pans of 8 × 1.5 in).
    /// </summary>
    public Density SpongeDensity { get; init; } = Density.FromGramsPerMillilitre(0.40);

    /// <summary>Sponges that differ, by id: genoise 0.30 g/mL (baked sponge 0.277 to 0.343, J. Food Eng. 2015 159:36).</summary>
    public IReadOnlyDictionary<string, Density> SpongeDensities { get; init; } = new Dictionary<string, Density>
    {
        ["genoise"] = Density.FromGramsPerMillilitre(0.30),
    };

    /// <summary>Buttercream: 1.00 g/mL (0.9 to 1.06, common practice, no source).</summary>
    public Density IcingDensity { get; init; } = Density.FromGramsPerMillilitre(1.00);

    /// <summary>
    /// Fillings that differ, by id: jam 1.35 and cream cheese 0.98 g/mL (USDA SR28 weights by volume), ganache 1.15 (1:1 1.1 to
    /// 1.2, from memory). A filling without a row is taken as buttercream.
    /// </summary>
    public IReadOnlyDictionary<string, Density> FillingDensities { get; init; } = new Dictionary<string, Density>
    {
        ["raspberry-jam"] = Density.FromGramsPerMillilitre(1.35),
        ["cream-cheese"] = Density.FromGramsPerMillilitre(0.981),
        ["ganache"] = Density.FromGramsPerMillilitre(1.15),
    };

    /// <summary>What runs down as a drip: 1.15 g/mL, ganache of equal parts (1.1 to 1.2, from memory).</summary>
    public Density DripDensity { get; init; } = Density.FromGramsPerMillilitre(1.15);

    /// <summary>Foam of false tiers: 0.025 g/mL (0.015 to 0.03, from memory).</summary>
    public Density FoamDensity { get; init; } = Density.FromGramsPerMillilitre(0.025);

    /// <summary>Board under an upper tier: 3 mm (common practice, no source; card 1.5 to 5, hardboard 4 to 6 mm).</summary>
    public Length BoardThickness { get; init; } = Length.FromMillimetres(3);

    /// <summary>Drum under the cake: 12 mm (from memory).</summary>
    public Length DrumThickness { get; init; } = Length.FromMillimetres(12);

    /// <summary>Boards and drum: 0.75 g/mL, the density of fibreboard (USDA Wood Handbook 1999, MDF 750 kg/m³); card is lighter.</summary>
    public Density BoardDensity { get; init; } = Density.FromGramsPerMillilitre(0.75);

    /// <summary>Drum of a stacked cake wider than its bottom tier by 4 in (common practice, no source; 3 to 4 in use).</summary>
    public Length DrumMargin { get; init; } = Length.FromInches(4);

    /// <summary>Board of a single cake wider than the cake by 2 in (common practice, no source; 1.5 to 4 in use).</summary>
    public Length SingleBoardMargin { get; init; } = Length.FromInches(2);

    /// <summary>Working board wider than the tier that is coated on it by 2.5 cm (common practice, no source).</summary>
    public Length WorkingBoardMargin { get; init; } = Length.FromCentimetres(2.5m);

    /// <summary>Supports: wooden dowels of 1/4 in (common practice, no source).</summary>
    public Length DowelDiameter { get; init; } = Length.FromInches(0.25m);

    /// <summary>How one of them is called.</summary>
    public string SupportWord { get; init; } = "dowel";

    /// <summary>
    /// Supports are cut so much shorter than the tier with its coat: 0, flush; up to 2 mm, since cake settles (common practice, no source;
    /// opinions differ).
    /// </summary>
    public Length CutShort { get; init; }

    /// <summary>Centre rod: 3/8 in (common practice, no source).</summary>
    public Length RodDiameter { get; init; } = Length.FromInches(0.375m);

    /// <summary>Clear height in the box over the highest point: 1 in at least (common practice, no source; 1 to 2 in use).</summary>
    public Length BoxClearance { get; init; } = Length.FromInches(1);

    /// <summary>From here two people lower a part onto its supports: 8 kg (common practice, no source).</summary>
    public Mass TwoLowerFrom { get; init; } = Mass.FromKilograms(8);

    /// <summary>From here two people or a trolley carry it, since a cake is held at arm's length: 10 kg (common practice, no source).</summary>
    public Mass TwoCarryFrom { get; init; } = Mass.FromKilograms(10);

    /// <summary>How portions are counted: by the shop's printed chart.</summary>
    public PortionRule PortionRule { get; init; } = PortionRule.Chart;

    /// <summary>The slice that counts as a dessert portion; null for what charts print.</summary>
    public Slice? DessertSlice { get; init; }

    /// <summary>The slice that counts as a portion with coffee; null for what charts print.</summary>
    public Slice? CoffeeSlice { get; init; }

    /// <summary>The shop's own slice of a cut, or null.</summary>
    public Slice? OwnSlice(Cut cut) => cut == Cut.Coffee ? CoffeeSlice : DessertSlice;

    /// <summary>Portions of a petal as a share of its area's: 0.70; charts print 0.65 to 0.83 (common practice, no source).</summary>
    public double PetalShare { get; init; } = 0.70;

    /// <summary>The shop's printed portions.</summary>
    public PortionChart Chart { get; init; } = PortionChart.Usual;

    /// <summary>
    /// Thickness of the final coat for a finish. Semi-naked has none: the first coat is scraped thin and the layers show
    /// through (common practice, no source).
    /// </summary>
    public Length CoatFor(Finish finish) => finish == Finish.SemiNaked ? Length.FromMillimetres(0) : CoatThickness;

    /// <summary>
    /// Batter in a case: 52 mL, half of what case and dome hold. A published chart of batter by pan gives 1 3/4 oz, 50 g, for a cupcake;
    /// 18 to 24 from two round layers of 8 in are published, too.
    /// </summary>
    public Volume CupcakeBatter { get; init; } = Volume.FromMillilitres(52);

    /// <summary>The swirl on a cupcake: 30 mL, 30 g of buttercream (common practice, no source; 25 to 45 g in use).</summary>
    public Volume CupcakeSwirl { get; init; } = Volume.FromMillilitres(30);

    /// <summary>Density of a baked sponge.</summary>
    public Density Sponge(string id) => SpongeDensities.TryGetValue(id, out var own) ? own : SpongeDensity;

    /// <summary>Density of a filling.</summary>
    public Density Filling(string id) => FillingDensities.TryGetValue(id, out var own) ? own : IcingDensity;
}
