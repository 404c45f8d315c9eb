namespace Bakehouse.Web.Tests;

using System.Text.RegularExpressions;
using Bakehouse.Domain.Cakes;

/// <summary>Every pair of tokens that meets on a screen has the contrast of WCAG 2.2 (W3C): 4.5 for words, 3 for parts.</summary>
public sealed partial class LookTests
{
    private static readonly string Css = File.ReadAllText(Path.Combine(Root(), "wwwroot-assets", "Bakehouse.Assets", "wwwroot", "css", "app.css"));

    [Theory]
    [InlineData(":root")]
    [InlineData(".night")]
    public void Words_can_be_read_on_every_ground(string scheme)
    {
        var colours = Tokens(scheme);
        string[] grounds = ["bench", "enamel", "wash"];
        foreach (var (words, ground) in new[] { "ink", "ink2", "ink2-kitchen", "yes", "no", "currant", "tight-ink" }
            .SelectMany(w => grounds.Select(g => (w, g)))
            .Concat([("ink", "yes-wash"), ("ink", "tight-wash"), ("ink", "no-wash"), ("ink", "currant-wash"), ("on-fill", "ink"), ("on-fill", "yes"), ("on-fill", "no")]))
        {
            Assert.True(Contrast.Ratio(colours[words], colours[ground]) >= 4.5, $"{words} on {ground} by {scheme}");
        }

        foreach (var ground in grounds)
        {
            Assert.True(Contrast.Ratio(colours["edge"], colours[ground]) >= 3, $"edge on {ground} by {scheme}");
        }
    }

    [Fact]
    public void Fills_carry_readable_words()
    {
        var c = Tokens(":root");
        Assert.True(Contrast.Ratio(c["bar-text"], c["bar"]) >= 4.5);
        Assert.True(Contrast.Ratio(c["danger-mark"], c["danger"]) >= 7);
        Assert.True(Contrast.Ratio(c["danger-text"], c["danger"]) >= 7);
        Assert.True(Contrast.Ratio(c["ink"], c["tight"]) >= 4.5);
    }

    /// <summary>Black on white is 21 to 1 and equal colours are 1 to 1: the ends of the scale in WCAG 2.2.</summary>
    [Fact]
    public void The_formula_has_the_ends_of_the_standard()
    {
        Assert.Equal(21, Contrast.Ratio("#000000", "#FFFFFF"), 6);
        Assert.Equal(1, Contrast.Ratio("#15304B", "#15304B"), 6);
    }

    private static Dictionary<string, string> Tokens(string scheme)
    {
        var at = Css.IndexOf($"\n{scheme} {{", StringComparison.Ordinal);
        return Token().Matches(Css[at..Css.IndexOf("\n}", at, StringComparison.Ordinal)])
            .ToDictionary(m => m.Groups["name"].Value, m => m.Groups["colour"].Value, StringComparer.Ordinal);
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Bakehouse.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("No Bakehouse.sln above the tests.");
        }

        return folder.FullName;
    }

    [GeneratedRegex("--(?<name>[a-z0-9-]+): (?<colour>#[0-9A-F]{6});", RegexOptions.None, 1000)]
    private static partial Regex Token();
}
