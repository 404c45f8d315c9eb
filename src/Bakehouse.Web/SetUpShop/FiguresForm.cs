namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Shops;

/// <summary>The shop's own figures for the build as typed; "" is as usual.</summary>
public sealed class FiguresForm
{
    /// <summary>Percent of the baked height.</summary>
    public string Fill { get; set; } = "";

    /// <summary>Millimetres, as the coats and what is cut short.</summary>
    public string Filling { get; set; } = "";

    public string Crumb { get; set; } = "";

    public string Coat { get; set; } = "";

    /// <summary>Percent of each colour.</summary>
    public string KeptBack { get; set; } = "";

    public string CutShort { get; set; } = "";

    /// <summary>Kilograms.</summary>
    public string TwoLower { get; set; } = "";

    /// <summary>Grams in a millilitre.</summary>
    public string Sponge { get; set; } = "";

    public string Buttercream { get; set; } = "";

    /// <summary>Name of a slice; "" for the printed chart.</summary>
    public string Dessert { get; set; } = "";

    public string Coffee { get; set; } = "";

    /// <summary>True if anything is not as usual.</summary>
    public bool IsOwn => new[] { Fill, Filling, Crumb, Coat, KeptBack, CutShort, TwoLower, Sponge, Buttercream, Dessert, Coffee }.Any(t => t.Trim().Length > 0);

    /// <summary>The form filled with what the shop has.</summary>
    public static FiguresForm Of(ShopFigures? own) => new()
    {
        Fill = Say(own?.Fill * 100),
        Filling = Say(own?.Filling?.Millimetres),
        Crumb = Say(own?.Crumb?.Millimetres),
        Coat = Say(own?.Coat?.Millimetres),
        KeptBack = Say(own?.KeptBack * 100),
        CutShort = Say(own?.CutShort?.Millimetres),
        TwoLower = Say(own?.TwoLowerFrom?.Kilograms),
        Sponge = Say(own?.SpongeDensity),
        Buttercream = Say(own?.ButtercreamDensity),
        Dessert = own?.Dessert ?? "",
        Coffee = own?.Coffee ?? "",
    };

    /// <summary>As the shop has it, null if all is as usual; what can't stand is added to the problems.</summary>
    internal ShopFigures? Read(ICollection<Problem> problems)
    {
        var own = new ShopFigures
        {
            Fill = Figure("fill", Fill, problems) / 100,
            Filling = Thickness("filling", Filling, problems),
            Crumb = Thickness("crumb-coat", Crumb, problems),
            Coat = Thickness("final-coat", Coat, problems),
            KeptBack = Figure("kept-back", KeptBack, problems) / 100,
            CutShort = Thickness("cut-short", CutShort, problems),
            TwoLowerFrom = Figure("two-lower", TwoLower, problems) is { } kilograms ? Mass.FromKilograms(kilograms) : null,
            SpongeDensity = Figure("sponge-density", Sponge, problems),
            ButtercreamDensity = Figure("buttercream-density", Buttercream, problems),
            Dessert = Dessert.Length > 0 ? Dessert : null,
            Coffee = Coffee.Length > 0 ? Coffee : null,
        };
        foreach (var problem in own.Problems())
        {
            problems.Add(ShopFields.OnPage(problem));
        }

        return own == new ShopFigures() ? null : own;
    }

    private static Length? Thickness(string field, string text, ICollection<Problem> problems) =>
        Figure(field, text, problems) is { } millimetres ? Length.FromMillimetres(millimetres) : null;

    /// <summary>A figure with a point or one comma for its decimals, up to 1000; null if nothing is typed, or what can't be read is named.</summary>
    private static decimal? Figure(string field, string text, ICollection<Problem> problems)
    {
        var typed = text.Trim();
        if (typed.Length == 0)
        {
            return null;
        }

        if (typed.Length <= 8 && decimal.TryParse(typed.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var figure) && figure <= 1000)
        {
            return figure;
        }

        problems.Add(new Problem(field, Problem.Shown(text), "This figure can't be read.", "Write it like 6.5, or leave it empty for the usual."));
        return null;
    }

    private static string Say(decimal? figure) => figure?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";
}
