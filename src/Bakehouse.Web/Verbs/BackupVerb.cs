using System.CommandLine;
using Bakehouse.Book.Keeping.Copies;
using Bakehouse.Web.Shell;

namespace Bakehouse.Web.Verbs;

/// <summary>
/// <c>backup book.db [--to folder] [--second folder]</c>: one more copy now, of a book in use or not. Exit 0 with a good copy
/// wherever it was asked for, 1 if a fault was found or a place could not be written, 2 if there is no such book.
/// </summary>
internal static class BackupVerb
{
    public static Command Build()
    {
        var book = new Argument<string>("book") { Description = "The book's file." };
        var to = new Option<string?>("--to") { Description = "Folder for the copies; without it, \"copies\" beside the book." };
        var second = new Option<string?>("--second") { Description = "A folder on another disk that gets the copy, too." };
        var verb = new Command("backup", "Take a copy of a book and look at it.") { book, to, second };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(book), parsed.GetValue(to), parsed.GetValue(second)));
        return verb;
    }

    private static int Run(string book, string? to, string? second)
    {
        if (!File.Exists(book))
        {
            Console.Error.WriteLine($"There is no book {book}.");
            return Files.Unreadable;
        }

        var taken = BookCopies.Of(book, to, second).Take(Hosting.MachineClock.GetCurrentInstant());
        foreach (var problem in taken.Problems)
        {
            Console.Error.WriteLine(problem);
        }

        if (taken.Path is { } path)
        {
            Console.Out.WriteLine($"Copied and looked at: {path}");
            Console.Out.WriteLine(BookStands.Of(path));
        }

        return taken.Problems.Count == 0 ? 0 : 1;
    }
}
