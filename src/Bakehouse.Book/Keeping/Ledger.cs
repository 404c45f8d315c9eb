namespace Bakehouse.Book.Keeping;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Book.Tables;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using NodaTime;

/// <summary>Somebody else moved the head first, or answered the same command: decide again on what stands now.</summary>
internal sealed class LostRaceException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>Writes one command with its answer and its audit line in one transaction, or nothing of it.</summary>
internal sealed class Ledger(BookFile file)
{
    /// <summary>What this command heard before, or null if it is new.</summary>
    public Answer? AnswerTo(Command command)
    {
        using var book = file.Context();
        return book.Done.AsNoTracking().FirstOrDefault(d => d.Id == command.Id) is { } done ? Document.ReadAnswer(done.Format, done.Answer) : null;
    }

    /// <summary>Writes it; returns after COMMIT.</summary>
    /// <exception cref="LostRaceException">The head is no longer where the outcome was decided.</exception>
    public void Write(Command command, Outcome outcome, BookState before, Instant now)
    {
        using var book = file.Context();
        using var all = book.Database.BeginTransaction();
        if (outcome.Change is { } change)
        {
            if (change.MovesHead)
            {
                MoveHead(book, before, change);
            }

            change.Write(book);
        }

        book.Done.Add(new DoneRow { Id = command.Id, Format = Document.Format, Answer = Document.Write(outcome.Answer), At = now });
        book.Audit.Add(Line(command, outcome, now));
        Save(book);
        all.Commit();
    }

    private static void MoveHead(BookContext book, BookState before, Change change)
    {
        var (epoch, week) = (change.Wall?.Epoch, change.Wall?.Plan.Week ?? "");
        var moved = book.Heads.Where(h => h.Version == before.Head).ExecuteUpdate(h => h
            .SetProperty(r => r.Version, before.Head + 1)
            .SetProperty(r => r.Epoch, epoch)
            .SetProperty(r => r.Week, week));
        if (moved == 0)
        {
            throw new LostRaceException($"The book moved on from {before.Head} meanwhile.");
        }

        if (!ReferenceEquals(before.Wall, change.Wall))
        {
            WallRows.Replace(book, before.Wall, change.Wall);
        }
    }

    private static void Save(BookContext book)
    {
        const int constraint = 19;
        try
        {
            book.SaveChanges();
        }
        catch (DbUpdateException taken) when (taken.InnerException is SqliteException { SqliteErrorCode: constraint })
        {
            throw new LostRaceException("A row that may be there once was there already.", taken);
        }
    }

    private static AuditRow Line(Command command, Outcome outcome, Instant now) => new()
    {
        At = now,
        Person = command.Person,
        Device = command.Device,
        Command = command.GetType().Name,
        CommandId = command.Id,
        Subject = outcome.Subject,
        Outcome = outcome.Answer.Kind.ToString(),
    };
}
