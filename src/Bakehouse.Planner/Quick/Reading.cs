using System.Numerics;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>Reads a week into grains and numbers.</summary>
internal sealed class Reading
{
    private readonly Week week;
    private readonly Dictionary<string, int> people;
    private readonly Dictionary<string, int> tools;
    private readonly Dictionary<string, int> machines;
    private readonly Dictionary<string, int> stores;
    private readonly Dictionary<string, int> codes = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> allergens = new(StringComparer.Ordinal);
    private readonly int[] diameters;

    private Reading(Week week)
    {
        this.week = week;
        people = Numbered(week.People, p => p.Id);
        tools = Numbered(week.Tools, t => t.Id);
        machines = Numbered(week.Machines, m => m.Id);
        stores = Numbered(week.Stores, s => s.Id);
        diameters = [.. week.Steps.Where(s => s.Bake is not null).SelectMany(s => s.Bake!.Pans).Distinct().Order()];
        if (week.People.Count > 64 || diameters.Length > 8)
        {
            throw new ArgumentOutOfRangeException(nameof(week), $"{week.People.Count} people and {diameters.Length} sizes of pan: at most 64 and 8 can be planned.");
        }
    }

    public static Shop Read(Week week) => new Reading(week).Read();

    private static Dictionary<string, int> Numbered<T>(IReadOnlyList<T> list, Func<T, string> id)
        => list.Select((x, i) => (Id: id(x), i)).ToDictionary(x => x.Id, x => x.i, StringComparer.Ordinal);

    private Shop Read()
    {
        var grains = week.Horizon / week.Grain;
        var acts = week.Steps.Select(ReadStep).ToArray();
        var byId = Numbered(week.Steps, s => s.Id);
        var links = week.Holds.Select((h, i) => ReadHold(h, i, byId)).ToArray();
        var shop = new Shop
        {
            Week = week,
            Grains = grains,
            FreeFrom = Up(week.FreeFrom),
            Codes = codes.Count,
            Shift = [.. week.People.Select(p => Calendar(grains, p.Shifts))],
            Duty = [.. week.People.Select(p => Calendar(grains, p.Shifts.Concat(p.Extra)))],
            Extra = [.. week.People.Select(p => Calendar(grains, p.Extra))],
            ToolCount = [.. week.Tools.Select(t => t.Count)],
            Machines = [.. week.Machines.Select(ReadMachine)],
            StorePlaces = [.. week.Stores.Select(s => s.Places)],
            Floors = new Floors(week),
            StoreCold = [.. week.Stores.Select(s => s.Cold)],
            Air = [.. week.Air.Select(a => (Mask([a.Allergen]), Up(a.Settle)))],
            Clashing = acts.Where(a => a.IsMix).Aggregate(0UL, (m, a) => m | a.Has) & acts.Where(a => a.IsMix).Aggregate(0UL, (m, a) => m | a.Avoid),
            Acts = acts,
            Links = links,
            ClockLimit = [.. week.Clocks.Select(c => c.Limit / week.Grain)],
            ClockActs = [.. week.Clocks.Select(c => c.Steps.Select(s => byId[s]).ToArray())],
            Diameters = diameters,
            Jobs = [],
        };
        Connect(shop, byId);
        Pin(shop, byId);
        shop.Jobs = Gathering.Jobs(shop);
        return shop;
    }

    private Act ReadStep(Step step, int index)
    {
        var able = step.Skill is null ? [] : Able(step.Skill);
        return new Act
        {
            Index = index,
            Step = step,
            Grains = Up(step.Minutes),
            Hands = able.Aggregate(0UL, (m, p) => m | (1UL << p)),
            Able = able,
            Count = step.Skill is null ? 0 : step.Count,
            Tools = [.. step.Tools.Select(t => tools[t])],
            Machines = MachinesFor(step),
            OnMachine = step.Mix is not null || step.Bake is not null,
            IsMix = step.Mix is not null,
            Code = step.Mix is { } m ? Code("mix " + m.Family) : step.Bake is { } b ? Code("bake " + b.Heat) : -1,
            Size = step.Mix?.Size ?? 0,
            Pans = Pans(step),
            Kit = step.Tools.Aggregate(0UL, (m, t) => m | (1UL << (tools[t] & 31))) | MachinesFor(step).Aggregate(0UL, (m, k) => m | (1UL << (32 + (k & 31)))),
            Has = Mask(step.Has),
            Avoid = Mask(step.Avoid),
        };
    }

    private int[] Able(string skill) =>
        [.. week.People.Select((p, i) => (p, i)).Where(x => x.p.Skills.Contains(skill)).OrderBy(x => x.p.Skills.Count).ThenBy(x => x.i).Select(x => x.i)];

    private int[] MachinesFor(Step step)
    {
        if (step.Mix is { } mix)
        {
            var limit = week.Families.First(f => f.Id == mix.Family).Limit;
            return [.. limit.Where(l => l.Value >= mix.Size && machines.ContainsKey(l.Key)).OrderBy(l => l.Value).ThenBy(l => machines[l.Key]).Select(l => machines[l.Key])];
        }

        return step.Bake is null ? [] :
            [.. week.Machines.Select((m, i) => (m, i)).Where(x => x.m.Kind == MachineKind.Oven && Packing.Fits(x.m, Pans(step), diameters)).Select(x => x.i)];
    }

