namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>Every command is answered once, and leaves one line.</summary>
internal static class CommandRules
{
    public static readonly IReadOnlyList<AuditRule> All =
    [
        new("A1", "The head is one row that has moved once for each accepted change.", """
            SELECT 'plan_head has ' || count(*) || ' rows' FROM plan_head HAVING count(*) <> 1
            UNION ALL
            SELECT 'the head stands at ' || Version || ' after ' || n || ' accepted changes'
              FROM plan_head, (SELECT count(*) AS n FROM audit WHERE Outcome = 'Accepted' AND Command <> 'KeepDraft')
             WHERE Version <> n
            """),
        new("A2", "Every command has one answer and one audit line.", """
            SELECT 'no answer to command ' || CommandId FROM audit WHERE CommandId NOT IN (SELECT Id FROM done)
            UNION ALL
            SELECT 'no audit line for command ' || Id FROM done WHERE Id NOT IN (SELECT CommandId FROM audit)
            UNION ALL
            SELECT count(*) || ' audit lines for command ' || CommandId FROM audit GROUP BY CommandId HAVING count(*) > 1
            """),
        new("A3", "The lines of the audit are counted 1 to n without a hole.", """
            SELECT count(*) || ' lines counted from ' || min(Counter) || ' to ' || max(Counter)
              FROM audit HAVING count(*) > 0 AND (min(Counter) <> 1 OR max(Counter) <> count(*))
            """),
        new("A4", "The answer to a command is the outcome in the audit, at the same instant.", """
            SELECT 'command ' || a.CommandId
              FROM audit a JOIN done d ON d.Id = a.CommandId
             WHERE NOT json_valid(d.Answer) OR d.At <> a.At OR json_extract(d.Answer, '$.kind') IS NOT a.Outcome
            """),
    ];
}
