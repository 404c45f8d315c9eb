namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.FarDates;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;
using Bakehouse.Domain.Shops;
using NodaTime;

/// <summary>Writes a new order or a new version, and plans it.</summary>
internal static class OrderEntry
{
    private const int FirstNumber = 401;

    public static Outcome Decide(WriteOrder command, Desk desk)
    {
        var before = desk.Order(command.Order.Id);
        if ((before?.Version ?? 0) != command.Order.Version)
        {
            return before is null
                ? Outcome.Refused(Subject(command.Order), new Problem("order", Text(command.Order.Version), "The book has no such order.", "Take it as a new order."))
                : Outcome.Clash(Subject(before), $"Order {before.Number} was changed meanwhile: it stands at version {before.Version}.", before);
        }

        return Write(command, desk, before, command.Order with
        {
            Number = before?.Number ?? NextNumber(desk),
            Version = command.Order.Version + 1,
            MadeFrom = before?.MadeFrom,
            Statement = Said(command, desk, before),
        });
    }

    /// <summary>Who wrote down what must be avoided: whoever first sent these words. Other words are to be read back anew.</summary>
    private static Statement? Said(WriteOrder command, Desk desk, Order? before)
    {
        var told = command.Order.Allergies;
        if (told.Kind != AllergyKind.Avoid)
        {
            return null;
        }

        return before?.Statement is { } stands && before.Allergies is var was && was.Kind == told.Kind && was.Told == told.Told && was.Words == told.Words && was.Avoid.SequenceEqual(told.Avoid, StringComparer.Ordinal)
            ? stands
            : new Statement(command.Person, desk.Now);
    }

    /// <summary>An order that enters the plan takes the recipes as they stand, and keeps them; one that leaves it lets them go.</summary>
    private static Order WithRecipes(Order? before, Order after, Desk desk) => !Stages.IsPlanned(after.Stage)
        ? after.Stage == Stage.HandedOver ? after : after with { MadeFrom = null }
        : before is not null && Stages.IsPlanned(before.Stage) ? after : after with { MadeFrom = MadeFrom.Of(desk.State.Cookbook) };

    /// <summary>A day that is kept from now on is kept for the shop's hours; any other stage lets that go.</summary>
    private static Order KeptFor(Order? before, Order after, Desk desk) => after with
    {
        KeptUntil = after.Stage != Stage.Kept ? null
            : before?.Stage == Stage.Kept ? before.KeptUntil
            : desk.Now + Duration.FromHours(desk.Shop.Settings.KeepHours),
    };

    /// <summary>Checks, plans and writes the version that shall stand.</summary>
    public static Outcome Write(Command command, Desk desk, Order? before, Order changed)
    {
        var after = KeptFor(before, WithRecipes(before, changed, desk), desk);
        var problems = Problems(command, desk, before, after);
        if (problems.Count > 0)
        {
            return Outcome.Refused(Subject(after), Told(problems.Count), problems);
        }

        void Rows(BookContext book) => book.Orders.Add(OrderRow.Of(after, command.Person, command.Device, desk.Now));
        if (!IsIn(after, desk) && (before is null || !IsIn(before, desk)))
        {
            return Outcome.Accepted(Subject(after), new Change(desk.State.Wall, Rows), after);
        }

        var fitted = Placed(desk, after, desk.Fitting);
        if (command is WriteOrder { MayMove: true } && fitted.Late.ContainsKey(Subject(after)))
        {
            if (WithRoom(desk, after, fitted.Late) is not { } room)
            {
                return Outcome.Refused(Subject(after), "The others can make way no more.", [new Problem("plan", after.SizeInInches, "The others can make way no more: the plan has changed.", "Look at the answer on top again.")]);
            }

            fitted = room;
        }

        return fitted.IsPlan
            ? Outcome.Accepted(Subject(after), new Change(fitted.Wall, Rows), after, fitted.Late)
            : Outcome.Refused(Subject(after), "There is no plan that makes this cake.", [.. fitted.Reasons.Select(r => new Problem("plan", after.SizeInInches, r.Sentence, r.Try))]);
    }

