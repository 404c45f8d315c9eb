namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;

/// <summary>
/// Works what went wrong into a week before it is planned: steps that come again, later ends, closures, people away. A slip about
/// something that is not in the week any more does nothing.
/// </summary>
internal sealed partial class SlippedWeek
{
    /// <summary>The word of a step that stands for waiting until something is there or firm. Nobody does it; it is done by itself.</summary>
    public const string WaitWord = "wait";

    private readonly WeekTime time;
    private readonly Dictionary<string, StepRow> rows;
    private readonly List<Tick> ticks;
    private readonly Func<Hold, Hold> thawing;
    private Week week;

    private SlippedWeek(Week week, IReadOnlyList<Tick> ticks, Plan? wall, WeekTime time, Func<Hold, Hold> thawing)
    {
        (this.week, this.time, this.ticks, this.thawing) = (week, time, [.. ticks], thawing);
        rows = (wall?.Steps ?? []).ToDictionary(r => r.Step);
    }

    /// <summary>The week as it is now, and the ticks with those that a slip implies (a sponge that cracked was baked).</summary>
    /// <param name="thawing">The wait of frozen layers in place of fresh ones.</param>
    public static (Week Week, IReadOnlyList<Tick> Ticks) Of(
        Week week, IReadOnlyList<Tick> ticks, IReadOnlyList<Slip> slips, Plan? wall, WeekTime time, Func<Hold, Hold> thawing)
    {
        var slipped = new SlippedWeek(week, ticks, wall, time, thawing);
        foreach (var slip in slips.OrderBy(s => s.Told).ThenBy(s => s.Id))
        {
            slipped.Apply(slip);
        }

        return (slipped.week, slipped.ticks);
    }

    private void Apply(Slip slip)
    {
        foreach (var about in slip.About)
        {
            switch (slip.Kind)
            {
                case SlipKind.Cracked:
                    Crack(about, slip);
                    break;
                case SlipKind.NotSet:
                    NotSet(about, slip);
                    break;
                case SlipKind.RanOut:
                    RunOut(about, slip);
                    break;
                case SlipKind.Out:
                    Close(about, slip);
                    break;
                case SlipKind.Behind:
                    Lengthen(about, slip);
                    break;
                case SlipKind.Away:
                    SendHome(about, slip);
                    break;
                case SlipKind.Anyway:
                    Hurry(about);
                    break;
                case SlipKind.Pickup:
                    // The order itself carries the new hour.
                    break;
                default:
                    throw new ArgumentOutOfRangeException(nameof(slip), slip.Kind, "No such slip stands.");
            }
        }
    }

    private bool IsTicked(string step) => ticks.Exists(t => t.Step == step);

    private bool Has(string step) => week.Steps.Any(s => s.Id == step);

    /// <summary>What must have been done for somebody to see it: by the wall, and at the latest when it was told.</summary>
    private void ImplyDone(string step, Slip slip)
    {
        if (!IsTicked(step))
        {
            var end = rows.TryGetValue(step, out var row) ? time.At(row.Start + week.Steps.First(s => s.Id == step).Minutes) : slip.Told;
            ticks.Add(new Tick(step, Instant.Min(end, slip.Told), slip.Person));
        }
    }

    private void NotSet(string step, Slip slip)
    {
        if (Has(step))
        {
            ImplyDone(step, slip);
            foreach (var next in week.Holds.Where(h => h.From == step && !Places.IsWhenever(h)).Select(h => h.To).ToList())
            {
                Delay(next, slip);
            }
        }
    }

    private void RunOut(string about, Slip slip)
    {
        foreach (var step in week.Steps.Where(s => s.Id == about || s.Mix?.Family == about).Where(s => !IsTicked(s.Id)).ToList())
        {
            Delay(step.Id, slip);
        }
    }

    /// <summary>A step that nobody does ends when the time is up; the step follows it.</summary>
    private void Delay(string step, Slip slip)
    {
        var until = WeekTime.Up(time.Minute(slip.Until!.Value));
        if (until <= time.Now || IsTicked(step))
        {
            return;
        }

        var key = StepKey.Parse(step)!.Value with { Operation = WaitWord };
        var wait = (key with { Ordinal = week.Steps.Count(s => StepKey.Parse(s.Id) is { } k && k with { Ordinal = 0 } == key with { Ordinal = 0 }) + 1 }).ToString();
        var first = week.Steps.First(s => s.Id == step);
        week = week with
        {
            Steps = [.. week.Steps, new Step(wait, first.Order, first.Tier, WaitWord, WeekTime.Grain, null, 1, [], null, null, [], [], null)],
            Holds = [.. week.Holds, new Hold($"{wait}>{step}", wait, step, 1, 0, [Places.Whenever], null)],
        };
        ticks.Add(new Tick(wait, time.At(until), slip.Person));
    }

    /// <summary>The owner's word goes before the method's waits; ages and food clocks stay.</summary>
    private void Hurry(string step) => week = week with
    {
        Holds = [.. week.Holds.Select(h => h.To == step ? h with { In = [.. h.In.Select(i => i with { Least = 0 })] } : h)],
    };
}
