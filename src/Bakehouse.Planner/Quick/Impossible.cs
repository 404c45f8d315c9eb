using System.Globalization;
using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>What no plan can do, whoever works and however late it gets.</summary>
internal static class Impossible
{
    public static IReadOnlyList<Reason> Reasons(Shop shop)
    {
        var reasons = new List<Reason>();
        foreach (var job in shop.Jobs)
        {
            var byBuild = job.Builds.Select(b => Of(shop, b).ToList()).ToList();
            if (byBuild.Count == 0 || byBuild.TrueForAll(r => r.Count > 0))
            {
                reasons.AddRange(byBuild.Count == 0 ? [new Reason($"What is done of {Name(shop, job)} belongs to two different choices.", "Take back one of the two.", job.Orders.FirstOrDefault()?.Id)] : byBuild[0]);
            }
        }

        return reasons;
    }

    /// <summary>A job for which the search found no place before the last planned day.</summary>
    public static Reason NoRoom(Shop shop, Job job)
        => new($"No place was found for {Name(shop, job)} before the last planned day.", "Plan more days, add hours, or take something off the week.", job.Orders.FirstOrDefault()?.Id);

    private static string Name(Shop shop, Job job) => job.Orders.Length > 0 ? job.Orders[0].Name : shop.Week.Name;

    private static IEnumerable<Reason> Of(Shop shop, Build build)
        => build.Acts.Where(a => !a.Standing).SelectMany(a => OfStep(shop, a)).Concat(build.Links.SelectMany(l => OfHold(shop, l))).Concat(OfClocks(shop, build));

    private static IEnumerable<Reason> OfStep(Shop shop, Act act)
    {
        var step = act.Step;
        Reason Say(string sentence, string attempt) => new(sentence, attempt, step.Order, step.Id);
        if (act.Able.Length < act.Count)
        {
            yield return Say(
                act.Able.Length == 0 ? $"Nobody can {step.Skill}, and \"{step.Name}\" needs it." : $"\"{step.Name}\" needs {act.Count} people who can {step.Skill}; there are {act.Able.Length}.",
                $"Give somebody the skill \"{step.Skill}\", or change how the cake is made.");
        }
        else if (act.Count > 0 && !Array.Exists(act.Able, p => Bits.LatestStart(shop.Duty[p], new ulong[shop.Words], shop.Grains - act.Grains, act.Grains) >= shop.FreeFrom))
        {
            yield return Say($"\"{step.Name}\" takes {step.Minutes} minutes without a break, and nobody who can {step.Skill} has that long in one go.", "Lengthen a shift, or split the work.");
        }

        if (act.OnMachine && act.Machines.Length == 0)
        {
            yield return step.Bake is { } bake
                ? Say($"The pans of \"{step.Name}\" ({string.Join(", ", bake.Pans)} in) fit no oven.", "Bake in smaller pans or in several loads, or name a larger oven.")
                : Say($"{step.Mix!.Size} of {step.Mix.Family} for \"{step.Name}\" fits no bowl.", "Mix it in several bowlfuls, or name a larger bowl.");
        }

        foreach (var tool in act.Tools.Where(t => shop.ToolCount[t] < 1))
        {
            yield return Say($"\"{step.Name}\" needs a {shop.Week.Tools[tool].Id}, and there is none.", $"Add a {shop.Week.Tools[tool].Id} to the shop.");
        }
    }

    private static IEnumerable<Reason> OfHold(Shop shop, Link link)
    {
        var act = shop.Acts[link.To];
        if (link.In.Length == 0)
        {
            yield return new Reason(
                string.Create(CultureInfo.InvariantCulture, $"Before \"{act.Step.Name}\" it stands {link.Hold.Height} cm high and {Takes(link)}: no place where it may stand is that tall and that large."),
                "Clear a taller shelf, or stack on site.",
                act.Step.Order,
                act.Step.Id);
        }
    }

    private static string Takes(Link link) => link.Hold.Piece is { } piece
        ? string.Create(CultureInfo.InvariantCulture, $"is {piece.Wide / 10:0.#} cm wide with its gap")
        : string.Create(CultureInfo.InvariantCulture, $"takes {link.Places} places");

    private static IEnumerable<Reason> OfClocks(Shop shop, Build build)
    {
        var inside = build.Acts.Select(a => a.Index).ToHashSet();
        for (var c = 0; c < shop.ClockLimit.Length; c++)
        {
            var warm = shop.ClockActs[c].Where(inside.Contains).Sum(a => shop.Acts[a].Grains) + build.Links.Where(l => l.Clocks.Contains(c)).Sum(l => l.WarmLeast);
            if (warm > shop.ClockLimit[c])
            {
                var order = shop.Week.Orders.FirstOrDefault(o => o.Id == build.Acts[0].Step.Order)?.Name ?? shop.Week.Clocks[c].Id;
                yield return new Reason(
                    $"The work alone keeps a filling of {order} out of the cold for {warm * shop.Grain} minutes; the food clock allows {shop.Week.Clocks[c].Limit}.",
                    "Split the work with time in the fridge between that does not count, or choose a filling that keeps.",
                    build.Acts[0].Step.Order);
                yield break;
            }
        }
    }
}
