namespace Bakehouse.Domain.Tests.Cakes;

using Bakehouse.Domain.Cakes;
using CsCheck;

public sealed class ContrastTests
{
    /// <summary>#767676 is the palest grey that passes on white with 4.54 to 1, #777777 fails with 4.48 (WCAG 2.2 formula, computed).</summary>
    [Theory]
    [InlineData("#767676", 4.54)]
    [InlineData("#777777", 4.48)]
    public void Greys_on_white(string grey, double ratio) => Assert.Equal(ratio, Contrast.Ratio(grey, "#FFFFFF"), 0.005);

    [Theory]
    [InlineData(WordsOn.Ink, "#F7F0E1")]
    [InlineData(WordsOn.White, "#2B3F63")]
    [InlineData(WordsOn.Plate, "#7A8F6A")] // neither: ink 3.9, white 3.5
    [InlineData(WordsOn.Plate, "#F7F0E1", "#2B3F63")] // each is fine alone, no one ink on both
    public void Words_are_in_ink_in_white_or_on_a_plate(WordsOn expected, params string[] swatches) =>
        Assert.Equal(expected, Contrast.On(swatches));

    [Fact]
    public void Words_can_be_read_on_any_coat() =>
        Gen.Int[0, 0xFFFFFF].Sample(rgb =>
        {
            var swatch = $"#{rgb:X6}";
            var ratio = Contrast.On([swatch]) switch
            {
                WordsOn.Ink => Contrast.Ratio(Contrast.Ink, swatch),
                WordsOn.White => Contrast.Ratio(Contrast.White, swatch),
                _ => Contrast.Ratio(Contrast.Ink, Contrast.White),
            };
            Assert.True(ratio >= 4.5, swatch);
        });
}
