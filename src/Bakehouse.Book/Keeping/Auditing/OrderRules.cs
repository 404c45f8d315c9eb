namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>Orders and the shop: every version is there, is what its document says, and was written by a command.</summary>
internal static class OrderRules
{
    public static readonly IReadOnlyList<AuditRule> All =
    [
        new("B1", "The versions of an order run 1 to n without a hole.", """
            SELECT 'order ' || Id || ' has ' || count(*) || ' versions up to ' || max(Version)
              FROM orders GROUP BY Id HAVING min(Version) <> 1 OR max(Version) <> count(*)
            """),
        new("B2", "An order keeps its number, and no two orders share one.", """
            SELECT 'order ' || Id || ' has several numbers' FROM orders GROUP BY Id HAVING count(DISTINCT Number) > 1
            UNION ALL
            SELECT 'number ' || Number || ' is that of several orders' FROM orders GROUP BY Number HAVING count(DISTINCT Id) > 1
            """),
        new("B3", "What is beside an order's document is what the document says.", """
            SELECT 'order ' || Id || ' version ' || Version
              FROM orders
             WHERE CASE WHEN json_valid(Document) THEN
                   replace(json_extract(Document, '$.id'), '-', '') IS NOT Id
                OR json_extract(Document, '$.version') IS NOT Version
                OR json_extract(Document, '$.number') IS NOT Number
                OR json_extract(Document, '$.stage') IS NOT Stage
                OR json_extract(Document, '$.handover.at') IS NOT Handover
                OR json_array_length(Document, '$.tiers') = 0
              ELSE 1 END
            """),
        new("B4", "Every version of an order was written by an accepted command of that person, screen and instant.", """
            SELECT 'order ' || Id || ' version ' || Version
              FROM orders o
             WHERE NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.At = o.Written AND a.Person = o.Person AND a.Device = o.Device AND a.Outcome = 'Accepted')
            """),
        new("B5", "Every order that an accepted answer showed is in the book in that version.", """
            SELECT 'command ' || d.Id
              FROM done d JOIN audit a ON a.CommandId = d.Id AND a.Outcome = 'Accepted'
             WHERE json_valid(d.Answer) AND json_extract(d.Answer, '$.order.id') IS NOT NULL
               AND NOT EXISTS (SELECT 1 FROM orders o
                                WHERE o.Id = replace(json_extract(d.Answer, '$.order.id'), '-', '')
                                  AND o.Version = json_extract(d.Answer, '$.order.version'))
            """),
        new("B6", "Every accepted writing of an order left one version of it.", """
            SELECT a.Command || ' ' || a.CommandId
              FROM audit a
             WHERE a.Command IN ('WriteOrder', 'MoveStage', 'LookAtRecipes', 'ReadBackAllergies') AND a.Outcome = 'Accepted'
             GROUP BY a.Subject, a.At
            HAVING count(*) > (SELECT count(*) FROM orders o WHERE o.Id = a.Subject AND o.Written = a.At)
            """),
        new("B7", "The versions of the shop run 1 to n without a hole, and each is what its document says.", """
            SELECT count(*) || ' versions of the shop up to ' || max(Version)
              FROM shops HAVING count(*) > 0 AND (min(Version) <> 1 OR max(Version) <> count(*))
            UNION ALL
            SELECT 'shop version ' || Version FROM shops
             WHERE CASE WHEN json_valid(Document) THEN json_extract(Document, '$.version') IS NOT Version ELSE 1 END
            """),
        new("B8", "Every version of the shop was written by an accepted command, and each left one.", """
            SELECT count(*) || ' versions of the shop after ' || n || ' accepted commands'
              FROM shops, (SELECT count(*) AS n FROM audit WHERE Command IN ('WriteShop', 'OpenSample') AND Outcome = 'Accepted')
            HAVING count(*) <> n
            UNION ALL
            SELECT 'shop version ' || Version FROM shops s
             WHERE NOT EXISTS (SELECT 1 FROM audit a WHERE a.At = s.Written AND a.Person = s.Person AND a.Device = s.Device AND a.Outcome = 'Accepted')
            """),
        new("B9", "Every address of a calendar was made by an accepted command, each command made one, and one a person is open.", """
            SELECT 'calendar of ' || Person FROM calendars c
             GROUP BY Person
            HAVING sum(Ended IS NULL) > 1
                OR count(*) <> (SELECT count(*) FROM audit a WHERE a.Command = 'RenewCalendar' AND a.Outcome = 'Accepted' AND a.Subject = c.Person)
            UNION ALL
            SELECT 'command ' || CommandId FROM audit a
             WHERE Command = 'RenewCalendar' AND Outcome = 'Accepted' AND NOT EXISTS (SELECT 1 FROM calendars c WHERE c.Person = a.Subject AND c.Made = a.At)
            """),
    ];
}
