namespace Bakehouse.Domain.Prices;

using Bakehouse.Domain.Methods;

/// <summary>Minutes of hands that an order takes, as they are planned.</summary>
public static class PlannedHands
{
    /// <summary>Washing up is a fifth of the work (an hour for five is reported; common practice, no source).</summary>
    public const decimal WashUp = 0.20m;

    /// <summary>All steps that need somebody, each by the people it needs, and washing up on top; rounded up.</summary>
    public static int Minutes(CakeSteps steps) => (int)decimal.Ceiling(steps.Steps.Where(s => s.Skill is not null).Sum(s => s.Minutes * s.Count) * (1 + WashUp));
}
