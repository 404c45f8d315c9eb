using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;
using Starts = Google.OrTools.Util.Domain;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// A week as a constraint model in which some steps are free and all others stand as in the plan. Every rule of the week is in it, but
/// for the real packing of shelves and levels, which the Judge looks at afterwards. No order of it gets later than all are now together.
/// </summary>
internal sealed partial class WeekModel
{
    private static readonly int[] AllLevels = [0, 1, 2, 3, 4, 5];

    private readonly Ground at;
    private readonly Numbers week;
    private readonly bool[] free;
    private readonly bool[] wanted = new bool[6];
    private readonly CpModel model = new();
    private readonly StepVar?[] steps;
    private readonly ILiteral yes;
    private readonly List<Load> still = [];
    private readonly List<Span>[] busy;
    private readonly Dictionary<(string Choice, string Option), ILiteral> taken = [];

    /// <param name="at">The week and the plan.</param>
    /// <param name="free">Steps that may move; what is given never does.</param>
    /// <param name="levels">Levels that will be asked for, from 0; all if null.</param>
    public WeekModel(Ground at, bool[] free, IEnumerable<int>? levels = null)
    {
        (this.at, week) = (at, at.Numbers);
        this.free = [.. free.Select((f, s) => f && !week.Given.Contains(s))];
        foreach (var level in levels ?? AllLevels)
        {
            wanted[level] = true;
        }

        yes = model.TrueLiteral();
        steps = new StepVar?[at.Steps.Length];
        busy = [.. at.Week.People.Select(_ => new List<Span>())];
        Choose();
        StandStill();
        WashesStandStill();
        foreach (var (s, possible) in Possible())
        {
            steps[s] = Variable(s, possible);
        }

        Washings();
        Runs();
        Hands();
        Tools();
        Wash();
        Air();
        Stand();
        Food();
        Weigh();
    }

    /// <summary>The model.</summary>
    public CpModel Model => model;

    /// <summary>A choice is free if every step that it decides is.</summary>
    private void Choose()
    {
        foreach (var choice in at.Week.Choices)
        {
            var decided = Enumerable.Range(0, at.Steps.Length).Where(s => at.Steps[s].If?.Choice == choice.Id);
            var open = decided.All(s => free[s]) && decided.Any();
            var chosen = at.Plan.Choices[choice.Id];
            foreach (var option in choice.Options)
            {
                taken[(choice.Id, option)] = open ? Hinted(model.NewBoolVar(""), option == chosen) : option == chosen ? yes : yes.Not();
            }

            model.AddExactlyOne(choice.Options.Select(o => taken[(choice.Id, o)]));
        }
    }

    private ILiteral On(Taken? condition) => condition is null ? yes : taken[(condition.Choice, condition.Option)];

    private bool Never(ILiteral literal) => literal.GetIndex() == yes.Not().GetIndex();

    private bool Always(ILiteral literal) => literal.GetIndex() == yes.GetIndex();

    private StepVar Variable(int s, IReadOnlyList<Span> possible)
    {
        var on = On(at.Steps[s].If);
        if (!free[s])
        {
            return new StepVar { Start = LinearExpr.Constant(at.Start(s)), Possible = possible, On = on, Free = false };
        }

        if (possible.Count == 0)
        {
            model.AddBoolOr([on.Not()]);
            possible = [new Span(0, 1)];
        }

        var start = model.NewIntVarFromDomain(Of(possible), "");
        if (at.Rows[s] is not null)
        {
            model.AddHint(start, at.Start(s));
        }

        return new StepVar { Start = start, Possible = possible, On = on, Free = true };
    }

    /// <summary>Bowlfuls, loads and hands of what stands still.</summary>
    private void StandStill()
    {
        foreach (var load in at.Batches)
        {
            int[] left = [.. load.Members.Where(m => !free[m])];
            if (left.Length > 0)
            {
                still.Add(new Load(left, load.Machine, load.From, left.Max(at.End)));
            }
        }

        foreach (var load in still)
        {
            foreach (var person in load.Members.SelectMany(m => at.Rows[m]!.People).Distinct(StringComparer.Ordinal))
            {
                busy[week.PersonAt[person]].Add(new Span(load.From, load.To));
            }
        }

        for (var s = 0; s < steps.Length; s++)
        {
            if (!free[s] && at.Rows[s] is { } row && (!week.IsRun(s) || row.Machine is null))
            {
                foreach (var person in row.People)
                {
                    busy[week.PersonAt[person]].Add(new Span(at.Start(s), at.End(s)));
                }
            }
        }
    }

    private BoolVar Hinted(BoolVar literal, bool now)
    {
        model.AddHint(literal, now ? 1 : 0);
        return literal;
    }

    private BoolVar Either() => model.NewBoolVar("");

    private static Starts Of(IReadOnlyList<Span> starts) => Starts.FromIntervals([.. starts.Select(s => new long[] { s.From, s.To - 1 })]);

    /// <summary>A start, possible in some spans, lies in others if all the literals hold.</summary>
    private void Within(LinearExpr start, IReadOnlyList<Span> possible, IReadOnlyList<Span> spans, params IReadOnlyList<ILiteral> when)
    {
        var shared = Spans.Shared(possible, spans);
        if (shared.Count == 0)
        {
            model.AddBoolOr(when.Select(w => w.Not()));
        }
        else if (shared.Sum(s => s.To - s.From) < possible.Sum(s => s.To - s.From))
        {
            Only(model.AddLinearExpressionInDomain(start, Of(shared)), when);
        }
    }

    /// <summary>The constraint holds only if all the literals do.</summary>
    private void Only(Constraint constraint, params IReadOnlyList<ILiteral> when)
    {
        ILiteral[] open = [.. when.Where(w => !Always(w))];
        if (open.Length > 0)
        {
            constraint.OnlyEnforceIf(open);
        }
    }

    /// <summary>One ends so many grains before the other starts if all the literals hold; nothing is said that holds anyway.</summary>
    private void Before(int one, int grains, int other, params IReadOnlyList<ILiteral> when)
    {
        if (steps[one]!.Last + grains > steps[other]!.First)
        {
            Only(model.Add(steps[one]!.Start + grains <= steps[other]!.Start), when);
        }
    }

    /// <summary>True if the first can't start so many grains before the other in any plan.</summary>
    private bool NeverBefore(int one, int grains, int other) => steps[one]!.First + grains > steps[other]!.Last;

    private LinearExpr EndOf(int s) => steps[s]!.Start + at.Length[s];
}
