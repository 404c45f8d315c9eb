namespace Bakehouse.Domain.Tests.Cakes.Checks;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Tests.Cakes.Checks.ShapeRows;

/// <summary>C: coats, fillings, colours, paste.</summary>
internal static class CoatRows
{
    private static readonly Length Quarter = In(0.25);

    public static IReadOnlyList<(string, Action<CheckRow>)> All { get; } =
    [
        ("C-R8-side", r => r.Holds(On8.Side.CubicInches)),
        ("C-R8-top", r => r.Holds(On8.Top.CubicInches)),
        ("C-R8-all", r => r.Holds(On8.All / KitchenMeasures.UsCup)),
        ("C-R8-thin", r => r.Holds((new Round(In(8)).Outside(In(4)) * Quarter).CubicInches)),
        ("C-HEX9-all", r => r.Holds(Coat.On(new Hexagon(In(r.In("C"))), In(r.In("h")), Quarter).All.CubicInches)),
        ("C-FILL-8", r => r.Holds((new Round(In(r.In("D"))).Area * Quarter).Millilitres)),
        ("C-LAYERS", r => r.Holds(BuildSheet.Of([Tier((int)r.Given[0])], Finish.Smooth, CakeFigures.Usual).Tiers[0].Fillings)),
        ("C-R*-implied", Implied),
        ("C-T-crumb", r => r.Is(CakeFigures.Usual.CrumbThickness.Millimetres)),
        ("C-T-final", r => r.Is(CakeFigures.Usual.CoatThickness.Millimetres)),
        ("C-T-filling", r => r.Is(CakeFigures.Usual.FillingThickness.Millimetres)),
        ("C-T-fondant", r => r.Is(PasteSheet.Usual.Millimetres)),
        ("C-D-vanilla-creamy", Frosting),
        ("C-D-creamcheese-creamy", Frosting),
        ("C-D-creamcheese-whipped", Frosting),
        ("C-D-abc", r => r.Holds((double)Starter.Sample.Total(Starter.Sample.Recipe("buttercream")!).Grams / (KitchenMeasures.UsCup * 3).Millilitres)),
        ("C-COL-split", Colours),
        ("C-FON-sheet", r => r.Is(PasteSheet.For(new Round(In(r.In("D"))), In(r.In("h")), In(0.16)).Wide.Inches)),
    ];

    private static Coat On8 => Coat.On(new Round(In(8)), In(4), Quarter);

    // Cups of a chart turned back into thicknesses: over the outside for coats, over the area for the filling; 4 in tall.
    private static void Implied(CheckRow r)
    {
        var round = new Round(In(r.In("D")));
        double Thick(double cups, Area over) => (KitchenMeasures.UsCup * cups).Millilitres * 1000 / over.SquareMillimetres;
        var cups = r.Given[1..];
        r.Holds(Thick(cups[0], round.Outside(In(4))), Thick(cups[1], round.Area), Thick(cups[2], round.Outside(In(4))));
    }

    // "33 g per 2 tbsp": that density times two tablespoons gives the grams back, so the tablespoon is what is compared.
    private static void Frosting(CheckRow r)
    {
        r.Holds(r.Given[0] / (KitchenMeasures.UsTablespoon * r.Given[1]).Millilitres);
        Assert.Equal(r.Given[0], (double)(Density.FromGramsPerMillilitre(r.Numbers[0]) * (KitchenMeasures.UsTablespoon * 2)).Grams, 0.01);
    }

    private static void Colours(CheckRow r)
    {
        CoatColour[] colours = [new("White", "#FFFFFF", 0.60m), new("Sage", "#C7D5BD", 0.25m), new("Navy", "#2B3F63", 0.15m)];
        r.Holds([.. ColourBatch.Of(ColourBatch.Split(Volume.FromMillilitres(r.Given[0]), colours), CakeFigures.Usual).Select(b => b.ToMix.Millilitres)]);
    }

    private static CakeTier Tier(int layers) =>
        new(new Guid(layers, 0, 0, new byte[8]), In(8), In(4), layers, "vanilla", "buttercream", [new CoatColour("Ivory", "#F7F0E1", 1)]);
}
