namespace Bakehouse.Web.TheFreezer;

using System.Globalization;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>Spare sponges as people call them.</summary>
public sealed class SpareWords(Shop shop)
{
    /// <summary>"Vanilla butter cake, 8 in".</summary>
    public string Of(SpareSponges spares) => $"{Sponge.Of(spares.Sponge)?.Name ?? spares.Sponge}, {Size(spares.Pan)}";

    /// <summary>"Frozen Mon 12 Oct, at its best until Mon 9 Nov"; or how it stands once that has passed.</summary>
    public string When(SpareSponges spares, LocalDate today) => spares.BestUntil < today
        ? $"Frozen {Day(spares.Frozen)}, past its best since {Day(spares.BestUntil)}"
        : $"Frozen {Day(spares.Frozen)}, at its best until {Day(spares.BestUntil)}";

    /// <summary>What is taken in place of lost ones, how far the count reaches, and how they thaw (2 to 3 h: common practice, no source).</summary>
    public string Taken(FromFreezer from, LocalDate today) => from.Counted == 0
        ? "None of this sponge and pan is counted in the freezer. Look before you decide."
        : string.Join(' ', from.Taken.Select(t => $"Take {Number(t.Count)} × {Of(t)}. {When(t, today)}."))
            + (from.Counted < from.Needed ? $" Only {Number(from.Counted)} of {Number(from.Needed)} are counted. Look before you decide." : "")
            + " Put them where the lost ones would stand. They thaw wrapped, 2 to 3 h in the room, and are cold again before they are filled.";

    private string Size(int pan)
    {
        var piece = PanCode.Bare(pan);
        return piece.IsRound ? Long(piece.Wide) : $"{Long(piece.Deep)} × {Long(piece.Wide)}";
    }

    private string Long(double millimetres) => shop.Settings.Inches
        ? $"{Math.Round(millimetres / 25.4).ToString(CultureInfo.InvariantCulture)} in"
        : $"{Math.Round(millimetres / 10).ToString(CultureInfo.InvariantCulture)} cm";

    private static string Day(LocalDate day) => day.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
