namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using System.Text.RegularExpressions;
using Bakehouse.Domain;
using Bakehouse.Domain.Shops;

/// <summary>The owner's own limits as typed.</summary>
public sealed partial class LimitsForm
{
    public bool NothingCold { get; set; }

    public string ColdWords { get; set; } = "";

    /// <summary>"50,000"; "" for no cap.</summary>
    public string YearlyCap { get; set; } = "";

    public string Label { get; set; } = "";

    /// <summary>The form filled with what the shop has.</summary>
    public static LimitsForm Of(OwnLimits? limits) => new()
    {
        NothingCold = limits?.NothingCold == true,
        ColdWords = limits?.ColdWords ?? "",
        YearlyCap = limits?.YearlyCap?.ToString("#,0.##", CultureInfo.InvariantCulture) ?? "",
        Label = limits?.Label ?? "",
    };

    /// <summary>As the shop has it, null if nothing is set; what can't be read is added to the problems.</summary>
    internal OwnLimits? Read(ICollection<Problem> problems)
    {
        var cap = Amount(YearlyCap);
        if (cap is null && YearlyCap.Trim().Length > 0)
        {
            problems.Add(new Problem("yearly-cap", Problem.Shown(YearlyCap), "This amount can't be read.", "Write 50,000 or 50000, or leave it empty for no cap."));
        }

        var limits = new OwnLimits(NothingCold, ColdWords.Trim(), cap, Label.Trim());
        foreach (var problem in limits.Problems())
        {
            problems.Add(ShopFields.OnPage(problem));
        }

        return limits == new OwnLimits(false, "", null, "") ? null : limits;
    }

    /// <summary>An amount with or without a mark between thousands: a comma before three figures is one, never a decimal comma.</summary>
    private static decimal? Amount(string text)
    {
        var typed = text.Trim();
        return Plain().IsMatch(typed) && decimal.TryParse(typed.Replace(",", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)
            ? amount
            : null;
    }

    [GeneratedRegex(@"^(\d{1,9}|\d{1,3}([, ]\d{3}){1,2})(\.\d{1,2})?$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Plain();
}
