namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using NodaTime;

/// <summary>One bowl, a batter with nuts, and a cake that must be kept from them: an allergen stop, whoever tells what when.</summary>
public sealed class UncleanBowlTests
{
    private static readonly Order Nutty = BookOnDisk.Order("Hale", day: 16) is var order ? order with { Tiers = [order.Tiers[0] with { Sponge = "carrot" }] } : order;

    [Fact]
    public async Task What_a_bowl_met_is_known_until_the_next_cake_that_is_kept_from_it()
    {
        using var disk = await OneBowl();
        await disk.Write(Nutty);
        var plain = (await disk.Write(BookOnDisk.Order("Fenn", day: 17))).Order!;
        foreach (var mix in Mixes(disk).Select(r => r.Step).ToList())
        {
            await Tick(disk, mix);
            Assert.Contains("nuts", InBowl(disk));
        }

        await Tick(disk, disk.Book.State.Wall!.Plan.Steps.Where(r => StepKey.Parse(r.Step) is { Operation: "bake" } key && key.Order == plain.Id).MinBy(r => r.Start)!.Step);
        await Tick(disk, disk.Book.State.Wall!.Plan.Steps.Where(r => StepKey.Parse(r.Step) is { Operation: "turnout" } key && key.Order == plain.Id).MinBy(r => r.Start)!.Step);
        Assert.Contains("nuts", InBowl(disk));
    }

