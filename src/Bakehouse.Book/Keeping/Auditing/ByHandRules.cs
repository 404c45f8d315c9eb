namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>What was set by hand: pins, and chores with their versions.</summary>
internal static class ByHandRules
{
    public static readonly IReadOnlyList<AuditRule> All =
    [
        new("H1", "A step is pinned once, and it is a step of an order that the book knows.", """
            SELECT count(*) || ' pins stand on ' || Step FROM pins WHERE Undone IS NULL GROUP BY Step HAVING count(*) > 1
            UNION ALL
            SELECT 'pin ' || Seq FROM pins p
             WHERE substr(Step, 1, 33) IS NOT "Order" || '.' OR NOT EXISTS (SELECT 1 FROM orders o WHERE o.Id = p."Order")
            """),
        new("H2", "Every pin was made by an accepted command, every such command made one, and one was let go by somebody.", """
            SELECT 'pin ' || Seq FROM pins p
             WHERE NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.CommandId = p.Move AND a.Command = 'PinStep' AND a.Outcome = 'Accepted' AND a.Subject = p.Step AND a.At = p.Written)
                OR (Undone IS NULL) <> (UndonePerson IS NULL)
            UNION ALL
            SELECT 'command ' || CommandId FROM audit
             WHERE Command = 'PinStep' AND Outcome = 'Accepted' AND CommandId NOT IN (SELECT Move FROM pins)
            """),
        new("H3", "The versions of a chore run 1 to n without a hole, and each is what its document says.", """
            SELECT 'chore ' || Id || ' has ' || count(*) || ' versions up to ' || max(Version)
              FROM chores GROUP BY Id HAVING min(Version) <> 1 OR max(Version) <> count(*)
            UNION ALL
            SELECT 'chore ' || Id || ' version ' || Version FROM chores
             WHERE CASE WHEN json_valid(Document) THEN
                   replace(json_extract(Document, '$.id'), '-', '') IS NOT Id OR json_extract(Document, '$.version') IS NOT Version
              ELSE 1 END
            """),
        new("H4", "Every version of a chore was written by an accepted command, and each command left one.", """
            SELECT 'chore ' || Id || ' version ' || Version FROM chores c
             WHERE NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.Command = 'WriteChore' AND a.Subject = c.Id AND a.At = c.Written AND a.Person = c.Person AND a.Outcome = 'Accepted')
            UNION ALL
            SELECT 'chore ' || Subject || ' has fewer versions than commands' FROM audit a
             WHERE Command = 'WriteChore' AND Outcome = 'Accepted'
             GROUP BY Subject HAVING count(*) <> (SELECT count(*) FROM chores c WHERE c.Id = a.Subject)
            """),
        new("H5", "What went wrong was told by an accepted command, each left one row, and a row says what its document says.", """
            SELECT 'slip ' || Id FROM slips s
             WHERE CASE WHEN json_valid(Document) THEN
                   replace(json_extract(Document, '$.id'), '-', '') IS NOT Id OR json_extract(Document, '$.kind') IS NOT Kind
                ELSE 1 END
                OR NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.CommandId = s.Id AND a.Command = 'TellSlip' AND a.Outcome = 'Accepted' AND a.At = s.Written AND a.Person = s.Person)
            UNION ALL
            SELECT 'command ' || CommandId FROM audit
             WHERE Command = 'TellSlip' AND Outcome = 'Accepted' AND CommandId NOT IN (SELECT Id FROM slips)
            """),
        new("H6", "A slip is taken back by an accepted command, and every accepted taking back took one.", """
            SELECT 'slip ' || Id FROM slips s
             WHERE (Undone IS NULL) <> (UndonePerson IS NULL)
                OR (Undone IS NOT NULL) <> (SELECT count(*) FROM audit a WHERE a.Command = 'TakeBackSlip' AND a.Outcome = 'Accepted' AND a.Subject = s.Id)
            UNION ALL
            SELECT 'command ' || CommandId FROM audit
             WHERE Command = 'TakeBackSlip' AND Outcome = 'Accepted' AND Subject NOT IN (SELECT Id FROM slips)
            """),
        new("H7", "What was counted in the freezer was told by an accepted command, and each left one row.", """
            SELECT 'count ' || Id FROM spares s
             WHERE NOT json_valid(Document)
                OR NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.CommandId = s.Id AND a.Command = 'CountSpares' AND a.Outcome = 'Accepted' AND a.At = s.Written AND a.Person = s.Person)
            UNION ALL
            SELECT 'command ' || CommandId FROM audit
             WHERE Command = 'CountSpares' AND Outcome = 'Accepted' AND CommandId NOT IN (SELECT Id FROM spares)
            """),
    ];
}
