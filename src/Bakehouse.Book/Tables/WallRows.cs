namespace Bakehouse.Book.Tables;

using Bakehouse.Domain.Planning;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>
/// The plan on the wall as rows. Starts are instants, so a row that stands still stays as it is, whatever minute 0 is; only rows
/// that changed are written.
/// </summary>
internal static class WallRows
{
    /// <summary>The wall, or null if nothing is planned.</summary>
    public static Wall? Read(BookContext book, HeadRow head)
    {
        if (head.Epoch is not { } epoch)
        {
            return null;
        }

        int Minute(Instant start) => (int)(start - epoch).TotalMinutes;
        return new Wall(epoch, new Plan(
            head.Week,
            book.WallChoices.AsNoTracking().ToDictionary(r => r.Choice, r => r.Taken, StringComparer.Ordinal),
            [.. book.WallSteps.AsNoTracking().OrderBy(r => r.Start).ThenBy(r => r.Step).AsEnumerable().Select(r => new StepRow(r.Step, Minute(r.Start), Names(r.People), r.Machine, r.Batch))],
            [.. book.WallHolds.AsNoTracking().OrderBy(r => r.Hold).AsEnumerable().Select(r => new HoldRow(r.Hold, r.Store))],
            [.. book.WallCleans.AsNoTracking().OrderBy(r => r.Start).ThenBy(r => r.Machine).AsEnumerable().Select(r => new CleanRow(r.Machine, Minute(r.Start), Names(r.People)))]));
    }

    /// <summary>Turns the rows of one wall into those of another.</summary>
    public static void Replace(BookContext book, Wall? before, Wall? after)
    {
        Differ(book, Steps(before), Steps(after), r => r.Step);
        Differ(book, Holds(before), Holds(after), r => r.Hold);
        Differ(book, Cleans(before), Cleans(after), r => (r.Machine, r.Start));
        Differ(book, Choices(before), Choices(after), r => r.Choice);
    }

    private static void Differ<TRow, TKey>(BookContext book, IEnumerable<TRow> before, IEnumerable<TRow> after, Func<TRow, TKey> key)
        where TRow : class
        where TKey : notnull
    {
        var old = before.ToDictionary(key);
        foreach (var row in after)
        {
            if (!old.Remove(key(row), out var stood))
            {
                book.Add(row);
            }
            else if (!row.Equals(stood))
            {
                book.Update(row);
            }
        }

        book.RemoveRange(old.Values);
    }

    private static IEnumerable<WallStepRow> Steps(Wall? wall) => (wall?.Plan.Steps ?? []).Select(r => new WallStepRow
    {
        Step = r.Step,
        Start = wall!.Epoch + Duration.FromMinutes(r.Start),
        People = string.Join(' ', r.People),
        Machine = r.Machine,
        Batch = r.Batch,
    });

    private static IEnumerable<WallHoldRow> Holds(Wall? wall) =>
        (wall?.Plan.Holds ?? []).Select(r => new WallHoldRow { Hold = r.Hold, Store = r.Store });

    private static IEnumerable<WallCleanRow> Cleans(Wall? wall) => (wall?.Plan.Cleans ?? []).Select(r => new WallCleanRow
    {
        Machine = r.Machine,
        Start = wall!.Epoch + Duration.FromMinutes(r.Start),
        People = string.Join(' ', r.People),
    });

    private static IEnumerable<WallChoiceRow> Choices(Wall? wall) =>
        (wall?.Plan.Choices ?? new Dictionary<string, string>()).Select(c => new WallChoiceRow { Choice = c.Key, Taken = c.Value });

    private static string[] Names(string people) => people.Split(' ', StringSplitOptions.RemoveEmptyEntries);
}
