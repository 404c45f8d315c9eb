namespace Bakehouse.Domain.Planning;

/// <summary>The plan on the wall: a plan and the instant of its minute 0.</summary>
public sealed record Wall(Instant Epoch, Plan Plan)
{
    /// <summary>The same plan with minutes counted from another instant (a whole number of minutes away).</summary>
    public Plan From(Instant epoch)
    {
        var shift = (int)(Epoch - epoch).TotalMinutes;
        return shift == 0 ? Plan : Plan with
        {
            Steps = [.. Plan.Steps.Select(s => s with { Start = s.Start + shift })],
            Cleans = [.. Plan.Cleans.Select(c => c with { Start = c.Start + shift })],
        };
    }
}

/// <summary>A tick: somebody says that a step is done.</summary>
/// <param name="Step">The step's key as text.</param>
/// <param name="Done">When it was done.</param>
/// <param name="Person">Id of the person who did it.</param>
public sealed record Tick(string Step, Instant Done, string Person);
