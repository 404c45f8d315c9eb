namespace Bakehouse.Domain.Planning;

/// <summary>The Judge's own look-ups for one week and one plan; made once, read by every rule.</summary>
internal sealed class WeekIndex
{
    public WeekIndex(Week week, Plan plan)
    {
        Week = week;
        Plan = plan;
        Steps = week.Steps.ToDictionary(s => s.Id);
        Holds = week.Holds.ToDictionary(h => h.Id);
        People = week.People.ToDictionary(p => p.Id);
        Machines = week.Machines.ToDictionary(m => m.Id);
        Families = week.Families.ToDictionary(f => f.Id);
        Stores = week.Stores.ToDictionary(s => s.Id);
        Tools = week.Tools.ToDictionary(t => t.Id);
        foreach (var row in plan.Steps.Where(r => Steps.ContainsKey(r.Step)))
        {
            Rows.TryAdd(row.Step, row);
        }

        foreach (var row in plan.Holds.Where(r => Holds.ContainsKey(r.Hold)))
        {
            HoldRows.TryAdd(row.Hold, row);
        }

        Working = [.. week.Steps.Where(s => Present(s.If) && Rows.ContainsKey(s.Id)).Select(s => (s, Rows[s.Id]))];
        Held = [.. HeldRows()];
        Batches = MakeBatches();
    }

    public Week Week { get; }

    public Plan Plan { get; }

    public Dictionary<string, Step> Steps { get; }

    public Dictionary<string, Hold> Holds { get; }

    public Dictionary<string, WeekPerson> People { get; }

    public Dictionary<string, Machine> Machines { get; }

    public Dictionary<string, Family> Families { get; }

    public Dictionary<string, Store> Stores { get; }

    public Dictionary<string, Tool> Tools { get; }

    /// <summary>First row of each step that the week knows.</summary>
    public Dictionary<string, StepRow> Rows { get; } = [];

    public Dictionary<string, HoldRow> HoldRows { get; } = [];

    public IReadOnlyList<Batch> Batches { get; }

    public bool Present(Taken? taken) =>
        taken is null || (Plan.Choices.TryGetValue(taken.Choice, out var option) && option == taken.Option);

    /// <summary>Steps that are present and have a row.</summary>
    public IReadOnlyList<(Step Step, StepRow Row)> Working { get; }

    public int Start(string step) => Rows[step].Start;

    public int End(string step) => Rows[step].Start + Steps[step].Minutes;

    /// <summary>True if the step is present and has a row.</summary>
    public bool Runs(string step) => Steps.TryGetValue(step, out var s) && Present(s.If) && Rows.ContainsKey(step);

    /// <summary>Present holds with a row whose both ends run, with where and how long they stand.</summary>
    public IReadOnlyList<(Hold Hold, Store Store, Span Span)> Held { get; }

    private IEnumerable<(Hold Hold, Store Store, Span Span)> HeldRows() =>
        from hold in Week.Holds
        where Present(hold.If) && HoldRows.ContainsKey(hold.Id) && Runs(hold.From) && Runs(hold.To)
        where Stores.ContainsKey(HoldRows[hold.Id].Store)
        select (hold, Stores[HoldRows[hold.Id].Store], new Span(End(hold.From), Start(hold.To)));

    /// <summary>Rows with one label on one machine; the same label on another machine is another batch.</summary>
    private List<Batch> MakeBatches()
    {
        var mixing = Working.Where(w => w.Step.Mix is not null || w.Step.Bake is not null);
        return
        [
            .. mixing
                .GroupBy(w => w.Row.Batch is { Length: > 0 } label ? (w.Row.Machine, label, "") : (w.Row.Machine, "", w.Step.Id))
                .Select(g => new Batch([.. g.Select(w => w.Step)], [.. g.Select(w => w.Row)])),
        ];
    }
}

/// <summary>One bowlful or oven load: a mix or bake step alone is one, too. What every rule asks of it is worked out once.</summary>
internal sealed class Batch
{
    public Batch(IReadOnlyList<Step> members, IReadOnlyList<StepRow> rows)
    {
        (Members, Rows) = (members, rows);
        Span = new Span(rows.Min(r => r.Start), rows.Zip(members, (r, s) => r.Start + s.Minutes).Max());
        Has = members.Count == 1 ? members[0].Has : [.. members.SelectMany(m => m.Has).Distinct()];
        Avoid = members.Count == 1 ? members[0].Avoid : [.. members.SelectMany(m => m.Avoid).Distinct()];
    }

    public IReadOnlyList<Step> Members { get; }

    public IReadOnlyList<StepRow> Rows { get; }

    public string Name => Members[0].Id;

    public string? Machine => Rows[0].Machine;

    public bool IsMix => Members[0].Mix is not null;

    public string Kind => Members[0].Mix?.Family ?? Members[0].Bake!.Heat;

    public Span Span { get; }

    public IReadOnlyList<string> Has { get; }

    public IReadOnlyList<string> Avoid { get; }
}
