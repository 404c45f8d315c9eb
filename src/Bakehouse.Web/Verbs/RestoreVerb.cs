using System.CommandLine;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Copies;

namespace Bakehouse.Web.Verbs;

/// <summary>
/// <c>restore from book.db</c>: puts the newest good copy of a folder, or one that is named, where there is no book yet. Exit 0 if the
/// book stands, 2 if there is a book already or no good copy; nothing was written then.
/// </summary>
internal static class RestoreVerb
{
    public static Command Build()
    {
        var from = new Argument<string>("from") { Description = "A folder of copies, or one copy." };
        var book = new Argument<string>("book") { Description = "Where the book shall be; nothing may be there yet." };
        var verb = new Command("restore", "Put a copy where there is no book yet.") { from, book };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(from), parsed.GetRequiredValue(book)));
        return verb;
    }

    private static int Run(string from, string book)
    {
        try
        {
            BookRestore.Restore(from, book, Console.Out.WriteLine);
            return 0;
        }
        catch (BookClosedException closed)
        {
            Console.Error.WriteLine(closed.Message);
            return Files.Unreadable;
        }
    }
}
