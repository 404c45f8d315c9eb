using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;

namespace Bakehouse.Planner.Solver;

/// <content>The levels of wishes, as sums over what may move.</content>
internal sealed partial class WeekModel
{
    private readonly List<LinearExpr>[] wishes = [[], [], [], [], [], []];
    private readonly long[] standingStill = new long[6];
    private long[] now = [];

    private void Weigh()
    {
        Late();
        if (wanted[1])
        {
            Old();
        }

        wishes[2].AddRange(overtime);
        for (var p = 0; p < busy.Length; p++)
        {
            standingStill[2] += busy[p].Sum(b => week.Extra[p].Sum(e => (long)Math.Max(0, Math.Min(e.To, b.To) - Math.Max(e.From, b.From))));
        }

        if (wanted[3])
        {
            Fresh();
        }

        if (wanted[4])
        {
            Changes();
        }

        if (wanted[5])
        {
            Uneven();
        }

        long[] all = [at.Levels.Late, at.Levels.Stale, at.Levels.Overtime, at.Levels.Fresh, at.Levels.Changes * at.Grain, at.Levels.Uneven];
        now = [.. all.Select((l, i) => (l / at.Grain) - standingStill[i])];
    }

    /// <summary>A sum of which only what is above 0 counts.</summary>
    private void Above(int level, LinearExpr sum, long most, params IReadOnlyList<ILiteral> when)
    {
        if (most > 0)
        {
            var above = model.NewIntVar(0, most, "");
            Only(model.Add(above >= sum), when);
            wishes[level].Add(above);
        }
    }

    private void Late()
    {
        foreach (var order in at.Week.Orders)
        {
            var s = week.StepAt[order.Out];
            var level = order.Rank == 1 ? 0 : 3;
            var due = (order.To / at.Grain) - (order.EdgeIsEnd ? at.Length[s] : 0);
            if (steps[s] is { Free: true } step)
            {
                Above(level, step.Start - due, step.Last - due, step.On);
            }
            else if (steps[s] is not null)
            {
                standingStill[level] += Math.Max(0, at.Start(s) - due);
            }
        }
    }

    private void Old()
    {
        foreach (var age in at.Week.Ages.Where(a => !a.Hard))
        {
            Gap(1, week.StepAt[age.From], week.StepAt[age.To], age.Most / at.Grain, 1);
        }
    }

    /// <summary>By how much the gap from the end of one step to the start of another is more than asked, or less where the sign is -1.</summary>
    private void Gap(int level, int from, int to, int asked, int sign)
    {
        if (steps[from] is not { } before || steps[to] is not { } after)
        {
            return;
        }

        if (before.Free || after.Free)
        {
            var most = sign > 0 ? after.Last - before.First - at.Length[from] - asked : asked - (after.First - before.Last - at.Length[from]);
            Above(level, ((after.Start - before.Start) * sign) - (sign * (at.Length[from] + asked)), most, before.On, after.On);
        }
        else
        {
            standingStill[level] += Math.Max(0, sign * (at.Between(from, to) - asked));
        }
    }

    private void Fresh()
    {
        foreach (var order in at.Week.Orders)
        {
            var goes = week.StepAt[order.Out];
            foreach (var fresh in order.Fresh)
            {
                Gap(3, week.StepAt[fresh.Step], goes, fresh.Most / at.Grain, 1);
            }

            Gap(3, week.StepAt[order.Ready], goes, order.Buffer / at.Grain, -1);
        }
    }

    private void Changes()
    {
        foreach (var row in at.Week.Reference?.Steps ?? [])
        {
            if (!week.StepAt.TryGetValue(row.Step, out var s))
            {
                continue;
            }

            if (steps[s] is { Free: true } step)
            {
                Same(row, step);
            }
            else
            {
                var kept = at.Rows[s] is { } mine && mine.Start == row.Start && mine.Machine == row.Machine && mine.People.ToHashSet(StringComparer.Ordinal).SetEquals(row.People);
                standingStill[4] += kept ? 0 : 1;
            }
        }

        foreach (var row in at.Week.Reference?.Holds ?? [])
        {
            var h = Array.FindIndex(at.Holds, o => o.Id == row.Hold);
            if (h >= 0 && stands.TryGetValue(h, out var here))
            {
                wishes[4].Add(here.TryGetValue(week.StoreAt[row.Store], out var there) ? 1 - LinearExpr.Term(there, 1) : LinearExpr.Constant(1));
            }
            else if (h >= 0)
            {
                standingStill[4] += at.Standing[h] == week.StoreAt[row.Store] ? 0 : 1;
            }
        }
    }

