namespace Bakehouse.Web.Bell;

using System.Security.Cryptography;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Access;
using NodaTime;

/// <summary>Turns a tap into commands. Every id follows from the one that the screen made, so a tap that is sent twice counts once.</summary>
public static class Answering
{
    /// <summary>Answers a ring. The book decides who was first and whether it may wait.</summary>
    public static Task<Answer> Answer(this IBook book, Who who, Guid id, string ring, RingAnswerKind kind, string reason, CancellationToken cancel) =>
        book.Enter(new AnswerRing(id, who.Person, who.Device, ring, kind, reason), cancel);

    /// <summary>Ticks a step or a whole batch. The answer is the first that is not a plain yes, else yes.</summary>
    public static Task<Answer> Tick(this IBook book, Who who, Guid id, IEnumerable<string> steps, string by, Instant? done, CancellationToken cancel) =>
        book.EnterAll(steps.Select((s, i) => (Command)new TickStep(Derived(id, i), who.Person, who.Device, s, by, done)), cancel);

    /// <summary>
    /// Ticks steps that were only assumed: done as planned, by whoever was planned. One that is not assumed any more (ticked, or
    /// planned anew) is ticked as of now by the person at the screen.
    /// </summary>
    public static Task<Answer> Confirm(this IBook book, Who who, Guid id, IReadOnlyList<string> steps, Instant now, CancellationToken cancel)
    {
        var assumed = book.State is { Week: { } week, Wall: { } wall } state ? new AssumedNow(week, wall, state.Ticks, now, state.NotDone) : null;
        return book.EnterAll(steps.Select((s, i) => assumed?.AsPlanned(s) is { } planned
            ? (Command)new TickStep(Derived(id, i), who.Person, who.Device, s, planned.Person ?? who.Person, planned.End)
            : new TickStep(Derived(id, i), who.Person, who.Device, s, who.Person)), cancel);
    }

    /// <summary>Takes the tick of a step or of a whole batch back.</summary>
    public static Task<Answer> Undo(this IBook book, Who who, Guid id, IEnumerable<string> steps, CancellationToken cancel) =>
        book.EnterAll(steps.Select((s, i) => (Command)new UndoTick(Derived(id, i), who.Person, who.Device, s)), cancel);

    private static async Task<Answer> EnterAll(this IBook book, IEnumerable<Command> commands, CancellationToken cancel)
    {
        Answer? first = null;
        foreach (var command in commands)
        {
            var answer = await book.Enter(command, cancel);
            first = first is null || first.Kind == AnswerKind.Accepted ? answer : first;
        }

        return first ?? throw new InvalidOperationException("A tap without a step was sent to the book.");
    }

    /// <summary>The id itself for the first step; for the others one that follows from it and the place, always the same.</summary>
    private static Guid Derived(Guid id, int place) =>
        place == 0 ? id : new Guid(SHA256.HashData([.. id.ToByteArray(), .. BitConverter.GetBytes(place)]).AsSpan(0, 16));
}