    private ulong Pans(Step step)
        => step.Bake is null ? 0 : step.Bake.Pans.Aggregate(0UL, (sum, d) => sum + (1UL << (8 * Array.IndexOf(diameters, d))));

    private int Code(string name) => codes.TryGetValue(name, out var code) ? code : codes[name] = codes.Count;

    private ulong Mask(IEnumerable<string> names)
        => names.Aggregate(0UL, (m, a) => m | (1UL << (allergens.TryGetValue(a, out var bit) ? bit : allergens[a] = allergens.Count)));

    private Link ReadHold(Hold hold, int index, Dictionary<string, int> byId)
    {
        var places = hold.In.Select(o =>
        {
            var store = week.Stores[stores[o.Store]];
            return new Place(stores[o.Store], Up(o.Least), o.Most / week.Grain, hold.Height > store.Clear || hold.Places > store.Places || (hold.Piece is { } piece && store.Floor?.Takes(piece) == false));
        });
        return new Link(index, hold, byId[hold.From], byId[hold.To], hold.Places, [.. places.Where(p => !p.Passing || p.Least == 0)]);
    }

    private MachineFacts ReadMachine(Machine machine)
    {
        var limits = week.Families.Where(f => f.Limit.ContainsKey(machine.Id) && codes.ContainsKey("mix " + f.Id))
            .ToDictionary(f => codes["mix " + f.Id], f => f.Limit[machine.Id]);
        return new MachineFacts(
            machine,
            Up(machine.TurnSame),
            Up(machine.TurnOther),
            machine.Clean is { } c ? Up(c.Minutes) : 0,
            machine.Clean is { } k ? Able(k.Skill) : [],
            limits);
    }

    private ulong[] Calendar(int grains, IEnumerable<Span> spans)
    {
        var row = new ulong[Bits.Words(grains + 64)];
        foreach (var span in spans)
        {
            Bits.Set(row, Math.Max(0, Up(span.From)), Math.Min(grains, span.To / week.Grain));
        }

        return row;
    }

    private void Connect(Shop shop, Dictionary<string, int> byId)
    {
        var holds = Numbered(week.Holds, h => h.Id);
        foreach (var (clock, c) in week.Clocks.Select((k, i) => (k, i)))
        {
            foreach (var hold in clock.Holds)
            {
                shop.Links[holds[hold]].Clocks = [.. shop.Links[holds[hold]].Clocks, c];
            }
        }

        foreach (var link in shop.Links)
        {
            shop.Acts[link.From].Out.Add(link);
            shop.Acts[link.To].In.Add(link);
            link.WarmLeast = link.In.Length == 0 ? 0 : link.In.Min(p => shop.StoreCold[p.Store] ? 0 : p.Least);
        }

        Preferring.Sort(shop);
        foreach (var cap in Caps(byId))
        {
            shop.Acts[cap.From].CapsOut.Add(cap);
            shop.Acts[cap.To].CapsIn.Add(cap);
        }
    }

    private IEnumerable<Cap> Caps(Dictionary<string, int> byId)
    {
        foreach (var age in week.Ages)
        {
            yield return new Cap(byId[age.From], byId[age.To], age.Most / week.Grain, age.Hard ? CapKind.Hard : CapKind.Soft);
        }

        foreach (var order in week.Orders)
        {
            foreach (var fresh in order.Fresh)
            {
                yield return new Cap(byId[fresh.Step], byId[order.Out], fresh.Most / week.Grain, CapKind.Fresh);
            }

            yield return new Cap(byId[order.Ready], byId[order.Out], Up(order.Buffer), CapKind.Buffer);
        }
    }

    private void Pin(Shop shop, Dictionary<string, int> byId)
    {
        var holds = Numbered(week.Holds, h => h.Id);
        foreach (var pin in week.Fixed)
        {
            if (pin.Hold is { } hold && pin.Store is { } store)
            {
                shop.Links[holds[hold]].PinStore = stores[store];
            }

            if (pin.Step is not { } step)
            {
                continue;
            }

            var act = shop.Acts[byId[step]];
            act.PinStart = pin.Start is { } s ? s / week.Grain : act.PinStart;
            act.PinPeople = pin.People is { } who ? who.Aggregate(0UL, (m, p) => m | (1UL << people[p])) : act.PinPeople;
            act.PinMachine = pin.Machine is { } m ? machines[m] : act.PinMachine;
            act.Standing = act.PinStart >= 0
                && (act.Count == 0 || BitOperations.PopCount(act.PinPeople) == act.Count)
                && (!act.OnMachine || act.PinMachine >= 0);
        }

        foreach (var link in shop.Links)
        {
            link.Settled = shop.Acts[link.From].Standing && shop.Acts[link.To].Standing;
        }
    }

    private int Up(int minutes) => (minutes + week.Grain - 1) / week.Grain;
}
