namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>What hands did: ticks, and answers to rings.</summary>
internal static class HandRules
{
    public static readonly IReadOnlyList<AuditRule> All =
    [
        new("C1", "A tick is on a step of an order and of a tier that the book knows.", """
            SELECT 'tick ' || Seq || ' on ' || Step
              FROM ticks t
             WHERE substr(Step, 1, 33) IS NOT "Order" || '.'
                OR NOT EXISTS (SELECT 1 FROM orders o, json_each(o.Document, '$.tiers') tier
                                WHERE o.Id = t."Order" AND json_valid(o.Document)
                                  AND (Step LIKE '%.cake.%' OR substr(Step, 34, 32) = replace(json_extract(tier.value, '$.id'), '-', '')))
            """),
        new("C2", "A step is done once.", """
            SELECT count(*) || ' ticks stand on ' || Step FROM ticks WHERE Undone IS NULL GROUP BY Step HAVING count(*) > 1
            """),
        new("C3", "Every tick was made by a command, and a command made it once; what was only assumed is denied without a tick.", """
            SELECT count(*) || ' ticks on ' || t.Step || ' at one instant'
              FROM ticks t
             WHERE "By" <> ''
             GROUP BY t.Step, t.Written
            HAVING count(*) > (SELECT count(*) FROM audit a
                                WHERE a.At = t.Written AND a.Outcome = 'Accepted'
                                  AND (a.Command IN ('TickStep', 'CorrectTick') AND a.Subject = t.Step OR a.Command IN ('AnswerRing', 'OpenSample')))
            """),
        new("C4", "Every accepted tick is in the book.", """
            SELECT 'command ' || a.CommandId
              FROM audit a
             WHERE a.Command IN ('TickStep', 'CorrectTick') AND a.Outcome = 'Accepted'
               AND NOT EXISTS (SELECT 1 FROM ticks t WHERE t.Step = a.Subject AND t.Written = a.At AND t.Person = a.Person AND t.Device = a.Device)
            """),
        new("C5", "A tick is taken back by a command, and every accepted taking back took one.", """
            SELECT n || ' ticks of ' || Step || ' are taken back, ' || m || ' by a command'
              FROM (SELECT Step, count(Undone) AS n,
                           (SELECT count(*) FROM audit a WHERE a.Command IN ('UndoTick', 'CorrectTick') AND a.Outcome = 'Accepted' AND a.Subject = t.Step) AS m
                      FROM ticks t GROUP BY Step)
             WHERE n <> m
            UNION ALL
            SELECT 'tick ' || Seq || ' is taken back by nobody known' FROM ticks WHERE (Undone IS NULL) <> (UndonePerson IS NULL)
            """),
        new("C6", "A ring is answered once each time it rings, on an order that the book knows.", """
            SELECT 'ring ' || Ring || ' has ' || count(*) || ' answers up to turn ' || max(Turn)
              FROM ring_answers GROUP BY Ring HAVING min(Turn) <> 1 OR max(Turn) <> count(*)
            UNION ALL
            SELECT 'answer ' || Seq FROM ring_answers r
             WHERE instr(Ring, ':' || "Order" || '.') = 0 OR NOT EXISTS (SELECT 1 FROM orders o WHERE o.Id = r."Order")
            """),
        new("C7", "Every accepted answer to a ring is in the book, and every one there was given by a command.", """
            SELECT 'command ' || a.CommandId FROM audit a
             WHERE a.Command = 'AnswerRing' AND a.Outcome = 'Accepted'
               AND NOT EXISTS (SELECT 1 FROM ring_answers r WHERE r.Ring = a.Subject AND r.At = a.At)
            UNION ALL
            SELECT 'answer ' || r.Seq FROM ring_answers r
             WHERE NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.Command = 'AnswerRing' AND a.Outcome = 'Accepted' AND a.Subject = r.Ring AND a.At = r.At)
            """),
        new("C8", "A ring answered done has its tick, but one of a food limit, which ticks nothing; one put off says until when; one that can't be done says why.", """
            SELECT 'answer ' || Seq FROM ring_answers r
             WHERE CASE Kind
                   WHEN 'Done' THEN Undone IS NULL AND Ring NOT LIKE 'FoodLimit:%' AND NOT EXISTS (
                        SELECT 1 FROM ticks t WHERE t.Undone IS NULL AND t.Step = substr(r.Ring, instr(r.Ring, ':') + 1))
                   WHEN 'Later' THEN Until IS NULL OR Until <= At
                   WHEN 'Cannot' THEN trim(Reason) = ''
                   ELSE 1 END
            """),
    ];
}
