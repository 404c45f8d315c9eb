using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Quick;

/// <summary>Writes what stands on a board as a plan, in the order of the week.</summary>
internal static class Writing
{
    public static Plan ToPlan(Shop shop, Board board, Build?[] builds)
    {
        var week = shop.Week;
        var choices = week.Choices.ToDictionary(c => c.Id, c => c.Options[0], StringComparer.Ordinal);
        foreach (var (choice, option) in builds.SelectMany(b => b?.Choices ?? new Dictionary<string, string>()))
        {
            choices[choice] = option;
        }

        var steps = shop.Acts.Where(a => board.Rows[a.Index].Start >= 0).Select(a => ToRow(shop, board, a));
        var holds = shop.Links.Where(l => board.Stands[l.Index] >= 0).Select(l => new HoldRow(l.Hold.Id, week.Stores[board.Stands[l.Index]].Id));
        var cleans = board.Cleans.OrderBy(c => c.Start).ThenBy(c => c.Machine)
            .Select(c => new CleanRow(week.Machines[c.Machine].Id, c.Start * shop.Grain, [week.People[c.Person].Id]));
        return new Plan(week.Name, choices, [.. steps], [.. holds], [.. cleans]);
    }

    private static StepRow ToRow(Shop shop, Board board, Act act)
    {
        var row = board.Rows[act.Index];
        // What is done asks for no machine any more, but a mix keeps the bowl that it was made in.
        var at = row.Run >= 0 ? board.Runs[row.Run].Machine : act.Standing ? act.PinMachine : -1;
        var machine = at < 0 ? null : shop.Week.Machines[at].Id;
        var batch = row.Run >= 0 && board.Runs[row.Run].Members > 1 ? "b" + (row.Run + 1).ToString(System.Globalization.CultureInfo.InvariantCulture) : null;
        return new StepRow(act.Step.Id, row.Start * shop.Grain, [.. Names(shop, row.People)], machine, batch);
    }

    private static IEnumerable<string> Names(Shop shop, ulong people)
        => shop.Week.People.Where((_, p) => (people >> p & 1) != 0).Select(p => p.Id);
}
