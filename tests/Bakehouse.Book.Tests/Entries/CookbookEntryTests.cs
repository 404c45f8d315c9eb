namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Recipes;
using NodaTime;

/// <summary>Recipes in the book: versions, what an order keeps, what a change stops, and who reads back. Our own rules.</summary>
public sealed class CookbookEntryTests : IDisposable
{
    private readonly BookOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Fact]
    public async Task A_cookbook_is_kept_by_version_and_read_back_as_it_was_written()
    {
        await Accepted(BookOnDisk.Recipes());
        disk.Reopen();
        Assert.Equal(1, disk.Book.State.Cookbook.Version);
        Assert.Equal(Starter.Sample.Recipes.Select(r => (r.Id, r.Version, r.Name, r.Lines.Count)), disk.Book.State.Cookbook.Recipes.Select(r => (r.Id, r.Version, r.Name, r.Lines.Count)));
        Assert.Equal(Starter.Sample.Total(Starter.Sample.Recipe("carrot")!), disk.Book.State.Cookbook.Total(disk.Book.State.Cookbook.Recipe("carrot")!));
        Assert.Equal(["milk"], disk.Book.State.Cookbook.Ingredient("butter")!.InUse!.Facts!.Has);
    }

    [Fact]
    public async Task Of_two_who_change_a_recipe_the_second_is_told_and_two_recipes_may_be_changed_at_once()
    {
        await Accepted(BookOnDisk.Recipes());
        var (vanilla, lemon) = (Recipe("vanilla"), Recipe("lemon"));
        await Accepted(Changed(vanilla with { Notes = "One" }));
        await Accepted(Changed(lemon with { Notes = "Two" }));
        var second = await disk.Enter(Changed(vanilla with { Notes = "Three" }));
        Assert.Equal((AnswerKind.Clash, "Vanilla butter cake was changed meanwhile. Look at it again."), (second.Kind, second.Message));
        Assert.Equal(("One", "Two", 3), (Recipe("vanilla").Notes, Recipe("lemon").Notes, disk.Book.State.Cookbook.Version));
    }

    [Fact]
    public async Task Everything_wrong_is_told_in_one_answer_and_nothing_is_written()
    {
        await Accepted(BookOnDisk.Recipes());
        var vanilla = Recipe("vanilla");
        var bad = vanilla with { Lines = [RecipeLine.Grams("sugar", -1), RecipeLine.Part("vanilla", 1), RecipeLine.Grams("nothing", 1)] };
        var answer = await disk.Enter(new WriteRecipes(BookOnDisk.NewId(), "ines", "counter", [], [bad], " "));
        Assert.Equal(AnswerKind.Refused, answer.Kind);
        Assert.Equal(["why", "Vanilla butter cake, row 1", "Vanilla butter cake, row 3"], answer.Problems.Select(p => p.Where));
        var ring = await disk.Enter(Changed(vanilla with { Lines = [RecipeLine.Part("vanilla", 1)] }));
        Assert.Equal("This recipe is inside itself.", ring.Message);
        Assert.Equal("There is no such ingredient.", (await disk.Enter(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "moon-dust", new Pack("a", null)))).Message);
        Assert.Equal(1, disk.Book.State.Cookbook.Version);
    }

    [Fact]
    public async Task A_planned_order_keeps_its_recipes_and_stops_at_the_next_making_step_until_the_owner_has_looked()
    {
        await Accepted(BookOnDisk.Recipes());
        var order = (await Accepted(Write(BookOnDisk.Order()))).Order!;
        Assert.Equal((1, 1), (order.MadeFrom!.Cookbook, order.MadeFrom.LookedAt));
        var changed = await Accepted(Changed(Recipe("vanilla") with { Lines = [.. Recipe("vanilla").Lines, RecipeLine.Grams("ground-almonds", 50)] }));
        Assert.Equal("Look at order 401: what it is made from has changed.", changed.Message);
        Assert.Equal(AllergenStatus.HasNot, Contained(order.Id).Whole.Status("almonds"));

        var mix = Step("mix");
        var stopped = await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", mix, "petra"));
        Assert.Equal((AnswerKind.Refused, "What it is made from has changed since it was taken."), (stopped.Kind, stopped.Message));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", Step("bake"), "petra"))).Kind);

        order = disk.Book.State.Orders.Single();
        var moved = (await Accepted(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, true, []))).Order!;
        Assert.Equal((2, 2), (moved.MadeFrom!.Cookbook, moved.MadeFrom.LookedAt));
        Assert.Equal(AllergenStatus.Has, Contained(order.Id).Whole.Status("almonds"));
        await Accepted(new TickStep(BookOnDisk.NewId(), "petra", "tablet", mix, "petra"));
    }

    [Fact]
    public async Task Kept_recipes_stay_after_a_restart_and_a_new_name_stops_nobody()
    {
        await Accepted(BookOnDisk.Recipes());
        var order = (await Accepted(Write(BookOnDisk.Order()))).Order!;
        Assert.Empty((await Accepted(Changed(Recipe("lemon-curd") with { Notes = "Slowly" }))).Message);
        await Accepted(Changed(Recipe("vanilla") with { Lines = [.. Recipe("vanilla").Lines, RecipeLine.Grams("ground-almonds", 50)] }));
        await Accepted(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, false, []));
        disk.Reopen();
        var kept = disk.Book.State.Orders.Single();
        Assert.Equal((1, 3), (kept.MadeFrom!.Cookbook, kept.MadeFrom.LookedAt));
        Assert.Equal(AllergenStatus.HasNot, Contained(order.Id).Whole.Status("almonds"));
        Assert.Empty(disk.Book.State.StopsOf(kept));
        Assert.Equal(AnswerKind.Clash, (await disk.Enter(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, true, []))).Kind);
    }

    [Fact]
    public async Task A_new_pack_asks_for_its_label_before_use_and_the_old_one_can_be_locked_for_a_cake()
    {
        await Accepted(BookOnDisk.Recipes());
        var order = (await Accepted(Write(BookOnDisk.Order()))).Order!;
        var moved = (await Accepted(Write(BookOnDisk.Order("Hale", day: 20)))).Order!;
        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "icing-sugar", new Pack("second", null)));
        Assert.NotEmpty(disk.Book.State.StopsOf(order));
        Assert.Equal("There is no such pack, or two are locked of one ingredient.", (await disk.Enter(Locked("third"))).Message);
        var locked = (await Accepted(Locked("sample"))).Order!;
        Assert.Empty(disk.Book.State.StopsOf(locked));

        var late = (await Accepted(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", moved.Id, moved.Version, true, []))).Order!;
        Assert.Contains(disk.Book.State.StopsOf(late), p => p.Value == "Icing sugar" && p.Sentence == "Nobody has said yet what that contains.");
        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "icing-sugar", new Pack("second", AllergenFacts.Only())));
        Assert.Empty(disk.Book.State.StopsOf(locked));
        Assert.Equal("Recipes", Assert.Single(disk.Book.State.StopsOf(late), p => p.Where == "Recipes").Where);

        LookAtRecipes Locked(string lot) => new(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, true, [new PackLock("icing-sugar", lot)]);
    }

    [Fact]
    public async Task A_cake_that_avoids_something_keeps_its_recipes_only_with_the_old_pack_put_aside()
    {
        await Accepted(BookOnDisk.Recipes());
        var order = (await Accepted(Write(BookOnDisk.Order() with { Allergies = new AllergyAnswer(AllergyKind.Avoid, ["hazelnuts"], "") }))).Order!;
        var others = AllergenFacts.Only("milk", "hazelnuts").HasNot;
        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "butter", new Pack("second", new AllergenFacts(["milk"], ["hazelnuts"], others, 0))));
        var kept = await disk.Enter(Look([]));
        Assert.Equal((AnswerKind.Refused, "Another pack is open since, and its label says something else or was not read."), (kept.Kind, kept.Message));
        Assert.Equal("Keep the old pack for this cake on the ingredient's page, or make the cake from the new recipes.", Assert.Single(kept.Problems).Try);
        Assert.DoesNotContain(disk.Book.State.StopsOf((await Accepted(Look([new PackLock("butter", "sample")]))).Order!), p => p.Where == "Recipes");

        LookAtRecipes Look(IReadOnlyList<PackLock> packs) => new(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, false, packs);
    }

    [Fact]
    public async Task A_label_read_anew_counts_for_cakes_of_that_pack_whatever_recipes_they_keep()
    {
        await Accepted(BookOnDisk.Recipes());
        var order = (await Accepted(Write(BookOnDisk.Order()))).Order!;
        var notIn = new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "walnuts", new Pack("sample", AllergenFacts.Only("walnuts", "sesame")));
        Assert.Empty((await Accepted(notIn)).Message);
        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "sugar", new Pack("sample", AllergenFacts.Only("sesame"))));
        var kept = await disk.Enter(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, false, []));
        Assert.Equal((AnswerKind.Refused, "Sugar, granulated sample"), (kept.Kind, Assert.Single(kept.Problems).Value));
        await Accepted(new LookAtRecipes(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, true, []));
        Assert.Equal(AllergenStatus.Has, Contained(order.Id).Whole.Status("sesame"));
    }

    [Fact]
    public async Task Versions_of_a_recipe_are_read_with_their_reasons_the_newest_first()
    {
        await Accepted(BookOnDisk.Recipes());
        await Accepted(Changed(Recipe("lemon") with { Notes = "Two" }));
        await Accepted(Changed(Recipe("vanilla") with { Notes = "Three" }));
        var versions = await disk.Book.RecipeHistory("vanilla", TestContext.Current.CancellationToken);
        Assert.Equal([(2, "Three", "Tried it"), (1, "", versions[1].Why)], versions.Select(v => (v.Recipe.Version, v.Recipe.Notes, v.Why)));
        Assert.Equal("ines", versions[0].Person);
        Assert.Empty(await disk.Book.RecipeHistory("moon-dust", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task What_must_be_avoided_is_weighed_before_an_order_is_taken_and_a_day_may_be_kept()
    {
        await Accepted(BookOnDisk.Recipes());
        var refused = await disk.Enter(Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "milk", "nuts")));
        var problem = Assert.Single(refused.Problems);
        Assert.Equal(("Allergies", "milk"), (problem.Where, problem.Value));
        Assert.StartsWith("It contains milk: Butter", problem.Sentence, StringComparison.Ordinal);

        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "sugar", new Pack("second", null)));
        var unknown = BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts");
        Assert.Equal(["Allergies", "Contains"], (await disk.Enter(Write(unknown))).Problems.Select(p => p.Where));
        var kept = (await Accepted(Write(unknown with { Stage = Stage.Kept }))).Order!;
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new MoveStage(BookOnDisk.NewId(), "ines", "counter", kept.Id, kept.Version, Stage.Booked))).Kind);
    }

    [Fact]
    public async Task Of_what_nobody_has_read_no_order_is_taken_a_day_may_be_kept_and_nobody_works_on_it()
    {
        await Accepted(BookOnDisk.Recipes());
        await Accepted(new OpenPack(BookOnDisk.NewId(), "petra", "tablet", "sugar", new Pack("second", null)));
        var refused = Assert.Single((await disk.Enter(Write(BookOnDisk.Order()))).Problems);
        Assert.Equal(("Contains", "Sugar, granulated", "Nobody has said yet what that contains."), (refused.Where, refused.Value, refused.Sentence));
        var kept = (await Accepted(Write(BookOnDisk.Order() with { Stage = Stage.Kept }))).Order!;
        Assert.Equal("Contains", Assert.Single(disk.Book.State.StopsOf(kept)).Where);
        Assert.Equal(AnswerKind.Refused, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", Step("mix"), "petra"))).Kind);
    }

    [Fact]
    public async Task Somebody_else_reads_back_what_must_be_avoided_before_the_first_making_step()
    {
        var order = (await Accepted(new WriteOrder(BookOnDisk.NewId(), "wren", "counter", BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts")))).Order!;
        Assert.Equal("What must be avoided has not been read back.", (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", Step("mix"), "petra"))).Message);
        Assert.Equal("Whoever wrote it down can't read it back.", (await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "wren", "counter", order.Id, order.Version))).Message);
        var read = (await Accepted(new ReadBackAllergies(BookOnDisk.NewId(), "petra", "tablet", order.Id, order.Version))).Order!;
        Assert.Equal(("wren", "petra", false), (read.Statement!.By, read.Statement.ReadBackBy, read.Statement.SamePerson));
        Assert.Equal("It was read back already.", (await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "dov", "tablet", order.Id, read.Version))).Message);
        await Accepted(new TickStep(BookOnDisk.NewId(), "petra", "tablet", Step("mix"), "petra"));
    }

    [Fact]
    public async Task Other_words_are_read_back_anew_the_same_words_are_not_and_no_screen_says_who()
    {
        var order = (await Accepted(Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts")))).Order!;
        var read = (await Accepted(new ReadBackAllergies(BookOnDisk.NewId(), "petra", "tablet", order.Id, order.Version))).Order!;
        var noted = (await Accepted(Write(read with { Notes = "By the side door", Statement = null, MadeFrom = null }))).Order!;
        Assert.Equal((read.Statement, 0), (noted.Statement, noted.MadeFrom!.Cookbook));
        var more = (await Accepted(Write(BookOnDisk.Avoiding(noted, "nuts", "sesame") with { Statement = new Statement("x", Instant.MinValue, "y", Instant.MinValue) }))).Order!;
        Assert.Null(more.Statement!.ReadBack);
        Assert.Equal("ines", more.Statement.By);
        Assert.Null((await Accepted(Write(more with { Allergies = AllergyAnswer.NoneTold }))).Order!.Statement);
        Assert.Equal("Nothing must be avoided in this order.", (await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "petra", "tablet", order.Id, more.Version + 1))).Message);
    }

    [Fact]
    public async Task Who_works_alone_reads_back_after_ten_minutes_and_it_stays_visible()
    {
        var alone = disk.Book.State.Shop!;
        await Accepted(new WriteShop(BookOnDisk.NewId(), "ines", "counter", alone with { People = [.. alone.People.Where(p => p.Id == "ines")] }));
        var order = (await Accepted(Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts")))).Order!;
        Assert.Equal("Read it again from 08:10 on.", Assert.Single((await disk.Enter(ReadBack())).Problems).Try);
        disk.Clock.AdvanceMinutes(10);
        Assert.True((await Accepted(ReadBack())).Order!.Statement!.SamePerson);

        ReadBackAllergies ReadBack() => new(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version);
    }

    [Fact]
    public async Task An_order_taken_before_there_were_recipes_is_looked_at_once_there_are()
    {
        var order = (await Accepted(Write(BookOnDisk.Order()))).Order!;
        Assert.Empty(disk.Book.State.StopsOf(order));
        Assert.Equal("Look at order 401: what it is made from has changed.", (await Accepted(BookOnDisk.Recipes())).Message);
        Assert.NotEmpty(disk.Book.State.StopsOf(order));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new MoveStage(BookOnDisk.NewId(), "ines", "counter", order.Id, order.Version, Stage.Cancelled))).Kind);
    }

    private Recipe Recipe(string id) => disk.Book.State.Cookbook.Recipe(id)!;

    private static WriteRecipes Changed(Recipe recipe) => new(BookOnDisk.NewId(), "ines", "counter", [], [recipe], "Tried it");

    private static WriteOrder Write(Order order) => new(BookOnDisk.NewId(), "ines", "counter", order);

    private string Step(string operation) => disk.Book.State.Wall!.Plan.Steps.Select(s => s.Step).First(s => StepKey.Parse(s)!.Value.Operation == operation);

    private CakeContents Contained(Guid id)
    {
        var (state, order) = (disk.Book.State, disk.Book.State.Orders.Single(o => o.Id == id));
        return CakeContents.Of(order, state.CookbookOf(order), state.Shop!.Allergens, Domain.Cakes.CakeFigures.Usual)!;
    }

    private async Task<Answer> Accepted(Command command)
    {
        var answer = await disk.Enter(command);
        Assert.True(answer.Kind == AnswerKind.Accepted, $"{command.GetType().Name}: {answer.Message} {string.Join(' ', answer.Problems)}");
        return answer;
    }
}
