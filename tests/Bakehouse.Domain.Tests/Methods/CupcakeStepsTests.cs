namespace Bakehouse.Domain.Tests.Methods;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Testing;
using CsCheck;

/// <summary>How cupcakes are made, alone and beside a cake.</summary>
public sealed class CupcakeStepsTests
{
    private static readonly Shop Shop = SampleBakery.Shop;
    private static readonly Order Alone = Cakes.Alone(1, 24);

    /// <summary>Two tins fit the larger oven at once: one bowl, one load, one tray of 24.</summary>
    [Fact]
    public void Two_dozen_are_one_load_and_one_tray()
    {
        var steps = CakeSteps.Of(Alone, Shop);
        Assert.Equal(["mix", "bake", "turnout", "pipe", "box"], steps.Steps.Where(s => s.Tier != "").Select(s => s.Name));
        Assert.Equal(["buttercream", "colour", "leavefridge", "handover"], steps.Steps.Where(s => s.Tier == "").Select(s => s.Name));
        Assert.Equal([14011, 14011], steps.Steps.Single(s => s.Name == "bake").Bake!.Pans);
        // 24 × 52 mL at 0.95 g/mL, in whole fives up.
        Assert.Equal(1190, steps.Steps.Single(s => s.Name == "mix").Mix!.Size);
        Assert.Equal((20, 15, 10), (Minutes(steps, "bake"), Minutes(steps, "pipe"), Minutes(steps, "box")));
        Assert.EndsWith(".box.1", steps.Ready, StringComparison.Ordinal);
    }

    /// <summary>Cold before it is piped, piped with cream that is coloured, boxed before it leaves.</summary>
    [Fact]
    public void Nothing_is_piped_warm_and_nothing_leaves_unboxed()
    {
        var steps = CakeSteps.Of(Alone, Shop);
        Assert.All(Between(steps, "turnout", "pipe").In, i => Assert.True(i.Least >= 60 && i.Store == "rack"));
        Assert.NotNull(Between(steps, "colour", "pipe"));
        Assert.NotNull(Between(steps, "pipe", "box"));
        Assert.All(Between(steps, "box", "leavefridge").In, i => Assert.Contains(Shop.Shelves, s => s.Id == i.Store && s.Kind == ShelfKind.Fridge));
    }

    /// <summary>What is done to the cake stays what it was; the cupcakes leave with it, and its own box is closed last.</summary>
    [Fact]
    public void Beside_a_cake_they_leave_with_it()
    {
        var cake = Cakes.Good(2, 9, 6);
        var (without, with) = (CakeSteps.Of(cake, Shop), CakeSteps.Of(Cakes.With(cake, 36), Shop));
        Assert.Equal((without.Ready, without.Out), (with.Ready, with.Out));
        Assert.Empty(without.Steps.Select(s => s.Id).Except(with.Steps.Select(s => s.Id)));
        Assert.Equal(2, with.Steps.Count(s => s.Name == "box" && s.Tier != ""));
        Assert.All(with.Steps.Where(s => s.Name == "box" && s.Tier != ""), b => Assert.Contains(with.Holds, h => h.From == b.Id && StepKey.Parse(h.To)!.Value.Operation == "leavefridge"));
    }

