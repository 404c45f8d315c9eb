namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;

/// <summary>The owner has looked at what changed in the recipes of an order: it keeps those that it has, or takes the new ones.</summary>
internal static class RecipesLookedAtEntry
{
    public static Outcome Decide(LookAtRecipes command, Desk desk) => StampEntry.Decide(command, desk, command.Order, command.Version, order =>
    {
        var newest = desk.State.Cookbook;
        var made = new MadeFrom(command.Move ? newest.Version : order.MadeFrom?.Cookbook ?? 0, newest.Version, command.Packs);
        var after = order with { MadeFrom = made };
        var book = command.Move ? newest : desk.State.CookbookOf(order with { MadeFrom = made with { Packs = [] } });
        var problems = Locks(command.Packs, book).ToList();
        if (problems.Count == 0)
        {
            problems.AddRange(ReadAnew(after, book.Using(command.Packs), desk));
            problems.AddRange(command.Move ? [] : Swapped(after, book.Using(command.Packs), desk));
            problems.AddRange(AllergyChecks.Problems(after, book.Using(command.Packs), desk.Shop));
        }

        // What it contains may be another now: what must be avoided is read back once more.
        var others = command.Move || !command.Packs.ToHashSet().SetEquals(order.MadeFrom?.Packs ?? []);
        return (after with { Statement = others && order.Statement is { } said ? said with { ReadBackBy = null, ReadBack = null } : order.Statement }, problems);
    });

    /// <summary>Packs that stay in use and whose label, read again, says something else: what was known of them no longer counts.</summary>
    private static IEnumerable<Problem> ReadAnew(Order order, Cookbook book, Desk desk) =>
        from id in CakeContents.Of(order, book, desk.Shop.Allergens, CakeFigures.Of(desk.Shop))?.Uses(book) ?? []
        let ingredient = book.Ingredient(id)
        let pack = ingredient.InUse
        let now = desk.State.Cookbook.Ingredient(id)?.Packs.FirstOrDefault(p => p.Lot == pack?.Lot)
        where pack?.Facts is { } facts && now is not null && !facts.Says(now.Facts)
        select new Problem("pack", Problem.Shown($"{ingredient.Name} {pack.Lot}".Trim()), "Its label was read anew since, and says something else.", "Make the cake from the new recipes.");

    /// <summary>
    /// Packs that are open now instead of those by which the order was judged. Who works takes the open one, so an order that avoids something
    /// keeps its recipes only with the old pack put aside for it.
    /// </summary>
    private static IEnumerable<Problem> Swapped(Order order, Cookbook book, Desk desk) =>
        order.Allergies.Kind != AllergyKind.Avoid ? [] :
        from id in CakeContents.Of(order, book, desk.Shop.Allergens, CakeFigures.Of(desk.Shop))?.Uses(book) ?? []
        let ingredient = book.Ingredient(id)
        let kept = ingredient.InUse
        let open = desk.State.Cookbook.Ingredient(id)?.InUse
        where kept is not null && open is not null && kept.Lot != open.Lot && kept.Facts?.Says(open.Facts) != true
            && order.MadeFrom?.Packs.Any(p => p.Ingredient == id) != true
        select new Problem("pack", Problem.Shown($"{ingredient.Name} {kept.Lot}".Trim()), "Another pack is open since, and its label says something else or was not read.", "Keep the old pack for this cake on the ingredient's page, or make the cake from the new recipes.");

    private static IEnumerable<Problem> Locks(IReadOnlyList<PackLock> packs, Cookbook book) => packs
        .Where(p => book.Ingredient(p.Ingredient)?.Packs.Any(k => k.Lot == p.Lot) != true || packs.Count(k => k.Ingredient == p.Ingredient) > 1)
        .Select(p => new Problem("pack", Problem.Shown(p.Lot), "There is no such pack, or two are locked of one ingredient.", "Choose one of the packs of that ingredient."));
}

/// <summary>The new version of an order that only says what the book knows about it. Of the plan only its bowls and pans depend on it.</summary>
internal static class StampEntry
{
    public static Outcome Decide(Command command, Desk desk, Guid id, int version, Func<Order, (Order After, IReadOnlyList<Problem> Problems)> stamp)
    {
        var subject = id.ToString("N", System.Globalization.CultureInfo.InvariantCulture);
        if (desk.Order(id) is not { } order)
        {
            return Outcome.Refused(subject, new Problem("order", subject, "The book has no such order.", "Look for it among the cakes."));
        }

        if (order.Version != version)
        {
            return Outcome.Clash(subject, $"Order {order.Number} was changed meanwhile: it stands at version {order.Version}.", order);
        }

        if (!Stages.IsPlanned(order.Stage))
        {
            return Outcome.Refused(subject, new Problem("stage", order.Stage.ToString(), "Only a cake that is planned waits for this.", "Take the order first."));
        }

        var (after, problems) = stamp(order);
        return problems.Count > 0
            ? Outcome.Refused(subject, problems[0].Sentence, problems)
            : Written(command, desk, subject, after with { Version = order.Version + 1 });
    }

    private static Outcome Written(Command command, Desk desk, string subject, Order after)
    {
        void Rows(BookContext book) => book.Orders.Add(OrderRow.Of(after, command.Person, command.Device, desk.Now));
        if (desk.Order(after.Id)!.MadeFrom == after.MadeFrom)
        {
            return Outcome.Accepted(subject, new Change(desk.State.Wall, Rows), after);
        }

        // Other recipes may bring into a bowl what the next cake must be kept from: the plan follows.
        var followed = Follow.Of(desk, [after], desk.State.Ticks);
        return Outcome.Accepted(subject, new Change(followed.Wall, Rows), after, followed.Late, followed.Message);
    }
}
