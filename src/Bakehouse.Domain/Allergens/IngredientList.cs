namespace Bakehouse.Domain.Allergens;

using System.Text.RegularExpressions;
using Bakehouse.Domain.Recipes;

/// <summary>A piece of a list of ingredients.</summary>
/// <param name="Stressed">True if it names an allergen and must stand out from the rest (Regulation (EU) 1169/2011, article 21).</param>
public sealed record LabelRun(string Text, bool Stressed);

/// <summary>
/// The full list of ingredients: by weight as they go in, most first (Regulation (EU) 1169/2011, article 18), what is compound with
/// its own parts in brackets, allergens stressed. What may be printed of it is a <see cref="Label"/>.
/// </summary>
internal sealed class IngredientList
{
    private readonly Cookbook book;
    private readonly AllergenRules rules;
    private readonly bool sulphites;
    private readonly List<LabelRun> runs = [];

    private IngredientList(Cookbook book, AllergenRules rules, bool sulphites) => (this.book, this.rules, this.sulphites) = (book, rules, sulphites);

    /// <summary>The list of parts that are sold as one.</summary>
    public static IReadOnlyList<LabelRun> Of(IReadOnlyList<RecipePart> parts, Cookbook book, AllergenRules rules)
    {
        var list = new IngredientList(book, rules, Contents.Of(parts, book, rules).Status(KnownAllergens.Sulphites) == AllergenStatus.Has);
        var byWeight = parts.GroupBy(p => p.Recipe.Id, StringComparer.Ordinal).Select(g => (g.First().Recipe, Grams: g.Sum(p => p.Mass.Grams))).OrderByDescending(p => p.Grams).ThenBy(p => p.Recipe.Name, StringComparer.Ordinal).ToList();
        if (byWeight.Count == 1)
        {
            list.Lines(byWeight[0].Recipe);
        }
        else
        {
            list.Each(byWeight, p => list.InBrackets(p.Recipe.Name, () => list.Lines(p.Recipe)));
        }

        return list.runs;
    }

    private void Lines(Recipe recipe) => Each(
        recipe.Lines.GroupBy(l => (l.Of, l.IsRecipe)).Select(g => (Line: g.First(), Grams: g.Sum(book.Grams))).OrderByDescending(l => l.Grams).ThenBy(l => book.NameOf(l.Line), StringComparer.Ordinal).ToList(),
        l => One(l.Line));

    private void One(RecipeLine line)
    {
        if (line.IsRecipe)
        {
            var inside = book.Recipe(line.Of)!;
            InBrackets(inside.Name, () => Lines(inside));
        }
        else
        {
            Bought(book.Ingredient(line.Of)!);
        }
    }

    private void Bought(Ingredient ingredient)
    {
        var facts = ingredient.InUse?.Facts;
        List<string> has = [.. facts?.Has ?? []];
        if (sulphites && facts?.SulphitesMgPerKg > 0 && !has.Contains(KnownAllergens.Sulphites))
        {
            has.Add(KnownAllergens.Sulphites);
        }

        if (ingredient.MadeOf.Count == 0)
        {
            Named(ingredient.Label, has);
            return;
        }

        Words(ingredient.Label, has);
        var inParts = ingredient.MadeOf.SelectMany(c => c.Has).ToHashSet(StringComparer.Ordinal);
        Plain(" (");
        Each(ingredient.MadeOf, c => Named(c.Label, c.Has));
        foreach (var left in has.Where(a => !inParts.Contains(a)))
        {
            Plain(", ");
            runs.Add(new LabelRun(NameOf(left), true));
        }

        Plain(")");
    }

    /// <summary>A label with its allergens stressed; those that it does not name follow in brackets.</summary>
    private void Named(string label, IReadOnlyList<string> has)
    {
        var unnamed = Words(label, has);
        if (unnamed.Count > 0)
        {
            Plain(" (");
            Each(unnamed, a => runs.Add(new LabelRun(NameOf(a), true)));
            Plain(")");
        }
    }

    /// <summary>Writes the label, and gives back the allergens that it does not name.</summary>
    private List<string> Words(string label, IReadOnlyList<string> has)
    {
        var spots = has.SelectMany(a => (rules.All.FirstOrDefault(k => k.Id == a)?.Words ?? []).Select(w => (Allergen: a, At: Find(label, w), w.Length))).Where(s => s.At >= 0).OrderBy(s => s.At).ThenByDescending(s => s.Length).ToList();
        var done = 0;
        foreach (var spot in spots.Where(s => s.At >= 0))
        {
            if (spot.At >= done)
            {
                Plain(label[done..spot.At]);
                runs.Add(new LabelRun(label.Substring(spot.At, spot.Length), true));
                done = spot.At + spot.Length;
            }
        }

        Plain(label[done..]);
        return [.. has.Where(a => spots.All(s => s.Allergen != a))];
    }

    private static int Find(string label, string word)
    {
        var found = Regex.Match(label, $@"(?<!\p{{L}}){Regex.Escape(word)}(?!\p{{L}})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, TimeSpan.FromSeconds(1));
        return found.Success ? found.Index : -1;
    }

    private string NameOf(string allergen) => rules.All.FirstOrDefault(a => a.Id == allergen)?.Name ?? allergen;

    private void InBrackets(string name, Action inside)
    {
        Plain($"{name} (");
        inside();
        Plain(")");
    }

    private void Each<T>(IReadOnlyList<T> items, Action<T> write)
    {
        for (var i = 0; i < items.Count; i++)
        {
            if (i > 0)
            {
                Plain(", ");
            }

            write(items[i]);
        }
    }

    private void Plain(string text)
    {
        if (text.Length > 0)
        {
            runs.Add(new LabelRun(text, false));
        }
    }
}
