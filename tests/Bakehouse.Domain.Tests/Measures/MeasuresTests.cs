namespace Bakehouse.Domain.Tests.Measures;

using Bakehouse.Domain.Measures;
using CsCheck;

/// <summary>The factors stand against UnitsNet, a library of units that Bakehouse itself does not use.</summary>
public sealed class MeasuresTests
{
    [Theory]
    [InlineData(8)]
    [InlineData(0.25)]
    [InlineData(14)]
    public void Inches_agree_with_UnitsNet(double inches)
    {
        var ours = Length.FromInches((decimal)inches);
        Assert.Equal(UnitsNet.Length.FromInches(inches).Millimeters, (double)ours.Millimetres, 9);
        Assert.Equal(UnitsNet.Length.FromInches(inches).Centimeters, (double)ours.Centimetres, 9);
    }

    [Fact]
    public void Volumes_agree_with_UnitsNet()
    {
        Assert.Equal(UnitsNet.Volume.FromCubicInches(7.5).Milliliters, Volume.FromCubicInches(7.5).Millilitres, 9);
        Assert.Equal(UnitsNet.Volume.FromLiters(2.4).CubicInches, Volume.FromLitres(2.4).CubicInches, 9);
        Assert.Equal(UnitsNet.Volume.FromUsCustomaryCups(1).Milliliters, KitchenMeasures.UsCup.Millilitres, 9);
        Assert.Equal(UnitsNet.Volume.FromUsTablespoons(1).Milliliters, KitchenMeasures.UsTablespoon.Millilitres, 9);
        Assert.Equal(UnitsNet.Volume.FromUsTeaspoons(1).Milliliters, KitchenMeasures.UsTeaspoon.Millilitres, 9);
        Assert.Equal(UnitsNet.Volume.FromMetricCups(1).Milliliters, KitchenMeasures.MetricCup.Millilitres, 9);
        Assert.Equal(UnitsNet.Volume.FromUsLegalCups(1).Milliliters, KitchenMeasures.LabelCup.Millilitres, 9);
    }

    [Fact]
    public void Ounces_agree_with_UnitsNet()
    {
        Assert.Equal(UnitsNet.Mass.FromOunces(16).Grams, (double)Mass.FromOunces(16).Grams, 9);
        Assert.Equal(UnitsNet.Mass.FromGrams(100).Ounces, (double)Mass.FromGrams(100).Ounces, 9);
        Assert.Equal(UnitsNet.Volume.FromImperialOunces(1).Milliliters, KitchenMeasures.ImperialFluidOunce.Millilitres, 9);
    }

    [Fact]
    public void Areas_agree_with_UnitsNet()
    {
        var inches = UnitsNet.Area.FromSquareInches(50.2654824574);
        Assert.Equal(inches.SquareInches, Area.FromSquareMillimetres(inches.SquareMillimeters).SquareInches, 9);
        Assert.Equal(inches.SquareCentimeters, Area.FromSquareMillimetres(inches.SquareMillimeters).SquareCentimetres, 9);
    }

    [Theory]
    [InlineData(177)]
    [InlineData(-18)]
    [InlineData(4)]
    public void Temperatures_agree_with_UnitsNet(double celsius)
    {
        Assert.Equal(UnitsNet.Temperature.FromDegreesCelsius(celsius).DegreesFahrenheit, Temperature.FromCelsius(celsius).Fahrenheit, 9);
        Assert.Equal(celsius, Temperature.FromFahrenheit(Temperature.FromCelsius(celsius).Fahrenheit).Celsius, 9);
    }

    [Fact]
    public void An_inch_and_its_millimetres_are_the_same_length() =>
        Gen.Int[1, 400].Sample(quarters =>
        {
            var inches = Length.FromInches(quarters / 4m);
            Assert.Equal(Length.FromMillimetres(quarters * 6.35m), inches);
            Assert.Equal(Length.FromMillimetres(quarters * 6.35m).GetHashCode(), inches.GetHashCode());
        });

    [Fact]
    public void A_pan_stacked_on_a_pan_holds_both() =>
        Gen.Select(Gen.Int[1, 400], Gen.Int[1, 200], Gen.Int[1, 200]).Sample((across, low, high) =>
        {
            var foot = Area.FromSquareMillimetres(across * 10.0);
            var together = foot * Length.FromMillimetres(low + high);
            var apart = (foot * Length.FromMillimetres(low)) + (foot * Length.FromMillimetres(high));
            Assert.Equal(together.Millilitres, apart.Millilitres, 9);
        });

    [Fact]
    public void What_no_kitchen_has_is_refused_with_its_value()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMillilitres(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromMillilitres(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => Area.FromSquareMillimetres(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => Density.FromGramsPerMillilitre(0));
        Assert.Equal(-300.0, Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(-300)).ActualValue);
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromGrams(1) - Mass.FromGrams(2));
    }

    /// <summary>Ready-to-eat frosting, 33 g in 2 tablespoons: 1.1159 g/mL (USDA SR28 weight file, NDB 19230).</summary>
    [Fact]
    public void A_density_gives_the_published_weight_of_two_tablespoons() =>
        Assert.Equal(33, (double)(Density.FromGramsPerMillilitre(1.1159) * (KitchenMeasures.UsTablespoon * 2)).Grams, 2);
}
