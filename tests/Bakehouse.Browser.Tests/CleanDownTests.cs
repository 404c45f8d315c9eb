namespace Bakehouse.Browser.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>
/// A cake with walnuts, and one for somebody who must avoid nuts: the clean-down of their bowl stands on the kitchen's list, on the step
/// behind it and on its card.
/// </summary>
public sealed class CleanDownTests(OpenShop open) : IClassFixture<OpenShop>
{
    private IBook Book => open.Shop.Services.GetRequiredService<IBook>();

    [Fact]
    public async Task It_stands_on_the_list_on_the_step_behind_it_and_on_the_card()
    {
        await OneBowl();
        await Taken("Moss", "carrot", AllergyAnswer.NoneTold, new(2026, 10, 17, 15, 0));
        var kept = await Taken("Fenn", "vanilla", new AllergyAnswer(AllergyKind.Avoid, ["nuts"], ""), new(2026, 10, 17, 16, 0));
        await Book.Enter(new ReadBackAllergies(Guid.NewGuid(), "wren", "tablet", kept.Id, kept.Version), TestContext.Current.CancellationToken);
        var (wall, clean, behind) = Behind(kept);

        open.Shop.Clock.MoveTo(wall.Epoch + Duration.FromMinutes(clean.Start - 5));
        foreach (var (width, height) in new[] { (1280, 800), (1024, 768), (390, 844) })
        {
            var who = width > 900 ? "all" : clean.People[0];
            var page = await open.Shop.Screen(width, height, touch: true);
            await page.IAm("Petra");
            await page.GotoAsync($"/kitchen?for={who}");
            await Expect(page.Locator(".then li").First).ToContainTextAsync("bowl down wet");
            // Nobody ticked the day before: its rings lie over the list that is looked at.
            await page.EvaluateAsync("() => document.querySelectorAll('[role=alertdialog]').forEach(e => e.remove())");
            await Expect(page.Locator(".then li").First).ToBeInViewportAsync();
            await page.Picture($"clean-down-{width}");
            await PagesTests.IsWhole(page);
            await page.GotoAsync($"/kitchen/step/{behind}");
            await Expect(page.Locator("main")).ToContainTextAsync("down wet first: nuts went into it");
            await page.Picture($"clean-down-card-{width}");
            await PagesTests.IsWhole(page);
            await page.Context.CloseAsync();
        }
    }

    /// <summary>The last clean-down before the first step of that cake in its bowl.</summary>
    private (Wall Wall, CleanRow Clean, string Behind) Behind(Order kept)
    {
        var wall = Book.State.Wall!;
        var behind = wall.Plan.Steps.Where(r => StepKey.Parse(r.Step)!.Value.Order == kept.Id && wall.Plan.Cleans.Any(c => c.Machine == r.Machine && c.Start < r.Start)).MinBy(r => r.Start)!;
        return (wall, wall.Plan.Cleans.Where(c => c.Machine == behind.Machine && c.Start < behind.Start).MaxBy(c => c.Start)!, behind.Step);
    }

    private async Task OneBowl()
    {
        var shop = Book.State.Shop!;
        var answer = await Book.Enter(new WriteShop(Guid.NewGuid(), "ines", "office", shop with { Bowls = [shop.Bowls.MaxBy(b => b.Litres)!] }), TestContext.Current.CancellationToken);
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message + string.Join(' ', answer.Problems.Select(p => p.Sentence)));
    }

    private async Task<Order> Taken(string name, string sponge, AllergyAnswer allergies, LocalDateTime at)
    {
        var like = Book.State.Orders.Single(o => o.Number == 405);
        var order = like with
        {
            Id = Guid.NewGuid(), Number = 0, Version = 0, Stage = Stage.Booked, MadeFrom = null, Decoration = Decoration.Simple, Inscription = "", Customer = new Customer(name, "+442079460182"), Handover = new Handover(Way.Collect, at, "", 0), Allergies = allergies,
            Tiers = [like.Tiers[^1] with { Id = Guid.NewGuid(), Sponge = sponge }], Portions = new Portions(8, Cut.Dessert),
        };
        var answer = await Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "office", order), TestContext.Current.CancellationToken);
        Assert.True(answer.Kind == AnswerKind.Accepted, answer.Message + string.Join(' ', answer.Problems.Select(p => p.Sentence)));
        return answer.Order!;
    }
}
