namespace Bakehouse.Domain.Dangers;

using System.Globalization;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>What stops an order because of what is put on top: the barrier rule of fresh flowers, and things that are no food.</summary>
public static class OnTopChecks
{
    /// <summary>Most kinds of flowers, stems of one and pieces of one thing.</summary>
    public const int MostKinds = 20, MostPieces = 500;

    private const string Field = "On top";
    private const string Barrier = "Put it in a pick, tape its stem or lay it on a board disc, stand it beside the cake, or leave it off.";

    /// <summary>Everything wrong with what was written down, at any stage; and once it is taken, whatever nobody has said or may not be.</summary>
    public static IEnumerable<Problem> Problems(Order order) => order.OnTop is not { } top ? []
        : [.. Written(top), .. Stages.IsTaken(order.Stage) ? Stops(top, order.Eaters) : []];

    /// <summary>Why it can't be taken as it is, whatever its stage.</summary>
    public static IReadOnlyList<Problem> Stops(OnTop top, Eaters? eaters) =>
        [.. top.Flowers is { } flowers ? Flowers(flowers) : [], .. top.Toppings.Select(t => Topping.Of(t.Topping)).OfType<Topping>().SelectMany(t => Thing(t, eaters))];

    private static IEnumerable<Problem> Flowers(FreshFlowers flowers)
    {
        if (flowers.Kinds.All(k => k.Species.Trim().Length == 0))
        {
            yield return new Problem(Field, "fresh flowers", "Fresh flowers are asked for, and nobody has said which.", "Ask, and write each by its name. Until then the day can be kept.");
        }

        foreach (var problem in flowers.Kinds.Where(k => k.Species.Trim().Length > 0).Select(Kind).OfType<Problem>())
        {
            yield return problem;
        }

        if (flowers.Florist.Trim().Length == 0 && flowers.Kinds.Any(k => k.Put != FlowerPut.LeftOff))
        {
            yield return new Problem(Field, "fresh flowers", "Nobody has said who brings the flowers.", "Write the florist's or the grower's name.");
        }
    }

    /// <summary>The barrier rule: unknown is no contact, poisonous or doubtful needs a barrier, and what is eaten must have been grown for it.</summary>
    private static Problem? Kind(OrderedFlower kind)
    {
        var (value, flower) = (Problem.Shown(kind.Species.Trim()), Flower.Named(kind.Species));
        if (kind.Put is FlowerPut.LeftOff or FlowerPut.Beside)
        {
            return null;
        }

        if (flower is null)
        {
            return new Problem(Field, value, $"{value} is on none of our lists, so nothing of it touches the cake.", "Stand it beside the cake or leave it off. Or find out its botanical name, and ask your poison centre.");
        }

        if (kind.Put == FlowerPut.NotSaid)
        {
            return new Problem(Field, value, $"{About(flower)} Nobody has said how it goes on.", Barrier);
        }

        return kind.Put != FlowerPut.Touches || (flower.Known == FlowerKnown.GrownToEat && kind.GrownToEat) ? null
            : flower.Known == FlowerKnown.GrownToEat
                ? new Problem(Field, value, $"{flower} is eaten only if it was grown for that; a florist's or a garden centre's flowers may be sprayed.", "Ask who grew it and tick that it is grown to eat. " + Barrier)
                : new Problem(Field, value, About(flower), Barrier);
    }

    /// <summary>"Foxglove (Digitalis) is listed as poisonous."</summary>
    internal static string About(Flower flower) => flower.Known switch
    {
        FlowerKnown.Poisonous => $"{flower} is listed as poisonous.",
        FlowerKnown.Doubtful => $"{flower} is doubtful: lists disagree.",
        _ => $"{flower} is eaten only if it was grown for that.",
    };

    private static IEnumerable<Problem> Thing(Topping topping, Eaters? eaters)
    {
        if (topping.Use == ToppingUse.Never)
        {
            yield return new Problem(Field, topping.Name, $"{topping.Name} never goes on a cake. {topping.Why}", "Take what is sold as food, with its list of ingredients, or leave it off.");
        }

        if (topping.Kinds.Count > 0)
        {
            yield return new Problem(Field, topping.Name, $"{topping.Name} are asked for, and nobody has said which. Each kind is an allergen of its own.", "Ask which, and choose it. Until then the day can be kept.");
        }

        if (topping.Id == "cocktail-sticks" && eaters?.SmallChildren == true)
        {
            yield return new Problem(Field, topping.Name, "Small children eat this cake, and sticks are too thin to be seen (common practice, no source).", "Take flags on thick picks, or leave them off.");
        }
    }

    private static IEnumerable<Problem> Written(OnTop top)
    {
        var flowers = top.Flowers ?? new FreshFlowers([], "");
        foreach (var problem in Said.Text(Field, "The name of the florist", flowers.Florist, OrderChecks.LongestName, mayBeEmpty: true)
            .Concat(flowers.Kinds.SelectMany(k => Said.Text(Field, "The name of a flower", k.Species, Said.LongestName, mayBeEmpty: true))))
        {
            yield return problem;
        }

        if (flowers.Kinds.Count > MostKinds)
        {
            yield return new Problem(Field, Text(flowers.Kinds.Count), $"At most {MostKinds} kinds of flowers can be written down.", "Leave some out.");
        }

        foreach (var count in flowers.Kinds.Select(k => k.Stems).Concat(top.Toppings.Select(t => t.Count)).Where(c => c is < 1 or > MostPieces))
        {
            yield return new Problem(Field, Text(count), $"Stems and pieces are counted from 1 to {MostPieces}.", "Count again.");
        }

        foreach (var id in top.Toppings.Select(t => t.Topping).Where(t => Topping.Of(t) is null))
        {
            yield return new Problem(Field, Problem.Shown(id), "There is no such thing to put on.", $"Choose one of {string.Join(", ", Topping.All.Select(t => t.Name))}.");
        }

        foreach (var twice in top.Toppings.GroupBy(t => t.Topping, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            yield return new Problem(Field, Problem.Shown(twice.Key), $"It is written down {twice.Count()} times.", "Leave one, with the whole count.");
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