    /// <summary>Whatever is ordered: steps and waits have one id each, hang together, lead to the handover, and every cupcake is baked, piped and boxed once.</summary>
    [Fact]
    public void Any_order_hangs_together() => Gen.Select(Gen.Int[4, 12].Array[0, 3], Gen.Int[1, Cupcakes.Most].Array[0, 4], Gen.Bool, Gen.Enum<Decoration>()).Where(d => d.Item1.Length + d.Item2.Length > 0).Each(200, drawn =>
    {
        var (inches, cupcakes, brought, decoration) = drawn;
        var cake = Cakes.Good(4, [8]) with { Tiers = [.. inches.Select((n, i) => Cakes.Tier(4, i + 1, n))], Decoration = decoration };
        var order = Cakes.With(brought ? cake with { Handover = cake.Handover with { Way = Way.Deliver, Address = "Mill Lane", RouteMinutes = 20 } } : cake, cupcakes);
        var steps = CakeSteps.Of(order, Shop);
        var ids = steps.Steps.Select(s => s.Id).ToHashSet();
        Assert.Equal(steps.Steps.Count, ids.Count);
        Assert.Equal(steps.Holds.Count, steps.Holds.Select(h => h.Id).Distinct().Count());
        Assert.All(steps.Holds, h => Assert.True(ids.Contains(h.From) && ids.Contains(h.To) && h.In.Count > 0, h.Id));
        Assert.All(steps.Ages, a => Assert.True(ids.Contains(a.From) && ids.Contains(a.To), a.Id));
        Assert.Contains(steps.Ready, ids);
        Assert.Equal(cupcakes.Sum(), steps.Steps.Where(s => s.Name == "pipe").Sum(s => StepWords.TiersOf(s.Id, order).Single().Special!.Cupcakes!.Count));
        Assert.Equal(cupcakes.Sum(n => (n + 11) / 12), steps.Steps.Where(s => s.Bake is not null && order.Beside.Any(b => b.Id.ToString("N") == s.Tier)).Sum(s => s.Bake!.Pans.Count));
        Assert.All(steps.Steps.Where(s => s.Name is not ("return" or "handover" or "deliver")), s => Assert.True(Leads(s.Id, steps), s.Id));
    });

    /// <summary>More of them keep the keys of those that are made already: a tick is never lost.</summary>
    [Fact]
    public void More_cupcakes_keep_the_keys()
    {
        var more = Alone with { Tiers = [Alone.Tiers[0] with { Special = new TierSpecial { Cupcakes = new Cupcakes(60) } }] };
        Assert.Empty(CakeSteps.Of(Alone, Shop).Steps.Select(s => s.Id).Except(CakeSteps.Of(more, Shop).Steps.Select(s => s.Id)));
    }

    [Fact]
    public void The_kitchen_reads_how_many()
    {
        var order = Cakes.Alone(1, 36);
        var steps = CakeSteps.Of(order, Shop).Steps.Where(s => s.Name is "pipe" or "box").ToList();
        Assert.Equal(["Pipe 24 cupcakes", "Box 24 cupcakes", "Pipe 12 cupcakes", "Box 12 cupcakes"], steps.Select(s => StepWords.Big(s.Name, StepWords.TiersOf(s.Id, order), Shop)));
        Assert.Equal("Pipe 36 cupcakes", StepWords.Big("pipe", StepWords.Together(steps.Where(s => s.Name == "pipe").SelectMany(s => StepWords.TiersOf(s.Id, order))), Shop));
        Assert.Equal(["Blush", "Boxes 2 × 12", "Blush", "Boxes 1 × 12"], steps.Select(s => StepWords.Detail([s], StepWords.TiersOf(s.Id, order), order)));
        Assert.Equal("Turn out 36", StepWords.Big("turnout", order.Tiers, Shop));
        Assert.Equal("Hand over all", StepWords.Big("handover", Cakes.With(Cakes.Good(), 12).Tiers, Shop));
        Assert.Empty(StepWords.TiersOf(new StepKey(order.Id, null, "stack", 1).ToString(), order));
    }

    private static bool Leads(string from, CakeSteps steps)
    {
        var (seen, open) = (new HashSet<string> { from }, new Queue<string>([from]));
        while (open.TryDequeue(out var step))
        {
            if (step == steps.Out)
            {
                return true;
            }

            steps.Holds.Where(h => h.From == step && seen.Add(h.To)).ToList().ForEach(h => open.Enqueue(h.To));
        }

        return false;
    }

    private static int Minutes(CakeSteps steps, string name) => steps.Steps.First(s => s.Name == name).Minutes;

    private static Hold Between(CakeSteps steps, string from, string to) => steps.Holds.Single(h => Is(h.From, from) && Is(h.To, to));

    private static bool Is(string step, string operation) => StepKey.Parse(step)!.Value.Operation == operation;
}
