namespace Bakehouse.Domain.Tests.Cakes.Checks;

/// <summary>Every row of build-checks.csv is worked out by the product and compared, or named with the reason why it is not.</summary>
public sealed class BuildCheckTests
{
    /// <summary>Rows that are not compared.</summary>
    private static readonly Dictionary<string, string> LeftOut = new (string Ids, string Why)[]
    {
        ("D-CAKE-N", "a firmness in newtons says nothing as long as the area of the probe is not told with it"),
        ("P-HT-20x20-P2", "the rectangles of this strip are not at hand"),
        ("P-HT-20x20-P3", "the rectangles of this strip are not at hand"),
        ("P-HT-40x15-P2", "the rectangles of this strip are not at hand"),
        ("P-BW1-20-*f", "without turning: our layouts may always turn a board, so this is not their question"),
        ("P-BW1-20-sum", "without turning: our layouts may always turn a board, so this is not their question"),
        ("P-BW1-20-6r", "the rectangles of this instance are not at hand"),
        ("P-BW1-20-7r", "the rectangles of this instance are not at hand"),
        ("P-BW1-20-10r", "the rectangles of this instance are not at hand"),
    }.SelectMany(left => CheckRow.All.Where(r => Covers(left.Ids, r.Id)).Select(r => (r.Id, left.Why))).ToDictionary(l => l.Id, l => l.Why, StringComparer.Ordinal);

    private static readonly IReadOnlyList<(string Id, Action<CheckRow> Check)> Checks =
        [.. ShapeRows.All, .. PortionRows.All, .. CoatRows.All, .. MeasureRows.All, .. StructureRows.All, .. MoveRows.All, .. BoardRows.All, .. PackingRows.All, .. MoneyRows.All, .. Golden.All];

    public static IEnumerable<TheoryDataRow<string>> Rows => CheckRow.All.Where(r => !LeftOut.ContainsKey(r.Id)).Select(r => new TheoryDataRow<string>(r.Id) { TestDisplayName = r.ToString() });

    public static IEnumerable<TheoryDataRow<string>> NotCompared => LeftOut.Select(l => new TheoryDataRow<string>(l.Key) { TestDisplayName = $"{l.Key} is left out: {l.Value}" });

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_published_value_comes_out(string id) => Assert.Single(Checks, c => Covers(c.Id, id)).Check(CheckRow.Of(id));

    [Theory]
    [MemberData(nameof(NotCompared))]
    public void What_is_left_out_is_a_row_with_a_reason(string id)
    {
        Assert.Contains(CheckRow.All, r => r.Id == id);
        Assert.True(LeftOut[id].Length > 20);
        Assert.DoesNotContain(Checks, c => c.Id == id);
    }

    [Fact]
    public void Every_row_is_compared_or_named_and_every_check_has_rows()
    {
        var ids = CheckRow.All.Select(r => r.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        var unchecked_ = ids.Where(id => !LeftOut.ContainsKey(id) && Checks.Count(c => Covers(c.Id, id)) != 1).ToList();
        Assert.True(unchecked_.Count == 0, $"neither compared once nor named: {string.Join(", ", unchecked_)}");
        var idle = Checks.Where(c => !ids.Exists(id => Covers(c.Id, id))).Select(c => c.Id).ToList();
        Assert.True(idle.Count == 0, $"checks without a row: {string.Join(", ", idle)}");
    }

    // "S-R*-ring" stands for all ids that begin and end like it.
    private static bool Covers(string pattern, string id) => pattern.IndexOf('*', StringComparison.Ordinal) is var star && star < 0
        ? pattern == id
        : id.Length >= pattern.Length - 1 && id.StartsWith(pattern[..star], StringComparison.Ordinal) && id.EndsWith(pattern[(star + 1)..], StringComparison.Ordinal);
}
