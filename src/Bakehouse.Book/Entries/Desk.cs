namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>What lies before an entry while it decides: what stands in the book, the planner, the present.</summary>
internal sealed record Desk(BookState State, IPlanner Planner, Instant Now, BookFile File)
{
    /// <summary>The shop; entries that need one are open to nobody in an empty book.</summary>
    public Shop Shop => State.Shop ?? throw new InvalidOperationException("The book is empty.");

    /// <summary>The day on the shop's wall.</summary>
    public LocalDate Today => Now.InZone(DateTimeZoneProviders.Tzdb[Shop.Zone]).Date;

    /// <summary>True if the clock stands more than 2 min before the newest accepted fact.</summary>
    public bool ClockIsBehind => State.IsAhead(Now);

    /// <summary>What ticks of this run of the app have moved on the wall, by step: for whoever takes one back at once.</summary>
    public IReadOnlyDictionary<string, Wall> Moved { get; init; } = new Dictionary<string, Wall>();

    public Fitting Fitting => FittingIn(Shop);

    /// <summary>Fits a change in as if the shop were that one.</summary>
    public Fitting FittingIn(Shop shop) => new(Planner, shop, Now, State.Hand);

    /// <summary>The newest version of an order, or null.</summary>
    public Order? Order(Guid id) => State.Orders.FirstOrDefault(o => o.Id == id);

    /// <summary>All orders with these versions in the places of their former ones.</summary>
    public IReadOnlyList<Order> OrdersWith(params Order[] changed) =>
        [.. State.Orders.Where(o => !Array.Exists(changed, c => c.Id == o.Id)), .. changed];

    /// <summary>Ticks of an order that stand, whether it is planned or not.</summary>
    public IReadOnlyList<Tick> TicksOf(Guid order)
    {
        using var book = File.Context();
        return [.. book.Ticks.AsNoTracking().Where(t => t.Order == order && t.Undone == null).OrderBy(t => t.Seq).AsEnumerable().Select(t => t.Tick())];
    }

    /// <summary>What is ticked once that version stands: an order that comes back into the plan brings its ticks.</summary>
    public IReadOnlyList<Tick> TicksWith(Order after) => Stages.IsPlanned(Order(after.Id)?.Stage ?? Stage.Cancelled) ? State.Ticks : [.. State.Ticks, .. TicksOf(after.Id)];

    /// <summary>"14:11" on the shop's wall.</summary>
    public string Clock(Instant at) =>
        at.InZone(DateTimeZoneProviders.Tzdb[Shop.Zone]).ToString(Shop.Settings.Clock24 ? "HH:mm" : "h:mm tt", CultureInfo.InvariantCulture);

    /// <summary>"Wed 14 Oct 2026, 14:11" on the shop's wall.</summary>
    public string DayAndClock(Instant at) =>
        $"{at.InZone(DateTimeZoneProviders.Tzdb[State.Shop?.Zone ?? "Etc/UTC"]).ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture)}, {Clock(at)}";

    /// <summary>What a person is called, or "Somebody".</summary>
    public string NameOf(string person) => State.Shop?.PersonOf(person)?.Name ?? "Somebody";
}
