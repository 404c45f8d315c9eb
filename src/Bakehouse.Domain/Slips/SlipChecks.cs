namespace Bakehouse.Domain.Slips;

using System.Globalization;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Shops;

/// <summary>What may be wrong with a slip before it is written: whatever it is about must be there, and its times must lie as they can.</summary>
/// <param name="week">The week as it is known, with the plan on the wall as its reference.</param>
public sealed class SlipChecks(Week week, Shop shop, Instant now)
{
    /// <summary>Longest time that somebody or something may be away by one slip.</summary>
    private static readonly Duration Longest = Duration.FromDays(21);

    /// <summary>Longest time that a step in hand may still take.</summary>
    private static readonly Duration LongestStep = Duration.FromHours(12);

    private readonly HashSet<string?> done = [.. week.Fixed.Where(f => f.Why == "done").Select(f => f.Step)];

    /// <summary>Every problem; empty if it can be written.</summary>
    public IReadOnlyList<Problem> Problems(Slip slip) =>
        slip.About.Count == 0 ? [new Problem("about", "", "It says not what it is about.", "Choose what went wrong.")] : [.. slip.About.SelectMany(a => About(slip, a)), .. Times(slip)];

    private IEnumerable<Problem> About(Slip slip, string about) => slip.Kind switch
    {
        SlipKind.Cracked => Cracked(about),
        SlipKind.NotSet => Step(about, false).Concat(Setting(about)),
        SlipKind.Anyway => Step(about, true),
        SlipKind.RanOut => week.Families.Any(f => f.Id == about) ? [] : Step(about, true),
        SlipKind.Behind => Step(about, true).Concat(Running(about)),
        SlipKind.Out => Known(about, "equipment", [.. shop.Ovens.Select(o => o.Id), .. shop.Bowls.Select(b => b.Id), .. shop.Shelves.Select(s => s.Id)]),
        SlipKind.Away => Known(about, "person", [.. shop.People.Select(p => p.Id)]),
        SlipKind.Pickup => week.Orders.Any(o => o.Id == about) ? [] : [new Problem("about", about, "No cake of that order is still to be made.", "Choose another order.")],
        _ => throw new ArgumentOutOfRangeException(nameof(slip), slip.Kind, "No such slip."),
    };

    private IEnumerable<Problem> Cracked(string bake)
    {
        if (StepKey.Parse(bake) is not { Operation: "bake" } key || week.Steps.All(s => s.Id != bake))
        {
            return [new Problem("about", bake, "That sponge is not in the plan.", "Look at the list again.")];
        }

        if (week.Steps.Any(s => s.Id == Slip.Again(key).ToString()))
        {
            return [new Problem("about", bake, "Those layers are baked again already.", "Choose those that were baked in their place, or take back what was told.")];
        }

        return done.Contains((key with { Operation = "fill", Ordinal = 1 }).ToString())
            ? [new Problem("about", bake, "Those layers are in the cake already.", "Change the order, so that the tier is made again.")]
            : [];
    }

    private IEnumerable<Problem> Step(string step, bool open)
    {
        if (week.Steps.All(s => s.Id != step))
        {
            return [new Problem("about", step, "That step is not in the plan.", "Look at the list again.")];
        }

        return open && done.Contains(step) ? [new Problem("about", step, "That step is done already.", "Take the tick back first.")] : [];
    }

    /// <summary>Only what was made can be found not set, and only what sets or cools: the slip says that it was made.</summary>
    private IEnumerable<Problem> Setting(string step) =>
        StepKey.Parse(step) is { } key && Slip.Sets.Contains(key.Operation) && (done.Contains(step) || week.Reference?.Steps.FirstOrDefault(r => r.Step == step) is { } row && row.Start <= week.Now)
            ? []
            : [new Problem("about", step, "That is not made yet, or nothing in it sets.", "Look at the list again.")];

    private IEnumerable<Problem> Running(string step) => week.Reference?.Steps.FirstOrDefault(r => r.Step == step) is { } row && row.Start <= week.Now
        ? []
        : [new Problem("about", step, "That step has not begun.", "Choose the step in hand.")];

    private static IEnumerable<Problem> Known(string about, string what, IReadOnlyList<string> known) =>
        known.Contains(about) ? [] : [new Problem("about", about, $"The shop has no such {what}.", "Look at the list again.")];

    private IEnumerable<Problem> Times(Slip slip)
    {
        if (slip.Kind is SlipKind.Cracked or SlipKind.Anyway)
        {
            yield break;
        }

        if (slip.Until is not { } until)
        {
            yield return new Problem("until", "", "It says not until when.", "Choose an hour.");
        }
        else if (until <= now)
        {
            yield return new Problem("until", Say(until), $"That has passed: it is {Say(now)}.", "Choose a later hour.");
        }
        else if (until - now > (slip.Kind == SlipKind.Behind ? LongestStep : Longest))
        {
            yield return new Problem("until", Say(until), slip.Kind == SlipKind.Behind ? "No step takes that long." : "That is more than three weeks away.", "Choose an earlier hour.");
        }
        else if (slip.Kind is SlipKind.Out or SlipKind.Away && !(slip.From < until))
        {
            yield return new Problem("from", slip.From is { } from ? Say(from) : "", "It begins after it ends, or says not when it began.", "Choose an hour before the end.");
        }
    }

    private string Say(Instant at) => at.InZone(DateTimeZoneProviders.Tzdb[shop.Zone]).ToString(shop.Settings.Clock24 ? "ddd d MMM HH:mm" : "ddd d MMM h:mm tt", CultureInfo.InvariantCulture);
}
