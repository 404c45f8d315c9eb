namespace Bakehouse.Domain.Tests.Planning;

using Bakehouse.Domain.Planning;

/// <content>Ways that first look for a place where they hurt.</content>
internal sealed partial class GoodPlan
{
    public Spoilt OneOfTwo()
    {
        var step = Present.First(s => s.Count == 2);
        return People(step, [rows[step.Id].People[0]]);
    }

    public Spoilt Unskilled()
    {
        var step = Handed.First(s => week.People.Any(p => !p.Skills.Contains(s.Skill!)));
        return People(step, [week.People.First(p => !p.Skills.Contains(step.Skill!)).Id]);
    }

    /// <summary>Begins five minutes before somebody's break.</summary>
    public Spoilt IntoBreak()
    {
        var step = Handed.First(s => s.Minutes > 5);
        var person = week.People.Single(p => p.Id == rows[step.Id].People[0]);
        var ends = person.Shifts[0].To;
        Assert.DoesNotContain(person.Shifts.Concat(person.Extra), s => s.From <= ends && ends < s.To);
        return To(step, ends - 5);
    }

    public Spoilt AtOnce()
    {
        var first = Handed[0];
        var second = Handed.First(s => s != first && rows[s.Id].People[0] == rows[first.Id].People[0]);
        return Row(second, r => r with { Start = rows[first.Id].Start }, Later(first, second));
    }

    /// <summary>Of two steps with one start the longer stands second in time.</summary>
    private static string Later(Step first, Step second) => first.Minutes > second.Minutes ? first.Id : second.Id;

    public Spoilt ToolTwice()
    {
        var tool = week.Tools.First(t => t.Count == 1 && Handed.Count(s => s.Tools.Contains(t.Id)) > 1);
        var users = Handed.Where(s => s.Tools.Contains(tool.Id)).Take(2).ToList();
        return To(users[1], rows[users[0].Id].Start) with { About = null };
    }

    /// <summary>Every mix of a family in one bowlful.</summary>
    public Spoilt Overfilled()
    {
        var family = Mixed.GroupBy(s => s.Mix!.Family).MaxBy(g => g.Sum(s => s.Mix!.Size))!;
        var lead = rows[family.First().Id];
        var ids = family.Select(s => s.Id).ToHashSet();
        return new(plan with { Steps = [.. plan.Steps.Select(r => ids.Contains(r.Step) ? lead with { Step = r.Step, Batch = "all" } : r)] }, family.First().Id);
    }

    public Spoilt BowlfulApart()
    {
        var step = InBatch(mix: true);
        var other = week.People.First(p => p.Id != rows[step.Id].People[0]).Id;
        return People(step, [other], FirstOfBatch(step));
    }

    /// <summary>Every bake of a heat whose pans fit the oven, in one load.</summary>
    public Spoilt Overloaded()
    {
        var heat = Baked.Where(s => s.Bake!.Pans.All(p => Oven.Fits.GetValueOrDefault(p) > 0)).GroupBy(s => s.Bake!.Heat).MaxBy(g => g.Count())!;
        var lead = rows[heat.First().Id] with { Machine = Oven.Id };
        var ids = heat.Select(s => s.Id).ToHashSet();
        return new(plan with { Steps = [.. plan.Steps.Select(r => ids.Contains(r.Step) ? lead with { Step = r.Step, Batch = "all" } : r)] }, heat.First().Id);
    }

    /// <summary>The second of two runs of a machine follows the first at once (1), or begins with it (0).</summary>
    public Spoilt AfterRun(Machine machine, int ends)
    {
        var two = Present.Where(s => rows[s.Id].Machine == machine.Id).OrderBy(s => rows[s.Id].Start)
            .DistinctBy(s => rows[s.Id].Start).Take(2).ToList();
        return Row(two[1], r => r with { Start = rows[two[0].Id].Start + (ends * two[0].Minutes), Batch = null }) with { About = null };
    }

    public Spoilt CleanedByTwo()
    {
        var clean = plan.Cleans[0];
        return Cleans([clean with { People = [.. week.People.Take(2).Select(p => p.Id)] }, .. plan.Cleans.Skip(1)], clean.Machine);
    }

    public Spoilt CleanedOffGrain() =>
        Cleans([plan.Cleans[0] with { Start = plan.Cleans[0].Start + 1 }, .. plan.Cleans.Skip(1)], plan.Cleans[0].Machine);

    public Spoilt NeverCleaned() => Cleans([], null);

    private Spoilt Cleans(IReadOnlyList<CleanRow> cleans, string? about) => new(plan with { Cleans = cleans }, about);

    public Spoilt NutsTogether()
    {
        var nuts = Mixed.First(s => s.Has.Contains("nuts"));
        var kept = Mixed.First(s => s.Avoid.Contains("nuts"));
        var ids = new[] { nuts.Id, kept.Id };
        var row = rows[nuts.Id] with { Batch = "both" };
        return new(
            plan with { Steps = [.. plan.Steps.Select(r => ids.Contains(r.Step) ? row with { Step = r.Step } : r)] },
            week.Steps.First(s => ids.Contains(s.Id)).Id);
    }

    /// <summary>A cake kept from wheat is mixed while flour is in the air.</summary>
    public Spoilt Dusty()
    {
        var flour = Mixed.First(s => s.Has.Contains("wheat"));
        var kept = Mixed.First(s => s.Avoid.Contains("wheat"));
        return Row(kept, r => r with { Start = At(flour).To + 5, Batch = null });
    }

    public Spoilt TooSoon(Hold hold) => Row(Step(hold.To), r => r with { Start = rows[hold.From].Start }, hold.Id);

    public Spoilt TooLate(Hold hold) => Row(Step(hold.To), r => r with { Start = r.Start + 1440, Batch = null }, hold.Id);

    public Spoilt TooTall()
    {
        var low = week.Stores.Where(s => s.Kind == "fridge").MinBy(s => s.Clear)!;
        var tall = week.Holds.First(h => h.Height > low.Clear && rows.ContainsKey(h.From) && rows.ContainsKey(h.To) && rows[h.To].Start > At(Step(h.From)).To);
        return Store(tall.Id, low.Id);
    }

    public Spoilt Crowded()
    {
        var fridge = week.Stores.First(s => s.Kind == "fridge").Id;
        return new(plan with { Holds = [.. plan.Holds.Select(r => r with { Store = fridge })] }, null);
    }

    /// <summary>The last listed hold of a clock stands outside the fridge from now on, and the next step waits a day.</summary>
    public Spoilt Warm()
    {
        var clock = week.Clocks[0];
        var hold = week.Holds.Last(h => clock.Holds.Contains(h.Id) && rows.ContainsKey(h.To));
        var warm = Store(hold.Id, week.Stores.First(s => !s.Cold && s.Kind == "rack").Id).Plan;
        return new(warm with { Steps = [.. warm.Steps.Select(r => r.Step == hold.To ? r with { Start = r.Start + 1440 } : r)] }, clock.Id);
    }

    public Spoilt Old()
    {
        var age = week.Ages.First(a => a.Hard && rows.ContainsKey(a.From) && rows.ContainsKey(a.To));
        return Row(Step(age.To), r => r with { Start = r.Start + age.Most + 5 }, age.Id);
    }

    public Spoilt Early(WeekOrder order) => Row(Step(order.Out), r => r with { Start = order.From - Step(order.Out).Minutes - 5 }, order.Id);

    private Step Step(string id) => week.Steps.Single(s => s.Id == id);
}
