namespace Bakehouse.Web.Tests;

using System.Net;
using System.Text.RegularExpressions;
using Bakehouse.Book.Entries;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Reminders;
using Bakehouse.Planner.Quick;
using Bakehouse.Testing;
using Bakehouse.Web.Tests.Kitchen;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using Microsoft.Extensions.Logging;
using NodaTime;

/// <summary>
/// A day of the app with odd names, telephone numbers and words planted wherever somebody types: none of them in any line, value, scope
/// or exception of the log, at every level down to Trace.
/// </summary>
public sealed partial class LogTests : IDisposable
{
    private static readonly string[] Planted =
    [
        "Quillfeather", "79460917", "7946 0917", "Ypsilanti", "Wurzelsepp", "Xanthippe", "Schlotterbeck", "Klabautermann", "Nussknacker", "Petronella", "Unterwasser",
    ];

    private readonly LogLines log = new();
    private readonly SteppedTime time = new(KitchenShop.Start);
    private readonly Breakable planner = new();

    public void Dispose() => log.Dispose();

    [Fact]
    public async Task A_day_leaves_no_name_no_number_and_no_word_in_the_log()
    {
        await using var app = await KitchenShop.Sample(time, also: Listen);
        var order = await TakeOrders(app);
        await LookAtEveryPage(app, order);
        await WorkTheDay(app);
        await BreakThePlanner(app, order);

        Assert.NotEmpty(app.Book.State.Ticks);
        Assert.Contains(log.All, l => l.Category == "Bakehouse.Book.OrderBook" && l.Text.Contains($"on {order.Id:N}: Accepted", StringComparison.Ordinal));
        Assert.Contains(log.All, l => l.Level == LogLevel.Error && l.Text.Contains("The plan breaks", StringComparison.Ordinal));
        Assert.Empty(log.All.Where(l => Planted.Any(p => l.Text.Contains(p, StringComparison.OrdinalIgnoreCase))).Select(l => $"{l.Level} {l.Category}: {l.Text}"));
    }

