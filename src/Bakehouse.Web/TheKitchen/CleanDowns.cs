namespace Bakehouse.Web.TheKitchen;

using Bakehouse.Book.Reading;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>A wet clean-down of a bowl that is still to come.</summary>
/// <param name="Person">Id of who does it.</param>
/// <param name="Words">"Clean 20 L bowl down wet".</param>
internal sealed record CleanDownView(Instant Start, string Person, string Words);

/// <summary>The clean-downs of the plan: nobody ticks them, so they stand on the list until their time is over.</summary>
internal static class CleanDowns
{
    /// <summary>Those that are not over at that instant, earliest first.</summary>
    public static IReadOnlyList<CleanDownView> Of(BookState book, Shop shop, Instant now) => book is not { Week: { } week, Wall: { } wall } ? [] :
    [
        .. from row in wall.From(week.Epoch).Cleans
           let start = week.Epoch + Duration.FromMinutes(row.Start)
           where start + Duration.FromMinutes(week.Machines.FirstOrDefault(m => m.Id == row.Machine)?.Clean?.Minutes ?? 0) > now
           orderby start
           select new CleanDownView(start, row.People[0], $"Clean {DangerWords.NameOf(row.Machine, shop)} down wet"),
    ];
}