    private void Same(StepRow row, StepVar step)
    {
        var same = Either();
        model.AddImplication(same, step.On);
        model.Add(step.Start == row.Start / at.Grain).OnlyEnforceIf(same);
        var people = row.People.Select(p => week.PersonAt.GetValueOrDefault(p, -1)).ToHashSet();
        foreach (var (p, who) in step.Who)
        {
            model.AddImplication(same, people.Contains(p) ? who : who.Not());
        }

        if (people.Any(p => !step.Who.ContainsKey(p)) || (row.Machine is not null && !step.Machine.ContainsKey(week.MachineAt.GetValueOrDefault(row.Machine, -1))))
        {
            model.AddImplication(same, yes.Not());
        }
        else if (row.Machine is not null)
        {
            model.AddImplication(same, step.Machine[week.MachineAt[row.Machine]]);
        }

        wishes[4].Add(1 - LinearExpr.Term(same, 1));
    }

    private void Uneven()
    {
        int[] shared = [.. Enumerable.Range(0, busy.Length).Where(p => at.Week.People[p].Share)];
        if (shared.Length < 2)
        {
            return;
        }

        var (most, least) = (model.NewIntVar(0, 100_000, ""), model.NewIntVar(0, 100_000, ""));
        foreach (var p in shared)
        {
            var sum = LinearExpr.Sum([.. worked[p], LinearExpr.Constant(busy[p].Sum(b => b.Minutes))]);
            model.Add(most >= sum);
            model.Add(least <= sum);
        }

        wishes[5].Add(most - least);
    }

    private LinearExpr Sum(int level) => wishes[level].Count == 0 ? LinearExpr.Constant(0) : LinearExpr.Sum(wishes[level]);

    /// <summary>Makes the sum of one level least.</summary>
    /// <returns>False if there is nothing to gain.</returns>
    public bool Seek(int level)
    {
        if (wishes[level].Count == 0 || now[level] <= 0)
        {
            return false;
        }

        model.Minimize(Sum(level));
        return true;
    }

    /// <summary>A level may not get worse than it is.</summary>
    public void Hold(int level) => model.Add(Sum(level) <= Math.Max(0, now[level]));

    /// <summary>A level may not get worse than what was found, from which the next search goes on.</summary>
    public void HoldAt(int level, CpSolver found)
    {
        var reached = found.Value(Sum(level));
        now = Enumerable.Range(0, now.Length).Select(l => found.Value(Sum(l))).ToArray();
        model.Add(Sum(level) <= reached);
        model.ClearHints();
        var hint = new PartialVariableAssignment();
        for (var v = 0; v < found.Response!.Solution.Count; v++)
        {
            hint.Vars.Add(v);
            hint.Values.Add(found.Response!.Solution[v]);
        }

        model.Model.SolutionHint = hint;
    }

    /// <summary>Asks for a plan that is better in one level and no worse in those before it; those after it are let go.</summary>
    /// <returns>False if there is nothing to gain.</returns>
    public bool Better(IReadOnlyList<int> order, int level)
    {
        foreach (var before in order.TakeWhile(l => l != level).Where(l => wishes[l].Count > 0))
        {
            model.Add(Sum(before) <= Math.Max(0, now[before]));
        }

        if (!Seek(level))
        {
            return false;
        }

        model.Add(Sum(level) <= now[level] - 1);
        return true;
    }

    /// <summary>What the model says of a level of the plan found, in grains or changes. It never says less than the Judge.</summary>
    public long Said(int level, CpSolver found) => standingStill[level] + found.Value(Sum(level));
}
