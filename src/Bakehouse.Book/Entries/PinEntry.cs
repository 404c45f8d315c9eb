namespace Bakehouse.Book.Entries;

using System.Globalization;
using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>Puts a step somewhere and pins it, or lets it go.</summary>
internal static class PinEntry
{
    public static Outcome Decide(PinStep command, Desk desk)
    {
        if (Row(command.Step, desk) is not { } row)
        {
            return NoSuchStep(command.Step);
        }

        if (Refusal(command, row, command.People, desk) is { } refused)
        {
            return refused;
        }

        if (command.Head != desk.State.Head)
        {
            return Outcome.Clash(command.Step, $"The plan moved meanwhile: {new PlanWords(desk).Stands(row)}. Look at it again.", OrderOf(command.Step, desk));
        }

        var problems = Problems(command, row, desk);
        return problems.Count > 0 ? Outcome.Refused(command.Step, problems[0].Sentence, problems) : Move(command, desk);
    }

    public static Outcome Decide(UnpinStep command, Desk desk)
    {
        if (desk.State.Pins.FirstOrDefault(p => p.Step == command.Step) is not { } pin)
        {
            return Outcome.Refused(command.Step, new Problem("step", command.Step, "This step is not pinned.", "Look at the week again."));
        }

        return Refusal(command, new StepRow(pin.Step, 0, pin.People, pin.Machine, null), pin.People, desk)
            ?? Outcome.Accepted(command.Step, new Change(desk.State.Wall, book => LetGo(book, command.Step, command, desk)), OrderOf(command.Step, desk));
    }

    /// <summary>Ends the pin that stands on a step, if one does.</summary>
    public static void LetGo(BookContext book, string step, Command command, Desk desk) =>
        book.Pins.Where(p => p.Step == step && p.Undone == null).ExecuteUpdate(p => p
            .SetProperty(r => r.Undone, desk.Now)
            .SetProperty(r => r.UndonePerson, command.Person));

    /// <summary>Not the owner's, and not one's own.</summary>
    public static Outcome? Refusal(Command command, StepRow row, IReadOnlyList<string> wanted, Desk desk)
    {
        var own = desk.Shop.PersonOf(command.Person)?.Role == Role.Owner
            || (row.People.Concat(wanted).All(p => p == command.Person) && row.People.Count == wanted.Count);
        return own ? null : Outcome.NotAllowed($"{(row.People.Count > 0 ? string.Join(" and ", row.People.Select(desk.NameOf)) : "Somebody else")} has that step. Ask the owner.");
    }

    private static StepRow? Row(string step, Desk desk) =>
        desk.State is { Week: { } week, Wall: { } wall } && week.Steps.Any(s => s.Id == step) ? wall.From(week.Epoch).Steps.FirstOrDefault(r => r.Step == step) : null;

    private static Outcome NoSuchStep(string step) =>
        Outcome.Refused(step, new Problem("step", step, "This step is not in the plan.", "Look at the week again."));

    private static List<Problem> Problems(PinStep command, StepRow row, Desk desk)
    {
        var week = desk.State.Week!;
        var words = new PlanWords(desk);
        if (Reach.Of(week, desk.State.Wall!.From(week.Epoch), command.Step) is not { } reach)
        {
            return [new Problem("step", words.Name(command.Step), $"{words.Name(command.Step)} is done or running, so it stays where it is.", "Take the tick back first, or move what comes after it.")];
        }

        if (!reach.Crews().Any(c => c.ToHashSet().SetEquals(command.People)) || !reach.Machines().Contains(command.Machine))
        {
            return [new Problem("people", string.Join(", ", command.People), $"{words.Name(command.Step)} can’t be done by {string.Join(" and ", command.People.Select(desk.NameOf))}{(command.Machine is { } m ? $" on {m}" : "")}.", "Choose somebody who can.")];
        }

        var minute = (command.Start - week.Epoch).TotalMinutes;
        if (minute % week.Grain != 0)
        {
            return [new Problem("start", desk.Clock(command.Start), $"Steps begin at whole {Text(week.Grain)} minutes.", "Round it.")];
        }

        return reach.WhyNot((int)minute, command.People, command.Machine) is { } stop
            ? [new Problem("start", desk.Clock(command.Start), words.Say(stop, minute < row.Start), "Choose a place that lights up.")]
            : [];
    }

    private static Outcome Move(PinStep command, Desk desk)
    {
        var pin = new Pin(command.Step, command.Start, command.People, command.Machine);
        var before = desk.State.Wall!;
        var fitted = desk.Fitting.Move(desk.State.Orders, desk.State.Ticks, before, pin);
        if (!fitted.IsPlan)
        {
            var why = fitted.Reasons.Select(r => new Problem("plan", desk.Clock(command.Start), r.Sentence, r.Try))
                .Concat(fitted.Breaches.Take(1).Select(_ => new Problem("plan", desk.Clock(command.Start), "The other steps find no room beside it.", "Choose another time, or let a pin go."))).ToList();
            return Outcome.Refused(command.Step, $"It can’t stand there. {why[0].Sentence}", why);
        }

        var wall = SameRows(before, fitted.Wall!) ? before : fitted.Wall!;
        return Outcome.Accepted(command.Step, new Change(wall, book => Write(book, command, desk, wall)), OrderOf(command.Step, desk), fitted.Late);
    }

    private static bool SameRows(Wall before, Wall after) => WallMoves.Before(before, after) is { Plan: { Steps.Count: 0, Holds.Count: 0 } };

    private static void Write(BookContext book, PinStep command, Desk desk, Wall after)
    {
        LetGo(book, command.Step, command, desk);
        book.Pins.Add(new PinRow
        {
            Move = command.Id,
            Step = command.Step,
            Order = StepKey.Parse(command.Step)!.Value.Order,
            Start = command.Start,
            People = string.Join(' ', command.People),
            Machine = command.Machine,
            Format = Document.Format,
            Before = Document.Write(WallMoves.Before(desk.State.Wall!, after)),
            Person = command.Person,
            Device = command.Device,
            Written = desk.Now,
        });
    }

    private static Order? OrderOf(string step, Desk desk) => StepKey.Parse(step) is { } key ? desk.Order(key.Order) : null;

    private static string Text(int value) => value.ToString(CultureInfo.InvariantCulture);
}
