namespace Bakehouse.Book.Figures;

using System.Diagnostics;
using System.Diagnostics.Metrics;
using Bakehouse.Book.Entries;

/// <summary>
/// What the book counts for whoever listens: numbers, kinds and outcomes, never an id, a name or a text. Nobody listens unless somebody
/// asks; then it costs next to nothing.
/// </summary>
public sealed class BookFigures
{
    /// <summary>Name of the meter of all of Bakehouse.</summary>
    public const string MeterName = "Bakehouse";

    private readonly Counter<long> commands;
    private readonly Counter<long> answered;
    private readonly Histogram<double> planned;

    private BookFigures(Meter meter)
    {
        commands = meter.CreateCounter<long>("bakehouse.commands", "{command}", "Commands decided, by kind and outcome; one sent again counts once.");
        answered = meter.CreateCounter<long>("bakehouse.rings.answered", "{ring}", "First answers to rings, by kind.");
        planned = meter.CreateHistogram<double>("bakehouse.plan.duration", "ms", "How long the planner took, by what it was asked.");
    }

    private static BookFigures Apart { get; } = new(new Meter(MeterName));

    /// <summary>Counts on the meter of an app; without one, on a meter that all such books share.</summary>
    internal static BookFigures Of(IMeterFactory? meters) => meters is null ? Apart : new BookFigures(meters.Create(MeterName));

    /// <summary>A command was decided and its answer stands in the book.</summary>
    internal void Decided(Command command, AnswerKind outcome)
    {
        commands.Add(1, new("command", command.GetType().Name), new("outcome", outcome.ToString()));
        if (command is AnswerRing ring && outcome == AnswerKind.Accepted)
        {
            answered.Add(1, new KeyValuePair<string, object?>("kind", ring.Kind.ToString()));
        }
    }

    /// <summary>Times one call of the planner.</summary>
    internal T Time<T>(string asked, Func<T> plan)
    {
        var began = Stopwatch.GetTimestamp();
        try
        {
            return plan();
        }
        finally
        {
            planned.Record(Stopwatch.GetElapsedTime(began).TotalMilliseconds, new KeyValuePair<string, object?>("asked", asked));
        }
    }
}
