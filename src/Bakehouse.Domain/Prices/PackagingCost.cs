namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Structure;
using static System.FormattableString;

/// <summary>Boards, drum, boxes, supports and rod of a sheet at a shop's prices.</summary>
/// <param name="parts">In which the cake travels: each has its box.</param>
internal sealed class PackagingCost(BuildSheet sheet, IReadOnlyList<TravelPart> parts, CostRates rates)
{
    private readonly List<CostLine> lines = [];
    private readonly List<string> missing = [];

    public (IReadOnlyList<CostLine> Lines, IReadOnlyList<string> Missing) Lines()
    {
        if (sheet.Drum is { } drum)
        {
            Sized("Drum", drum.Diameter, rates.Drums);
            foreach (var tier in sheet.Stack.Skip(1))
            {
                Sized("Board", tier.Board.Diameter, rates.Boards);
            }

            foreach (var part in parts)
            {
                Sized("Box", part.Box.Width, rates.Boxes);
            }
        }

        Counted("Cases and boxes", sheet.Beside.Sum(t => t.Dessert), rates.CupcakePack);
        Counted("Supports", sheet.Supports, rates.SupportEach);
        Counted("Centre rod", sheet.Rods, rates.RodEach);
        return (lines, missing);
    }

    private void Sized(string name, Length size, IReadOnlyList<SizePrice> prices)
    {
        if (prices.Where(p => p.Size >= size).MinBy(p => p.Size) is { } price)
        {
            lines.Add(new CostLine(CostKind.Packaging, name, Invariant($"{price.Size.Inches:0.#} in"), Cash.Rounded(price.Price)));
        }
        else
        {
            missing.Add(Invariant($"{name} {size.Inches:0.#} in"));
        }
    }

    private void Counted(string name, int count, decimal each)
    {
        if (count > 0)
        {
            lines.Add(new CostLine(CostKind.Packaging, name, Invariant($"{count}"), Cash.Rounded(count * each)));
        }
    }
}
