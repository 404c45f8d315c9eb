using Bakehouse.Benchmarks.Published;
using Bakehouse.Planner.Network;

namespace Bakehouse.Planner.Tests.Network;

/// <summary>Files in the two published formats; the small ones here are ours.</summary>
public class PublishedFileTests
{
    private const string Single =
        """
        jobs (incl. supersource/sink ):  4
          - renewable                 :  2   R
        PRECEDENCE RELATIONS:
        jobnr.    #modes  #successors   successors
           1        1          2           2   3
           2        1          1           4
           3        1          1           4
           4        1          0
        ****
        REQUESTS/DURATIONS:
        jobnr. mode duration  R 1  R 2
        ----
          1      1     0       0    0
          2      1     3       2    0
          3      1     4       1    1
          4      1     0       0    0
        ****
        RESOURCEAVAILABILITIES:
          R 1  R 2
           2    1
        """;

    private const string Gaps = "2 1 0 0\n0 1 2 1 2 [0] [0]\n1 1 1 2 [3]\n2 1 2 1 3 [-5] [2]\n3 1 0\n0 1 0 0\n1 1 3 1\n2 1 2 1\n3 1 0 0\n1\n";

    /// <summary>Worked by hand: 2 takes both units of R1 for 3, 3 one for 4: one after the other, 7.</summary>
    [Fact]
    public void A_single_mode_file_is_read()
    {
        var (net, wrong) = SingleModeFile.Read(Single);
        Assert.Empty(wrong);
        Assert.Equal([0, 3, 4, 0], net!.Activities.Select(a => a.Modes[0].Length));
        Assert.Equal([2, 1], net.Resources.Select(r => r.Capacity));
        Assert.Equal([(0, 1), (0, 2), (1, 3), (2, 3)], net.Lags.Select(l => (l.From, l.To)));
        Assert.Equal(7, Scheduler.Run(net, 1, 100, cancel: TestContext.Current.CancellationToken).End);
    }

    [Fact]
    public void A_file_of_least_and_most_gaps_is_read()
    {
        var (net, wrong) = GapsFile.Read(Gaps);
        Assert.Empty(wrong);
        Assert.Contains(new Lag(2, 1, -5), net!.Lags);
        Assert.Contains(new Lag(1, 2, 3), net.Lags);
        Assert.Equal([0, 3, 2, 0], net.Activities.Select(a => a.Modes[0].Length));
    }

    [Fact]
    public void Everything_wrong_in_a_single_mode_file_is_told_at_once()
    {
        var (net, wrong) = SingleModeFile.Read(Single.Replace("1        1          2           2   3", "1        1          2           2   9", StringComparison.Ordinal)
            .Replace("2      1     3 ", "2      1     x ", StringComparison.Ordinal).Replace("   2    1\"", "", StringComparison.Ordinal)
            .Replace("- renewable                 :  2", "- renewable                 :  3", StringComparison.Ordinal));
        Assert.Null(net);
        Assert.Contains(wrong, w => w.Contains("follower 9", StringComparison.Ordinal));
        Assert.Contains(wrong, w => w.Contains("\"x\"", StringComparison.Ordinal));
        Assert.Contains(wrong, w => w.Contains("the units of each resource", StringComparison.Ordinal));
    }

    [Fact]
    public void Everything_wrong_in_a_file_of_gaps_is_told_at_once()
    {
        var (net, wrong) = GapsFile.Read(Gaps.Replace("1 1 1 2 [3]", "1 1 1 7 [3]", StringComparison.Ordinal).Replace("2 1 2 1 3 [-5] [2]", "2 1 2 1 3 [-5]", StringComparison.Ordinal).Replace("1 1 3 1\n", "1 1 -3 1\n", StringComparison.Ordinal));
        Assert.Null(net);
        Assert.Equal(3, wrong.Count);
        Assert.Contains(wrong, w => w.StartsWith("line 3:", StringComparison.Ordinal) && w.Contains("follower 7", StringComparison.Ordinal));
        Assert.Contains(wrong, w => w.StartsWith("line 4:", StringComparison.Ordinal));
        Assert.Contains(wrong, w => w.StartsWith("line 7:", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("")]
    [InlineData("nothing of it")]
    [InlineData("3 -1")]
    public void A_file_of_something_else_is_refused(string text)
    {
        Assert.NotEmpty(SingleModeFile.Read(text).Wrong);
        Assert.NotEmpty(GapsFile.Read(text).Wrong);
    }

    [Fact]
    public void A_net_that_does_not_fit_together_names_everything_that_is_wrong()
    {
        var refused = Assert.Throws<ArgumentException>(() => new Net(
            [new Activity("a", [new Mode(-1, [1])]), new Activity("b", [], -2)], [new Lag(0, 5, 1)], [new Renewable("r", 2, [1, 3])], 4));
        foreach (var part in new[] { "activity a", "Activity b has no mode", "b may start at -2", "from 0 to 5", "calendar of resource r" })
        {
            Assert.Contains(part, refused.Message, StringComparison.Ordinal);
        }
    }
}
