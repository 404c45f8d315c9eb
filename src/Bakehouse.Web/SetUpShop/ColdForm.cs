namespace Bakehouse.Web.SetUpShop;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Shops;

/// <summary>How warm the shop's places are and what its owner says of fillings, as typed.</summary>
public sealed class ColdForm
{
    /// <summary>°C of the kitchen.</summary>
    public string Kitchen { get; set; } = "21";

    /// <summary>Relative humidity, %; "" if nobody measured it.</summary>
    public string Humidity { get; set; } = "";

    /// <summary>Id of the food rules; "" for those usually gone by in the country.</summary>
    public string Rules { get; set; } = "";

    /// <summary>Only units that the owner said something about.</summary>
    public IList<ColdUnitForm> Units { get; set; } = [];

    public IList<FamilyForm> Families { get; set; } = [.. FillingFamily.All.Select(f => new FamilyForm { Family = f.Id })];

    /// <summary>The form filled with what the shop has.</summary>
    public static ColdForm Of(ColdChain? cold) => cold is null ? new() : new()
    {
        Kitchen = Say(cold.Kitchen),
        Humidity = cold.Humidity is { } h ? Say(h) : "",
        Rules = cold.Rules,
        Units = [.. cold.Units.Select(u => new ColdUnitForm { Unit = u.Unit, Celsius = Say(u.Celsius), HasFan = u.HasFan })],
        Families = [.. FillingFamily.All.Select(f => cold.Families.FirstOrDefault(a => a.Family == f.Id) is { } a
            ? new FamilyForm { Family = f.Id, Kept = $"{a.Kept}", Note = a.Note }
            : new FamilyForm { Family = f.Id })],
    };

    /// <summary>The unit's row, made if it has none.</summary>
    public ColdUnitForm UnitOf(string unit, ShelfKind kind)
    {
        if (Units.FirstOrDefault(u => u.Unit == unit) is { } known)
        {
            return known;
        }

        Units.Add(new ColdUnitForm { Unit = unit, Celsius = Say(ColdChain.UsualOf(kind)) });
        return Units[^1];
    }

    /// <summary>As the shop has it; what can't be read is added to the problems. Factors and readings stay as they are.</summary>
    /// <param name="units">Names of the units that the shop has.</param>
    internal ColdChain Read(ColdChain? before, string country, IReadOnlyCollection<string> units, ICollection<Problem> problems)
    {
        var rows = Units.Where(u => units.Contains(u.Unit))
            .Select(u => new ColdUnit(u.Unit, Figure(FieldOf(u.Unit), u.Celsius, problems), u.HasFan) { Times = before?.Units.FirstOrDefault(b => b.Unit == u.Unit)?.Times ?? 1 }).ToList();
        return new ColdChain(
            Figure("kitchen-celsius", Kitchen, problems), Humidity.Trim().Length == 0 ? null : Figure("humidity", Humidity, problems), rows,
            Rules.Length == 0 ? ColdChain.RulesIn(country) : Rules,
            [.. Families.Where(f => f.Kept.Length > 0).Select(f => new FamilyAnswer(f.Family, Enum.Parse<FamilyKept>(f.Kept), f.Note.Trim()))])
        {
            CakeTimes = before?.CakeTimes ?? 1,
            Readings = before?.Readings ?? [],
        };
    }

    /// <summary>Id of the field of a unit: "unit-fridge-1".</summary>
    public static string FieldOf(string unit) => $"unit-{string.Concat(unit.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : '-'))}";

    private static double Figure(string field, string text, ICollection<Problem> problems)
    {
        if (double.TryParse(text.Trim().Replace(',', '.').Replace('−', '-'), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var n) && double.IsFinite(n))
        {
            return n;
        }

        problems.Add(new Problem(field, Problem.Shown(text), "This figure can't be read.", "Read the thermometer and write degrees Celsius, such as 4 or -18."));
        return 0;
    }

    private static string Say(double n) => n.ToString("0.#", CultureInfo.InvariantCulture);
}

/// <summary>A fridge, freezer or cool room as typed.</summary>
public sealed class ColdUnitForm
{
    public string Unit { get; set; } = "";

    public string Celsius { get; set; } = "";

    public bool HasFan { get; set; }
}

/// <summary>One family of fillings and icings as answered.</summary>
public sealed class FamilyForm
{
    public string Family { get; set; } = "";

    /// <summary>"Fridge", "Room", "Tested"; "" for not answered yet.</summary>
    public string Kept { get; set; } = "";

    /// <summary>Who tested it, when and with what result.</summary>
    public string Note { get; set; } = "";
}
