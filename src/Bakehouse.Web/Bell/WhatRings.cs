namespace Bakehouse.Web.Bell;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using NodaTime;

/// <summary>
/// What every screen draws at a moment: a state, not an event. Whoever connects late sees the same as whoever was there.
/// </summary>
/// <param name="Book">The book that it was read from.</param>
/// <param name="Now">What the clock of the machine showed.</param>
/// <param name="Reached">The time that rings go by: never before the time that has passed since the app was opened.</param>
/// <param name="Open">Every ring that is not answered, earliest due first.</param>
/// <param name="Ringing">Those of them that are due, so late ones first.</param>
/// <param name="Answered">Answers of the last ten seconds, for the strip that says who it was.</param>
/// <param name="Ticked">Ticks of the last ten seconds, for the strip with Undo.</param>
public sealed record WhatRings(
    BookState Book,
    Instant Now,
    Instant Reached,
    IReadOnlyList<Ring> Open,
    IReadOnlyList<Ring> Ringing,
    IReadOnlyList<RingAnswer> Answered,
    IReadOnlyList<Tick> Ticked)
{
    /// <summary>How long a strip stays.</summary>
    public static Duration StripStays { get; } = Duration.FromSeconds(10);

    /// <summary>The last jump of the clock, while it is told.</summary>
    public ClockMove? Moved { get; init; }

    /// <summary>True in working hours if no screen could be heard for two minutes.</summary>
    public bool NobodyHears { get; init; }

    /// <summary>True if a screen that drew the other must be drawn again. The minute counts, since every screen shows it.</summary>
    public bool LooksLike(WhatRings other) =>
        ReferenceEquals(Book, other.Book)
        && Now.ToUnixTimeSeconds() / 60 == other.Now.ToUnixTimeSeconds() / 60
        && Moved == other.Moved
        && NobodyHears == other.NobodyHears
        && Ringing.Select(Look).SequenceEqual(other.Ringing.Select(other.Look))
        && Answered.SequenceEqual(other.Answered)
        && Ticked.SequenceEqual(other.Ticked);

    /// <summary>How often the owner was called for a ring.</summary>
    public int CallsFor(Ring ring) => Calls.Of(ring, Reached);

    /// <summary>Looks at the rings of a book at a moment.</summary>
    public static WhatRings At(Instant now, BookState book, IReadOnlyList<Ring> open) => At(new Moment(now, now, null), book, open, heard: true);

    /// <summary>Looks at the rings of a book at a moment.</summary>
    /// <param name="heard">True if some screen can be heard.</param>
    public static WhatRings At(Moment moment, BookState book, IReadOnlyList<Ring> open, bool heard) => new(
        book,
        moment.Wall,
        moment.Reached,
        open,
        [.. open.Where(r => r.At(moment.Reached) != RingState.Waiting)],
        [.. book.Answers.Where(a => Fresh(a.At, moment.Wall))],
        [.. book.Ticks.Where(t => Fresh(t.Done, moment.Wall))])
    {
        Moved = moment.Moved,
        NobodyHears = !heard && book.Shop is { } shop && shop.WorksAt(moment.Wall.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).LocalDateTime),
    };

    /// <summary>The open rings of a book; none while nothing is planned.</summary>
    public static IReadOnlyList<Ring> OpenIn(BookState book) => book is { Week: { } week, Wall: { } wall, Shop: { } shop }
        ? Rings.Of(week, wall, book.Orders, shop, book.Ticks, book.Answers)
        : [];

    private (string Id, Instant Due, RingState State, int Calls) Look(Ring ring) => (ring.Id, ring.Due, ring.At(Reached), CallsFor(ring));

    private static bool Fresh(Instant at, Instant now) => at <= now && now - at < StripStays;
}
