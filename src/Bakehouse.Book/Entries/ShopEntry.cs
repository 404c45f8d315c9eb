namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Shops;

/// <summary>Sets the shop up, or changes it; the plan then follows the new shifts and places.</summary>
internal static class ShopEntry
{
    private const string Subject = "shop";

    public static Outcome Decide(WriteShop command, Desk desk)
    {
        var version = desk.State.Shop?.Version ?? 0;
        if (command.Shop.Version != version)
        {
            return Outcome.Clash(Subject, $"The shop was changed meanwhile: it stands at version {version.ToString(CultureInfo.InvariantCulture)}.", null);
        }

        List<Problem> problems = [.. ShopChecks.Problems(command.Shop), .. StillNamed(command.Shop, desk.State)];
        if (problems.Count > 0)
        {
            return Outcome.Refused(Subject, problems.Count == 1 ? "One thing needs a look." : $"{problems.Count} things need a look.", problems);
        }

        return Write(command, desk, command.Shop with { Version = version + 1 });
    }

    /// <summary>Allergens of the shop's own that would leave its list, though a pack names one or a cake must avoid it: nobody would look for them any more.</summary>
    private static IEnumerable<Problem> StillNamed(Shop shop, BookState state) =>
        from own in state.Shop?.Allergens.Others ?? []
        where shop.Allergens.Others.All(o => o.Id != own.Id)
        let packs = state.Cookbook.Ingredients.Where(i => Names(i, own.Id)).Select(i => i.Name)
        let cakes = state.Orders.Where(o => Stages.IsPlanned(o.Stage) && o.Allergies.Avoid.Any(w => state.Shop!.Allergens.Covered(w).Contains(own.Id))).Select(o => $"order {o.Number.ToString(CultureInfo.InvariantCulture)}")
        let named = packs.Concat(cakes).ToList()
        where named.Count > 0
        select new Problem("other allergens", Problem.Shown(own.Name), $"It is still named: {string.Join(", ", named)}.", "Leave it on the list as long as that is so.");

    private static bool Names(Ingredient ingredient, string allergen) =>
        ingredient.Packs.Any(p => p.Facts is { } facts && (facts.Has.Contains(allergen) || facts.May.Contains(allergen))) || ingredient.MadeOf.Any(c => c.Has.Contains(allergen));

    /// <summary>What the plan depends on: all but the names under which cakes are sold, and of allergens what words there are.</summary>
    private static string Works(Shop shop) => Document.Write(shop with { Version = 0, HouseCakes = [], Allergens = AllergenRules.Usual with { Others = shop.Allergens.Others } });

    /// <summary>What keeps a cake already taken from being built: its layers and the shop's own fillings no longer fit into its height.</summary>
    private static IReadOnlyList<Problem> NotBuilt(IReadOnlyList<Order> orders, Shop shop) =>
    [
        .. from order in orders
           where Stages.IsPlanned(order.Stage)
           from problem in BuildProblems.Of(order.Tiers, CakeFigures.Of(shop))
           select new Problem("filling", $"order {order.Number.ToString(CultureInfo.InvariantCulture)}", problem.Sentence, "Change that order first, or keep the figure."),
    ];

    private static Outcome Write(WriteShop command, Desk desk, Shop shop)
    {
        void Rows(BookContext book) => book.Shops.Add(ShopRow.Of(shop, command.Person, command.Device, desk.Now));
        if (desk.State.Shop is { } was && Works(was) == Works(shop))
        {
            return Outcome.Accepted(Subject, new Change(desk.State.Wall, Rows));
        }

        if (!desk.State.Orders.Any(o => Stages.IsPlanned(o.Stage)))
        {
            return Outcome.Accepted(Subject, new Change(null, Rows));
        }

        if (NotBuilt(desk.State.Orders, shop) is { Count: > 0 } notBuilt)
        {
            return Outcome.Refused(Subject, "The cakes already taken can't be built by these figures.", notBuilt);
        }

        var fitted = new Fitting(desk.Planner, shop, desk.Now, desk.State.Hand).Replan(desk.State.Orders, desk.State.Ticks, desk.State.Wall).OrOurBug();
        return fitted.IsPlan
            ? Outcome.Accepted(Subject, new Change(fitted.Wall, Rows), late: fitted.Late, message: string.Join(' ', fitted.Stuck.Select(r => $"{r.Sentence} {r.Try}")))
            : Outcome.Refused(Subject, "The cakes already taken can't be made in this shop.", [.. fitted.Reasons.Select(r => new Problem("plan", "", r.Sentence, r.Try))]);
    }
}
