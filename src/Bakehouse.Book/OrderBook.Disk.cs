namespace Bakehouse.Book;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping;
using Bakehouse.Domain;
using Microsoft.Extensions.Logging;

/// <summary>What happens when the disk does not take a command.</summary>
public sealed partial class OrderBook
{
    /// <summary>A disk that does not take it is told to the person, and the command is not remembered: it may be sent again.</summary>
    private Answer EnterOrSay(Command command)
    {
        if (diskFaults > 1)
        {
            return Said(DiskTrouble.NoMore);
        }

        try
        {
            return EnterWithRetry(command);
        }
        catch (Exception trouble) when (DiskTrouble.IsFull(trouble) && reserve.GiveUp())
        {
            log.LogError(trouble, "The disk is full: the reserve is given up");
            return EnterOrSay(command);
        }
        catch (Exception trouble) when (DiskTrouble.Of(trouble) is { } told)
        {
            log.LogError(trouble, "Command {Command} {Id} was not written", command.GetType().Name, command.Id);
            return DiskTrouble.IsUnknown(trouble) ? LookedUp(command, told) : Said(told);
        }
    }

    /// <summary>After a fault of the disk only the book itself can say whether the command is in it.</summary>
    private Answer LookedUp(Command command, Problem told)
    {
        diskFaults++;
        try
        {
            file.Reopen();
            var answered = ledger.AnswerTo(command);
            ReadAgain(clock.GetCurrentInstant());
            return answered ?? Said(DiskTrouble.NotThere);
        }
        catch (Exception trouble) when (DiskTrouble.Of(trouble) is not null)
        {
            log.LogError(trouble, "Command {Command} {Id} could not be looked up", command.GetType().Name, command.Id);
            behind = true;
            return Said(told);
        }
    }

    private static Answer Said(Problem told) => new(AnswerKind.Refused, told.Sentence, [told], null, new Dictionary<string, int>());
}
