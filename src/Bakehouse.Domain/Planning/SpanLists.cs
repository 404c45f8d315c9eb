namespace Bakehouse.Domain.Planning;

/// <summary>Sorted lists of spans that stay apart.</summary>
internal static class SpanLists
{
    /// <summary>With one more span; touching ones are joined. An empty one adds nothing.</summary>
    public static IReadOnlyList<Span> Joined(this IReadOnlyList<Span> spans, Span more)
    {
        if (more.From >= more.To)
        {
            return spans;
        }

        var touching = spans.Where(s => s.From <= more.To && more.From <= s.To).Append(more).ToList();
        var whole = new Span(touching.Min(s => s.From), touching.Max(s => s.To));
        return [.. spans.Where(s => !touching.Contains(s)).Append(whole).OrderBy(s => s.From)];
    }

    /// <summary>Without that time.</summary>
    public static IReadOnlyList<Span> Without(this IReadOnlyList<Span> spans, Span gone) => gone.From >= gone.To ? spans :
        [.. spans.SelectMany(s => s.Meets(gone) ? new[] { s with { To = Math.Min(s.To, gone.From) }, s with { From = Math.Max(s.From, gone.To) } } : [s]).Where(s => s.From < s.To)];
}
