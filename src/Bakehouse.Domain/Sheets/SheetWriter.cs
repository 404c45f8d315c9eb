namespace Bakehouse.Domain.Sheets;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Structure;

/// <summary>Writes a build sheet as plain figures.</summary>
internal sealed class SheetWriter(Order order, BuildSheet sheet, SheetChoices choices)
{
    private readonly IReadOnlyList<TierLoad> loads = StackLoads.Of(sheet, choices.Supports, choices.Board);

    public WrittenSheet Write() => new(
        WrittenSheet.CurrentFormat,
        order.Number,
        order.Version,
        [.. sheet.Stack.Select(Tier)],
        [.. sheet.Colours.Select(c => new WrittenColour(c.Name, c.Swatch, Ml(c.Needed), Ml(c.KeptBack), Ml(c.ToMix)))],
        Packing(),
        Totals(),
        Travel(),
        [.. Looks().Select(l => new WrittenLook(l.Where, l.Value, l.Sentence, l.Try, l.Source))],
        [Look.Caution, .. sheet.Supports > 0 ? [Cakes.Supports.Caution] : Array.Empty<string>()])
    {
        Cupcakes = [.. sheet.Beside.Select(Cupcakes)],
    };

    private WrittenCupcakes Cupcakes(TierBuild build) => new(
        build.Dessert,
        build.Tier.Sponge,
        [.. build.Colours.Select(c => new WrittenSwirl(c.Name, c.Swatch, Ml(c.Needed)))],
        build.Pans.Count,
        Ml(sheet.Figures.CupcakeBatter),
        Ml(build.Pans.AllBatter),
        Ml(sheet.Figures.CupcakeSwirl),
        Ml(build.Icing),
        G(build.Mass),
        [.. CupcakeBox.For(build.Dessert).GroupBy(b => b).Select(g => new WrittenCupcakeBox(g.Count(), g.Key.Holds, Mm(g.Key.Shape.Width), Mm(g.Key.Shape.Depth), Mm(CupcakeBox.Height)))]);

    private IEnumerable<Look> Looks() =>
        StackLoads.Looks(sheet, choices.Supports, choices.Board).Concat(Road.Looks(sheet, choices.Underlay)).Concat(Carrying.Looks(sheet, order.Handover.RouteMinutes));

    private WrittenTier Tier(TierBuild build, int index) => new(
        index + 1,
        Named(build.Shape),
        Mm(build.Shape.Wide),
        Mm(build.Shape.Deep),
        Mm(build.Tier.Height),
        !build.Tier.IsFalse,
        build.Tier.Sponge,
        build.Tier.Filling,
        [.. build.Layers.Select(Mm)],
        new WrittenPans(build.Pans.Count, Mm(build.Pans.Depth), Ml(build.Pans.Batter), Ml(build.Pans.AllBatter), build.HeatingCore) { Halved = build.Pans.Halved, Layers = build.Pans.Layers },
        new WrittenVolumes(Ml(build.Sponge), Ml(build.Filling), Ml(build.Dam), Ml(build.Crumb), Ml(build.Coat), Ml(build.Beads), Ml(build.Drip), Ml(build.Icing), Ml(build.Seam)),
        Mm(build.Finished.Diameter),
        Mm(build.Finished.Height),
        G(build.Mass),
        new WrittenPortions(build.Dessert, build.Coffee),
        Board(build.Board),
        Mm(build.WorkingBoard.Diameter),
        loads.FirstOrDefault(l => l.Tier == index) is { } load ? Supports(load) : null,
        build.Paste is { } p ? new WrittenPaste(Mm(p.Wide), Mm(p.Deep), Mm(p.Thickness), G(p.Rolled), G(p.OnCake))
        {
            Colours = [.. build.PasteColours.Select(c => new WrittenPasteColour(c.Name, c.Swatch, G(c.Rolled), G(c.OnCake)))],
        } : null);

