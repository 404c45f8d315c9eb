using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>Gathers steps that hang together by order, holds, ages, clocks or choices into jobs.</summary>
internal static class Gathering
{
    private const int MostBuilds = 8;

    /// <summary>Minutes that a wait may be shorter or longer and still binds two steps closely.</summary>
    private const int HoursBefore = 360;

    public static Job[] Jobs(Shop shop)
    {
        var root = Enumerable.Range(0, shop.Acts.Length).ToArray();
        Join(shop, root);
        var groups = shop.Acts.GroupBy(a => Find(root, a.Index)).OrderBy(g => g.Key);
        return [.. groups.Select((g, i) => ToJob(shop, [.. g], i))];
    }

    private static void Join(Shop shop, int[] root)
    {
        var byOrder = new Dictionary<string, int>(StringComparer.Ordinal);
        var byChoice = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var act in shop.Acts)
        {
            Unite(root, act.Index, First(byOrder, act.Step.Order.Length > 0 ? act.Step.Order : " " + act.Step.Id, act.Index));
            if (act.Step.If is { } taken)
            {
                Unite(root, act.Index, First(byChoice, taken.Choice, act.Index));
            }

            foreach (var cap in act.CapsOut)
            {
                Unite(root, cap.From, cap.To);
            }
        }

        foreach (var link in shop.Links)
        {
            Unite(root, link.From, link.To);
            if (link.Hold.If is { } taken)
            {
                Unite(root, link.From, First(byChoice, taken.Choice, link.From));
            }
        }
    }

    private static int First(Dictionary<string, int> seen, string key, int index)
        => seen.TryGetValue(key, out var first) ? first : seen[key] = index;

    private static int Find(int[] root, int x)
    {
        while (root[x] != x)
        {
            x = root[x] = root[root[x]];
        }

        return x;
    }

    private static void Unite(int[] root, int a, int b)
    {
        var (x, y) = (Find(root, a), Find(root, b));
        root[Math.Max(x, y)] = Math.Min(x, y);
    }

    private static Job ToJob(Shop shop, Act[] acts, int index)
    {
        var inside = acts.Select(a => a.Step.Id).ToHashSet(StringComparer.Ordinal);
        WeekOrder[] orders = [.. shop.Week.Orders.Where(o => inside.Contains(o.Out))];
        var numbers = acts.Select(a => a.Index).ToHashSet();
        Link[] links = [.. shop.Links.Where(l => numbers.Contains(l.From))];
        return new Job
        {
            Index = index,
            Orders = orders,
            Outs = [.. orders.Select(o => ToOut(shop, o, acts.First(a => a.Step.Id == o.Out)))],
            Due = orders.Length == 0 ? shop.Grains : orders.Max(o => o.To) / shop.Grain,
            Builds = [.. Choices(shop, acts, links).Take(MostBuilds).Select(c => ToBuild(shop, c, acts, links))],
        };
    }

    private static Out ToOut(Shop shop, WeekOrder order, Act act)
    {
        var edge = order.EdgeIsEnd ? act.Grains : 0;
        return new Out(order, act.Index, ((order.From + shop.Grain - 1) / shop.Grain) - edge, (order.To / shop.Grain) - edge);
    }

    private static IEnumerable<Dictionary<string, string>> Choices(Shop shop, Act[] acts, Link[] links)
    {
        var names = acts.Select(a => a.Step.If).Concat(links.Select(l => l.Hold.If)).Where(t => t is not null)
            .Select(t => t!.Choice).ToHashSet(StringComparer.Ordinal);
        var pinned = acts.Where(a => a.Step.If is not null && (a.PinStart >= 0 || a.PinPeople != 0 || a.PinMachine >= 0)).Select(a => a.Step.If!).ToList();
        IEnumerable<Dictionary<string, string>> all = [new(StringComparer.Ordinal)];
        foreach (var choice in shop.Week.Choices.Where(c => names.Contains(c.Id)))
        {
            var options = choice.Options.Where(o => pinned.TrueForAll(p => p.Choice != choice.Id || p.Option == o)).ToList();
            all = all.SelectMany(c => options.Select(o => new Dictionary<string, string>(c, StringComparer.Ordinal) { [choice.Id] = o }));
        }

        return all;
    }

    private static Act[] ShortlyBefore(Shop shop, Act[] order, Link[] links, Act act)
    {
        var near = new HashSet<int> { act.Index };
        foreach (var later in order)
        {
            near.UnionWith(near.Contains(later.Index) ? links.Where(l => l.To == later.Index && l.Most - l.Least <= HoursBefore / shop.Grain).Select(l => l.From) : []);
        }

        return [.. order.Reverse().Where(a => a != act && near.Contains(a.Index))];
    }

    private static Build ToBuild(Shop shop, Dictionary<string, string> choices, Act[] acts, Link[] links)
    {
        bool Taken(Taken? t) => t is null || choices.GetValueOrDefault(t.Choice) == t.Option;
        Link[] present = [.. links.Where(l => Taken(l.Hold.If))];
        var order = Ordering.Backwards(shop, [.. acts.Where(a => Taken(a.Step.If))], present);
        return new Build(choices, order, present, [.. order.Select(a => ShortlyBefore(shop, order, present, a))]);
    }
}

/// <summary>The order in which steps are placed: last first, and a tight chain (mix, bake, turn out, wrap) in one go.</summary>
internal static class Ordering
{
    public static Act[] Backwards(Shop shop, Act[] acts, Link[] links)
    {
        var waiting = acts.ToDictionary(a => a.Index, a => links.Count(l => l.From == a.Index));
        var tight = acts.ToDictionary(a => a.Index, _ => int.MaxValue);
        var rank = acts.ToDictionary(a => a.Index, _ => 0);
        var ready = acts.Where(a => waiting[a.Index] == 0).ToList();
        var order = new List<Act>();
        while (ready.Count > 0)
        {
            var next = ready.OrderBy(a => tight[a.Index]).ThenByDescending(a => rank[a.Index]).ThenBy(a => a.Index).First();
            ready.Remove(next);
            order.Add(next);
            foreach (var link in links.Where(l => l.To == next.Index))
            {
                tight[link.From] = Math.Min(tight[link.From], link.Most);
                rank[link.From] = order.Count;
                if (--waiting[link.From] == 0)
                {
                    ready.Add(shop.Acts[link.From]);
                }
            }
        }

        return order.Count == acts.Length ? [.. order]
            : throw new InvalidOperationException($"The holds of {acts[0].Step.Order} run in a circle.");
    }
}
