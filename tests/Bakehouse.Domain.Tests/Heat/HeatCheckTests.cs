namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Tests.FoodClocks;

/// <summary>Every row of heat-checks.csv is worked out and compared in its printed tolerance, or named with the reason why it is not.</summary>
public sealed class HeatCheckTests
{
    private const string Fitted = "a polynomial fitted to the eigenvalues; the eigenvalues themselves are compared";
    private const string OtherFreezing = "another approximate formula of freezing: the product freezes by enthalpy on the grid, and Plank's formula judges it";
    private const string Constant = "a constant of Plank's formula, which is compared as a whole with a worked example (FZ-1, FZ-2)";
    private const string NoActivity = "no water activity is worked out: a laboratory measures it, its tables are compared (FS-T*)";
    private const string NoGrowth = "growth models only explain; no answer of the product rests on one";
    private const string Allergens = "lists of allergens are compared in the tests of allergens";

    private static readonly Dictionary<string, string> LeftOut = new (string Ids, string Why)[]
    {
        ("FJ-slab-u-*", Fitted), ("FJ-cyl-v-*", Fitted),
        ("FP-cp-water-ASHRAE-20", "a printing with another constant, 1.3 % under the steam tables: the product uses 4.1762"),
        ("FZ-3a", OtherFreezing), ("FZ-4", OtherFreezing), ("FZ-5", OtherFreezing), ("FZ-6", OtherFreezing), ("FZ-8", OtherFreezing), ("FZ-12", OtherFreezing),
        ("FZ-P-*", Constant), ("FZ-R-*", Constant),
        ("FS-35", "a city's own table: no rules of single cities are kept"),
        ("AL-*", Allergens), ("AW-*", NoActivity), ("GM-*", NoGrowth),
    }.SelectMany(left => HeatRow.All.Where(r => Covers(left.Ids, r.Id)).Select(r => (r.Id, left.Why))).ToDictionary(l => l.Id, l => l.Why, StringComparer.Ordinal);

    private static readonly IReadOnlyDictionary<string, Func<double>> Found =
        SeriesRows.All.Concat(PropertyRows.All).Concat(ClockRows.Numbers).ToDictionary(r => r.Id, r => r.Found, StringComparer.Ordinal);

    private static readonly IReadOnlyDictionary<string, Func<bool>> Said = ClockRows.Words.ToDictionary(r => r.Id, r => r.Holds, StringComparer.Ordinal);

    public static IEnumerable<TheoryDataRow<string>> Printed => Rows(r => Found.ContainsKey(r.Id) && r.Id.EndsWith("-P", StringComparison.Ordinal));

    public static IEnumerable<TheoryDataRow<string>> Exact => Rows(r => Found.ContainsKey(r.Id) && !r.Id.EndsWith("-P", StringComparison.Ordinal));

    public static IEnumerable<TheoryDataRow<string>> Words => Rows(r => Said.ContainsKey(r.Id));

    [Theory]
    [MemberData(nameof(Exact))]
    public void A_value_comes_out(string id) => HeatRow.Of(id).Holds(Found[id]());

    [Theory]
    [MemberData(nameof(Printed))]
    public void A_printed_value_comes_out_in_the_tolerance_of_its_chart(string id) => HeatRow.Of(id).Holds(Found[id]());

    [Theory]
    [MemberData(nameof(Words))]
    public void What_a_rule_says_comes_out(string id) => Assert.True(Said[id](), HeatRow.Of(id).ToString());

    [Fact]
    public void Every_row_is_compared_once_or_named_and_every_check_has_its_row()
    {
        var ids = HeatRow.All.Select(r => r.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        var wrong = ids.Where(id => (Found.ContainsKey(id) ? 1 : 0) + (Said.ContainsKey(id) ? 1 : 0) + (LeftOut.ContainsKey(id) ? 1 : 0) != 1).ToList();
        Assert.True(wrong.Count == 0, $"neither compared once nor named: {string.Join(", ", wrong)}");
        Assert.Empty(Found.Keys.Concat(Said.Keys).Except(ids));
        Assert.All(LeftOut.Values, why => Assert.True(why.Length > 20));
    }

    private static bool Covers(string pattern, string id) => pattern.EndsWith('*') ? id.StartsWith(pattern[..^1], StringComparison.Ordinal) : pattern == id;

    private static IEnumerable<TheoryDataRow<string>> Rows(Func<HeatRow, bool> which) =>
        HeatRow.All.Where(which).Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.ToString() });
}
