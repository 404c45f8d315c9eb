namespace Bakehouse.Book.Entries;

using Bakehouse.Book.Tables;
using Bakehouse.Domain;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Slips;

/// <summary>What an entry decided: the answer, and what is written with it in one transaction.</summary>
/// <param name="Subject">Id of the order, step or ring that it was about, for the audit; never a name.</param>
/// <param name="Change">Null if nothing but the answer is written.</param>
internal sealed record Outcome(Answer Answer, string Subject, Change? Change = null)
{
    /// <summary>What the change does to the plan, where somebody looks at it before it counts; else null.</summary>
    public Repaired? Repair { get; init; }

    private static readonly IReadOnlyDictionary<string, int> NobodyLate = new Dictionary<string, int>();

    public static Outcome Accepted(string subject, Change change, Order? order = null, IReadOnlyDictionary<string, int>? late = null, string message = "") =>
        new(new Answer(AnswerKind.Accepted, message, [], order, late ?? NobodyLate), subject, change);

    public static Outcome Refused(string subject, string message, IReadOnlyList<Problem> problems) =>
        new(new Answer(AnswerKind.Refused, message, problems, null, NobodyLate), subject);

    public static Outcome Refused(string subject, Problem problem) => Refused(subject, problem.Sentence, [problem]);

    public static Outcome Clash(string subject, string message, Order? order) =>
        new(new Answer(AnswerKind.Clash, message, [], order, NobodyLate), subject);

    public static Outcome NotAllowed(string message) =>
        new(new Answer(AnswerKind.NotAllowed, message, [], null, NobodyLate), "");
}

/// <summary>Rows to write, and the plan on the wall afterwards.</summary>
/// <param name="Wall">The same object as before if the plan stays as it is.</param>
/// <param name="MovesHead">False for what no other screen can see.</param>
internal sealed record Change(Wall? Wall, Action<BookContext> Write, bool MovesHead = true);
