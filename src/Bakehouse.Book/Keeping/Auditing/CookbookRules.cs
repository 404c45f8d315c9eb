namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>Recipes and ingredients by version, and what orders say about them.</summary>
internal static class CookbookRules
{
    public static readonly IReadOnlyList<AuditRule> All =
    [
        new("R1", "The versions of the cookbook run 1 to n without a hole, and each is what its document says.", """
            SELECT count(*) || ' versions of the cookbook up to ' || max(Version)
              FROM cookbooks HAVING count(*) > 0 AND (min(Version) <> 1 OR max(Version) <> count(*))
            UNION ALL
            SELECT 'cookbook version ' || Version FROM cookbooks
             WHERE CASE WHEN json_valid(Document) THEN json_extract(Document, '$.version') IS NOT Version ELSE 1 END
            """),
        new("R2", "Every version of the cookbook was written by an accepted command with a reason, and each left one.", """
            SELECT count(*) || ' versions of the cookbook after ' || n || ' accepted commands'
              FROM cookbooks, (SELECT count(*) AS n FROM audit WHERE Command IN ('WriteRecipes', 'OpenPack') AND Outcome = 'Accepted')
            HAVING count(*) <> n + (SELECT count(*) FROM audit WHERE Command = 'OpenSample' AND Outcome = 'Accepted' AND At IN (SELECT Written FROM cookbooks))
            UNION ALL
            SELECT count(*) || ' commands left no cookbook' FROM audit
             WHERE Command IN ('WriteRecipes', 'OpenPack') AND Outcome = 'Accepted' AND At NOT IN (SELECT Written FROM cookbooks) HAVING count(*) > 0
            UNION ALL
            SELECT 'cookbook version ' || Version FROM cookbooks c
             WHERE trim(Why) = '' OR NOT EXISTS (SELECT 1 FROM audit a WHERE a.At = c.Written AND a.Person = c.Person AND a.Device = c.Device AND a.Outcome = 'Accepted')
            """),
        new("R3", "The recipes that an order is made from, and those up to which it was looked at, are there.", """
            SELECT 'order ' || Id || ' version ' || Version
              FROM orders
             WHERE json_valid(Document) AND json_extract(Document, '$.madeFrom') IS NOT NULL
               AND (json_extract(Document, '$.madeFrom.cookbook') NOT IN (SELECT 0 UNION SELECT Version FROM cookbooks)
                OR json_extract(Document, '$.madeFrom.lookedAt') NOT IN (SELECT 0 UNION SELECT Version FROM cookbooks)
                OR json_extract(Document, '$.madeFrom.lookedAt') < json_extract(Document, '$.madeFrom.cookbook'))
            """),
        new("R4", "What must be avoided was read back by an accepted command of that person.", """
            SELECT 'order ' || Id || ' version ' || Version
              FROM orders o
             WHERE json_valid(Document) AND json_extract(Document, '$.statement.readBack') IS NOT NULL
               AND NOT EXISTS (SELECT 1 FROM audit a
                                WHERE a.Outcome = 'Accepted' AND a.At <= o.Written
                                  AND ((a.Command = 'ReadBackAllergies' AND a.Subject = o.Id AND a.Person = json_extract(o.Document, '$.statement.readBackBy')) OR a.Command = 'OpenSample'))
            """),
    ];
}
