using Bakehouse.Domain.Planning;

namespace Bakehouse.Planner.Solver;

/// <summary>Spans in grains: a start from a &lt;= t &lt; b.</summary>
internal static class Spans
{
    /// <summary>Sorted, joined where they touch; minutes become grains.</summary>
    public static IReadOnlyList<Span> Joined(IEnumerable<Span> minutes, int grain)
    {
        var joined = new List<Span>();
        foreach (var span in minutes.OrderBy(s => s.From))
        {
            if (joined.Count > 0 && span.From / grain <= joined[^1].To)
            {
                joined[^1] = new Span(joined[^1].From, Math.Max(joined[^1].To, span.To / grain));
            }
            else
            {
                joined.Add(new Span(span.From / grain, span.To / grain));
            }
        }

        return joined;
    }

    /// <summary>What is left of sorted spans without one.</summary>
    public static List<Span> Without(List<Span> spans, int from, int to)
    {
        if (from >= to)
        {
            return spans;
        }

        var left = new List<Span>(spans.Count + 1);
        foreach (var span in spans)
        {
            if (span.To <= from || span.From >= to)
            {
                left.Add(span);
                continue;
            }

            if (span.From < from)
            {
                left.Add(new Span(span.From, from));
            }

            if (span.To > to)
            {
                left.Add(new Span(to, span.To));
            }
        }

        return left;
    }

    /// <summary>The parts of sorted spans that lie inside others, too.</summary>
    public static List<Span> Shared(IReadOnlyList<Span> one, IReadOnlyList<Span> other)
    {
        var shared = new List<Span>();
        for (int i = 0, j = 0; i < one.Count && j < other.Count;)
        {
            var (from, to) = (Math.Max(one[i].From, other[j].From), Math.Min(one[i].To, other[j].To));
            if (from < to)
            {
                shared.Add(new Span(from, to));
            }

            if (one[i].To < other[j].To)
            {
                i++;
            }
            else
            {
                j++;
            }
        }

        return shared;
    }

    /// <summary>True if sorted spans share a grain.</summary>
    public static bool Meet(IReadOnlyList<Span> one, IReadOnlyList<Span> other) => Shared(one, other).Count > 0;

    /// <summary>True if a grain lies in one of them.</summary>
    public static bool Covers(IReadOnlyList<Span> spans, int grain) => spans.Any(s => s.From <= grain && grain < s.To);

    /// <summary>Sorted spans of both, joined.</summary>
    public static List<Span> Either(IEnumerable<Span> spans) => [.. Joined(spans, 1)];
}
