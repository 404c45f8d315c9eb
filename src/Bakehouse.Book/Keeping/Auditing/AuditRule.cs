namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>One rule of the audit: a query that returns a line for each place where the book breaks it.</summary>
/// <param name="Id">Letter of the matter and a number: A commands, B orders and the shop, C hands and rings, D the plan.</param>
/// <param name="Sentence">What must hold.</param>
/// <param name="Sql">One text column: what breaks the rule, by id; never a name, a phone or a note.</param>
public sealed record AuditRule(string Id, string Sentence, string Sql);

/// <summary>A place where the book breaks a rule.</summary>
public sealed record AuditFault(AuditRule Rule, string What)
{
    /// <inheritdoc/>
    public override string ToString() => $"{Rule.Id} {Rule.Sentence} Here: {What}.";
}
