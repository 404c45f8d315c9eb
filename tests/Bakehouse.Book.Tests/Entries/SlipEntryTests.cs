namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Book.Reading;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>What went wrong is written, foretold as it comes, mended around, and can be taken back.</summary>
public sealed class SlipEntryTests
{
    /// <summary>What if Petra is away all of Friday? It is Wednesday: what would move is said, and nothing is written until somebody tells it.</summary>
    [Fact]
    public async Task What_if_somebody_is_away_on_a_day_to_come_is_answered_and_changes_nothing()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(inches: [10, 8, 6]));
        await disk.Write(BookOnDisk.Order("Fenn", hour: 12, inches: [8, 6]));
        var (before, friday) = (disk.Book.State, new LocalDate(2026, 10, 16));
        Assert.Contains(Of("petra", friday, before.Wall!), _ => true);
        var told = disk.Tell(SlipKind.Away, "petra");
        told = told with { Slip = told.Slip with { From = At(friday, 0), Until = At(friday.PlusDays(1), 0) } };
        var what = await disk.Book.Foresee(told, TestContext.Current.CancellationToken);
        Assert.Equal(AnswerKind.Accepted, what.Answer.Kind);
        Assert.Empty(Of("petra", friday, what.Wall!));
        Assert.NotEmpty(what.Repair!.Moves);
        Assert.Equal((before.Head, 0), (disk.Book.State.Head, disk.Book.State.Slips.Count));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(told)).Kind);
        Assert.Empty(Of("petra", friday, disk.Book.State.Wall!));
    }

    private static IEnumerable<StepRow> Of(string person, LocalDate day, Wall wall) => wall.Plan.Steps.Where(r => r.People.Contains(person) && wall.Epoch + Duration.FromMinutes(r.Start) is var at && at >= At(day, 0) && at < At(day.PlusDays(1), 0));

    private static Instant At(LocalDate day, int hour) => (day + new LocalTime(hour, 0)).InZoneStrictly(DateTimeZoneProviders.Tzdb["Europe/London"]).ToInstant();

    [Fact]
    public async Task Somebody_is_ill_the_plan_is_foretold_mended_and_back_as_it_was_when_it_is_taken_back()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order(inches: [10, 8, 6]));
        var before = Rows(disk.Book.State.Wall!);
        var first = disk.Book.State.Wall!.Plan.Steps.First(r => r.People.Contains("petra"));
        var away = disk.Book.State.Wall.Epoch + Duration.FromMinutes(first.Start + 90);
        var ill = disk.Tell(SlipKind.Away, "petra", until: (away - disk.Clock.GetCurrentInstant()).TotalHours);

        var foreseen = await disk.Book.Foresee(ill, TestContext.Current.CancellationToken);
        Assert.Equal(before, Rows(disk.Book.State.Wall!));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(ill)).Kind);

        var state = disk.Book.State;
        Assert.Equal(Rows(foreseen.Wall!), Rows(state.Wall!));
        Assert.Contains("petra", foreseen.Repair!.People);
        Assert.Equal(foreseen.Repair.Moves.Select(m => m.Step).Order(StringComparer.Ordinal), Moved(before, Rows(state.Wall!)).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(state.Wall!.Plan.Steps, r => r.People.Contains("petra") && state.Wall.Epoch + Duration.FromMinutes(r.Start) < away);
        Assert.Empty(Judge.Examine(state.Week!, state.Wall.From(state.Week!.Epoch)).Breaches);
        disk.Reopen();
        Assert.Equal(ill.Id, Assert.Single(disk.Book.State.Slips).Id);

        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(Back(ill))).Kind);
        Assert.Empty(disk.Book.State.Slips);
        Assert.Equal(before, Rows(disk.Book.State.Wall!));
        Assert.Equal("That does not stand any more.", (await disk.Enter(Back(ill))).Message);
    }

    /// <summary>The rows of what is done say what happened, whoever the plan had for it: they stand in no way back's way.</summary>
    [Fact]
    public async Task Taken_back_on_a_morning_with_work_done_what_is_to_come_is_as_it_was()
    {
        using var disk = new BookOnDisk(withShop: false);
        disk.Clock.Reset(Instant.FromUtc(2026, 10, 15, 9, 40));
        await disk.Enter(new OpenSample(BookOnDisk.NewId(), "", "counter"));
        Assert.NotEmpty(disk.Book.State.Ticks);
        var before = ToCome(disk);
        var ill = disk.Tell(SlipKind.Away, "dov", until: 9);
        await disk.Enter(ill);
        Assert.NotEqual(before, ToCome(disk));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(Back(ill))).Kind);
        Assert.Equal(before, ToCome(disk));
    }

    [Fact]
    public async Task A_sunk_sponge_is_baked_again_at_once_and_a_spare_saves_the_baking()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var bake = await Baked(disk);
        var again = disk.Tell(SlipKind.Cracked, bake);
        await disk.Enter(again);
        Assert.Equal(4, disk.Book.State.Wall!.Plan.Steps.Count(r => StepKey.Parse(r.Step)!.Value.Ordinal == 101));

        await disk.Enter(Back(again));
        Assert.DoesNotContain(disk.Book.State.Wall!.Plan.Steps, r => StepKey.Parse(r.Step)!.Value.Ordinal == 101);
        var before = Rows(disk.Book.State.Wall!);
        var spare = await disk.Book.Foresee(disk.Tell(SlipKind.Cracked, bake, spare: true), TestContext.Current.CancellationToken);
        Assert.True(spare.Repair!.Moves.Count < 4);
        Assert.Equal(before, Rows(disk.Book.State.Wall!));
    }

    /// <summary>Told on two tablets: the load is baked again once, and the second hears so.</summary>
    [Fact]
    public async Task A_sponge_that_is_told_twice_is_baked_again_once()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var bake = await Baked(disk);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(disk.Tell(SlipKind.Cracked, bake))).Kind);
        foreach (var spare in new[] { false, true })
        {
            var second = await disk.Enter(disk.Tell(SlipKind.Cracked, bake, spare: spare));
            Assert.Equal((AnswerKind.Refused, "Those layers are baked again already."), (second.Kind, second.Message));
        }

        var again = disk.Book.State.Wall!.Plan.Steps.Single(r => r.Step == Slip.Again(StepKey.Parse(bake)!.Value).ToString()).Step;
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(disk.Tell(SlipKind.Cracked, again))).Kind);
        Assert.Empty(Judge.Examine(disk.Book.State.Week!, disk.Book.State.Wall.From(disk.Book.State.Week!.Epoch)).Breaches);
    }

    [Fact]
    public async Task A_pickup_moved_gives_the_order_a_version_and_goes_back_to_the_hour_and_the_plan_of_before()
    {
        using var disk = new BookOnDisk();
        var order = (await disk.Write(BookOnDisk.Order())).Order!;
        var before = Rows(disk.Book.State.Wall!);
        var earlier = disk.Tell(SlipKind.Pickup, order.Id.ToString("N"), until: 76, person: "wren");

        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(disk.Tell(SlipKind.Pickup, order.Id.ToString("N"), until: 76, person: "dov"))).Kind);
        var answer = await disk.Enter(earlier);

        // Wednesday 08:00 and 76 h are Saturday 12:00.
        Assert.Equal((AnswerKind.Accepted, new LocalDateTime(2026, 10, 17, 12, 0), 2), (answer.Kind, answer.Order!.Handover.At, answer.Order.Version));
        Assert.Empty(answer.Late);
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TakeBackSlip(BookOnDisk.NewId(), "wren", "counter", earlier.Id))).Kind);
        Assert.Equal((new LocalDateTime(2026, 10, 17, 14, 0), 3), (disk.Book.State.Orders.Single().Handover.At, disk.Book.State.Orders.Single().Version));
        Assert.Equal(before, Rows(disk.Book.State.Wall!));
        Assert.Contains("The shop is shut", (await disk.Enter(disk.Tell(SlipKind.Pickup, order.Id.ToString("N"), until: 90))).Problems[0].Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_owner_begins_before_the_wait_is_over_nobody_else_does_and_not_where_nobody_has_hands()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        await Baked(disk);
        var turnout = Row(disk, "turnout");
        disk.Clock.Reset(disk.Book.State.Wall!.Epoch + Duration.FromMinutes(turnout.Start + 10));
        await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", turnout.Step, "petra"));
        var wrap = Row(disk, "wrap");

        Assert.Equal(AnswerKind.NotAllowed, (await disk.Enter(disk.Tell(SlipKind.Anyway, wrap.Step, person: "petra"))).Kind);
        var answer = await disk.Enter(disk.Tell(SlipKind.Anyway, wrap.Step));

        Assert.Equal((AnswerKind.Accepted, ""), (answer.Kind, answer.Message));
        Assert.Equal(disk.Clock.GetCurrentInstant(), disk.Book.State.Wall!.Epoch + Duration.FromMinutes(Row(disk, "wrap").Start));
        var handover = await disk.Enter(disk.Tell(SlipKind.Anyway, Row(disk, "handover").Step));
        Assert.Equal(AnswerKind.Refused, handover.Kind);
        Assert.Contains("allergen stops and food limits stand", handover.Message, StringComparison.Ordinal);
    }

    /// <summary>Rule: "I'll do it anyway" never goes over an allergen stop, also for the owner.</summary>
    [Fact]
    public async Task The_owners_word_goes_over_no_allergen_stop()
    {
        using var disk = new BookOnDisk();
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(BookOnDisk.Recipes())).Kind);
        var order = (await disk.Write(BookOnDisk.Avoiding(BookOnDisk.Order(), "nuts"))).Order!;
        var mix = Row(disk, "mix").Step;
        var stopped = await disk.Enter(disk.Tell(SlipKind.Anyway, mix));
        Assert.Equal((AnswerKind.Refused, "What must be avoided has not been read back."), (stopped.Kind, stopped.Message));
        Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new ReadBackAllergies(BookOnDisk.NewId(), "petra", "tablet", order.Id, order.Version))).Kind);
        Assert.DoesNotContain("read back", (await disk.Enter(disk.Tell(SlipKind.Anyway, mix))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_message_names_every_problem()
    {
        using var disk = new BookOnDisk();
        await disk.Write(BookOnDisk.Order());
        var answer = await disk.Enter(disk.Tell(SlipKind.Away, "nobody", until: -2));
        Assert.Equal("2 things need a look.", answer.Message);
        Assert.Equal(["person", "until"], answer.Problems.Select(p => p.Sentence.Contains("no such person", StringComparison.Ordinal) ? "person" : p.Where));
        Assert.Equal("Those layers are in the cake already.", await Said(disk, SlipKind.Cracked, "bake", "fill"));
        Assert.Equal("That step has not begun.", (await disk.Enter(disk.Tell(SlipKind.Behind, Row(disk, "coat").Step, until: 1))).Message);
    }

    private static async Task<string> Said(BookOnDisk disk, SlipKind kind, string about, string done)
    {
        await disk.Enter(new TickStep(BookOnDisk.NewId(), "dov", "tablet", Row(disk, done).Step, "dov"));
        return (await disk.Enter(disk.Tell(kind, Row(disk, about).Step))).Message;
    }

    /// <summary>The one cake is mixed and out of the oven.</summary>
    internal static async Task<string> Baked(BookOnDisk disk)
    {
        foreach (var word in new[] { "mix", "bake" })
        {
            var row = Row(disk, word);
            disk.Clock.Reset(disk.Book.State.Wall!.Epoch + Duration.FromMinutes(row.Start + disk.Book.State.Week!.Steps.First(s => s.Id == row.Step).Minutes));
            Assert.Equal(AnswerKind.Accepted, (await disk.Enter(new TickStep(BookOnDisk.NewId(), "petra", "tablet", row.Step, "petra"))).Kind);
        }

        return Row(disk, "bake").Step;
    }

    internal static StepRow Row(BookOnDisk disk, string word) => disk.Book.State.Wall!.Plan.Steps.First(r => StepKey.Parse(r.Step)!.Value is var key && key.Operation == word && key.Ordinal == 1);

    private static List<(string Step, Instant At, string Who, string? Machine)> ToCome(BookOnDisk disk) =>
        [.. Rows(disk.Book.State.Wall!).Where(r => r.At >= disk.Clock.GetCurrentInstant())];

    private static TakeBackSlip Back(TellSlip told) => new(BookOnDisk.NewId(), told.Person, told.Device, told.Id);

    private static List<(string Step, Instant At, string Who, string? Machine)> Rows(Wall wall) =>
        [.. wall.Plan.Steps.Select(r => (r.Step, wall.Epoch + Duration.FromMinutes(r.Start), string.Join('+', r.People), r.Machine)).OrderBy(r => r.Step, StringComparer.Ordinal)];

    private static IEnumerable<string> Moved(List<(string Step, Instant At, string Who, string? Machine)> before, List<(string Step, Instant At, string Who, string? Machine)> after) =>
        after.Except(before).Select(r => r.Step);
}
