using Bakehouse.Domain.Planning;

namespace Bakehouse.Testing.Planning;

/// <summary>The steps of one sample cake: each tier is mixed, baked, turned out, wrapped, filled, crumbed and coated, then all of it stacked, decorated and boxed.</summary>
internal sealed class SampleBuild
{
    private readonly SampleCake cake;
    private readonly string id;

    public SampleBuild(string id, SampleCake cake)
    {
        (this.id, this.cake) = (id, cake);
        Add("", "cream", 25, "coat", mix: new Mix("cream", 300 * cake.Tiers.Count));
        foreach (var tier in cake.Tiers)
        {
            Tier(tier);
        }

        Whole();
        var pickup = (cake.Day * 1440) + (cake.Hour * 60);
        Order = new WeekOrder(id, $"Sample cake {id}", Id("", "box"), Id("", "handover"), false, pickup, pickup + 30, 1, 30, [new Fresh(Id("", "decorate"), 1080)]);
    }

    public List<Step> Steps { get; } = [];

    public List<Hold> Holds { get; } = [];

    public List<FoodClock> Clocks { get; } = [];

    public List<Age> Ages { get; } = [];

    public WeekOrder Order { get; }

    private string Id(string tier, string name) => tier.Length == 0 ? $"{id}.{name}" : $"{id}.{tier}.{name}";

    private void Tier(int inches)
    {
        var tier = $"t{inches}";
        Add(tier, "mix", 20, "bake", mix: new Mix(cake.KeptFromWheat ? "rice" : "vanilla", inches * 150));
        Add(tier, "bake", 30 + (inches / 2 * 5), null, bake: new Bake("177", [inches, inches]));
        Add(tier, "turnout", 5, "bake", "bench");
        Add(tier, "wrap", 10, "box");
        Add(tier, "fill", 20, "coat", "turntable");
        Add(tier, "crumb", 15, "coat", "turntable");
        Add(tier, "coat", 35, "coat", "turntable");
        var room = inches >= 10 ? 2 : 1;
        Hold(tier, "mix", tier, "bake", room, 0, new Standing("none", 0, 30));
        Hold(tier, "bake", tier, "turnout", room, 0, new Standing("rack", 10, 20));
        Hold(tier, "turnout", tier, "wrap", room, 0, new Standing("rack", 100, 270), new Standing("fridge", 80, 240));
        Hold(tier, "wrap", tier, "fill", room, 12, new Standing("fridge", 120, 4320), new Standing("rack", 0, 1440));
        Hold(tier, "fill", tier, "crumb", room, 13, new Standing("fridge", 60, 1440));
        Hold(tier, "crumb", tier, "coat", room, 13, new Standing("fridge", 30, 1440));
        Hold("", "cream", tier, "crumb", 1, 0, new Standing("tubs", 0, 2880), new Standing("none", 0, 60));
        Ages.Add(new Age($"{id}.{tier}.keeps", Id(tier, "bake"), Id("", "handover"), 5760, false));
        if (cake.Custard)
        {
            Clocks.Add(new FoodClock(
                $"{id}.{tier}.clock",
                [Id(tier, "fill"), Id(tier, "crumb"), Id(tier, "coat")],
                [$"{Id(tier, "fill")}>{Id(tier, "crumb")}", $"{Id(tier, "crumb")}>{Id(tier, "coat")}", $"{Id(tier, "coat")}>{Id("", "stack")}"],
                240));
        }
    }

    private void Whole()
    {
        Add("", "stack", 20, "decorate", "bench");
        Add("", "decorate", 45, "decorate", "bench");
        Add("", "box", 20, "box", "bench");
        Add("", "handover", 10, "counter");
        var room = cake.Tiers.Max() >= 10 ? 2 : 1;
        var height = 13 * cake.Tiers.Count;
        foreach (var tier in cake.Tiers)
        {
            Hold($"t{tier}", "coat", "", "stack", tier >= 10 ? 2 : 1, 13, new Standing("fridge", 120, 2880), new Standing("tall", 120, 2880));
        }

        Hold("", "stack", "", "decorate", room, height, new Standing("tall", 0, 2880), new Standing("bench", 0, 60));
        Hold("", "decorate", "", "box", room, height, new Standing("tall", 5, 2880), new Standing("bench", 5, 120));
        Hold("", "box", "", "handover", room, height, new Standing("tall", 0, 2880), new Standing("bench", 0, 60));
    }

    private void Add(string tier, string name, int minutes, string? skill, string? tool = null, Mix? mix = null, Bake? bake = null)
    {
        string[] has = mix is null && bake is null ? [] : [.. Has(name)];
        string[] avoid = mix is null && bake is null ? [] : [.. Avoid()];
        Steps.Add(new Step(Id(tier, name), id, tier, name, minutes, skill, 1, tool is null ? [] : [tool], mix, bake, has, avoid, null));
    }

    private IEnumerable<string> Has(string name)
    {
        if (!cake.KeptFromWheat && name != "cream")
        {
            yield return "wheat";
        }

        if (cake.Nuts)
        {
            yield return "nuts";
        }
    }

    private IEnumerable<string> Avoid()
    {
        if (cake.KeptFromWheat)
        {
            yield return "wheat";
        }

        if (cake.KeptFromNuts && !cake.Nuts)
        {
            yield return "nuts";
        }
    }

    private void Hold(string fromTier, string from, string toTier, string to, int places, int height, params Standing[] stand)
        => Holds.Add(new Hold($"{Id(fromTier, from)}>{Id(toTier, to)}", Id(fromTier, from), Id(toTier, to), places, height, stand, null));
}
