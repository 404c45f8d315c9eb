namespace Bakehouse.Web.TheKitchen.Wrong;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using Bakehouse.Web.Shell;
using Bakehouse.Web.TheFreezer;
using NodaTime;

/// <summary>Asks the book what a slip would do, and says it: what moves, what turns red, who must be told.</summary>
/// <param name="today">The shop's day.</param>
public sealed class WrongForetelling(IBook book, Shop shop, WrongWords said, LocalDate today)
{
    private const string Screen = "kitchen";

    /// <summary>What would happen.</summary>
    public async Task<ForetoldView> Of(Slip slip, string person, CancellationToken cancel)
    {
        var foreseen = await book.Foresee(new TellSlip(slip.Id, person, Screen, slip), cancel);
        var refused = foreseen.Answer.Kind != AnswerKind.Accepted;
        var repair = foreseen.Repair ?? new Repaired([], foreseen.Answer.Late, [], [], []);
        return new ForetoldView(
            said.Says(slip),
            refused ? Refusals(foreseen.Answer) : [],
            [.. repair.Moves.Select(said.Says)],
            [.. repair.Red.OrderByDescending(r => r.Value).Select(r => $"{Cake(r.Key)} would be {Words.Late(r.Value)} late"), .. repair.Unplaced.Select(o => $"{Cake(o)} finds no room in the plan")],
            [.. repair.Tight.Select(o => $"{Cake(o)} has less than {Words.Minutes(shop.Settings.BufferMinutes)} to spare")],
            [.. Told(slip, repair).Select(p => $"{said.Thing(p)}: {Steps(repair.Moves.Count(m => m.To.People.Concat(m.From?.People ?? []).Contains(p)))}")],
            [.. Customers(slip, repair).Select(Customer)],
            new Telling(slip.Id, slip.Kind.ToString(), slip.About, slip.From is { } from ? WrongHours.Text(from) : null, slip.Until is { } until ? WrongHours.Text(until) : null, slip.Spare, null),
            slip.Kind == SlipKind.Cracked && !refused && FromFreezer.Avoiding(slip, book.State.Orders) is null ? Instead(slip) : null)
        {
            Tell = string.Join(',', Told(slip, repair).Concat(Customers(slip, repair))),
            Message = refused ? "" : foreseen.Answer.Message,
            Freezer = slip is { Kind: SlipKind.Cracked, Spare: true } && !refused
                ? new SpareWords(shop).Taken(FromFreezer.For(slip, book.State.Orders, shop, book.State.Freezer), today)
                : "",
        };
    }

    /// <summary>Whoever has other work than before; not whoever is away and does none.</summary>
    private static IEnumerable<string> Told(Slip slip, Repaired repair) => slip.Kind == SlipKind.Away ? repair.People.Except(slip.About) : repair.People;

    private static List<string> Refusals(Answer answer) =>
        answer.Problems.Count > 0 ? [.. answer.Problems.Select(p => $"{p.Sentence} {p.Try}")] : [answer.Message];

    private static IEnumerable<string> Customers(Slip slip, Repaired repair) =>
        (slip.Kind == SlipKind.Pickup ? slip.About : []).Concat(repair.Customers).Distinct(StringComparer.Ordinal);

    private Pick Instead(Slip slip) => new(
        slip.Spare ? "Bake it again instead" : "Spare layers instead",
        slip.Spare ? "" : Counted(slip),
        $"/kitchen/wrong?kind={slip.Kind}&about={Uri.EscapeDataString(string.Join(',', slip.About))}&spare={(slip.Spare ? "false" : "true")}");

    private string Counted(Slip slip) => FromFreezer.For(slip, book.State.Orders, shop, book.State.Freezer) switch
    {
        { Counted: 0 } => "none counted in the freezer",
        var from when from.Counted < from.Needed => $"{from.Counted} of {from.Needed} are in the freezer",
        var from => $"{from.Needed} from the freezer",
    };

    private string Cake(string id) => said.OrderById(id) is { } order ? WrongWords.Cake(order) : "A cake";

    private string Customer(string id) => said.Customer(id) ?? "A customer";

    private static string Steps(int count) => count == 1 ? "1 step" : $"{count} steps";
}
