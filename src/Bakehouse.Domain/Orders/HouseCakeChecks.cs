namespace Bakehouse.Domain.Orders;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Shops;

/// <summary>Everything that may be wrong with the shop's own cakes, in one list.</summary>
internal static class HouseCakeChecks
{
    /// <summary>Each problem under "house cakes", with what to try.</summary>
    public static IEnumerable<Problem> Problems(Shop shop)
    {
        const string Where = "house cakes";
        var cakes = shop.HouseCakes;
        if (cakes.Count > HouseCake.Most)
        {
            yield return new Problem(Where, cakes.Count.ToString(CultureInfo.InvariantCulture), $"{cakes.Count} house cakes are more than the {HouseCake.Most} that are found at a glance.", "Take one off that is asked for least.");
        }

        foreach (var problem in cakes.SelectMany(c => ShopChecks.Named(Where, c.Name)).Concat(cakes.SelectMany(c => BuildProblems.Of(c.Tiers, CakeFigures.Of(shop)).Select(p => p with { Where = Where, Sentence = $"{c.Name}: {p.Sentence}" }))))
        {
            yield return problem;
        }

        foreach (var name in cakes.GroupBy(c => c.Name.Trim(), StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key))
        {
            yield return new Problem(Where, name, $"Two house cakes are called {name}.", "Give one of them another name.");
        }
    }
}
