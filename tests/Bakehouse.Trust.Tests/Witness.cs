namespace Bakehouse.Trust.Tests;

using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Reminders;
using Microsoft.Data.Sqlite;

/// <summary>
/// Writes down what every screen was shown, and at the end asks the book's file by plain SQL whether all of it stands, once. Shares
/// no code with the book.
/// </summary>
internal sealed class Witness
{
    private readonly ConcurrentDictionary<Guid, (Command Command, Answer Answer)> shown = new();

    /// <summary>The newest command and what it heard.</summary>
    public string Last { get; private set; } = "";

    /// <summary>How many commands were answered.</summary>
    public int Count => shown.Count;

    /// <summary>Of those, how many were accepted.</summary>
    public int Accepted => shown.Values.Count(s => s.Answer.Kind == AnswerKind.Accepted);

    /// <summary>Answers by command and kind.</summary>
    public IEnumerable<string> Summary => shown.Values
        .GroupBy(s => $"{s.Command.GetType().Name} {s.Answer.Kind}", StringComparer.Ordinal)
        .OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => $"{g.Key} {g.Count()}");

    /// <summary>A screen was shown this answer. Shown twice, it must have been the same.</summary>
    public void Saw(Command command, Answer answer)
    {
        Last = $"{command} heard {Text(answer)}";
        var first = shown.GetOrAdd(command.Id, (command, answer)).Answer;
        Assert.True(Text(first) == Text(answer), $"{command} heard two answers: {Text(first)} and {Text(answer)}");
    }

    /// <summary>Every broken promise in words; empty if the book holds what was shown.</summary>
    public IReadOnlyList<string> BrokenIn(string path)
    {
        using var book = new SqliteConnection($"Data Source={path};Pooling=False;Mode=ReadOnly");
        book.Open();
        return [.. Whole(book), .. Answered(book), .. Orders(book), .. Ticks(book), .. Rings(book), .. Recipes(book)];
    }

    private static IEnumerable<string> Whole(SqliteConnection book)
    {
        if (Text(book, "PRAGMA integrity_check") is not "ok" and var wrong)
        {
            yield return $"integrity_check: {wrong}";
        }

        if (Number(book, "SELECT count(*) FROM done") != Number(book, "SELECT count(*) FROM audit") || Number(book, "SELECT count(*) FROM done WHERE Id NOT IN (SELECT CommandId FROM audit)") > 0)
        {
            yield return "Not every command has its one audit line.";
        }

        if (Number(book, "SELECT count(*) FROM plan_head") != 1)
        {
            yield return "There is not one head.";
        }

        if (Number(book, "SELECT count(*) FROM (SELECT Step FROM wall_steps GROUP BY Step HAVING count(*) > 1)") > 0)
        {
            yield return "A step stands twice on the wall.";
        }
    }

    private IEnumerable<string> Answered(SqliteConnection book)
    {
        var kept = Rows(book, "SELECT Id FROM done").GroupBy(r => r[0], StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        return shown.Keys.Where(id => kept.GetValueOrDefault(id.ToString("N")) != 1).Select(id => $"{shown[id].Command} was answered and is there {kept.GetValueOrDefault(id.ToString("N"))} times.");
    }

    private IEnumerable<string> Orders(SqliteConnection book)
    {
        var versions = Rows(book, "SELECT Id, Version, Number FROM orders").Select(r => (Id: r[0], Version: int.Parse(r[1], CultureInfo.InvariantCulture), Number: r[2])).ToList();
        foreach (var order in versions.GroupBy(v => v.Id, StringComparer.Ordinal))
        {
            if (!order.Select(v => v.Version).Order().SequenceEqual(Enumerable.Range(1, order.Count())))
            {
                yield return $"Order {order.Key} has versions {string.Join(' ', order.Select(v => v.Version).Order())}.";
            }
        }

        if (versions.Select(v => (v.Id, v.Number)).Distinct().GroupBy(v => v.Number, StringComparer.Ordinal).Any(g => g.Count() > 1))
        {
            yield return "Two orders have one number.";
        }

        var there = versions.Select(v => (v.Id, v.Version)).ToHashSet();
        var told = shown.Values.Where(s => s.Answer is { Kind: AnswerKind.Accepted, Order: not null }).Select(s => (s.Command, Version: (Id: s.Answer.Order!.Id.ToString("N"), s.Answer.Order.Version))).ToList();
        foreach (var lost in told.Select(t => t.Version).Where(v => !there.Contains(v)).Distinct())
        {
            yield return $"Order {lost.Id} version {lost.Version} was accepted and is not there.";
        }

        foreach (var twice in told.Where(t => t.Command is WriteOrder).GroupBy(t => t.Version).Where(g => g.Count() > 1))
        {
            yield return $"Order {twice.Key.Id} version {twice.Key.Version} was accepted for {twice.Count()} commands.";
        }
    }

    private IEnumerable<string> Ticks(SqliteConnection book)
    {
        var standing = Rows(book, "SELECT Step, Undone IS NULL FROM ticks").ToLookup(r => r[0], r => r[1] == "1", StringComparer.Ordinal);
        var accepted = shown.Values.Where(s => s.Answer.Kind == AnswerKind.Accepted).Select(s => s.Command).ToList();
        var ticked = accepted.OfType<TickStep>().Select(t => t.Step).Concat(accepted.OfType<CorrectTick>().Select(t => t.Step)).ToLookup(s => s, StringComparer.Ordinal);
        foreach (var step in ticked)
        {
            if (standing[step.Key].Count() < step.Count())
            {
                yield return $"{step.Key} was ticked {step.Count()} times and has {standing[step.Key].Count()} rows.";
            }
        }

        foreach (var step in standing.Where(s => s.Count(stands => stands) > 1))
        {
            yield return $"{step.Key} is ticked twice at once.";
        }

        var taken = accepted.OfType<UndoTick>().Select(u => u.Step).Concat(accepted.OfType<CorrectTick>().Select(c => c.Step)).ToLookup(s => s, StringComparer.Ordinal);
        foreach (var step in taken.Where(u => standing[u.Key].Count(stands => !stands) != u.Count()))
        {
            yield return $"{step.Key} was taken back {step.Count()} times and has {standing[step.Key].Count(s => !s)} such rows.";
        }
    }

    private IEnumerable<string> Rings(SqliteConnection book)
    {
        var kept = Rows(book, "SELECT Ring, Kind, Undone IS NULL FROM ring_answers").ToLookup(r => r[0], StringComparer.Ordinal);
        foreach (var ring in kept.Where(k => k.Count(r => r[1] == nameof(RingAnswerKind.Done) && r[2] == "1") > 1))
        {
            yield return $"{ring.Key} was answered Done twice.";
        }

        var accepted = shown.Values.Where(s => s.Answer.Kind == AnswerKind.Accepted).Select(s => s.Command).OfType<AnswerRing>().ToLookup(a => a.Ring, StringComparer.Ordinal);
        foreach (var ring in accepted.Where(a => kept[a.Key].Count() != a.Count()))
        {
            yield return $"{ring.Key} was answered {ring.Count()} times and has {kept[ring.Key].Count()} rows.";
        }
    }

    private IEnumerable<string> Recipes(SqliteConnection book)
    {
        var versions = Rows(book, "SELECT Version FROM cookbooks ORDER BY Version").Select(r => int.Parse(r[0], CultureInfo.InvariantCulture)).ToList();
        if (!versions.SequenceEqual(Enumerable.Range(1, versions.Count)))
        {
            yield return $"The cookbook has versions {string.Join(' ', versions)}.";
        }

        var accepted = shown.Values.Count(s => s.Answer.Kind == AnswerKind.Accepted && s.Command is (WriteRecipes or OpenPack));
        if (versions.Count < accepted)
        {
            yield return $"Recipes were written {accepted} times and have {versions.Count} versions.";
        }
    }

    private static string Text(Answer answer) => JsonSerializer.Serialize(new { answer.Kind, answer.Message, Problems = answer.Problems.Select(p => p.ToString()), answer.Order?.Id, answer.Order?.Version });

    private static long Number(SqliteConnection book, string sql) => long.Parse(Rows(book, sql)[0][0], CultureInfo.InvariantCulture);

    private static string Text(SqliteConnection book, string sql) => Rows(book, sql)[0][0];

    private static List<string[]> Rows(SqliteConnection book, string sql) => PlainSql.Rows(
        book, sql, r => Enumerable.Range(0, r.FieldCount).Select(i => Convert.ToString(r.GetValue(i), CultureInfo.InvariantCulture)!).ToArray());
}
