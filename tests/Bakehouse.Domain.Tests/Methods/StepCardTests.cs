namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Methods;

public sealed class StepCardTests
{
    [Fact]
    public void Every_operation_has_one_card_that_says_right_why_and_if_not()
    {
        Assert.Equal(Method.Operations.Select(o => o.Id), StepCard.All.Select(c => c.Operation));
        Assert.All(StepCard.All, c => Assert.All([c.Right, c.Why, c.IfNot], text => Assert.InRange(text.Length, 15, 220)));
    }

    /// <summary>Hazards by the trade's list: hot sugar, ovens, raw egg, flour dust, knives, lifting, hidden parts (common practice, no source).</summary>
    [Theory]
    [InlineData("mix", "Flour dust")]
    [InlineData("mix", "Raw egg")]
    [InlineData("bake", "burn")]
    [InlineData("filling", "Hot syrup")]
    [InlineData("buttercream", "Hot syrup")]
    [InlineData("fill", "knife")]
    [InlineData("stack", "Count dowels")]
    [InlineData("stack", "two people")]
    [InlineData("decorate", "species")]
    [InlineData("box", "allergy line")]
    [InlineData("handover", "dowels")]
    [InlineData("leavefridge", "rules of your place")]
    public void Where_it_can_hurt_the_card_says_so(string operation, string says) =>
        Assert.Contains(StepCard.Of(operation).Cautions, c => c.Contains(says, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void No_card_promises_what_the_shop_must_answer_for() => Assert.All(
        StepCard.All.SelectMany(c => (IEnumerable<string>)[c.Right, c.Why, c.IfNot, c.Warmth, .. c.Cautions]),
        text => Assert.DoesNotMatch(@"\b(safe|free from|harmless)\b", text));
}