    private static bool IsIn(Order order, Desk desk) => PlanReach.IsIn(order, desk.Shop, desk.Today, desk.TicksWith(order));

    /// <summary>The order among the others as they stand; the plan of it stays if nothing that it depends on has changed.</summary>
    internal static Fitted Placed(Desk desk, Order after, Fitting fitting) =>
        fitting.Place(desk.OrdersWith(after), desk.TicksWith(after), desk.State.Wall, after, MovesWork(desk.Order(after.Id), after)).OrOurBug();

    /// <summary>The same once another has made way for it; null if none can.</summary>
    /// <param name="late">Minutes late by order id as long as none does.</param>
    internal static Fitted? WithRoom(Desk desk, Order after, IReadOnlyDictionary<string, int> late) => desk.State.Wall is not { } wall ? null
        : desk.Fitting.MakeRoom(desk.OrdersWith(after), desk.TicksWith(after), wall, after, late)?.OrOurBug();

    private static List<Problem> Problems(Command command, Desk desk, Order? before, Order after)
    {
        var move = Moves(before, after);
        if (after.Stage is Stage.Cancelled or Stage.HandedOver)
        {
            return move;
        }

        var owner = desk.Shop.PersonOf(command.Person)?.Role == Role.Owner;
        var full = DayCaps.Against(after, before, desk.State.Orders, desk.Shop, owner);
        var recipes = desk.State.CookbookOf(after);
        List<Problem> problems = [.. move, .. OrderChecks.NewProblems(after, before, desk.Shop, desk.Now, owner, recipes), .. UncleanBowl.AfterMixing(before, after, desk), .. full is null ? (Problem[])[] : [full]];
        Problem?[] money = problems.Count > 0 ? [] : [FloorPrice.Against(after, before, recipes, desk.Shop, owner), YearlyCap.Against(after, before, desk.State.Orders, desk.Shop, owner)];
        return [.. problems, .. money.OfType<Problem>()];
    }

    private static List<Problem> Moves(Order? before, Order after)
    {
        if (before is null)
        {
            return after.Stage is Stage.Enquiry or Stage.Quoted or Stage.Kept or Stage.Booked
                ? []
                : [new Problem("stage", Words(after.Stage), $"A new order can't be {Words(after.Stage)} yet.", "Take it as an enquiry, quoted, kept or booked.")];
        }

        return before.Stage == after.Stage || Stages.After(before.Stage).Contains(after.Stage)
            ? []
            : [new Problem("stage", Words(after.Stage), $"An order that is {Words(before.Stage)} can't become {Words(after.Stage)}.", $"From here it can become {string.Join(", ", Stages.After(before.Stage).Select(Words))}.")];
    }

    /// <summary>True if the plan depends on what changed; a corrected name leaves every row where it is.</summary>
    private static bool MovesWork(Order? before, Order after) =>
        before is null || !Stages.IsPlanned(before.Stage) || !Stages.IsPlanned(after.Stage) || before.Handover != after.Handover
        || before.Finish != after.Finish || before.Decoration != after.Decoration
        || !before.Allergies.Avoid.SequenceEqual(after.Allergies.Avoid, StringComparer.Ordinal)
        || !before.Tiers.Select(Work).SequenceEqual(after.Tiers.Select(Work));

    private static CakeTier Work(CakeTier tier) => tier with { Colours = [] };

    private static int NextNumber(Desk desk) => Math.Max(FirstNumber, desk.State.Orders.Select(o => o.Number + 1).DefaultIfEmpty().Max());

    private static string Told(int count) => count == 1 ? "One thing needs a look." : $"{Text(count)} things need a look.";

    private static string Subject(Order order) => order.Id.ToString("N", CultureInfo.InvariantCulture);

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Words(Stage stage) => stage switch
    {
        Stage.Enquiry => "an enquiry",
        Stage.InWork => "in work",
        Stage.HandedOver => "handed over",
        _ => stage.ToString().ToLowerInvariant(),
    };
}
