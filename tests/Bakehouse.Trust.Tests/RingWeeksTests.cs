namespace Bakehouse.Trust.Tests;

using System.Diagnostics;
using System.Globalization;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Testing;
using NodaTime;

/// <summary>
/// Rings over simulated weeks, with the real book on disk, planner and bell: at full size 10,000 rings with at least 200 changes of the
/// plan and 50 starts of the app, in books of eight weeks each. A book that found something is named by its seed.
/// </summary>
public sealed class RingWeeksTests(ITestOutputHelper output)
{
    private const int Weeks = 8;

    private static (int Rings, int Changes, int Starts) Wanted => Seeds.Whole ? (10_000, 200, 50) : (50, 20, 1);

    [Fact]
    public void No_ring_is_lost_none_is_doubled_and_none_is_for_a_withdrawn_plan()
    {
        var (seed, began, watch) = (Seeds.Of(), Processor(), Stopwatch.StartNew());
        List<(BellWitness Bell, int Starts)> books = [];
        List<string> faults = [];
        while (books.Sum(b => b.Bell.Jobs) < Wanted.Rings)
        {
            using var shop = new SimulatedShop(unchecked(seed + books.Count));
            var bell = Run(shop, unchecked(seed + books.Count), Wanted.Rings - books.Sum(b => b.Bell.Jobs), faults);
            books.Add((bell, shop.Faults.GetValueOrDefault(SimulatedShop.StartedAgain)));
        }

        var (changes, starts, withdrawn) = (books.Sum(b => b.Bell.PlanChanges), books.Sum(b => b.Starts), books.Sum(b => b.Bell.Withdrawn));
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"seed {seed}, {books.Count} books of {Weeks} weeks: {books.Sum(b => b.Bell.Jobs)} rings ({books.Sum(b => b.Bell.Rings)} with those that came again at another time), {changes} changes of the plan, {starts} starts; 0 lost, 0 doubled, 0 for a withdrawn plan. {withdrawn} fell silent with their plan, {books.Sum(b => b.Bell.CameAgain.Count)} of them rang again, after {books.Max(b => b.Bell.CameAgain.Longest.TotalMinutes):0} min at most. {watch.Elapsed.TotalSeconds:0} s, {Processor() - began:0} s of processor time"));
        Assert.True(faults.Count == 0, $"{faults.Count} commands met a fault: {string.Join('\n', faults.Take(20))}");
        Assert.True(changes >= Wanted.Changes && starts >= Wanted.Starts && withdrawn > 0, $"{changes} changes, {starts} starts and {withdrawn} withdrawn prove too little.");
    }

    /// <summary>
    /// Books in which an order was changed after something of it was begun or done: the others were pushed onto its hands, or it was given a
    /// shelf in the past that was full, and the plan
    /// broke a rule.
    /// </summary>
    [Theory]
    [InlineData(37965490, 4)]
    [InlineData(37965488, 14)]
    [InlineData(37965487, 8)]
    public void What_has_begun_of_an_order_that_changes_keeps_its_hands(int seed, int days)
    {
        using var shop = new SimulatedShop(seed);
        var kitchen = new BusyKitchen(shop);
        for (var end = shop.Clock.GetCurrentInstant() + Duration.FromDays(days); shop.Clock.GetCurrentInstant() < end;)
        {
            Assert.Null(kitchen.Turn());
        }

        Assert.Empty(kitchen.Faults);
    }

    /// <summary>The witness can fail: what is taken from a right list of rings, or put into it, is found.</summary>
    [Fact]
    public void A_ring_that_is_dropped_doubled_early_done_withdrawn_or_flickers_is_found()
    {
        using var shop = new SimulatedShop(3);
        var (book, week) = (Written.Of(shop.Path, null), shop.Book.State.Week);
        var soon = DueSteps.All(week, book.Wall, book.Planned, book.Ticked).Min(s => s.Due);
        shop.PassTo(soon);
        var (ringing, open) = (shop.Bell.Look().Ringing, shop.Bell.Look().Open);
        var mine = ringing[0].Steps.ToHashSet(StringComparer.Ordinal);
        string? Said(IReadOnlyList<Ring> rings, Written? other = null) => new BellWitness().Wrong(other ?? book, week, soon, rings);

        Assert.Null(Said(ringing));
        Assert.Contains("does not ring", Said([.. ringing.Skip(1)]), StringComparison.Ordinal);
        Assert.Contains("twice", Said([.. ringing, ringing[0]]), StringComparison.Ordinal);
        Assert.Contains("not due", Said([.. ringing, open.First(r => r.Due > soon && r.ComesByItself)]), StringComparison.Ordinal);
        Assert.Contains("is done", Said(ringing, book with { Ticked = mine }), StringComparison.Ordinal);
        Assert.Contains("answered", Said(ringing, book with { Answers = [new(1, ringing[0].Id, "Cannot", soon, null)] }), StringComparison.Ordinal);
        Assert.Contains("not planned", Said(ringing, book with { Wall = book.Wall! with { Plan = book.Wall.Plan with { Steps = [.. book.Wall.Plan.Steps.Where(r => !mine.Contains(r.Step))] } } }), StringComparison.Ordinal);
        Assert.Contains("gone", Said([.. ringing, ringing[0] with { Id = "FoodLimit:x", Step = "x", Steps = [] }]), StringComparison.Ordinal);

        var bell = new BellWitness();
        var later = book with { Answers = [new(1, ringing[0].Id, "Later", soon, soon + Ring.Later)] };
        Assert.Null(bell.Look(book, week, soon, ringing));
        Assert.Contains("fell silent", bell.Look(later, week, soon, [.. ringing.Skip(1)]), StringComparison.Ordinal);
        var changed = later with { Head = later.Head + 1 };
        Assert.Null(bell.Look(changed, week, soon, [.. ringing.Skip(1)]));
        Assert.Contains("began", bell.Look(changed, week, soon, ringing), StringComparison.Ordinal);
    }

    private static BellWitness Run(SimulatedShop shop, int seed, int most, List<string> faults)
    {
        var kitchen = new BusyKitchen(shop);
        for (var end = shop.Clock.GetCurrentInstant() + Duration.FromDays(7 * Weeks); shop.Clock.GetCurrentInstant() < end && kitchen.Bell.Jobs < most;)
        {
            if (kitchen.Turn() is { } wrong)
            {
                Assert.Fail($"seed {seed}, {shop.Clock.GetCurrentInstant()}: {wrong} Last: {shop.Witness.Last}");
            }
        }

        faults.AddRange(kitchen.Faults.Select(f => $"seed {seed}, {f}"));
        var broken = shop.Witness.BrokenIn(shop.Path);
        Assert.True(broken.Count == 0, $"seed {seed}: {string.Join('\n', broken.Take(10))}");
        Assert.True(kitchen.Bell.Jobs > 0, $"seed {seed}: nothing rang in {Weeks} weeks.");
        return kitchen.Bell;
    }

    private static double Processor()
    {
        using var here = Process.GetCurrentProcess();
        return here.TotalProcessorTime.TotalSeconds;
    }
}
