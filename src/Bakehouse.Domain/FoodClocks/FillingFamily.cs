namespace Bakehouse.Domain.FoodClocks;

/// <summary>Whether a family is on the clock before its owner has said anything, and whether the owner may take it off.</summary>
public enum FamilyClock
{
    /// <summary>Always, whatever is answered.</summary>
    Always,

    /// <summary>Until the owner has answered.</summary>
    UntilAnswered,

    /// <summary>Off, with a quiet mark until the owner has answered.</summary>
    OwnerDecides,
}

/// <summary>Where the owner keeps a family.</summary>
public enum FamilyKept
{
    /// <summary>In the fridge.</summary>
    Fridge,

    /// <summary>At room temperature, by the rules of the place.</summary>
    Room,

    /// <summary>At room temperature, because it was tested.</summary>
    Tested,
}

/// <summary>The owner's answer for one family.</summary>
/// <param name="Note">Who tested it, when and with what result; must be there for <see cref="FamilyKept.Tested"/>.</param>
public sealed record FamilyAnswer(string Family, FamilyKept Kept, string Note = "");

/// <summary>
/// Fillings and icings that are answered for once. Which need cold holding depends on acid and water and on the rules of the place (FDA Food Code
/// 1-201.10; University of Tennessee Extension W1367; a bakery's butter-rich buttercream was found to need it by a laboratory): so no answer stands
/// here for good.
/// </summary>
/// <param name="Id">Short, lower case.</param>
/// <param name="Fillings">Ids of fillings that belong to it.</param>
public sealed record FillingFamily(string Id, string Name, FamilyClock Clock, params IReadOnlyList<string> Fillings)
{
    /// <summary>The eight.</summary>
    public static IReadOnlyList<FillingFamily> All { get; } =
    [
        new("plain", "Plain buttercream and jam", FamilyClock.OwnerDecides, "buttercream", "raspberry-jam"),
        new("paste", "Paste, royal icing and marzipan", FamilyClock.OwnerDecides),
        new("meringue", "Meringue buttercream", FamilyClock.UntilAnswered),
        new("ganache", "Ganache", FamilyClock.UntilAnswered, "ganache"),
        new("curd", "Curd", FamilyClock.UntilAnswered, "lemon-curd"),
        new("cream-cheese", "Cream cheese", FamilyClock.Always, "cream-cheese"),
        new("cream", "Cream, custard and mousse", FamilyClock.Always),
        new("fruit", "Cut fruit", FamilyClock.Always),
    ];

    /// <summary>The family of a filling; null if it belongs to none that is known, which is on the clock.</summary>
    public static FillingFamily? OfFilling(string filling) => All.FirstOrDefault(f => f.Fillings.Contains(filling));

    /// <summary>True if its time out of the cold is counted.</summary>
    public bool IsOnClock(IReadOnlyList<FamilyAnswer> answers) => Clock == FamilyClock.Always || (AnswerIn(answers) is { } answer
        ? answer.Kept == FamilyKept.Fridge
        : Clock == FamilyClock.UntilAnswered);

    /// <summary>What is said beside it; never that it may be eaten.</summary>
    public string Says(IReadOnlyList<FamilyAnswer> answers) => (Clock, AnswerIn(answers)) switch
    {
        (FamilyClock.Always, _) => $"{Name}: always on the clock. {FoodRules.Caution}",
        (_, { Kept: FamilyKept.Fridge }) => $"{Name}: on the clock, as the owner says. {FoodRules.Caution}",
        (_, { Kept: FamilyKept.Room }) => $"{Name}: at room temperature, as the owner says. {FoodRules.Caution}",
        (_, { Kept: FamilyKept.Tested } a) => $"{Name}: at room temperature, tested: {a.Note.Trim()} {FoodRules.Caution}",
        (FamilyClock.UntilAnswered, null) => $"{Name}: on the clock until the owner has answered. {FoodRules.Caution}",
        _ => $"{Name}: owner to decide. {FoodRules.Caution}",
    };

    /// <summary>Everything wrong with answers, in one list.</summary>
    public static IReadOnlyList<Problem> Problems(IReadOnlyList<FamilyAnswer> answers) =>
    [
        .. answers.Where(a => All.All(f => f.Id != a.Family))
            .Select(a => new Problem("family", Problem.Shown(a.Family), "There is no such family.", $"Use one of {string.Join(", ", All.Select(f => f.Id))}.")),
        .. answers.Where(a => a.Kept == FamilyKept.Tested && a.Note.Trim().Length == 0)
            .Select(a => new Problem(a.Family, "tested", "A test has a note.", "Write who tested it, when and with what result.")),
        .. answers.Where(a => a.Kept != FamilyKept.Fridge && All.Any(f => f.Id == a.Family && f.Clock == FamilyClock.Always))
            .Select(a => new Problem(a.Family, $"{a.Kept}".ToLowerInvariant(), "It is always on the clock.", "Answer fridge.")),
        .. answers.GroupBy(a => a.Family, StringComparer.Ordinal).Where(g => g.Count() > 1)
            .Select(g => new Problem(Problem.Shown(g.Key), $"{g.Count()} answers", "A family is answered once.", "Keep one answer.")),
    ];

    private FamilyAnswer? AnswerIn(IReadOnlyList<FamilyAnswer> answers) => answers.FirstOrDefault(a => a.Family == Id);
}
