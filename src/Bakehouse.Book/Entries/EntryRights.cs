namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Shops;

/// <summary>
/// Who may enter what. A command without a row is for nobody. Which page is for whom is the screens' matter; this is what counts.
/// </summary>
public static class EntryRights
{
    private static readonly Role[] TakesOrders = [Role.Owner, Role.Counter, Role.Baker];
    private static readonly Role[] MakesCakes = [Role.Owner, Role.Baker, Role.Decorator, Role.Counter];

    private static readonly Role[] PlansSteps = [Role.Owner, Role.Baker, Role.Decorator];

    private static readonly Role[] Everybody = Enum.GetValues<Role>();

    private static readonly Dictionary<Type, Role[]> Table = new()
    {
        [typeof(WriteShop)] = [Role.Owner],
        [typeof(OpenSample)] = [Role.Owner],
        [typeof(WriteOrder)] = TakesOrders,
        [typeof(MoveStage)] = TakesOrders,
        [typeof(LetDayGo)] = TakesOrders,
        [typeof(KeepDraft)] = TakesOrders,
        [typeof(TickStep)] = MakesCakes,
        [typeof(UndoTick)] = MakesCakes,
        [typeof(CorrectTick)] = MakesCakes,
        [typeof(AnswerRing)] = MakesCakes,
        [typeof(PinStep)] = PlansSteps,
        [typeof(UnpinStep)] = PlansSteps,
        [typeof(TakeBackMove)] = PlansSteps,
        [typeof(WriteChore)] = [Role.Owner],
        [typeof(WriteRecipes)] = [Role.Owner],
        [typeof(OpenPack)] = PlansSteps,
        [typeof(LookAtRecipes)] = [Role.Owner],
        [typeof(ReadBackAllergies)] = MakesCakes,
        [typeof(TellSlip)] = MakesCakes,
        [typeof(TakeBackSlip)] = MakesCakes,
        [typeof(CountSpares)] = MakesCakes,
        [typeof(TakePlan)] = [Role.Owner, Role.Baker],
        [typeof(PlanNear)] = Everybody,
        [typeof(TrustClock)] = [Role.Owner],
        [typeof(RenewCalendar)] = Everybody,
        [typeof(StopCalendar)] = Everybody,
    };

    /// <summary>What may be entered while the book knows nobody yet.</summary>
    private static readonly HashSet<Type> BeforeAnybody = [typeof(WriteShop), typeof(OpenSample), typeof(KeepDraft)];

    /// <summary>What the program enters by itself, in nobody's name.</summary>
    private static readonly HashSet<Type> ByItself = [typeof(PlanNear), typeof(LetDayGo)];

    /// <summary>True if the command has a row.</summary>
    public static bool Knows(Type command) => Table.ContainsKey(command);

    /// <summary>True if somebody of that role may enter it; role null is a stranger.</summary>
    /// <param name="emptyBook">True while the book has no shop, so that nobody can have a role.</param>
    /// <param name="nobody">True if no name is given: then it is the program.</param>
    public static bool May(Type command, Role? role, bool emptyBook = false, bool nobody = false) => role is { } known
        ? Table.TryGetValue(command, out var roles) && roles.Contains(known)
        : emptyBook ? BeforeAnybody.Contains(command) : nobody && ByItself.Contains(command);
}
