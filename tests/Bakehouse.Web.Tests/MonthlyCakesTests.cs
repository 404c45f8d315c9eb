namespace Bakehouse.Web.Tests;

using Bakehouse.Web.SetUpShop;

/// <summary>The line in which the owner says how many small cakes come in a week.</summary>
public sealed class MonthlyCakesTests
{
    [Theory]
    [InlineData("6", "6")]
    [InlineData("6, May-Jul 10, Dec 12", "6, May-Jul 10, Dec 12")]
    [InlineData("december 12; 6", "6, Dec 12")]
    [InlineData("Jun 3", "Jun 3")]
    [InlineData("", "")]
    [InlineData("0", "")]
    public void It_reads_back_as_it_was_written(string typed, string kept)
    {
        var (byMonth, unread) = MonthlyCakes.Read(typed);
        Assert.Null(unread);
        Assert.Equal(kept, MonthlyCakes.Write(byMonth));
    }

    [Theory]
    [InlineData("many", "many")]
    [InlineData("6, Foo 2", "Foo 2")]
    [InlineData("Jul-May 2", "Jul-May 2")]
    [InlineData("201", "201")]
    [InlineData("-3", "-3")]
    [InlineData("May-Jun-Jul 3", "May-Jun-Jul 3")]
    public void What_can_t_be_read_is_named(string typed, string piece) => Assert.Equal(piece, MonthlyCakes.Read(typed).Unread);
}
