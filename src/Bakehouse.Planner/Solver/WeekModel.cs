using Bakehouse.Domain.Planning;
using Google.OrTools.Sat;
using Starts = Google.OrTools.Util.Domain;

namespace Bakehouse.Planner.Solver;

/// <summary>
/// A week as a constraint model in which some steps are free and all others stand as in the plan. Every rule of the week is in it, but
/// for the real packing of shelves and levels, which the Judge looks at afterwards.
/// </summary>
internal sealed partial class WeekModel
{
    private readonly Ground at;
    private readonly bool[] free;
    private readonly CpModel model = new();
    private readonly StepVar?[] steps;
    private readonly ILiteral yes;
    private readonly List<Load> still = [];
    private readonly List<Span>[] busy;
    private readonly Dictionary<(string Choice, string Option), ILiteral> taken = [];

    /// <param name="at">The week and the plan.</param>
    /// <param name="free">Steps that may move; what is given never does.</param>
    public WeekModel(Ground at, bool[] free)
    {
        this.at = at;
        this.free = [.. free.Select((f, s) => f && !at.Given.Contains(s))];
        yes = model.TrueLiteral();
        steps = new StepVar?[at.Steps.Length];
        busy = [.. at.Week.People.Select(_ => new List<Span>())];
        Choose();
        for (var s = 0; s < steps.Length; s++)
        {
            steps[s] = Variable(s);
        }

        StandStill();
        Cleans();
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

    private StepVar? Variable(int s)
    {
        var on = On(at.Steps[s].If);
        if (Never(on))
        {
            return null;
        }

        if (!free[s])
        {
            return at.Rows[s] is null ? null : new StepVar { Start = LinearExpr.Constant(at.Start(s)), On = on, Free = false };
        }

        var start = model.NewIntVar(at.FreeFrom, at.Horizon - at.Length[s], "");
        if (at.Rows[s] is not null)
        {
            model.AddHint(start, at.Start(s));
        }

        return new StepVar { Start = start, On = on, Free = true };
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
                busy[at.PersonAt[person]].Add(new Span(load.From, load.To));
            }
        }

        for (var s = 0; s < steps.Length; s++)
        {
            if (steps[s] is { Free: false } && (!at.IsRun(s) || at.Rows[s]!.Machine is null))
            {
                foreach (var person in at.Rows[s]!.People)
                {
                    busy[at.PersonAt[person]].Add(new Span(at.Start(s), at.End(s)));
                }
            }
        }
    }

    private BoolVar Hinted(BoolVar literal, bool now)
    {
        model.AddHint(literal, now ? 1 : 0);
        return literal;
    }

    private BoolVar Either(string _ = "") => model.NewBoolVar("");

    private static Starts Of(IReadOnlyList<Span> starts) => Starts.FromIntervals([.. starts.Select(s => new long[] { s.From, s.To - 1 })]);

    /// <summary>The start lies in the spans if all the literals hold.</summary>
    private void Within(LinearExpr start, IReadOnlyList<Span> spans, params ILiteral[] when)
    {
        if (spans.Count == 0)
        {
            model.AddBoolOr(when.Select(w => w.Not()));
        }
        else
        {
            model.AddLinearExpressionInDomain(start, Of(spans)).OnlyEnforceIf(when);
        }
    }

    private LinearExpr EndOf(int s) => steps[s]!.Start + at.Length[s];
}
