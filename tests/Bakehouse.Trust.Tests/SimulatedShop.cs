namespace Bakehouse.Trust.Tests;

using Bakehouse.Book;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Bakehouse.Planner.Quick;
using Bakehouse.Web.Bell;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using NodaTime;
using NodaTime.Testing;

/// <summary>
/// A whole shop in one thread: the real book on disk, the real planner and bell, a clock that only this class moves, and screens that
/// lag, lose answers, tap twice and go away. One seed is one week; the same seed is the same week.
/// </summary>
internal sealed class SimulatedShop : IDisposable
{
    /// <summary>The name of that fault.</summary>
    public const string StartedAgain = "the app was started again";

    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-week-").FullName;
    private readonly FakeTimeProvider passes = new();
    private readonly Random chance;

    public SimulatedShop(int seed)
    {
        chance = new Random(seed);
        Open();
        Screens = [new("counter", "wren"), new("tablet", "petra"), new("bench", "dov"), new("phone", "ines")];
        Start();
    }

    /// <summary>Wednesday 14 October 2026, 07:00 in London, and then as the week goes.</summary>
    public FakeClock Clock { get; } = new(Instant.FromUtc(2026, 10, 14, 6, 0));

    public OrderBook Book { get; private set; } = null!;

    public Ringer Bell { get; private set; } = null!;

    public IReadOnlyList<Screen> Screens { get; }

    /// <summary>Kept apart from the book, as somebody who writes down what every screen was shown.</summary>
    public Witness Witness { get; } = new();

    public string Path => System.IO.Path.Combine(folder, "book.db");

    /// <summary>How often each fault came.</summary>
    public Dictionary<string, int> Faults { get; } = new(StringComparer.Ordinal);

    /// <summary>True with that chance out of a hundred.</summary>
    public bool Happens(int percent) => chance.Next(100) < percent;

    public T OneOf<T>(IReadOnlyList<T> list) => list[chance.Next(list.Count)];

    public int Between(int least, int most) => chance.Next(least, most + 1);

    public Guid NewId()
    {
        Span<byte> bytes = stackalloc byte[16];
        chance.NextBytes(bytes);
        return new Guid(bytes);
    }

    /// <summary>One thing that somebody does at one screen, with whatever goes wrong on the way.</summary>
    public void SomebodyDoesSomething()
    {
        var screen = OneOf(Screens);
        if (screen.Gone && !Happens(20))
        {
            Note(screen, Deeds.Pick(this, screen));
            return;
        }

        screen.Gone = false;
        Deliver(screen);
        if (!Happens(15))
        {
            screen.Seen = Book.State; // else it looks at an old page
        }

        if (Deeds.Pick(this, screen) is { } command)
        {
            Send(screen, command);
        }
    }

    /// <summary>Time passes until then, by the clock and by the timer that nobody can set.</summary>
    public void PassTo(Instant then)
    {
        passes.Advance((then - Clock.GetCurrentInstant()).ToTimeSpan());
        Clock.Reset(then);
    }

    /// <summary>What may go wrong between two deeds.</summary>
    public void SomethingGoesWrong()
    {
        if (Happens(3))
        {
            StartAgain();
        }

        if (Happens(3))
        {
            Fault("a screen lost its connection");
            OneOf(Screens).Gone = true;
        }
    }

    /// <summary>Closes the app and opens it on the same book.</summary>
    public void StartAgain()
    {
        Fault(StartedAgain);
        Close();
        Open();
    }

    /// <summary>A command is sent and answered, with nothing lost on the way; the witness writes it down.</summary>
    public Answer Ask(Command command)
    {
        var answer = Enter(command);
        Witness.Saw(command, answer);
        return answer;
    }

    /// <summary>At the end of the week every screen comes back and sends what it still holds.</summary>
    public void EverybodyComesBack()
    {
        foreach (var screen in Screens)
        {
            screen.Gone = false;
            Deliver(screen);
        }
    }

    public void Dispose()
    {
        Close();
        Directory.Delete(folder, recursive: true);
    }

    private void Send(Screen screen, Command command)
    {
        if (Happens(4))
        {
            Fault("the connection broke before it was sent");
            screen.Gone = true;
            Note(screen, command);
            return;
        }

        var answer = Enter(command);
        if (Happens(4))
        {
            Fault("the answer was lost");
            Note(screen, command);
            return;
        }

        Witness.Saw(command, answer);
        if (Happens(6))
        {
            Fault("tapped twice");
            Ask(command);
        }
    }

    private void Deliver(Screen screen)
    {
        while (screen.Unsent.TryDequeue(out var command))
        {
            Ask(command);
        }
    }

    private static void Note(Screen screen, Command? command)
    {
        if (command is not null)
        {
            screen.Unsent.Enqueue(command);
        }
    }

    private Answer Enter(Command command) => Book.Enter(command).GetAwaiter().GetResult();

    private void Start()
    {
        Ask(new WriteShop(NewId(), "", "phone", SampleBakery.Shop with { Version = 0, IsSample = false }));
        for (var i = 0; i < 3; i++)
        {
            Ask(new WriteOrder(NewId(), "ines", "phone", Deeds.NewOrder(this, Stage.Booked)));
        }

        foreach (var screen in Screens)
        {
            screen.Seen = Book.State;
        }
    }

    private void Open()
    {
        Book = OrderBook.Open(Path, new QuickPlanner(200), Clock);
        Bell = new Ringer(Book, new ClockWatch(Clock, passes), new Ears(passes), passes, NullLogger<Ringer>.Instance);
    }

    private void Close()
    {
        Bell.Dispose();
        Book.Dispose();
    }

    private void Fault(string what) => Faults[what] = Faults.GetValueOrDefault(what) + 1;
}
