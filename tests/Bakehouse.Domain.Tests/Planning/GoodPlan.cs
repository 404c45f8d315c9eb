namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Planning;

/// <summary>A plan spoilt in one place, and what the breach must be about (null: anything).</summary>
internal sealed record Spoilt(Plan Plan, string? About);

/// <summary>A good plan and the ways to spoil it, each in one place.</summary>
internal sealed partial class GoodPlan(Week week, Plan plan)
{
    private readonly Dictionary<string, StepRow> rows = plan.Steps.ToDictionary(r => r.Step);

    public Plan Plan => plan;

    private IEnumerable<Step> Present => week.Steps.Where(s => rows.ContainsKey(s.Id));

    /// <summary>Steps of one person's hands on no machine.</summary>
    public IReadOnlyList<Step> Handed => [.. Present.Where(s => s.Skill is not null && s.Mix is null && s.Bake is null && s.Count == 1)];

    public IReadOnlyList<Step> Mixed => [.. Present.Where(s => s.Mix is not null)];

    public IReadOnlyList<Step> Baked => [.. Present.Where(s => s.Bake is not null)];

    public Machine Oven => week.Machines.First(m => m.Kind == MachineKind.Oven && rows.Values.Count(r => r.Machine == m.Id) > 1);

    public Machine Bowl => week.Machines.First(m => m.Kind == MachineKind.Bowl && m.TurnSame > 0 && rows.Values.Count(r => r.Machine == m.Id) > 1);

    public Span At(Step step) => new(rows[step.Id].Start, rows[step.Id].Start + step.Minutes);

    /// <summary>A hold that stands there for some minutes and may not stand in the tubs.</summary>
    public Hold Kept(string store) => week.Holds.First(h =>
        plan.Holds.Any(r => r.Hold == h.Id && r.Store == store) && h.In.All(i => i.Store != "tubs")
        && rows.ContainsKey(h.From) && rows.ContainsKey(h.To));

    public Spoilt Without(string step) => new(plan with { Steps = [.. plan.Steps.Where(r => r.Step != step)] }, step);

    public Spoilt WithoutHold(string hold) => new(plan with { Holds = [.. plan.Holds.Where(r => r.Hold != hold)] }, hold);

    public Spoilt Twice(string step) => Added(rows[step]);

    public Spoilt Added(StepRow row) => new(plan with { Steps = [.. plan.Steps, row] }, row.Step);

    public Spoilt NotTaken()
    {
        var step = week.Steps.First(s => s.If is { } taken && plan.Choices[taken.Choice] != taken.Option);
        return Added(new StepRow(step.Id, 600, [week.People[0].Id], null, null));
    }

    public Spoilt Chosen(string? option)
    {
        var choice = week.Choices[0].Id;
        var choices = plan.Choices.Where(c => c.Key != choice).ToDictionary(c => c.Key, c => c.Value);
        return new(plan with { Choices = option is null ? choices : choices.Append(new(choice, option)).ToDictionary(c => c.Key, c => c.Value) }, choice);
    }

    public Spoilt People(Step step, IReadOnlyList<string> people, string? about = null) => Row(step, r => r with { People = people }, about);

    public Spoilt Moved(Step step, int by, bool aboutBatch = false) =>
        Row(step, r => r with { Start = r.Start + by }, aboutBatch ? FirstOfBatch(step) : null);

    public Spoilt To(Step step, int start) => Row(step, r => r with { Start = start });

    public Spoilt On(Step step, string? machine) => Row(step, r => r with { Machine = machine, Batch = null });

    public Spoilt Store(string hold, string store, string? about = null) =>
        new(plan with { Holds = [.. plan.Holds.Select(r => r.Hold == hold ? r with { Store = store } : r)] }, about ?? hold);

    private Spoilt Row(Step step, Func<StepRow, StepRow> change, string? about = null) =>
        new(plan with { Steps = [.. plan.Steps.Select(r => r.Step == step.Id ? change(r) : r)] }, about ?? step.Id);

    private string FirstOfBatch(Step step) => Present.First(s => rows[s.Id].Batch == rows[step.Id].Batch && rows[s.Id].Machine == rows[step.Id].Machine).Id;

    /// <summary>The last member of the first batch of several.</summary>
    public Step InBatch(bool mix) => (mix ? Mixed : Baked)
        .Where(s => rows[s.Id].Batch is not null)
        .GroupBy(s => (rows[s.Id].Machine, rows[s.Id].Batch)).First(g => g.Count() > 1).Last();
}
