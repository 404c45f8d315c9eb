using System.CommandLine;
using Bakehouse.Book.Keeping;
using Bakehouse.Book.Keeping.Auditing;

namespace Bakehouse.Web.Verbs;

/// <summary>
/// <c>audit book.db</c>: one line for each place where the book breaks a rule, then one line that counts. Exit 0 if none is broken,
/// 1 if one is, 2 if the file can't be read. The book may be in use meanwhile; nothing is written.
/// </summary>
internal static class AuditVerb
{
    public static Command Build()
    {
        var book = new Argument<string>("book") { Description = "The book's file." };
        var verb = new Command("audit", "Look at every rule of a book's file with plain SQL; nothing is written.") { book };
        verb.SetAction(parsed => Run(parsed.GetRequiredValue(book)));
        return verb;
    }

    private static int Run(string path)
    {
        IReadOnlyList<AuditFault> faults;
        try
        {
            faults = BookAudit.Examine(path);
        }
        catch (BookClosedException closed)
        {
            Console.Error.WriteLine(closed.Message);
            return Files.Unreadable;
        }

        foreach (var fault in faults)
        {
            Console.Out.WriteLine(fault);
        }

        Console.Out.WriteLine($"{BookAudit.Rules.Count} rules, {faults.Count} faults");
        return faults.Count == 0 ? 0 : 1;
    }
}
