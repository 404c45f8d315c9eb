namespace Bakehouse.Domain.Sheets;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Structure;

/// <summary>Reads a shop's own figures and choices beside an order; whatever is left out is as usual.</summary>
internal sealed class AskedFigures
{
    private static readonly CakeFigures Usual = CakeFigures.Usual;

    private readonly JsonRow? row;

    public AskedFigures(JsonRow file) => row = file.Below("figures");

    /// <summary>Supports, board and underlay by their names.</summary>
    public static SheetChoices Choices(JsonRow file)
    {
        if (file.Below("choices") is not { } row)
        {
            return SheetChoices.Usual;
        }

        row.OnlyKnows("supports", "board", "underlay");
        return new SheetChoices(
            SupportKind.All[row.OneOf("supports", [.. SupportKind.All.Select(s => s.Name)], 0)],
            TierBoard.All[row.OneOf("board", [.. TierBoard.All.Select(b => b.Name)], 1)],
            Underlay.All[row.OneOf("underlay", [.. Underlay.All.Select(u => u.Name)], 0)]);
    }

    public CakeFigures Figures()
    {
        if (row is not { } figures)
        {
            return Usual;
        }

        figures.OnlyKnows(
            "fill", "petalShare", "keptBackShare", "keptBackLeast", "panDepths", "fillingThickness", "crumbThickness", "coatThickness", "cutShort", "boardThickness",
            "drumThickness", "drumMargin", "singleBoardMargin", "workingBoardMargin", "boxClearance", "spongeDensity", "spongeDensities", "icingDensity",
            "fillingDensities", "dripDensity", "foamDensity", "boardDensity", "twoCarryFrom", "twoLowerFrom", "portionRule");
        return Weights(Thicknesses(figures, Usual with
        {
            Fill = Share(figures, "fill", Usual.Fill),
            PetalShare = Share(figures, "petalShare", Usual.PetalShare),
            KeptBackShare = Share(figures, "keptBackShare", Usual.KeptBackShare),
            KeptBackLeast = Volume.FromMillilitres((double)figures.Decimal("keptBackLeast", 0, 10_000, "mL", (decimal)Usual.KeptBackLeast.Millilitres)),
            PortionRule = figures.OneOf("portionRule", Usual.PortionRule),
        }), figures);
    }

    private static CakeFigures Thicknesses(JsonRow row, CakeFigures figures)
    {
        Length Of(string name, Length usual) => row.Millimetres(name, 0, 300) ?? usual;
        return figures with
        {
            PanDepths = row.Has("panDepths") ? row.MillimetresEach("panDepths", 0, 300) : figures.PanDepths,
            FillingThickness = Of("fillingThickness", figures.FillingThickness),
            CrumbThickness = Of("crumbThickness", figures.CrumbThickness),
            CoatThickness = Of("coatThickness", figures.CoatThickness),
            CutShort = Of("cutShort", figures.CutShort),
            BoardThickness = Of("boardThickness", figures.BoardThickness),
            DrumThickness = Of("drumThickness", figures.DrumThickness),
            DrumMargin = Of("drumMargin", figures.DrumMargin),
            SingleBoardMargin = Of("singleBoardMargin", figures.SingleBoardMargin),
            WorkingBoardMargin = Of("workingBoardMargin", figures.WorkingBoardMargin),
            BoxClearance = Of("boxClearance", figures.BoxClearance),
        };
    }

    private static CakeFigures Weights(CakeFigures figures, JsonRow row)
    {
        Density Of(string name, Density usual) => row.Has(name) ? Weighed(row, name, row.Decimal(name, -JsonRow.Most, JsonRow.Most, "g/mL")) ?? usual : usual;
        Mass From(string name, Mass usual) => row.Has(name) ? Mass.FromGrams(row.Decimal(name, 0, 1_000_000, "g")) : usual;
        return figures with
        {
            SpongeDensity = Of("spongeDensity", figures.SpongeDensity),
            SpongeDensities = Named(row, "spongeDensities", figures.SpongeDensities, [.. Sponge.All.Select(s => s.Id)]),
            IcingDensity = Of("icingDensity", figures.IcingDensity),
            FillingDensities = Named(row, "fillingDensities", figures.FillingDensities, [.. Filling.All.Select(f => f.Id)]),
            DripDensity = Of("dripDensity", figures.DripDensity),
            FoamDensity = Of("foamDensity", figures.FoamDensity),
            BoardDensity = Of("boardDensity", figures.BoardDensity),
            TwoCarryFrom = From("twoCarryFrom", figures.TwoCarryFrom),
            TwoLowerFrom = From("twoLowerFrom", figures.TwoLowerFrom),
        };
    }

    /// <summary>The usual densities with those that are given; names that no sponge or filling bears are told.</summary>
    private static Dictionary<string, Density> Named(JsonRow row, string name, IReadOnlyDictionary<string, Density> usual, IReadOnlyList<string> ids)
    {
        var all = usual.ToDictionary(d => d.Key, d => d.Value, StringComparer.Ordinal);
        foreach (var (id, given) in row.Decimals(name, "g/mL"))
        {
            if (!ids.Contains(id, StringComparer.Ordinal))
            {
                row.Say(name, Problem.Shown(id), "This name is not known.", $"Write one of {string.Join(", ", ids)}.");
            }
            else if (Weighed(row, $"{name}.{id}", given) is { } density)
            {
                all[id] = density;
            }
        }

        return all;
    }

    private static Density? Weighed(JsonRow row, string name, decimal given)
    {
        if (FigureChecks.OfDensity((double)given, name) is not { } problem)
        {
            return Density.FromGramsPerMillilitre((double)given);
        }

        row.Say(name, given.ToString(CultureInfo.InvariantCulture) + " g/mL", problem.Sentence, problem.Try);
        return null;
    }

    private static double Share(JsonRow row, string name, double usual) => (double)row.Decimal(name, 0, 1, "", (decimal)usual);
}
