namespace Bakehouse.Web.Bell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using NodaTime;

/// <summary>
/// What every screen draws at a moment: a state, not an event. Whoever connects late sees the same as whoever was there.
/// </summary>
/// <param name="Book">The book that it was read from.</param>
/// <param name="Now">The moment of the look.</param>
/// <param name="Open">Every ring that is not answered, earliest due first.</param>
/// <param name="Ringing">Those of them that are due, so late ones first.</param>
/// <param name="Answered">Answers of the last ten seconds, for the strip that says who it was.</param>
/// <param name="Ticked">Ticks of the last ten seconds, for the strip with Undo.</param>
public sealed record WhatRings(
    BookState Book,
    Instant Now,
    IReadOnlyList<Ring> Open,
    IReadOnlyList<Ring> Ringing,
    IReadOnlyList<RingAnswer> Answered,
    IReadOnlyList<Tick> Ticked)
{
    /// <summary>How long a strip stays.</summary>
    public static Duration StripStays { get; } = Duration.FromSeconds(10);

    /// <summary>True if a screen that drew the other must be drawn again. The minute counts, since every screen shows it.</summary>
    public bool LooksLike(WhatRings other) =>
        ReferenceEquals(Book, other.Book)
        && Now.ToUnixTimeSeconds() / 60 == other.Now.ToUnixTimeSeconds() / 60
        && Ringing.Select(r => (r.Id, r.Due, r.At(Now))).SequenceEqual(other.Ringing.Select(r => (r.Id, r.Due, r.At(other.Now))))
        && Answered.SequenceEqual(other.Answered)
        && Ticked.SequenceEqual(other.Ticked);

    /// <summary>Looks at the rings of a book at a moment.</summary>
    public static WhatRings At(Instant now, BookState book, IReadOnlyList<Ring> open) => new(
        book,
        now,
        open,
        [.. open.Where(r => r.At(now) != RingState.Waiting)],
        [.. book.Answers.Where(a => Fresh(a.At, now))],
        [.. book.Ticks.Where(t => Fresh(t.Done, now))]);

    /// <summary>The open rings of a book; none while nothing is planned.</summary>
    public static IReadOnlyList<Ring> OpenIn(BookState book) => book is { Week: { } week, Wall: { } wall, Shop: { } shop }
        ? Rings.Of(week, wall, book.Orders, shop, book.Ticks, book.Answers)
        : [];

    private static bool Fresh(Instant at, Instant now) => at <= now && now - at < StripStays;
}
