namespace Bakehouse.Domain.Tests.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Heat.Foods;

/// <summary>Materials out of what foods are made of, against measured values; what is missing is named.</summary>
public sealed class FoodsTests
{
    private static readonly Composition Butter = new(0.159, 0.0085, 0.811, 0.0006, 0, 0.0209, Melts: 1);

    [Fact]
    public void Butter_conducts_as_measured_when_its_parts_lie_behind_each_other() =>
        Assert.Equal(0.197, ChoiOkos.Perpendicular(Butter, 20), 0.0005);

    [Fact]
    public void Butter_takes_the_heat_of_its_melting_fat_once()
    {
        var melted = (Mixing.Enthalpy(Butter, 40) - Mixing.Enthalpy(Butter, -40)) - (Mixing.Enthalpy(Butter with { Melts = 0 }, 40) - Mixing.Enthalpy(Butter with { Melts = 0 }, -40));
        // 81.1 % fat, 80.8 J/g (Milchwissenschaft 53(2), 1998).
        Assert.Equal(65_500, melted, 100.0);
        // Specific heat without melting, 2.30 kJ/(kg·K) at 4.4 °C (Geankoplis, appendix A.4).
        Assert.Equal(2300, ChoiOkos.SpecificHeat(Butter, 4.4), 25.0);
    }

    [Theory]
    [InlineData("vanilla")]
    [InlineData("chocolate")]
    [InlineData("carrot")]
    public void Crumb_spreads_heat_as_baked_cakes_do(string sponge)
    {
        var crumb = CakeMaterials.Crumb(sponge, CakeFigures.Usual);
        // ASHRAE, table of diffusivities: about 1.0 to 1.3e-7 m2/s for baked cakes (from memory); melting fat takes it lower.
        var diffusivity = crumb.ConductivityAt(40) * 20 / (crumb.EnthalpyAt(60) - crumb.EnthalpyAt(40)) / crumb.Density;
        Assert.InRange(diffusivity, 0.75e-7, 1.3e-7);
        Assert.Contains("Sweat", crumb.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Enthalpy_rises_everywhere_and_meets_itself_where_ice_begins()
    {
        string[] fillings = ["buttercream", "raspberry-jam", "lemon-curd", "ganache", "cream-cheese"];
        HeatMaterial[] all = [.. fillings.Select(f => CakeMaterials.Filling(f, CakeFigures.Usual)), CakeMaterials.Coat(true, CakeFigures.Usual), CakeMaterials.Coat(false, CakeFigures.Usual)];
        Assert.All(all, m => Assert.All(m.Points.Zip(m.Points.Skip(1)), p => Assert.True(p.Second.Enthalpy > p.First.Enthalpy, m.Name)));
        var curd = new Composition(0.45, 0.04, 0.12, 0.38, 0, 0.01, FreezesAt: -8);
        Assert.Equal(Mixing.Enthalpy(curd, -8 - 1e-9), Mixing.Enthalpy(curd, -8 + 1e-9), 0.1);
    }

    [Fact]
    public void What_is_missing_in_a_composition_is_named_with_the_rest_of_what_is_wrong()
    {
        var wrong = new Composition(double.NaN, 0.05, 1.2, 0.1, Melts: 2, FreezesAt: 4);
        Assert.Equal(
            ["cream, Water share", "cream, Fat share", "cream, melting fat", "cream, freezing point", "cream"], wrong.Problems("cream").Select(p => p.Where));
        Assert.Equal("Look for what is missing: water, most often.", Assert.Single(new Composition(0, 0.05, 0.3, 0.5).Problems("cream")).Try);
        Assert.Throws<ArgumentException>(() => Mixing.Of("cream", wrong, 1000, "nobody"));
    }
}
