namespace Bakehouse.Web.Bell;

using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheKitchen.Wrong;
using NodaTime;

/// <summary>What is said about the bell.</summary>
public enum NoticeKind
{
    /// <summary>The clock stands before what the book holds.</summary>
    ClockBehind,

    /// <summary>The clock was moved.</summary>
    ClockMoved,

    /// <summary>No screen can be heard.</summary>
    NobodyHears,

    /// <summary>The first ring of the night or the morning.</summary>
    Night,

    /// <summary>Something went wrong and lasts.</summary>
    Wrong,
}

/// <summary>A line about the bell that people should know.</summary>
public sealed record Notice(NoticeKind Kind, string Words);

/// <summary>What everybody should know about the bell at that moment, the gravest first.</summary>
public static class Notices
{
    /// <param name="role">Whose page it is; null on the kitchen's screens, whose own button tells about their sound.</param>
    public static IReadOnlyList<Notice> Of(WhatRings state, Shop shop, Role? role)
    {
        var words = Words.Of(shop);
        return [.. new[] { Behind(state, words), Moved(state, words), Silent(state, role), Night(state, shop, words), Wrong(state, shop, role) }.OfType<Notice>()];
    }

    private static Notice? Behind(WhatRings state, Words words) => state.Book.IsAhead(state.Now)
        ? new Notice(NoticeKind.ClockBehind, $"The clock of this machine shows {words.DayAndTime(words.Local(state.Now))}, but the book was written in at {words.DayAndTime(words.Local(state.Book.Newest))}. Nothing new is planned until it is right.")
        : null;

    private static Notice? Moved(WhatRings state, Words words)
    {
        if (state.Moved is not { } move)
        {
            return null;
        }

        var to = words.Time(words.Local(move.To).TimeOfDay);
        return new Notice(NoticeKind.ClockMoved, move.By > Duration.Zero
            ? $"The clock moved on by {Length(move.By)} to {to}, or this machine slept.{(state.Ringing.Count > 0 ? " What came due meanwhile is listed." : "")}"
            : $"The clock moved back by {Length(-move.By)} to {to}. What was due stays due.");
    }

    private static Notice? Silent(WhatRings state, Role? role) => state.NobodyHears && role is Role.Owner or Role.Counter
        ? new Notice(NoticeKind.NobodyHears, "No kitchen screen has its sound on. Open The kitchen on one and tap it.")
        : null;

    private static Notice? Night(WhatRings state, Shop shop, Words words)
    {
        if (NightWatch.First(state.Open, shop, state.Now) is not { } ring)
        {
            return null;
        }

        var (now, due) = (words.Local(state.Now), words.Local(ring.Due));
        var day = due.Date == now.Date ? "Today" : "Tomorrow";
        return new Notice(NoticeKind.Night, $"{day} {words.Time(due.TimeOfDay)} the first ring: {ring.Verb.ToLowerInvariant()}, {ring.Place}. This machine must be awake then.");
    }

    /// <summary>In the kitchen: what went wrong and is not over yet, the newest by name.</summary>
    private static Notice? Wrong(WhatRings state, Shop shop, Role? role)
    {
        var lasting = state.Book.Slips.Where(s => s.Kind != SlipKind.Pickup && s.Until > state.Now).OrderByDescending(s => s.Told).ToList();
        var said = new WrongWords(shop, state.Book.Orders, state.Now);
        return role is not null || lasting.Count == 0 ? null
            : new Notice(NoticeKind.Wrong, said.Says(lasting[0]) + (lasting.Count > 1 ? $" And {lasting.Count - 1} more." : ""));
    }

    private static string Length(Duration length) =>
        length < Duration.FromMinutes(1) ? $"{(long)length.TotalSeconds} s" : Words.Minutes((long)Math.Round(length.TotalMinutes));
}
