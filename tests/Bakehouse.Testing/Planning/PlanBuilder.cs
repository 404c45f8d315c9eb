namespace Bakehouse.Testing.Planning;

using Bakehouse.Domain.Planning;

/// <summary>Plans for tiny weeks, row by row.</summary>
public sealed class PlanBuilder
{
    private Plan plan = new("tiny", new Dictionary<string, string>(), [], [], []);

    /// <summary>A step's row; people apart by blanks.</summary>
    public PlanBuilder Step(string id, int start, string people = "", string? machine = null, string? batch = null) =>
        With(p => p with { Steps = [.. p.Steps, new StepRow(id, start, Words(people), machine, batch)] });

    /// <summary>Where a hold stands.</summary>
    public PlanBuilder Hold(string id, string store) => With(p => p with { Holds = [.. p.Holds, new HoldRow(id, store)] });

    /// <summary>A wet clean-down.</summary>
    public PlanBuilder Clean(string machine, int start, string people) => With(p => p with { Cleans = [.. p.Cleans, new CleanRow(machine, start, Words(people))] });

    /// <summary>The option taken.</summary>
    public PlanBuilder Take(string choice, string option) =>
        With(p => p with { Choices = p.Choices.Append(new(choice, option)).ToDictionary(c => c.Key, c => c.Value) });

    /// <summary>The plan so far.</summary>
    public Plan Build() => plan;

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private PlanBuilder With(Func<Plan, Plan> more)
    {
        plan = more(plan);
        return this;
    }
}
