namespace Bakehouse.Domain.Planning;

/// <summary>A plan for one week: a row for each present step, hold and clean-down.</summary>
/// <param name="Week">Name of the week that it is for.</param>
/// <param name="Choices">Option taken for each choice.</param>
public sealed record Plan(
    string Week,
    IReadOnlyDictionary<string, string> Choices,
    IReadOnlyList<StepRow> Steps,
    IReadOnlyList<HoldRow> Holds,
    IReadOnlyList<CleanRow> Cleans);

/// <summary>When a step starts and who and what does it.</summary>
/// <param name="People">Empty if it needs no hands.</param>
/// <param name="Machine">For mix and bake.</param>
/// <param name="Batch">Label shared by the members of one bowlful or oven load, or null if it is alone.</param>
public sealed record StepRow(string Step, int Start, IReadOnlyList<string> People, string? Machine, string? Batch);

/// <summary>Where a hold stands.</summary>
public sealed record HoldRow(string Hold, string Store);

/// <summary>A wet clean-down of a bowl.</summary>
public sealed record CleanRow(string Machine, int Start, IReadOnlyList<string> People);
