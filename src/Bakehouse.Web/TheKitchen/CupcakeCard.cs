namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Web.Shell;

/// <summary>What a step takes of a batch of cupcakes, as name and figure.</summary>
internal static class CupcakeCard
{
    /// <param name="batch">The whole batch.</param>
    /// <param name="mine">So many as the step is about.</param>
    public static IEnumerable<(string Name, string Figure)> Of(string operation, TierBuild batch, Cupcakes mine, CakeFigures figures, Words words) => operation switch
    {
        "mix" or "bake" => [($"{batch.Pans.Count} tins of {Cupcakes.InTin}, {mine}", $"{Math.Round(figures.CupcakeBatter.Millilitres)} mL batter a case")],
        "turnout" => [($"{mine}", $"at least {Words.Minutes(Method.CupcakesCool)} on the rack")],
        "pipe" => [.. batch.Colours.Select(c => ($"{c.Name}, {Math.Round(figures.CupcakeSwirl.Millilitres)} mL each", words.VolumeOf(c.Needed * ((double)mine.Count / batch.Dessert))))],
        _ => [("Boxes", CupcakeBox.Said(CupcakeBox.For(mine.Count))), ("Each with", "insert and label")],
    };
}
