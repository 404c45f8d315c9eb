namespace Bakehouse.Book.Keeping.Auditing;

/// <summary>
/// The plan on the wall, as far as rows alone can tell: lengths and waits of steps are not stored, they follow from the orders, and
/// the Judge looks at those before a plan is written.
/// </summary>
internal static class PlanRules
{
    /// <summary>
    /// The newest version of each order. A tick is a fact even if no plan can follow it, and its answer says so: then the wall may lag
    /// behind the orders that were last written before it (<c>lags</c>).
    /// </summary>
    private const string Newest = """
        WITH newest AS (
          SELECT Id, Stage, Document, Stage IN ('Kept', 'Booked', 'InWork', 'Ready') AS planned,
                 EXISTS (SELECT 1 FROM done d WHERE d.At >= o.Written AND json_extract(d.Answer, '$.message') LIKE 'Written%') AS lags
            FROM orders o
           WHERE Version = (SELECT max(Version) FROM orders n WHERE n.Id = o.Id))

        """;

    /// <summary>Steps that are still to be done: where a tick stands, the row says what happened, not what was planned.</summary>
    private const string Open = """
        WITH open AS (SELECT * FROM wall_steps WHERE Step NOT IN (SELECT Step FROM ticks WHERE Undone IS NULL))

        """;

    /// <summary>Who and what the newest version of the shop knows; every shop has a stove.</summary>
    private const string Known = """
        , shop AS (SELECT Document FROM shops ORDER BY Version DESC LIMIT 1),
        known AS (
          SELECT json_extract(thing.value, '$.id') AS id
            FROM shop, json_each('["$.people","$.ovens","$.bowls"]') kind, json_each(shop.Document, kind.value) thing
          UNION ALL SELECT 'stove')

        """;

    public static readonly IReadOnlyList<AuditRule> All =
    [
        // A cake that finds no room hangs on the wall with no step at all; that it waits is told by the Judge.
        new("D1", "An order that stands in the plan stands there with every tier.", Newest + """
            SELECT 'order ' || n.Id || ' tier ' || json_extract(tier.value, '$.id')
              FROM newest n, json_each(n.Document, '$.tiers') tier
             WHERE n.planned AND NOT n.lags AND EXISTS (SELECT 1 FROM wall_steps w WHERE w.Step LIKE n.Id || '.%')
               AND NOT EXISTS (SELECT 1 FROM wall_steps w
                                WHERE w.Step LIKE n.Id || '.' || replace(json_extract(tier.value, '$.id'), '-', '') || '.%')
            """),
        new("D2", "Nothing stands in the plan but steps of planned orders.", Newest + """
            SELECT 'step ' || Step FROM wall_steps
             WHERE NOT EXISTS (SELECT 1 FROM newest n WHERE n.Id = substr(Step, 1, 32) AND (n.planned OR n.lags))
            """),
        new("D3", "A thing that stands between two steps stands between two steps of the plan.", """
            SELECT 'hold ' || Hold FROM wall_holds
             WHERE substr(Hold, 1, instr(Hold, '>') - 1) NOT IN (SELECT Step FROM wall_steps)
                OR substr(Hold, instr(Hold, '>') + 1) NOT IN (SELECT Step FROM wall_steps)
            """),
        new("D4", "What is made as one load begins together.", Open + """
            SELECT 'load ' || Batch || ' of ' || Machine FROM open WHERE Batch IS NOT NULL GROUP BY Machine, Batch HAVING count(DISTINCT Start) > 1
            """),
        new("D5", "Nobody begins two things at one minute.", Open + """
            SELECT person.value || ' at ' || Start
              FROM (SELECT Start, People, ifnull(Batch, Step) AS what FROM open
                    UNION ALL SELECT Start, People, 'clean ' || Machine FROM wall_cleans) w,
                   json_each('["' || replace(w.People, ' ', '","') || '"]') person
             WHERE w.People <> ''
             GROUP BY person.value, Start HAVING count(DISTINCT what) > 1
            """),
        // What is taken as done without a tick has no hands any more; an oven bakes without.
        new("D6", "No machine begins two things at one minute.", Open + Known + """
            SELECT Machine || ' at ' || Start
              FROM (SELECT Start, Machine, ifnull(Batch, Step) AS what FROM open
                     WHERE People <> '' OR Machine IN (SELECT json_extract(oven.value, '$.id') FROM shop, json_each(shop.Document, '$.ovens') oven)
                    UNION ALL SELECT Start, Machine, 'clean' FROM wall_cleans)
             WHERE Machine IS NOT NULL
             GROUP BY Machine, Start HAVING count(DISTINCT what) > 1
            """),
        new("D7", "The plan names only people and machines that the shop has.", Open + Known + """
            SELECT 'step ' || Step || ' is for ' || person.value
              FROM open w, json_each('["' || replace(w.People, ' ', '","') || '"]') person
             WHERE w.People <> '' AND person.value NOT IN (SELECT id FROM known)
            UNION ALL
            SELECT 'step ' || Step || ' is on ' || Machine FROM open WHERE Machine NOT IN (SELECT id FROM known)
            """),
        new("D8", "Minute 0 is known exactly while something is planned, and every start is whole minutes from it.", """
            SELECT 'minute 0 of the plan' FROM plan_head WHERE (Epoch IS NULL) <> NOT EXISTS (SELECT 1 FROM wall_steps)
            UNION ALL
            SELECT 'step ' || Step FROM wall_steps, plan_head WHERE (Start - Epoch) % 60000000 <> 0
            """),
    ];
}