    private WrittenSupports Supports(TierLoad load) => new(
        choices.Supports.Name,
        load.Supports.Count,
        Mm(load.Supports.Length),
        Mm(load.Supports.RingDiameter),
        Mm(load.Apart),
        G(load.Carried),
        Tenth(load.Newtons),
        Tenth(load.Each),
        Tenth(load.Carries),
        Tenth(load.Punches),
        load.SagMillimetres is { } sag ? Tenth(sag) : null,
        Tenth(load.Lean(Length.FromMillimetres(1))));

    private WrittenPacking? Packing() => sheet is not { Drum: { } drum, Box: { } box } ? null : new(
        Board(drum),
        Mm(box.Width),
        Mm(box.Height),
        box.AsSold is not null,
        sheet.Rods,
        [.. Footprint.Of(sheet).Select(f => new WrittenRoom(Named(f.As), (f.Tier + 1) ?? 0, Mm(f.Wide), Mm(f.Deep), Mm(f.Height)))]);

    private WrittenTotals Totals()
    {
        var (dessert, coffee) = sheet.Stack.Count == 0 ? (0, 0) : (sheet.Stack[^1].Dessert, sheet.Stack[^1].Coffee);
        return new WrittenTotals(
            new WrittenPortions(sheet.Dessert, sheet.Coffee),
            new WrittenPortions(sheet.Dessert - dessert, sheet.Coffee - coffee),
            Ml(sheet.Batter),
            Ml(sheet.Icing),
            G(sheet.Cake),
            G(sheet.Mass),
            Mm(sheet.Height),
            Mm(sheet.CentreOfGravity),
            Thousandth(sheet.TipsAt),
            Thousandth(Road.SlidesAt(choices.Underlay)),
            Carrying.Of(sheet) is { } carrying ? Index(carrying) : null,
            sheet.Supports,
            sheet.TwoCarry,
            sheet.TwoLower);
    }

    private WrittenTravel? Travel()
    {
        if (sheet.Stack.Count == 0)
        {
            return null;
        }

        var travelling = Travelling.Of(sheet, order.Handover.RouteMinutes);
        return new WrittenTravel(Named(travelling.Where), [.. travelling.Parts.Select(p => (IReadOnlyList<int>)[.. p.Select(t => t + 1)])], travelling.Why)
        {
            Packed = [.. TravelPart.Of(sheet, travelling).Select(Part)],
        };
    }

    private static WrittenPart Part(TravelPart part) => new(
        [.. part.Tiers.Select(t => t + 1)], Mm(part.Board.Shape.Wide), G(part.Mass), Mm(part.Height), Mm(part.Box.Width), Mm(part.Box.Height), part.Box.AsSold is not null, Index(part.Carrying));

    private static decimal? Index(Carrying carrying) => double.IsFinite(carrying.Index) ? Thousandth(carrying.Index) : null;

    private static WrittenBoard Board(Board board) =>
        new(Mm(board.Shape.Wide), Mm(board.Shape.Deep), Mm(board.Thickness), board.BoughtAs is { } bought ? Mm(bought) : null, board.IsTrimmed);

    private static string Named(Shape shape) => shape switch
    {
        Round => "round", Slab => "slab", Hexagon => "hexagon", Petal => "petal", Heart => "heart", HalfRound => "half-round", SignShape => "sign",
        _ => throw new InvalidOperationException($"Unknown outline {shape}."),
    };

    private static string Named(StandsAs state) => state switch
    {
        StandsAs.InWork => "in work", StandsAs.OnDrum => "on its drum", StandsAs.Boxed => "boxed",
        _ => throw new InvalidOperationException($"Unknown state {state}."),
    };

    private static string Named(StackedWhere where) => where switch
    {
        StackedWhere.Shop => "in the shop", StackedWhere.Parts => "in two parts", StackedWhere.Site => "on site",
        _ => throw new InvalidOperationException($"Unknown place {where}."),
    };

    private static decimal Mm(Length length) => Math.Round(length.Millimetres, 1);

    private static decimal Ml(Volume volume) => Tenth(volume.Millilitres);

    private static decimal G(Mass mass) => Math.Round(mass.Grams, 1);

    private static decimal Tenth(double value) => Math.Round((decimal)value, 1);

    private static decimal Thousandth(double value) => Math.Round((decimal)value, 3);
}
