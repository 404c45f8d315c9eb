namespace Bakehouse.Web.Tests.Kitchen;

using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Reminders;
using Bakehouse.Web.Access;
using Bakehouse.Web.Bell;
using NodaTime;

/// <summary>Rings as an iCalendar. The rules are those of RFC 5545; each check names its section.</summary>
public sealed partial class CalendarTests
{
    [Fact]
    public async Task It_is_written_by_the_rules_of_the_standard()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var bytes = Encoding.UTF8.GetBytes(await Feed(app, await Address(app, "petra")));
        var text = Encoding.UTF8.GetString(bytes);
        Assert.DoesNotMatch("(?<!\r)\n|\r(?!\n)", text); // 3.1: lines end with CRLF
        Assert.All(text.Split("\r\n"), l => Assert.InRange(Encoding.UTF8.GetByteCount(l), 0, 75)); // 3.1: 75 octets without the break
        var lines = Unfolded(text);
        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1])); // 3.4
        Assert.Single(lines, "VERSION:2.0"); // 3.7.4
        Assert.Single(lines, l => l.StartsWith("PRODID:", StringComparison.Ordinal)); // 3.7.3
        var events = Events(lines);
        Assert.NotEmpty(events);
        Assert.All(events, e => Assert.Equal([1, 1, 1, 1], new[] { "UID", "DTSTAMP", "DTSTART", "SEQUENCE" }.Select(n => e.Count(l => Name(l) == n)))); // 3.6.1
        Assert.Distinct(events.Select(e => Value(e, "UID"))); // 3.8.4.7
        Assert.All(events.SelectMany(e => new[] { Value(e, "DTSTAMP"), Value(e, "DTSTART"), Value(e, "DTEND") }), v => Assert.Matches("^[0-9]{8}T[0-9]{6}Z$", v)); // 3.3.5, form 2: UTC
        // 3.6.6: a display alarm has ACTION, DESCRIPTION and TRIGGER, each once; 3.8.6.3: from the start; 3.3.6: no time before or after.
        Assert.All(events, e => Assert.Equal(["ACTION:DISPLAY", "BEGIN:VALARM", "END:VALARM"], e.Where(l => l is "ACTION:DISPLAY" or "BEGIN:VALARM" or "END:VALARM").Order(StringComparer.Ordinal)));
        Assert.All(events, e => Assert.Matches("^P(T0S|T0M|0D)$", Value(e, "TRIGGER")));
    }

    /// <summary>75 octets, not 75 signs, and no sign cut in two (RFC 5545, 3.1).</summary>
    [Theory]
    [InlineData("ë")]
    [InlineData("山")]
    [InlineData("🎂")]
    public async Task A_long_name_in_any_script_is_folded_between_signs(string sign)
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var shop = app.Book.State.Shop!;
        var name = string.Concat(Enumerable.Repeat(sign, 60));
        var text = RingCalendar.Write(app.Ringer.State, shop, shop.PersonOf("petra")! with { Name = name });
        Assert.All(text.Split("\r\n"), l => Assert.InRange(Encoding.UTF8.GetByteCount(l), 0, 75));
        Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(text)));
        Assert.Contains(Unfolded(text), l => l.EndsWith(name, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Read_back_it_holds_each_ring_of_that_person_at_its_moment_and_no_customer()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var text = await Feed(app, await Address(app, "petra"));
        var read = Ical.Net.Calendar.Load(text)!;
        var expected = app.Ringer.State.Open.Where(r => r.ComesByItself && r.Due > KitchenShop.Start && r.Person is null or "petra").Select(r => r.Due).Order();
        Assert.Equal(expected, read.Events.Select(e => Instant.FromDateTimeUtc(e.Start!.AsUtc)).Order());
        var plain = string.Concat(Unfolded(text));
        foreach (var order in app.Book.State.Orders)
        {
            Assert.DoesNotContain(order.Customer.Name, plain, StringComparison.Ordinal);
            Assert.DoesNotContain(order.Customer.Phone, plain, StringComparison.Ordinal);
        }
    }

    /// <summary>The entry of a step that moved keeps its UID and has a higher sequence (RFC 5545, 3.8.7.4); fetched again it is the same to the letter.</summary>
    [Fact]
    public async Task A_move_changes_the_same_entry_and_nothing_else_does()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var address = await Address(app, "petra");
        var before = await Feed(app, address);
        Assert.Equal(before, await Feed(app, address));
        var state = app.Ringer.State;
        var ring = state.Open.First(r => r.Person == "petra" && r.Due > state.Now);
        var later = WhatRings.At(state.Now, state.Book with { Head = state.Book.Head + 1 }, [.. state.Open.Select(r => r == ring ? r with { Due = r.Due + Ring.Later } : r)]);
        var after = RingCalendar.Write(later, state.Book.Shop!, state.Book.Shop!.PersonOf("petra")!);
        var (old, moved) = (Entry(before, ring), Entry(after, ring));
        Assert.Equal(Value(old, "UID"), Value(moved, "UID"));
        Assert.NotEqual(Value(old, "DTSTART"), Value(moved, "DTSTART"));
        Assert.Equal((state.Book.Head, state.Book.Head + 1), (Sequence(old), Sequence(moved)));
        Assert.Equal(Events(Unfolded(before)).Count, Events(Unfolded(after)).Count);
    }

    [Fact]
    public async Task Only_the_newest_address_reads_and_none_after_it_was_stopped()
    {
        await using var app = await KitchenShop.Sample(new SteppedTime(KitchenShop.Start));
        var (first, second) = (await Address(app, "petra"), await Address(app, "petra"));
        Assert.NotEqual(first, second);
        Assert.Equal(HttpStatusCode.NotFound, (await Get(app, first)).StatusCode);
        var answer = await Get(app, second);
        Assert.Equal((HttpStatusCode.OK, "text/calendar"), (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Equal(HttpStatusCode.NotFound, (await Get(app, $"/calendar/{new string('0', 64)}.ics")).StatusCode);
        Assert.DoesNotContain(app.Book.State.Calendars, c => second.Contains(c.Secret, StringComparison.OrdinalIgnoreCase));
        await app.Book.Enter(new StopCalendar(Guid.NewGuid(), "ines", "office", "petra"), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, (await Get(app, second)).StatusCode);
    }

    private static async Task<string> Address(KitchenShop app, string person)
    {
        var (path, answer) = await app.Book.NewCalendar(new Who(person, "phone"), person);
        Assert.Equal(AnswerKind.Accepted, answer.Kind);
        return path!;
    }

    /// <summary>As a calendar fetches it: nobody stands at that screen.</summary>
    private static Task<HttpResponseMessage> Get(KitchenShop app, string path) => app.At("").GetAsync(path, TestContext.Current.CancellationToken);

    private static async Task<string> Feed(KitchenShop app, string path) =>
        await (await Get(app, path)).EnsureSuccessStatusCode().Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    /// <summary>A line break and one blank are taken out (RFC 5545, 3.1).</summary>
    private static string[] Unfolded(string text) => Fold().Replace(text, "").Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

    private static List<string[]> Events(string[] lines) =>
    [
        .. lines.Select((l, i) => (l, i)).Where(x => x.l == "BEGIN:VEVENT").Select(x => lines[x.i..(Array.IndexOf(lines, "END:VEVENT", x.i) + 1)]),
    ];

    private static string[] Entry(string text, Ring ring) =>
        Assert.Single(Events(Unfolded(text)), e => Value(e, "UID").StartsWith(ring.Id.Replace(':', '-'), StringComparison.Ordinal));

    private static int Sequence(string[] entry) => int.Parse(Value(entry, "SEQUENCE"), CultureInfo.InvariantCulture);

    private static string Name(string line) => line[..line.IndexOfAny([':', ';'])];

    private static string Value(string[] entry, string name) => entry.First(l => Name(l) == name)[(entry.First(l => Name(l) == name).IndexOf(':', StringComparison.Ordinal) + 1)..];

    [GeneratedRegex("\r\n[ \t]", RegexOptions.None, 1000)]
    private static partial Regex Fold();
}
