namespace Bakehouse.Domain.Tests.Recipes;

using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Recipes;
using static Bakehouse.Domain.Recipes.RecipeLine;

/// <summary>What can't be kept is named: recipe and row, value, limit and what to try. Our own rules.</summary>
public sealed class CookbookChecksTests
{
    private static readonly HashSet<string> Knows = [.. AllergenRules.Usual.All.Select(a => a.Id)];

    private static Recipe Simple(string id, params RecipeLine[] lines) => new(id, 1, $"The {id}", RecipeKind.Part, lines, EggMethod.None, null, []);

    private static IReadOnlyList<Problem> Problems(params Recipe[] recipes) => CookbookChecks.Problems(Starter.Sample.With([], recipes), Knows);

    private static IReadOnlyList<Problem> Problems(Ingredient ingredient) => CookbookChecks.Problems(Starter.Sample.With([ingredient], []), Knows);

    [Fact]
    public void The_starters_are_right()
    {
        Assert.Empty(CookbookChecks.Problems(Starter.Sample, Knows));
        Assert.Empty(CookbookChecks.Problems(Starter.ToBeRead, Knows));
        Assert.Empty(Starter.Sample.Recipes.SelectMany(r => Raising.Hints(r, Starter.Sample).Concat(Eggs.Hints(r, Starter.Sample))));
    }

    [Fact]
    public void All_that_is_wrong_with_a_recipe_is_told_at_once_with_its_row()
    {
        var told = Problems(
            Simple("a", Grams("sugar", 10), Grams("sugar", -1), Grams("nothing-such", 5), Kitchen("plain-flour", 1, "stick"), Part("no-recipe", 5), Grams("sugar", 0), Grams("sugar", 2_000_000)));
        Assert.Equal(["The a, row 2", "The a, row 3", "The a, row 4", "The a, row 5", "The a, row 6", "The a, row 7"], told.Select(p => p.Where));
        Assert.Equal("-1 g", told[0].Value);
        Assert.Equal("There is no such ingredient.", told[1].Sentence);
        Assert.Contains("Give it in g, cup, or write the weight", told[2].Try, StringComparison.Ordinal);
        Assert.Equal("There is no such recipe.", told[3].Sentence);
        Assert.All(told, p => Assert.NotEmpty(p.Try));
    }

    [Fact]
    public void A_recipe_inside_itself_is_named_with_the_way_round()
    {
        var told = Assert.Single(Problems(Simple("a", Part("b", 1)), Simple("b", Part("c", 1)), Simple("c", Grams("sugar", 1), Part("a", 1))));
        Assert.Equal("The a > The b > The c > The a", told.Value);
        Assert.Equal("This recipe is inside itself.", told.Sentence);
        Assert.Equal("Take The b out of The a, or The a out of The c.", told.Try);
        Assert.Equal("The d > The d", Assert.Single(Problems(Simple("d", Part("d", 1)))).Value);
    }

    [Fact]
    public void Recipes_may_stand_twelve_deep_and_no_deeper()
    {
        Recipe[] Chain(int deep) => [.. Enumerable.Range(0, deep).Select(i => i == deep - 1 ? Simple($"r{i}", Grams("sugar", 1)) : Simple($"r{i}", Part($"r{i + 1}", 1)))];
        Assert.Empty(Problems(Chain(12)));
        Assert.Contains("at most 12", Assert.Single(Problems(Chain(13))).Sentence, StringComparison.Ordinal);
        Assert.Single(Problems(Chain(1500)));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(26)]
    public void A_density_of_nothing_is_refused(int density)
    {
        var told = Assert.Single(Problems(Starter.Sample.Ingredient("honey")! with { GramsPerMillilitre = density }));
        Assert.Equal("Honey", told.Where);
        Assert.Contains("more than 0 and at most 25 g/mL", told.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_megabyte_in_a_field_is_refused_quickly_and_shown_short()
    {
        var megabyte = new string('x', 1_000_000);
        var told = Problems(Simple("a", Grams("sugar", 1)) with { Name = megabyte, Notes = megabyte })
            .Concat(Problems(Starter.Sample.Ingredient("honey")! with { Name = megabyte, Label = megabyte, Weights = [new(megabyte, 1)], Packs = [new Pack(megabyte, null)] })).ToList();
        Assert.Equal(6, told.Count);
        Assert.All(told, p => Assert.True(p.Value.Length <= 80 && p.Where.Length <= 200));
    }

    [Fact]
    public void Signs_that_cant_be_written_and_empty_names_are_refused()
    {
        Assert.Contains(Problems(Simple("a", Grams("sugar", 1)) with { Name = "a\0b" }), p => p.Sentence.Contains("can't be written", StringComparison.Ordinal));
        Assert.Contains(Problems(Simple("a", Grams("sugar", 1)) with { Name = " " }), p => p.Where == "a" && p.Sentence == "Its name is missing.");
        Assert.Contains(Problems(Simple("A b", Grams("sugar", 1))), p => p.Sentence.Contains("small letters", StringComparison.Ordinal));
        Assert.Contains(Problems(Simple("a", Grams("sugar", 1)), Simple("b", Grams("sugar", 1)) with { Name = "the A" }), p => p.Sentence == "That is there 2 times.");
    }

    [Fact]
    public void Packs_and_parts_agree_and_name_known_allergens()
    {
        var chocolate = Starter.Sample.Ingredient("dark-chocolate")!;
        Assert.Contains(Problems(chocolate with { Packs = [new Pack("b", AllergenFacts.Only())] }), p => p.Value == "milk" && p.Try == "Mark the pack, too.");
        Assert.Contains(Problems(chocolate with { Packs = [new Pack("b", new AllergenFacts(["milk", "kiwi"], ["milk"], [], -1))] }), p => p.Value == "kiwi");
        Assert.Contains(Problems(chocolate with { Packs = [new Pack("b", new AllergenFacts(["milk"], ["milk"], [], -1))] }), p => p.Sentence.Contains("two answers", StringComparison.Ordinal));
        Assert.Contains(Problems(chocolate with { Packs = [new Pack("b", new AllergenFacts(["milk"], [], [], -1))] }), p => p.Value == "-1 mg/kg");
        Assert.Contains(Problems(chocolate with { Packs = [.. chocolate.Packs, .. chocolate.Packs] }), p => p.Sentence == "Two packs bear the same mark.");
    }

    [Fact]
    public void Heat_loss_and_keeping_times_have_limits()
    {
        var right = Starter.Sample.Recipe("vanilla")!;
        Assert.Contains(Problems(right with { Bakes = right.Bakes! with { Heat = 350 } }), p => p.Try.Contains("not Fahrenheit", StringComparison.Ordinal));
        Assert.Contains(Problems(right with { Bakes = null }), p => p.Sentence == "A sponge is baked, and no heat is given.");
        Assert.Contains(Problems(right with { Bakes = right.Bakes! with { Times = [] } }), p => p.Sentence.Contains("at least one size", StringComparison.Ordinal));
        Assert.Contains(Problems(right with { LossPercent = 51 }), p => p.Value == "51 %");
        Assert.Contains(Problems(right with { Keeps = [new(KeepPlace.Room, 0), new(KeepPlace.Room, 5)] }), p => p.Value == "0 h");
        Assert.Contains(Problems(right with { Lines = [] }), p => p.Sentence.Contains("1 to 60 rows", StringComparison.Ordinal));
    }
}
