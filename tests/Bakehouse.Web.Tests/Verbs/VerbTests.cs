namespace Bakehouse.Web.Tests.Verbs;

using System.Diagnostics;
using System.Text.Json;
using Bakehouse.Book;
using Bakehouse.Book.Entries;
using Bakehouse.Book.Keeping.Auditing;
using Bakehouse.Planner.Quick;
using Microsoft.Data.Sqlite;
using NodaTime;
using NodaTime.Testing;

/// <summary>
/// The verbs as the shell sees them, in a process of their own: exit code and what is printed. 0 done, 1 a rule is broken or no plan,
/// 2 a file can't be read. The weeks are the project's own; the levels are those that <c>levels.csv</c> holds.
/// </summary>
public sealed class VerbTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("bakehouse-verbs-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task A_week_is_planned_into_a_file_and_the_plan_breaks_no_rule()
    {
        var plan = Path.Combine(folder, "plan.json");
        Assert.Equal(0, (await Run("plan", Week("tiny-3.json"), "--out", plan)).Code);

        var check = await Run("check", Week("tiny-3.json"), plan);
        Assert.Equal(0, check.Code);
        var summary = JsonDocument.Parse(check.Out.Trim().Split('\n')[^1]).RootElement;
        Assert.True(summary.GetProperty("feasible").GetBoolean());
        Assert.Equal(0, summary.GetProperty("levels").GetProperty("L1").GetInt64());
    }

    [Fact]
    public async Task A_plan_that_breaks_a_rule_ends_with_one_and_names_it()
    {
        var text = await File.ReadAllTextAsync(Week("plans/tiny-3.best.json"), TestContext.Current.CancellationToken);
        var broken = Path.Combine(folder, "broken.json");
        var all = JsonDocument.Parse(text).RootElement;
        var rows = all.GetProperty("steps").EnumerateArray().Skip(1).Select(r => r.GetRawText());
        await File.WriteAllTextAsync(broken, $"{{\"format\":\"bakery-plan/1\",\"week\":\"{all.GetProperty("week").GetString()}\",\"steps\":[{string.Join(',', rows)}]}}", TestContext.Current.CancellationToken);

        var check = await Run("check", Week("tiny-3.json"), broken);
        Assert.Equal(1, check.Code);
        Assert.Contains("\"feasible\":false", check.Out, StringComparison.Ordinal);
        Assert.True(check.Out.Trim().Split('\n').Length > 1);
    }

    [Theory]
    [InlineData("{\"format\":\"bakery-week/1\",\"orders\":[{\"id\":7}]}")]
    [InlineData("no json")]
    [InlineData("")]
    public async Task A_broken_week_ends_with_two_and_names_what_is_wrong_before_any_search(string text)
    {
        var week = Path.Combine(folder, "week.json");
        await File.WriteAllTextAsync(week, text, TestContext.Current.CancellationToken);
        var plan = await Run("plan", week);
        Assert.Equal(2, plan.Code);
        Assert.Empty(plan.Out);
        Assert.Contains(week, plan.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_not_there_or_cannot_be_written_ends_with_two()
    {
        Assert.Equal(2, (await Run("plan", Path.Combine(folder, "none.json"))).Code);
        Assert.Equal(2, (await Run("check", Week("tiny-3.json"), Path.Combine(folder, "none.json"))).Code);
        Assert.Equal(2, (await Run("plan", Week("tiny-3.json"), "--out", Path.Combine(folder, "none", "plan.json"))).Code);
        Assert.Equal(2, (await Run("plan")).Code);
    }

    [Fact]
    public async Task A_book_is_audited_in_use_and_a_fault_ends_with_one_and_names_its_rule()
    {
        var path = Path.Combine(folder, "book.db");
        using var book = OrderBook.Open(path, new QuickPlanner(), new FakeClock(Instant.FromUtc(2026, 10, 14, 7, 0)));
        await book.Enter(new OpenSample(Guid.NewGuid(), "", "office"), TestContext.Current.CancellationToken);
        var clean = await Run("audit", path);
        Assert.Equal((0, $"{BookAudit.Rules.Count} rules, 0 faults"), (clean.Code, clean.Out.Trim()));

        using (var other = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            other.Open();
            using var fault = other.CreateCommand();
            fault.CommandText = "UPDATE plan_head SET Version = 9";
            fault.ExecuteNonQuery();
        }

        var found = await Run("audit", path);
        Assert.Equal(1, found.Code);
        Assert.Contains("A1 ", found.Out, StringComparison.Ordinal);
        Assert.Equal(2, (await Run("audit", Path.Combine(folder, "none.db"))).Code);
    }

    [Fact]
    public async Task A_copy_is_taken_of_a_book_in_use_and_restored_once_where_nothing_is()
    {
        var path = Path.Combine(folder, "book.db");
        var copies = Path.Combine(folder, "copies");
        using (var book = OrderBook.Open(path, new QuickPlanner(), new FakeClock(Instant.FromUtc(2026, 10, 14, 13, 5))))
        {
            await book.Enter(new OpenSample(Guid.NewGuid(), "", "office"), TestContext.Current.CancellationToken);
            var taken = await Run("backup", path, "--second", Path.Combine(folder, "usb"));
            Assert.Equal(0, taken.Code);
            Assert.Contains("The book stands at 14:05 on Wednesday 14 October 2026", taken.Out, StringComparison.Ordinal);
        }

        var target = Path.Combine(folder, "fresh", "book.db");
        var restored = await Run("restore", copies, target);
        Assert.Equal(0, restored.Code);
        Assert.Contains("The book stands at 14:05 on Wednesday 14 October 2026", restored.Out, StringComparison.Ordinal);
        Assert.Equal(0, (await Run("audit", target)).Code);

        Assert.Equal(2, (await Run("restore", Path.Combine(folder, "usb"), target)).Code);
        Assert.Equal(2, (await Run("backup", Path.Combine(folder, "none.db"))).Code);
    }

    [Fact]
    public async Task A_sheet_is_printed_or_written_and_a_wrong_order_ends_with_two_and_names_all_of_it()
    {
        var order = Path.Combine(folder, "order.json");
        const string tier = """{"diameter":203.2,"height":100,"layers":4,"sponge":"vanilla","filling":"ganache","colours":[{"name":"Ivory","swatch":"#F7F0E1","share":1}]}""";
        await File.WriteAllTextAsync(order, $"{{\"number\":7,\"tiers\":[{tier}]}}", TestContext.Current.CancellationToken);
        var printed = await Run("sheet", order);
        Assert.Equal((0, ""), (printed.Code, printed.Error));
        Assert.Equal((1, 7, 1), (Whole(printed.Out, "format"), Whole(printed.Out, "number"), JsonDocument.Parse(printed.Out).RootElement.GetProperty("tiers").GetArrayLength()));

        var sheet = Path.Combine(folder, "sheet.json");
        Assert.Equal(0, (await Run("sheet", order, "--out", sheet)).Code);
        Assert.Equal(printed.Out.Trim(), (await File.ReadAllTextAsync(sheet, TestContext.Current.CancellationToken)).Trim());

        await File.WriteAllTextAsync(order, $"{{\"tiers\":[{tier.Replace("vanilla", "granite", StringComparison.Ordinal).Replace("\"share\":1", "\"share\":2", StringComparison.Ordinal)}]}}", TestContext.Current.CancellationToken);
        var wrong = await Run("sheet", order);
        Assert.Equal((2, ""), (wrong.Code, wrong.Out));
        Assert.Equal(2, wrong.Error.Trim().Split('\n').Length);
        Assert.Contains("Tier 1.sponge (granite): This sponge is not known. Write one of vanilla", wrong.Error, StringComparison.Ordinal);
        Assert.Equal(2, (await Run("sheet", Path.Combine(folder, "none.json"))).Code);
    }

    private static int Whole(string json, string name) => JsonDocument.Parse(json).RootElement.GetProperty(name).GetInt32();

    private static string Week(string name) => Path.Combine(AppContext.BaseDirectory, "Weeks", name);

    internal static async Task<(int Code, string Out, string Error)> Run(params string[] args)
    {
        var start = new ProcessStartInfo("dotnet") { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var arg in (string[])[Path.Combine(AppContext.BaseDirectory, "Bakehouse.Web.dll"), .. args])
        {
            start.ArgumentList.Add(arg);
        }

        using var process = Process.Start(start)!;
        var (said, wrong) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await said, await wrong);
    }
}
