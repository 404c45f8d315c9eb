namespace Bakehouse.Domain.Tests.Allergens;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Recipes;
using Bakehouse.Testing;
using CsCheck;

/// <summary>
/// The allergens of a whole are the union of those of its parts: on random graphs of recipes with changes, against a walk that is
/// written apart (numbers and a stack, no cookbook). Our own law.
/// </summary>
public sealed class ContentsLawTests
{
    /// <summary>What is drawn: for each ingredient and allergen a status, for each recipe what goes in.</summary>
    private sealed record Graph(AllergenStatus[][] Facts, List<(bool IsRecipe, int Of)>[] Lines)
    {
        public override string ToString() => $"{Lines.Length} recipes of {Facts.Length} ingredients: {string.Join("; ", Lines.Select(l => string.Join(",", l)))}";
    }

    private static readonly string[] Ids = [.. KnownAllergens.All.Select(a => a.Id).Where(a => a != KnownAllergens.Sulphites)];

    private static readonly int[] MustKnow = [.. KnownAllergens.Eu.Entries.SelectMany(e => e.Covers).Where(a => a != KnownAllergens.Sulphites).Select(a => Array.IndexOf(Ids, a))];

    private static readonly Gen<Graph> Graphs =
        from ingredients in Gen.Int[1, 8]
        from recipes in Gen.Int[1, 9]
        from facts in Fact.Array[Ids.Length].Array[ingredients]
        from picks in Gen.Select(Gen.Bool, Gen.Int[0, 1_000_000]).Array[1, 5].Array[recipes]
        select new Graph(facts, [.. picks.Select((own, r) => own.Select(p => p.Item1 && r > 0 ? (true, p.Item2 % r) : (false, p.Item2 % ingredients)).Distinct().ToList())]);

    private static Gen<AllergenStatus> Fact => Gen.Int[0, 9].Select(n => n switch { 0 => AllergenStatus.Has, 1 => AllergenStatus.May, 2 => AllergenStatus.Unknown, _ => AllergenStatus.HasNot });

    [Fact]
    public void The_whole_has_what_its_parts_have_and_nothing_is_missed() =>
        Gen.Select(Graphs, Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 1_000_000], Fact).Array[0, 4], Gen.Int[0, 4]).Each(1000, drawn =>
        {
            var (graph, changes, nothing) = drawn;
            Agree(graph);
            foreach (var (ingredient, allergen, status) in changes)
            {
                graph.Facts[ingredient % graph.Facts.Length][allergen % Ids.Length] = status;
                graph.Lines[ingredient % graph.Lines.Length].Add((false, allergen % graph.Facts.Length));
                Agree(graph);
            }
        });

    private static void Agree(Graph graph)
    {
        var book = Cookbook(graph);
        for (var recipe = 0; recipe < graph.Lines.Length; recipe++)
        {
            List<RecipePart> parts = [new(book.Recipe($"r{recipe}")!, Mass.FromGrams(100))];
            var contents = Contents.Of(parts, book, AllergenRules.Usual);
            var walked = Walk(graph, recipe);
            NoPartOfALabel(Label.Of(parts, [], book, AllergenRules.Usual), graph, recipe);
            for (var a = 0; a < Ids.Length; a++)
            {
                Assert.Equal(walked[a], contents.Status(Ids[a]));
            }
        }
    }

    /// <summary>A label is whole, or it is not there and every pack that it waits for is named.</summary>
    private static void NoPartOfALabel(Label label, Graph graph, int recipe)
    {
        var unread = Below(graph, recipe).Where(i => MustKnow.Any(a => graph.Facts[i][a] == AllergenStatus.Unknown)).Select(i => $"i{i}").ToHashSet();
        Assert.Equal(unread, label.Waits.Select(w => w.Id).ToHashSet());
        Assert.Equal(unread.Count > 0, label.Runs.Count == 0);
        Assert.Equal(unread.Count > 0, label.Text.Length == 0);
    }

    private static IEnumerable<int> Below(Graph graph, int recipe) => graph.Lines[recipe].SelectMany(l => l.IsRecipe ? Below(graph, l.Of) : [l.Of]).Distinct();

    /// <summary>The walk apart: the worst that is met anywhere below.</summary>
    private static AllergenStatus[] Walk(Graph graph, int recipe)
    {
        var worst = new AllergenStatus[Ids.Length];
        var open = new Stack<int>([recipe]);
        while (open.TryPop(out var next))
        {
            foreach (var (isRecipe, of) in graph.Lines[next])
            {
                if (isRecipe)
                {
                    open.Push(of);
                    continue;
                }

                for (var a = 0; a < Ids.Length; a++)
                {
                    worst[a] = graph.Facts[of][a] > worst[a] ? graph.Facts[of][a] : worst[a];
                }
            }
        }

        return worst;
    }

    private static Cookbook Cookbook(Graph graph) => new(
        1,
        [.. graph.Facts.Select((f, i) => new Ingredient($"i{i}", 1, $"I{i}", $"i{i}", IngredientKind.Other, [], "", [new Pack("a", Facts(f))]))],
        [.. graph.Lines.Select((lines, r) => new Recipe($"r{r}", 1, $"R{r}", RecipeKind.Part, [.. lines.Select(l => new RecipeLine($"{(l.IsRecipe ? 'r' : 'i')}{l.Of}", l.IsRecipe, 10))], EggMethod.None, null, []))]);

    private static AllergenFacts Facts(AllergenStatus[] status)
    {
        string[] With(AllergenStatus wanted) => [.. Ids.Where((_, a) => status[a] == wanted)];
        return new AllergenFacts(With(AllergenStatus.Has), With(AllergenStatus.May), With(AllergenStatus.HasNot), 0);
    }
}
