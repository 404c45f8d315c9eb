namespace Bakehouse.Planner.Quick;

/// <summary>Which store a hold tries first: cold ones while a food clock runs, then those that are asked for least.</summary>
internal static class Preferring
{
    public static void Sort(Shop shop)
    {
        var asked = new double[shop.StorePlaces.Length];
        foreach (var link in shop.Links)
        {
            foreach (var place in link.In)
            {
                asked[place.Store] += (double)link.Places / Math.Max(1, shop.StorePlaces[place.Store]);
            }
        }

        foreach (var link in shop.Links)
        {
            var sorted = link.In
                .OrderBy(p => link.Clocks.Length > 0 && !shop.StoreCold[p.Store])
                .ThenBy(p => asked[p.Store]).ThenBy(p => p.Store).ToArray();
            sorted.CopyTo(link.In, 0);
        }
    }
}