    [Fact]
    public async Task A_batter_that_must_be_kept_from_the_last_one_is_ticked_only_once_the_bowl_can_have_been_cleaned_down()
    {
        using var disk = await OneBowl();
        await disk.Write(Nutty);
        var kept = (await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order("Moss", day: 17), "nuts"))).Order!;
        await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "wren", "tablet", kept.Id, kept.Version));
        var clean = Assert.Single(disk.Book.State.Wall!.Plan.Cleans);
        foreach (var nutty in Mixes(disk).Where(r => StepKey.Parse(r.Step)!.Value.Order == Nutty.Id && r.Start < clean.Start).ToList())
        {
            await Tick(disk, nutty.Step);
        }

        clean = Assert.Single(disk.Book.State.Wall!.Plan.Cleans);
        var mix = Mixes(disk).First(r => StepKey.Parse(r.Step)!.Value.Order == kept.Id);
        disk.Clock.Reset(disk.Book.State.Wall!.Epoch + Duration.FromMinutes(clean.Start - 5));
        var early = await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", mix.Step, "petra"));
        Assert.Equal(AnswerKind.Refused, early.Kind);
        Assert.Contains("met nuts and is not cleaned down yet", early.Message, StringComparison.Ordinal);

        mix = Mixes(disk).First(r => StepKey.Parse(r.Step)!.Value.Order == kept.Id);
        disk.Clock.Reset(disk.Book.State.Wall!.Epoch + Duration.FromMinutes(mix.Start + 5));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", mix.Step, "petra"))).Kind);
    }

    /// <summary>One clean-down serves all that is made behind it for the same customer: once a kept batter is ticked, the next one asks for no other.</summary>
    [Fact]
    public async Task A_clean_down_counts_once_a_kept_batter_was_made_behind_it()
    {
        using var disk = await OneBowl();
        await disk.Write(Nutty);
        var kept = (await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order("Moss", day: 17, inches: [12, 10]), "nuts"))).Order!;
        await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "wren", "tablet", kept.Id, kept.Version));
        var cleans = 0;
        foreach (var _ in Enumerable.Range(0, 12))
        {
            var open = disk.Book.State.Wall!.Plan.Steps.Where(r => r.Machine == "bowl20" && r.People.Count > 0 && StepKey.Parse(r.Step)!.Value.Order == kept.Id).OrderBy(r => r.Start).ToList();
            if (open.Count == 0)
            {
                break;
            }

            await Tick(disk, open[0].Step);
            var last = disk.Book.State.Wall!.Plan.Steps.Single(r => r.Step == open[0].Step).Start;
            cleans = disk.Book.State.Wall!.Plan.Cleans.Count(c => c.Start > last);
            var nutsAhead = disk.Book.State.Wall!.Plan.Steps.Any(r => r.Machine == "bowl20" && r.People.Count > 0 && StepKey.Parse(r.Step) is { Operation: "mix" } key && key.Order == Nutty.Id);
            Assert.True(nutsAhead || cleans == 0, $"{cleans} more clean-downs with nothing in the bowl to clean of");
        }

        Assert.Equal(0, cleans);
    }

    [Fact]
    public async Task An_allergy_by_the_shops_own_recipe_told_after_the_batter_is_refused_too()
    {
        using var disk = await OneBowl();
        await disk.Enter(BookOnDisk.Recipes());
        var vanilla = disk.Book.State.Cookbook.Recipe("vanilla")!;
        await disk.Enter(new WriteRecipes(BookOnDisk.NewId(), "ines", "counter", [], [vanilla with { Lines = [.. vanilla.Lines, RecipeLine.Grams("ground-almonds", 100)] }], "Almonds keep it moist"));
        await disk.Write(BookOnDisk.Order("Hale", day: 16));
        var plain = BookOnDisk.Order("Fenn", day: 17);
        plain = (await disk.Write(plain with { Tiers = [plain.Tiers[0] with { Sponge = "lemon" }] })).Order!;
        foreach (var mix in Mixes(disk).Select(r => r.Step).ToList())
        {
            await Tick(disk, mix);
        }

        var order = disk.Book.State.Orders.Single(o => o.Id == plain.Id);
        Assert.Contains((await disk.Write(BookOnDisk.Avoiding(order, "nuts"))).Problems, p => p.Sentence.Contains("met nuts before the ", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_allergy_told_after_the_batter_was_mixed_in_a_bowl_that_met_it_is_refused_and_named()
    {
        using var disk = await OneBowl();
        await disk.Write(Nutty);
        var plain = (await disk.Write(BookOnDisk.Order("Fenn", day: 17))).Order!;
        foreach (var mix in Mixes(disk).Select(r => r.Step).ToList())
        {
            await Tick(disk, mix);
        }

        var order = disk.Book.State.Orders.Single(o => o.Id == plain.Id);
        var refused = await disk.Write(BookOnDisk.Avoiding(order, "nuts"));
        Assert.Contains("met nuts before the ", Assert.Single(refused.Problems).Sentence, StringComparison.Ordinal);
        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Avoiding(order, "fish"))).Kind);
    }

    /// <summary>The customer calls while the batter runs: the mix has not begun, and a clean-down comes first.</summary>
    [Fact]
    public async Task An_allergy_told_while_the_batter_is_planned_for_now_plans_it_anew_behind_a_clean_down()
    {
        using var disk = await OneBowl();
        await disk.Write(Nutty);
        var plain = (await disk.Write(BookOnDisk.Order("Fenn", day: 17))).Order!;
        var nutty = Mixes(disk).Single(r => StepKey.Parse(r.Step)!.Value.Order == Nutty.Id);
        await Tick(disk, nutty.Step);
        var mix = disk.Book.State.Wall!.Plan.Steps.Where(r => StepKey.Parse(r.Step)!.Value.Order == plain.Id && r.Machine == nutty.Machine).MinBy(r => r.Start)!;
        Assert.True(nutty.Start < mix.Start, "the batter with nuts comes first");
        disk.Clock.Reset(disk.Book.State.Wall!.Epoch + Duration.FromMinutes(mix.Start + 5));
        var told = await disk.Write(BookOnDisk.Avoiding(plain, "nuts"));
        Assert.Equal((AnswerKind.Accepted, ""), (told.Kind, told.Message + string.Concat(told.Problems.Select(p => p.Sentence))));
        var clean = disk.Book.State.Wall!.Plan.Cleans.Max(c => c.Start);
        Assert.All(disk.Book.State.Wall!.Plan.Steps.Where(r => StepKey.Parse(r.Step)!.Value.Order == plain.Id && r.Machine == nutty.Machine), r => Assert.True(r.Start > clean));
    }

    /// <summary>The shop's own vanilla with almonds in it is a batter with nuts, whatever a vanilla usually contains.</summary>
    [Fact]
    public async Task What_the_shops_own_recipe_puts_into_a_batter_is_cleaned_out_of_its_bowl()
    {
        using var disk = await OneBowl();
        await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order("Moss", day: 17), "nuts"));
        Assert.Empty(disk.Book.State.Wall!.Plan.Cleans);
        await disk.Enter(BookOnDisk.Recipes());
        var vanilla = disk.Book.State.Cookbook.Recipe("vanilla")!;
        await disk.Enter(new WriteRecipes(BookOnDisk.NewId(), "ines", "counter", [], [vanilla with { Lines = [.. vanilla.Lines, RecipeLine.Grams("ground-almonds", 100)] }], "Almonds keep it moist"));

        Assert.Equal(AnswerKind.Accepted, (await disk.Write(BookOnDisk.Order("Fenn", day: 16))).Kind);
        Assert.All(disk.Book.State.Week!.Steps.Where(s => s.Order == disk.Book.State.Orders.Single(o => o.Customer.Name == "Fenn").Id.ToString("N") && s.Mix is { Family: "vanilla" }), s => Assert.Contains("nuts", s.Has));
        Assert.NotEmpty(disk.Book.State.Wall!.Plan.Cleans);
    }

    private static async Task<BookOnDisk> OneBowl()
    {
        var disk = new BookOnDisk();
        var shop = disk.Book.State.Shop!;
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new WriteShop(BookOnDisk.NewId(), "ines", "counter", shop with { Bowls = [shop.Bowls.MaxBy(b => b.Litres)!] }))).Kind);
        return disk;
    }

    private static IEnumerable<StepRow> Mixes(BookOnDisk disk) =>
        disk.Book.State.Wall!.Plan.Steps.Where(r => StepKey.Parse(r.Step) is { Operation: "mix" }).OrderBy(r => r.Start);

    private static HashSet<string> InBowl(BookOnDisk disk) => [.. disk.Book.State.Week!.Steps.Where(s => s.Mix is not null && s.Skill is null).SelectMany(s => s.Has)];

    private static async Task Tick(BookOnDisk disk, string step)
    {
        var row = disk.Book.State.Wall!.Plan.Steps.Single(r => r.Step == step);
        var end = disk.Book.State.Wall!.Epoch + Duration.FromMinutes(row.Start + disk.Book.State.Week!.Steps.Single(s => s.Id == step).Minutes);
        disk.Clock.Reset(Instant.Max(disk.Clock.GetCurrentInstant(), end));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", step, "petra"))).Kind);
    }
}
