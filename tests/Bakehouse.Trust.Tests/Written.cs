namespace Bakehouse.Trust.Tests;

using Bakehouse.Domain.Planning;
using Microsoft.Data.Sqlite;
using NodaTime;
using static Bakehouse.Trust.Tests.PlainSql;

/// <summary>What the file of the book says about rings at a moment, read by plain SQL. Shares no code with the book.</summary>
/// <param name="Head">Counts the changes.</param>
/// <param name="Wall">Rows of the steps alone; null while nothing hangs.</param>
/// <param name="Planned">Ids of the orders in a stage that is planned.</param>
/// <param name="Ticked">Steps with a tick that stands.</param>
/// <param name="Answers">Answers that stand, oldest first.</param>
/// <param name="Slips">What went wrong and was not taken back, as it stands in the file.</param>
internal sealed record Written(
    int Head, Wall? Wall, IReadOnlySet<string> Planned, IReadOnlySet<string> Ticked, IReadOnlyList<AnswerLine> Answers, IReadOnlyList<string> Slips)
{
    private const string Newest = "SELECT Id FROM orders o WHERE Version = (SELECT max(Version) FROM orders n WHERE n.Id = o.Id) AND Stage IN ('Kept', 'Booked', 'InWork', 'Ready')";

    /// <summary>Reads the file, or gives back what was read before if nothing was written since.</summary>
    public static Written Of(string path, Written? before)
    {
        using var book = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly");
        book.Open();
        var (head, epoch) = Rows(book, "SELECT Version, Epoch FROM plan_head", r => (r.GetInt32(0), r.IsDBNull(1) ? (Instant?)null : At(r.GetInt64(1)))).Single();
        return before?.Head == head ? before : new Written(
            head,
            epoch is { } zero ? new Wall(zero, new Plan("", new Dictionary<string, string>(), Steps(book, zero), [], [])) : null,
            Rows(book, Newest, r => r.GetString(0)).ToHashSet(StringComparer.Ordinal),
            Rows(book, "SELECT Step FROM ticks WHERE Undone IS NULL", r => r.GetString(0)).ToHashSet(StringComparer.Ordinal),
            Rows(book, "SELECT Seq, Ring, Kind, At, Until FROM ring_answers WHERE Undone IS NULL ORDER BY Seq", r =>
                new AnswerLine(r.GetInt64(0), r.GetString(1), r.GetString(2), At(r.GetInt64(3)), r.IsDBNull(4) ? null : At(r.GetInt64(4)))),
            Rows(book, "SELECT Document FROM slips WHERE Undone IS NULL", r => r.GetString(0)));
    }

    /// <summary>True if somebody ticked something of the cake of a step, or said that something went wrong with it.</summary>
    public bool SaysSomethingOf(string step) => Ticked.Any(t => t[..32] == step[..32]) || Slips.Any(s => s.Contains(step[..32], StringComparison.Ordinal));

    /// <summary>True if that step is on the wall and nobody ticked it.</summary>
    public bool Stands(string step) => !Ticked.Contains(step) && Wall is { } wall && wall.Plan.Steps.Any(r => r.Step == step);

    /// <summary>True if the same rows hang at the same times.</summary>
    public bool SameRows(Written other) => ReferenceEquals(this, other) || Times.SetEquals(other.Times);

    private HashSet<(string, Instant)> Times => [.. (Wall?.Plan.Steps ?? []).Select(r => (r.Step, Wall!.Epoch + Duration.FromMinutes(r.Start)))];

    private static List<StepRow> Steps(SqliteConnection book, Instant zero) => Rows(book, "SELECT Step, Start, People, Machine, Batch FROM wall_steps", r =>
        new StepRow(r.GetString(0), (int)(At(r.GetInt64(1)) - zero).TotalMinutes, r.GetString(2).Split(' ', StringSplitOptions.RemoveEmptyEntries), Text(r, 3), Text(r, 4)));

    private static string? Text(SqliteDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    private static Instant At(long microseconds) => Instant.FromUnixTimeTicks(microseconds * 10);
}

/// <summary>What somebody said to a ring.</summary>
internal sealed record AnswerLine(long Seq, string Ring, string Kind, Instant At, Instant? Until);
