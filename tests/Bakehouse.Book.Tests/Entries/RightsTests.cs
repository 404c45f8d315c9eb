namespace Bakehouse.Book.Tests.Entries;

using Bakehouse.Book.Entries;
using Bakehouse.Domain.Shops;

/// <summary>Every command for every role, written out: a new command fails here until somebody has decided who may enter it.</summary>
public sealed class RightsTests
{
    private static readonly Dictionary<string, string> Expected = new(StringComparer.Ordinal)
    {
        //                     Owner Baker Decorator Counter Driver
        [nameof(WriteShop)] = "yes   no    no        no      no",
        [nameof(OpenSample)] = "yes   no    no        no      no",
        [nameof(WriteOrder)] = "yes   yes   no        yes     no",
        [nameof(MoveStage)] = "yes   yes   no        yes     no",
        [nameof(LetDayGo)] = "yes   yes   no        yes     no",
        [nameof(KeepDraft)] = "yes   yes   no        yes     no",
        [nameof(TickStep)] = "yes   yes   yes       yes     no",
        [nameof(UndoTick)] = "yes   yes   yes       yes     no",
        [nameof(CorrectTick)] = "yes   yes   yes       yes     no",
        [nameof(AnswerRing)] = "yes   yes   yes       yes     no",
        [nameof(PinStep)] = "yes   yes   yes       no      no",
        [nameof(UnpinStep)] = "yes   yes   yes       no      no",
        [nameof(TakeBackMove)] = "yes   yes   yes       no      no",
        [nameof(WriteChore)] = "yes   no    no        no      no",
        [nameof(WriteRecipes)] = "yes   no    no        no      no",
        [nameof(OpenPack)] = "yes   yes   yes       no      no",
        [nameof(LookAtRecipes)] = "yes   no    no        no      no",
        [nameof(ReadBackAllergies)] = "yes   yes   yes       yes     no",
        [nameof(TellSlip)] = "yes   yes   yes       yes     no",
        [nameof(CountSpares)] = "yes   yes   yes       yes     no",
        [nameof(TakeBackSlip)] = "yes   yes   yes       yes     no",
        [nameof(TakePlan)] = "yes   yes   no        no      no",
        [nameof(PlanNear)] = "yes   yes   yes       yes     yes",
        [nameof(TrustClock)] = "yes   no    no        no      no",
        [nameof(RenewCalendar)] = "yes   yes   yes       yes     yes",
        [nameof(StopCalendar)] = "yes   yes   yes       yes     yes",
    };

    public static IReadOnlyList<Type> Commands { get; } =
        [.. typeof(Command).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Command))).OrderBy(t => t.Name, StringComparer.Ordinal)];

    public static TheoryData<string, Role> Cells =>
        [.. from command in Commands from role in Enum.GetValues<Role>() select new TheoryDataRow<string, Role>(command.Name, role)];

    [Theory]
    [MemberData(nameof(Cells))]
    public void Each_cell_of_the_table_is_as_decided(string command, Role role)
    {
        Assert.True(Expected.TryGetValue(command, out var row), $"{command} has no row here.");
        var cells = row.Split(' ', StringSplitOptions.RemoveEmptyEntries);

        var type = Commands.Single(c => c.Name == command);
        Assert.True(EntryRights.Knows(type), $"{command} has no row in the table.");
        Assert.Equal(cells[(int)role] == "yes", EntryRights.May(type, role));
    }

    [Fact]
    public void A_stranger_may_only_begin_an_empty_book()
    {
        Assert.Equal(
            [nameof(KeepDraft), nameof(OpenSample), nameof(WriteShop)],
            Commands.Where(c => EntryRights.May(c, null, emptyBook: true)).Select(c => c.Name));
        Assert.DoesNotContain(Commands, c => EntryRights.May(c, null));
        Assert.Equal([nameof(LetDayGo), nameof(PlanNear)], Commands.Where(c => EntryRights.May(c, null, nobody: true)).Select(c => c.Name));
    }

    [Fact]
    public void A_command_without_a_row_is_for_nobody() =>
        Assert.DoesNotContain(Enum.GetValues<Role>(), role => EntryRights.May(typeof(Unlisted), role));

    [Fact]
    public async Task The_book_itself_refuses_and_writes_nothing()
    {
        using var disk = new BookOnDisk();

        var driver = await disk.Write(BookOnDisk.Order(), "sal");
        var stranger = await disk.Write(BookOnDisk.Order(), "nobody");
        var baker = await disk.Enter(new WriteShop(BookOnDisk.NewId(), "petra", "tablet", BookOnDisk.Shop with { Version = 1 }));

        Assert.All([driver, stranger, baker], a => Assert.Equal(AnswerKind.NotAllowed, a.Kind));
        Assert.Equal(1, disk.Book.State.Head);
    }

    private sealed record Unlisted(Guid Id, string Person, string Device) : Command(Id, Person, Device);
}
