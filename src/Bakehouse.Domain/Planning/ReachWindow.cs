namespace Bakehouse.Domain.Planning;

/// <summary>
/// Earliest and latest start of each step of one order, whatever else makes way: by least and most waits, hard ages, hours of whoever
/// can do it and the promise, from what is done, started or pinned. A limit names what it comes from.
/// </summary>
internal sealed class ReachWindow
{
    private readonly Week week;
    private readonly ReachHands hands;
    private readonly Dictionary<string, Step> steps;
    private readonly Dictionary<string, Node> nodes = [];
    private readonly List<Edge> edges;

    /// <param name="moved">The step in question: its own pin does not count.</param>
    public ReachWindow(Week week, Plan plan, string moved, ReachHands hands)
    {
        (this.week, this.hands) = (week, hands);
        var order = week.Steps.First(s => s.Id == moved).Order;
        bool Present(Taken? taken) => taken is null || (plan.Choices.TryGetValue(taken.Choice, out var option) && option == taken.Option);
        steps = week.Steps.Where(s => s.Order == order && Present(s.If)).ToDictionary(s => s.Id);
        edges =
        [
            .. week.Holds.Where(h => Present(h.If) && steps.ContainsKey(h.From) && steps.ContainsKey(h.To)).Select(EdgeOf),
            .. week.Ages.Where(a => a.Hard && steps.ContainsKey(a.From) && steps.ContainsKey(a.To)).Select(a => new Edge(a.From, a.To, int.MinValue, a.Most, null)),
        ];
        Begin(plan, moved);
        for (var pass = 0; pass <= steps.Count && Narrow(); pass++)
        {
        }
    }

    /// <summary>Earliest start, and why not earlier.</summary>
    public (int Minute, Stop Why) Earliest(string step) => (nodes[step].Low, nodes[step].WhyLow);

    /// <summary>Latest start, and why not later.</summary>
    public (int Minute, Stop Why) Latest(string step) => (nodes[step].High, nodes[step].WhyHigh);

    private static Edge EdgeOf(Hold hold) => new(
        hold.From, hold.To, hold.In.Min(i => i.Least), hold.In.Max(i => i.Most), hold.In.MinBy(i => i.Least)!.Store);

    private void Begin(Plan plan, string moved)
    {
        var given = week.Fixed.Where(f => f is { Step: not null, Start: not null } && f.Step != moved).ToDictionary(f => f.Step!, f => f.Start!.Value);
        foreach (var step in steps.Values)
        {
            var (low, high) = (week.FreeFrom, week.Horizon - step.Minutes);
            nodes[step.Id] = given.TryGetValue(step.Id, out var start)
                ? new Node(start, start, new Stop(StopKind.Past, start), new Stop(StopKind.End, start), true)
                : new Node(low, high, new Stop(StopKind.Past, low), new Stop(StopKind.End, high), false);
        }

        foreach (var order in week.Orders.Where(o => nodes.TryGetValue(o.Out, out var n) && !n.Given))
        {
            Promise(order, plan);
        }
    }

    /// <summary>A cake that is late already may be as late as it is.</summary>
    private void Promise(WeekOrder order, Plan plan)
    {
        var (node, edge) = (nodes[order.Out], order.EdgeIsEnd ? steps[order.Out].Minutes : 0);
        var now = plan.Steps.FirstOrDefault(r => r.Step == order.Out)?.Start ?? 0;
        var to = Math.Max(order.To - edge, now);
        Raise(node, order.From - edge, new Stop(StopKind.Agreed, order.From - edge, Step: order.Out));
        Lower(node, to, new Stop(StopKind.Promise, to + edge, Step: order.Out));
    }

    private bool Narrow()
    {
        var changed = false;
        foreach (var e in edges)
        {
            var (from, to) = (nodes[e.From], nodes[e.To]);
            var minutes = steps[e.From].Minutes;
            if (e.Least != int.MinValue)
            {
                var first = from.Low + minutes + e.Least;
                var last = to.High - e.Least;
                changed |= Raise(to, first, new Stop(StopKind.TooSoon, first, null, Kind(e), e.From, e.Least));
                changed |= Lower(from, last - minutes, new Stop(StopKind.TooLate, last, null, Kind(e), e.To, e.Least));
            }

            changed |= Lower(to, from.High + minutes + e.Most, new Stop(StopKind.TooOld, from.High + minutes + e.Most, null, Kind(e), e.From, e.Most));
            changed |= Raise(from, to.Low - e.Most - minutes, new Stop(StopKind.TooOld, to.Low - e.Most - minutes, null, Kind(e), e.To, e.Most));
        }

        return steps.Values.Aggregate(changed, (any, step) => AtWork(step) || any);
    }

    /// <summary>Whoever can do the step must be at work all through it.</summary>
    private bool AtWork(Step step)
    {
        var node = nodes[step.Id];
        if (node.Given || step.Skill is null || node.Low > node.High)
        {
            return false;
        }

        var (first, last) = (hands.From(step, node.Low), hands.Until(step, node.High));
        return Raise(node, first, new Stop(StopKind.Nobody, first)) | Lower(node, last, new Stop(StopKind.Nobody, last));
    }

    private string? Kind(Edge edge) => week.Stores.FirstOrDefault(s => s.Id == edge.Store)?.Kind;

    private static bool Raise(Node node, int low, Stop why)
    {
        if (node.Given || low <= node.Low)
        {
            return false;
        }

        (node.Low, node.WhyLow) = (low, why);
        return true;
    }

    private static bool Lower(Node node, int high, Stop why)
    {
        if (node.Given || high >= node.High)
        {
            return false;
        }

        (node.High, node.WhyHigh) = (high, why);
        return true;
    }

    private sealed record Edge(string From, string To, int Least, int Most, string? Store);

    private sealed class Node(int low, int high, Stop whyLow, Stop whyHigh, bool given)
    {
        public int Low { get; set; } = low;

        public int High { get; set; } = high;

        public Stop WhyLow { get; set; } = whyLow;

        public Stop WhyHigh { get; set; } = whyHigh;

        public bool Given { get; } = given;
    }
}