    /// <summary>What a log line of ours may name. A new word is added here only if it can hold nothing that a person typed.</summary>
    [Fact]
    public void Every_log_line_in_the_source_names_ids_and_figures_only()
    {
        string[] may = ["Command", "Id", "Subject", "Outcome", "Head", "By", "To", "Time", "Problem", "Ring"];
        var source = Directory.EnumerateFiles(Path.Combine(Architecture.HouseTests.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains("/obj/", StringComparison.Ordinal)).Select(File.ReadAllText).ToList();
        var lines = source.SelectMany(text => Logged().Matches(text)).Select(m => m.Groups["text"].Value).ToList();
        Assert.True(lines.Count > 5, "The log lines are found.");
        Assert.Empty(lines.SelectMany(l => Named().Matches(l)).Select(m => m.Groups["name"].Value).Except(may));
        Assert.DoesNotContain(source, text => text.Contains("EnableSensitiveDataLogging", StringComparison.Ordinal) || text.Contains("BeginScope", StringComparison.Ordinal));
        Assert.DoesNotContain(source, text => Interpolated().IsMatch(text));
    }

    private void Listen(IWebHostBuilder builder)
    {
        builder.UseSetting("Logging:LogLevel:Default", "Trace");
        builder.ConfigureLogging(logging => logging.ClearProviders().AddProvider(log).SetMinimumLevel(LogLevel.Trace));
        builder.ConfigureTestServices(services => services.Replace(ServiceDescriptor.Singleton<IPlanner>(planner)));
    }

    /// <summary>Taken, changed by two at once, refused with everything wrong, an enquiry, a draft; and a baker with an odd name.</summary>
    private static async Task<Order> TakeOrders(KitchenShop app)
    {
        var shop = app.Book.State.Shop!;
        await Enter(app, AnswerKind.Accepted, new WriteShop(Guid.NewGuid(), "ines", "office", shop with
        {
            People = [.. shop.People.Select(p => p.Id == "petra" ? p with { Name = "Petronella Unterwasser" } : p)],
        }));
        var odd = Cakes.Good(77, 8, 6) with
        {
            Customer = new Customer("Quillfeather Zorvath", "+442079460917"),
            Handover = new Handover(Way.Deliver, new LocalDateTime(2026, 10, 24, 14, 0), "Schlotterbeck Mews 7", 20),
            Allergies = new AllergyAnswer(AllergyKind.Avoid, ["fish"], "Xanthippe sneezes at apricots") { Judged = "Xanthippe sneezes at apricots" },
            Inscription = "Ypsilanti is seven",
            Notes = "Gate code at Wurzelsepp",
        };
        await Enter(app, AnswerKind.Accepted, new WriteOrder(Guid.NewGuid(), "ines", "till", odd));
        await Enter(app, AnswerKind.Clash, new WriteOrder(Guid.NewGuid(), "wren", "till", odd with { Version = 7 }));
        var wrong = Cakes.Good(78) with { Customer = new Customer(string.Concat(Enumerable.Repeat("Quillfeather ", 40)), ""), Tiers = [], Notes = "Wurzelsepp\a" };
        await Enter(app, AnswerKind.Refused, new WriteOrder(Guid.NewGuid(), "wren", "till", wrong));
        await Enter(app, AnswerKind.NotAllowed, new WriteOrder(Guid.NewGuid(), "sal", "van", odd));
        await Enter(app, AnswerKind.Accepted, new WriteOrder(Guid.NewGuid(), "wren", "till", odd with { Id = Guid.NewGuid(), Stage = Stage.Enquiry }));
        await Enter(app, AnswerKind.Accepted, new KeepDraft(Guid.NewGuid(), "wren", "till", "{\"name\":\"Nussknacker\"}"));
        Assert.NotEmpty(await app.Book.Find("Quillfeather", TestContext.Current.CancellationToken));
        return app.Book.State.Orders.Single(o => o.Id == odd.Id);
    }

    private static async Task LookAtEveryPage(KitchenShop app, Order order)
    {
        var screen = app.At("ines");
        foreach (var path in new[] { "/order", $"/order/{order.Id}", "/cakes", $"/cakes/{order.Number}", "/week", "/kitchen", "/shop", "/well", "/who", "/nowhere" })
        {
            var page = await screen.GetAsync(path, TestContext.Current.CancellationToken);
            Assert.True(page.StatusCode is HttpStatusCode.OK or HttpStatusCode.NotFound, $"{path}: {page.StatusCode}");
        }

        Assert.Contains("Quillfeather", await screen.GetStringAsync($"/cakes/{order.Number}", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        await using var kitchen = await Screen.Open(screen);
        await kitchen.Board();
    }

    /// <summary>To eight in the evening: what is at hand is ticked each half hour, every ring is answered, one of them with words.</summary>
    private async Task WorkTheDay(KitchenShop app)
    {
        var screen = app.At("ines");
        var said = 0;
        for (var half = 0; half < 25; half++)
        {
            time.Advance(TimeSpan.FromMinutes(30));
            foreach (var ring in app.Ringer.Look().Ringing)
            {
                await KitchenShop.Answer(screen, ring.Id, said++ == 0 ? "Cannot" : "Done", "Klabautermann has dropped it");
            }

            var state = app.Book.State;
            foreach (var work in WorkList.Of(state.Week!, state.Wall!, state.Ticks, time.GetCurrentInstant(), state.NotDone).Where(p => p.AtHand is { } w && w.Start <= time.GetCurrentInstant()))
            {
                await KitchenShop.Tick(screen, work.AtHand!.Steps, "petra");
            }
        }

        Assert.True(said > 0);
    }

    /// <summary>A plan that breaks rules is our bug: it throws, and the page that asked logs it whole.</summary>
    private async Task BreakThePlanner(KitchenShop app, Order order)
    {
        planner.Broken = true;
        var later = order with { Handover = order.Handover with { At = order.Handover.At.PlusHours(-1) } };
        var fault = await Assert.ThrowsAsync<InvalidOperationException>(() =>
            app.Book.Enter(new WriteOrder(Guid.NewGuid(), "ines", "till", later), TestContext.Current.CancellationToken));
        app.Services.GetRequiredService<ILogger<LogTests>>().LogError(fault, "As a page logs it");
    }

    [GeneratedRegex(@"\.Log(?:Trace|Debug|Information|Warning|Error|Critical)\((?:\w+, )?""(?<text>[^""]*)""", RegexOptions.None, 1000)]
    private static partial Regex Logged();

    [GeneratedRegex(@"\{(?<name>\w+)[^}]*\}", RegexOptions.None, 1000)]
    private static partial Regex Named();

    [GeneratedRegex(@"\.Log(?:Trace|Debug|Information|Warning|Error|Critical)\((?:\w+, )?\$""", RegexOptions.None, 1000)]
    private static partial Regex Interpolated();

    private static async Task Enter(KitchenShop app, AnswerKind expected, Command command)
    {
        var answer = await app.Book.Enter(command, TestContext.Current.CancellationToken);
        Assert.True(answer.Kind == expected, $"{command}: {answer.Kind} {answer.Message} {string.Join(' ', answer.Problems)}");
    }

    /// <summary>Plans well until it is broken; then every cake goes out days too early and one person does all.</summary>
    private sealed class Breakable : IPlanner
    {
        private readonly QuickPlanner whole = new();

        public bool Broken { get; set; }

        public PlanOutcome Plan(Week week, CancellationToken cancel = default) => Bent(week, whole.Plan(week, cancel));

        public PlanOutcome Insert(Week week, CancellationToken cancel = default) => Bent(week, whole.Insert(week, cancel));

        public PlanOutcome Push(Week week, CancellationToken cancel = default) => Bent(week, whole.Push(week, cancel));

        public PlanOutcome Repair(Week week, int calmUntil, CancellationToken cancel = default) => Bent(week, whole.Repair(week, calmUntil, cancel));

        private PlanOutcome Bent(Week week, PlanOutcome made) => !Broken || made.Plan is null ? made : made with
        {
            Plan = made.Plan with { Steps = [.. made.Plan.Steps.Select(r => r with { Start = week.FreeFrom, People = r.People.Count > 0 ? ["petra"] : [] })] },
        };
    }
}
