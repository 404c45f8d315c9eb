namespace Bakehouse.Browser.Tests;

using System.Text.RegularExpressions;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Planner.Solver;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using NodaTime;
using static Microsoft.Playwright.Assertions;

/// <summary>The owner asks for a better plan, looks at what moves, and takes it.</summary>
public sealed class BetterPlanTests(RunningShop shop) : IClassFixture<RunningShop>
{
    [Fact]
    public async Task A_plan_that_somebody_made_worse_by_hand_is_found_better_and_taken()
    {
        var week = await shop.Screen(1440, 900);
        await week.OpenTheSample();
        await week.IAm("Ines");
        var made = Book.State.Week!.Reference!;
        await WorkLonger();
        shop.Finds = (w, stands, _) => Task.FromResult(Back(w, stands, made));
        await week.GotoAsync("/week");
        await week.UntilAlive();
        var (head, before) = (Book.State.Head, Levels());
        await week.GetByRole(AriaRole.Button, new() { Name = "Look for a better plan" }).ClickAsync();
        await Expect(week.GetByText("A better plan is in sight.")).ToBeVisibleAsync();
        Assert.Equal(head, Book.State.Head);
        await week.Picture("better-offered-1440");
        await week.GetByRole(AriaRole.Button, new() { Name = "See what moves" }).ClickAsync();
        await Expect(week.Locator(".better .week-foretold li").First).ToBeVisibleAsync();
        await week.Picture("better-moves-1440");
        await week.SetViewportSizeAsync(390, 844);
        await week.Picture("better-moves-390");
        await week.GetByRole(AriaRole.Button, new() { Name = "Use this plan" }).ClickAsync();
        await Expect(week.GetByText(new Regex("The new plan hangs since"))).ToBeVisibleAsync();
        Assert.True(Levels().CompareTo(before) < 0, $"It was {before}, now {Levels()}.");
    }

    /// <summary>Bakings are put later by hand and let go, until somebody works an hour longer than before.</summary>
    private async Task WorkLonger()
    {
        var (wall, before) = (Book.State.Wall!, Levels().Overtime);
        var soon = shop.Clock.GetCurrentInstant() + Duration.FromHours(5);
        foreach (var row in wall.Plan.Steps.Where(r => r.Step.Contains(".bake.", StringComparison.Ordinal) && wall.Epoch + Duration.FromMinutes(r.Start) > soon).OrderBy(r => r.Start))
        {
            foreach (var later in new[] { 180, 120, 60 })
            {
                var pin = new PinStep(Guid.NewGuid(), "ines", "office", row.Step, wall.Epoch + Duration.FromMinutes(row.Start + later), row.People, row.Machine, Book.State.Head);
                if ((await Book.Enter(pin, TestContext.Current.CancellationToken)).Kind == AnswerKind.Accepted)
                {
                    await Book.Enter(new UnpinStep(Guid.NewGuid(), "ines", "office", row.Step), TestContext.Current.CancellationToken);
                    break;
                }
            }

            if (Levels().Overtime >= before + 60)
            {
                return;
            }
        }

        Assert.Fail($"By hand overtime grew only from {before} to {Levels().Overtime} min.");
    }

    /// <summary>What hangs now, but for what is not done as it was made.</summary>
    private static Improved Back(Week week, Plan stands, Plan made)
    {
        var given = week.Fixed.Select(f => f.Step ?? f.Hold).ToHashSet();
        var (steps, holds) = (made.Steps.ToDictionary(r => r.Step), made.Holds.ToDictionary(r => r.Hold));
        var plan = stands with
        {
            Steps = [.. stands.Steps.Select(r => given.Contains(r.Step) ? r : steps[r.Step])],
            Holds = [.. stands.Holds.Select(r => given.Contains(r.Hold) ? r : holds[r.Hold])],
            Cleans = made.Cleans,
        };
        return new Improved(plan, Judge.Examine(week, plan).Levels, false, null);
    }

    private Levels Levels() => Judge.Examine(Book.State.Week!, Book.State.Wall!.From(Book.State.Week!.Epoch)).Levels;

    private IBook Book => shop.Services.GetRequiredService<IBook>();
}
