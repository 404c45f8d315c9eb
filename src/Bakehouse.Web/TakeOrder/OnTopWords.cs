namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Dangers;
using Bakehouse.Web.Shell;

/// <summary>What is on a cake and who eats it, in words. Nothing is ever promised.</summary>
public static class OnTopWords
{
    /// <summary>How a flower is put on.</summary>
    public static IReadOnlyList<(FlowerPut Put, string Words)> Puts { get; } =
    [
        (FlowerPut.NotSaid, "How?"), (FlowerPut.Pick, "in picks"), (FlowerPut.Tape, "stems taped"), (FlowerPut.Disc, "on a board disc"),
        (FlowerPut.Beside, "beside the cake"), (FlowerPut.Touches, "touching the cake"), (FlowerPut.LeftOff, "we don't put it on"),
    ];

    /// <summary>"5 foxglove in picks, from Tansy Lane; flags on picks (4)"; "nothing" if there is nothing.</summary>
    public static string Say(OnTop? top)
    {
        var flowers = top?.Flowers is not { } fresh ? []
            : fresh.Kinds.Count == 0 ? ["fresh flowers, not said which"]
            : fresh.Kinds.Select(k => $"{k.Stems} {k.Species} {(k.Put == FlowerPut.NotSaid ? "" : Puts.First(p => p.Put == k.Put).Words)}{(k.GrownToEat ? ", grown to eat" : "")}").Append(fresh.Florist.Length > 0 ? $"from {fresh.Florist}" : "");
        var things = top?.Toppings.Select(t => $"{(Topping.Of(t.Topping)?.Name ?? t.Topping).ToLowerInvariant()}{(t.Count == 1 ? "" : $" ({t.Count})")}") ?? [];
        var all = string.Join(", ", flowers.Concat(things).Where(w => w.Length > 0));
        return all.Length == 0 ? "nothing" : all;
    }

    /// <summary>"children under 5; somebody pregnant, old or ill".</summary>
    public static string Say(Eaters? eaters) => (eaters?.SmallChildren, eaters?.Vulnerable) switch
    {
        (true, true) => "children under 5, and somebody pregnant, old or ill",
        (true, _) => "children under 5",
        (_, true) => "somebody pregnant, old or ill",
        _ => "nobody named",
    };

    /// <summary>What is known of a flower as it is typed, and whether that is a stop.</summary>
    public static (MarkKind Mark, string Words) Known(FlowerForm kind) => Flower.Named(kind.Species) switch
    {
        null => (MarkKind.NotKnown, "On none of our lists: nothing of it touches the cake."),
        { Known: FlowerKnown.Poisonous } flower => (MarkKind.Late, $"{flower}: listed as poisonous. {flower.Source}."),
        { Known: FlowerKnown.Doubtful } flower => (MarkKind.Tight, $"{flower}: lists disagree. {flower.Source}."),
        var flower => (MarkKind.Tight, $"{flower}: eaten only if it was grown for that, never a florist's. {flower.Source}."),
    };
}
