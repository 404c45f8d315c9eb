namespace Bakehouse.Web.IsAllWell;

using System.Reflection;
using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Web.Bell;
using Bakehouse.Web.Copies;
using Bakehouse.Web.Shell;
using NodaTime;

/// <summary>Reads how everything stands that a shop relies on.</summary>
public sealed class WellReader(IBook book, BookCopies copies, CopyEachHour hourly, Ringer ringer, Ears ears, IClock clock)
{
    // Below these, act: our own figures. A copy comes each hour, so a day and two hours without one is a broken promise.
    private static readonly Duration CopyIsOld = Duration.FromHours(2);
    private static readonly Duration CopyIsTooOld = Duration.FromHours(26);
    private static readonly Duration LoopIsLate = Duration.FromSeconds(5);
    private const long LittleRoom = 2L << 30;
    private const long NoRoom = 500L << 20;

    /// <summary>True if the bell's loop has looked within five seconds.</summary>
    public bool IsAlive => Now - ringer.State.Now is var since && since <= LoopIsLate && since >= -LoopIsLate;

    /// <summary>True if an entry could be taken now: the loop runs, the clock is not behind the book, the disk takes a byte and has room.</summary>
    public bool IsReady => IsAlive && !book.State.IsAhead(Now) && Free() >= NoRoom && TakesAByte();

    private Instant Now => clock.GetCurrentInstant();

    /// <summary>Every line, the same ones in the same order.</summary>
    public IReadOnlyList<WellLine> Lines(Shop shop)
    {
        var words = Words.Of(shop);
        return [Saved(words), Copied(words), SecondPlace(), Reminders(), Sound(), Plan(), WellCold.Of(book.State, shop, Now), Room(), TheClock(words), Version()];
    }

    private WellLine Saved(Words words) => new(
        "The book", MarkKind.InTime, $"Everything that was taken is on the disk; last at {words.DayAndTime(words.Local(book.State.Newest))}, change {book.State.Head}.");

    private WellLine Copied(Words words)
    {
        var problem = hourly.Last is { Path: null } failed ? failed.Problems[0] : null;
        if (copies.Newest is not { } newest)
        {
            return new("Copies", problem is null ? MarkKind.Tight : MarkKind.Late, problem?.Sentence ?? "There is no copy of the book yet.", problem?.Try ?? "The first comes within an hour of work.");
        }

        var age = Now - newest;
        var mark = age >= CopyIsTooOld ? MarkKind.Late : age >= CopyIsOld || problem is not null ? MarkKind.Tight : MarkKind.InTime;
        return new("Copies", mark, $"The last good copy is of {words.DayAndTime(words.Local(newest))}, looked at and without a fault, in {copies.First.Path}. {problem?.Sentence}".Trim(),
            mark == MarkKind.InTime ? null : problem?.Try ?? "Leave Bakehouse running while the shop works; it copies each hour.");
    }

    private WellLine SecondPlace()
    {
        if (copies.Second is not { } second)
        {
            return new("Second place", MarkKind.Tight, "Copies lie on one disk only. If it breaks, they break with it.", "Name a folder on another disk when Bakehouse is started: --Copies:Second=/media/usb/bakehouse");
        }

        return hourly.Last is { Second: null } last && last.Problems.Count > 0
            ? new("Second place", MarkKind.Late, last.Problems[0].Sentence, last.Problems[0].Try)
            : new("Second place", MarkKind.InTime, $"Each copy goes to {second.Path}, too.");
    }

    private WellLine Reminders()
    {
        if (!IsAlive)
        {
            return new("Reminders", MarkKind.Late, "The bell has not looked for more than five seconds.", "Close Bakehouse and start it again; what is due then comes as a list.");
        }

        var late = ringer.State.Ringing.Count(r => r.At(ringer.State.Reached) == RingState.Late);
        return late == 0
            ? new("Reminders", MarkKind.InTime, "The bell looks every second. Nothing rings late.")
            : new("Reminders", MarkKind.Late, late == 1 ? "One ring is late." : $"{late} rings are late.", "Open The kitchen and answer the list.");
    }

    private WellLine Sound() => ears.WithSound switch
    {
        0 => new("Sound", MarkKind.Tight, "No kitchen screen has its sound on.", "Open The kitchen on one and tap it."),
        1 => new("Sound", MarkKind.InTime, "One screen can be heard."),
        var many => new("Sound", MarkKind.InTime, $"{many} screens can be heard."),
    };

    private WellLine Plan()
    {
        var hanging = (book.State.Wall?.Plan.Steps ?? []).Select(s => StepKey.Parse(s.Step)?.Order).ToHashSet();
        var lost = book.State.WithoutPlan(Now).Select(o => o.Number).ToList();
        var far = book.State.Orders.Count(o => Stages.IsPlanned(o.Stage) && !hanging.Contains(o.Id)) - lost.Count;
        return lost.Count == 0
            ? new("The plan", MarkKind.InTime, $"{book.State.Orders.Count(o => Stages.IsPlanned(o.Stage)) - far} cakes are in it, none is left out.{(far == 0 ? "" : $" {far} lie farther ahead.")}")
            : new("The plan", MarkKind.Late, $"No room was found for order {string.Join(", ", lost)}.", "Open it among The cakes: another day, or a smaller build.");
    }

    private WellLine Room()
    {
        var free = Free();
        var says = $"{free / (1L << 30)} GB are free where the book lies.";
        return free < NoRoom ? new("The disk", MarkKind.Late, $"Only {free >> 20} MB are free where the book lies.", "Free some room now, or nothing more can be saved.")
            : free < LittleRoom ? new("The disk", MarkKind.Tight, says, "Free some room this week.")
            : new("The disk", MarkKind.InTime, says);
    }

    private WellLine TheClock(Words words)
    {
        var shows = $"This machine shows {words.DayAndTime(words.Local(Now))}";
        return book.State.IsAhead(Now)
            ? new("The clock", MarkKind.Late, $"{shows}, but the book was written in at {words.DayAndTime(words.Local(book.State.Newest))}.", "Set the clock. If it is right now, say so on the strip at the top.")
            : ringer.State.Moved is not null
                ? new("The clock", MarkKind.Tight, $"{shows}. It was moved in the last ten minutes, or the machine slept.", "Look whether it is right.")
                : new("The clock", MarkKind.InTime, $"{shows}.");
    }

    private static WellLine Version() => new(
        "Bakehouse", MarkKind.InTime, $"Version {typeof(WellReader).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "unknown"}.");

    private string Folder => Path.GetDirectoryName(copies.Book)!;

    private long Free() => new DriveInfo(Folder).AvailableFreeSpace;

    private bool TakesAByte()
    {
        var probe = copies.Book + ".probe";
        try
        {
            File.WriteAllBytes(probe, [1]);
            File.Delete(probe);
            return true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }
}
