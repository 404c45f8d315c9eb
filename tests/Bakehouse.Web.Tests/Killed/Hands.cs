namespace Bakehouse.Web.Tests.Killed;

using System.Collections.Concurrent;
using System.Net;
using System.Net.Http.Json;

/// <summary>A tap as it went out: a tick of <paramref name="On"/>, a step, or an answer to <paramref name="On"/>, a ring.</summary>
internal sealed record SentTap(Guid Id, bool IsTick, string On, string Kind);

/// <summary>Four screens that tick and answer as fast as they hear. Writes down which taps were answered with yes, and which with nothing.</summary>
internal sealed class Hands(Random dice)
{
    private static readonly string[] People = ["petra", "dov", "wren", "ines"];
    private static readonly string[] Kinds = ["Done", "Later", "Cannot"];
    private readonly Lock gate = new();
    private int no;

    /// <summary>Answered 200.</summary>
    public ConcurrentDictionary<Guid, SentTap> Yes { get; } = [];

    /// <summary>Sent, and the app was gone before it answered: perhaps it is in the book, perhaps not.</summary>
    public ConcurrentDictionary<Guid, SentTap> Unheard { get; } = [];

    /// <summary>Answered with a no that says why.</summary>
    public int No => no;

    /// <summary>Works until the app is gone. Steps and rings are shared out, so that no two screens tap the same.</summary>
    public async Task Work(AppProcess app, IReadOnlyList<string> steps, IReadOnlyList<string> rings, Action first)
    {
        await Task.WhenAll(People.Select(async (person, hand) =>
        {
            using var screen = app.At(person, $"screen{hand}");
            var (mine, ringing) = (new Queue<string>(Share(steps, hand)), new Queue<string>(Share(rings, hand)));
            while (mine.Count + ringing.Count > 0)
            {
                var tick = mine.Count > 0 && (ringing.Count == 0 || Chance(2) > 0);
                var tap = new SentTap(Guid.NewGuid(), tick, tick ? mine.Dequeue() : ringing.Dequeue(), Kinds[Chance(Kinds.Length)]);
                if (!await Send(screen, tap) || (Chance(8) == 0 && !await Send(screen, tap)))
                {
                    return;
                }

                first();
            }
        }));
    }

    /// <summary>Sends what was not answered once more, as a screen does that comes back.</summary>
    public async Task SendAgain(AppProcess app)
    {
        using var screen = app.At("petra");
        foreach (var tap in Unheard.Values)
        {
            Unheard.TryRemove(tap.Id, out _);
            Assert.True(await Send(screen, tap), "The app was gone when what was not answered was sent again.");
        }
    }

    /// <summary>False if nobody answered.</summary>
    private async Task<bool> Send(HttpClient screen, SentTap tap)
    {
        try
        {
            using var heard = await screen.PostAsJsonAsync("/kitchen/commands", Body(tap), TestContext.Current.CancellationToken);
            if (heard.StatusCode == HttpStatusCode.OK)
            {
                Yes[tap.Id] = tap;
            }
            else
            {
                Assert.True((int)heard.StatusCode is 409 or 422, $"{tap} heard {heard.StatusCode}");
                Assert.False(Yes.ContainsKey(tap.Id), $"{tap} heard yes and then {heard.StatusCode}");
                Interlocked.Increment(ref no);
            }

            return true;
        }
        catch (HttpRequestException)
        {
            if (!Yes.ContainsKey(tap.Id))
            {
                Unheard[tap.Id] = tap;
            }

            return false;
        }
    }

    private static object Body(SentTap tap) => tap.IsTick
        ? new { id = tap.Id, @do = "tick", steps = new[] { tap.On }, by = "petra" }
        : new { id = tap.Id, @do = "answer", ring = tap.On, kind = tap.Kind, reason = "Too soft" };

    private static IEnumerable<string> Share(IReadOnlyList<string> all, int hand) => all.Where((_, i) => i % People.Length == hand);

    private int Chance(int sides)
    {
        lock (gate)
        {
            return dice.Next(sides);
        }
    }
}
