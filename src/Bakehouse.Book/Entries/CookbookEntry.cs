namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>Writes recipes and ingredients: a new version of the cookbook. Planned orders keep theirs.</summary>
internal static class CookbookEntry
{
    private const string Subject = "recipes";
    private const int LongestWhy = 400;

    public static Outcome Decide(WriteRecipes command, Desk desk)
    {
        var book = desk.State.Cookbook;
        if (Changed(command, book) is { Length: > 0 } changed)
        {
            return Outcome.Clash(Subject, $"{changed} was changed meanwhile. Look at it again.", null);
        }

        return Write(command, desk, command.Why, book.With(
            [.. command.Ingredients.Select(i => i with { Version = i.Version + 1 })], [.. command.Recipes.Select(r => r with { Version = r.Version + 1 })]));
    }

    public static Outcome Decide(OpenPack command, Desk desk)
    {
        if (desk.State.Cookbook.Ingredient(command.Ingredient) is not { } ingredient)
        {
            return Outcome.Refused(Subject, new Problem("ingredient", command.Ingredient, "There is no such ingredient.", "Choose one of the list."));
        }

        var why = command.Pack.Facts is null ? $"New pack {command.Pack.Lot}, not read yet" : $"New pack {command.Pack.Lot}";
        return Write(command, desk, why, desk.State.Cookbook.With([ingredient.Swapped(command.Pack) with { Version = ingredient.Version + 1 }], []));
    }

    /// <summary>Orders that stop at their next making step once that cookbook stands.</summary>
    internal static IReadOnlyList<Order> Hit(Desk desk, Cookbook next) =>
        [.. desk.State.Orders.Where(o => BeforeWork.IsHit(o, desk.State.CookbookOf(o), next, desk.Shop))];

    private static Outcome Write(Command command, Desk desk, string why, Cookbook next)
    {
        var problems = Problems(why, desk, next);
        if (problems.Count > 0)
        {
            return Outcome.Refused(Subject, problems.Count == 1 ? problems[0].Sentence : $"{Text(problems.Count)} things need a look.", problems);
        }

        var hit = Hit(desk, next);
        var said = hit.Count == 0 ? "" : $"Look at {(hit.Count == 1 ? "order" : "orders")} {string.Join(", ", hit.Select(o => Text(o.Number)))}: what {(hit.Count == 1 ? "it is" : "they are")} made from has changed.";
        return Outcome.Accepted(Subject, new Change(desk.State.Wall, rows => rows.Cookbooks.Add(CookbookRow.Of(next, why.Trim(), command.Person, command.Device, desk.Now))), message: said);
    }

    private static IReadOnlyList<Problem> Problems(string why, Desk desk, Cookbook next)
    {
        List<Problem> problems = [];
        if (why.Trim().Length is 0 or > LongestWhy)
        {
            problems.Add(new Problem("why", Problem.Shown(why), $"A change needs a reason of 1 to {Text(LongestWhy)} characters.", "Say why in a few words."));
        }

        problems.AddRange(CookbookChecks.Problems(next, desk.Shop.Allergens.All.Select(a => a.Id).Concat(ReadBefore(desk.State.Cookbook)).ToHashSet(StringComparer.Ordinal)));
        return problems;
    }

    /// <summary>What packs were read not to have while it was on the shop's list; it may stand there, though the shop asks for it no more.</summary>
    private static IEnumerable<string> ReadBefore(Cookbook book) => book.Ingredients.SelectMany(i => i.Packs).SelectMany(p => p.Facts?.HasNot ?? []);

    /// <summary>The name of what stands at another version than was read, or "".</summary>
    private static string Changed(WriteRecipes command, Cookbook book) =>
        command.Ingredients.Where(i => (book.Ingredient(i.Id)?.Version ?? 0) != i.Version).Select(i => i.Name)
            .Concat(command.Recipes.Where(r => (book.Recipe(r.Id)?.Version ?? 0) != r.Version).Select(r => r.Name)).Select(Problem.Shown).FirstOrDefault() ?? "";

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
