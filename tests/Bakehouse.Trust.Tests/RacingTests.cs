namespace Bakehouse.Trust.Tests;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Planning;
using Microsoft.Data.Sqlite;
using NodaTime;

/// <summary>
/// Six hands at once at one book, each looking at a page that may be old: two counters at one order, two tablets at one step, two
/// cakes for one place. Afterwards the witness asks the file.
/// </summary>
public sealed class RacingTests(ITestOutputHelper output)
{
    private static readonly bool Long = Environment.GetEnvironmentVariable("BAKEHOUSE_LONG") is not null;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(101, Long ? 1_000 : 6)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public async Task Six_hands_at_once_lose_nothing_and_double_nothing(int seed)
    {
        using var shop = new SimulatedShop(seed);
        var hands = Enumerable.Range(0, 6).Select(hand => Work(shop, hand)).ToList();
        var busy = (await Task.WhenAll(hands)).Sum();

        Assert.Empty(shop.Witness.BrokenIn(shop.Path));
        if (shop.Book.State is { Week: { } week, Wall: { } wall })
        {
            Assert.Empty(Rules.Broken(week, wall));
        }

        output.WriteLine($"seed {seed}: {shop.Witness.Count} answered, {shop.Witness.Accepted} accepted, {busy} busy; {string.Join(", ", shop.Witness.Summary)}");
        Assert.Equal(0, busy);
    }

    /// <summary>The checker can fail: a fault planted into the file of a finished run is found, each of them.</summary>
    [Theory]
    [InlineData("DELETE FROM ticks WHERE Seq = (SELECT min(Seq) FROM ticks)")]
    [InlineData("DELETE FROM done WHERE Id = (SELECT min(Id) FROM done)")]
    [InlineData("DELETE FROM audit WHERE Counter = 1")]
    [InlineData("UPDATE orders SET Version = Version + 1 WHERE Seq = (SELECT max(Seq) FROM orders)")]
    [InlineData("DELETE FROM orders WHERE Seq = (SELECT max(Seq) FROM orders)")]
    [InlineData("UPDATE orders SET Number = (SELECT min(Number) FROM orders), Version = 77 WHERE Seq = (SELECT max(Seq) FROM orders)")]
    [InlineData("DELETE FROM plan_head")]
    public void A_planted_fault_is_found(string fault)
    {
        using var shop = new SimulatedShop(1);
        for (var i = 0; i < 15; i++)
        {
            shop.Clock.AdvanceMinutes(10);
            shop.SomebodyDoesSomething();
        }

        shop.EverybodyComesBack();
        Assert.Empty(shop.Witness.BrokenIn(shop.Path));
        Plant(shop.Path, fault);
        Assert.NotEmpty(shop.Witness.BrokenIn(shop.Path));
    }

    private static async Task<int> Work(SimulatedShop shop, int hand)
    {
        var busy = 0;
        var screen = new Screen($"screen{hand}", shop.Screens[hand % shop.Screens.Count].Person) { Seen = shop.Book.State };
        for (var i = 0; i < (Long ? 300 : 25); i++)
        {
            Command? command;
            lock (shop)
            {
                if (shop.Happens(60))
                {
                    screen.Seen = shop.Book.State;
                }

                shop.Clock.AdvanceSeconds(20);
                command = Deeds.Pick(shop, screen);
            }

            if (command is not null)
            {
                var answer = await shop.Book.Enter(command, TestContext.Current.CancellationToken);
                shop.Witness.Saw(command, answer);
                busy += answer.Message.Contains("busy", StringComparison.OrdinalIgnoreCase) ? 1 : 0;
            }
        }

        return busy;
    }

    private static void Plant(string path, string fault)
    {
        SqliteConnection.ClearAllPools();
        using var book = new SqliteConnection($"Data Source={path};Pooling=False");
        book.Open();
        using var command = book.CreateCommand();
#pragma warning disable CA2100 // Constant text of this file.
        command.CommandText = $"PRAGMA foreign_keys = OFF; {fault}";
#pragma warning restore CA2100
        Assert.True(command.ExecuteNonQuery() > 0, "The fault was planted.");
    }
}
