namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Chores;
using Bakehouse.Domain.Freezer;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;
using Bakehouse.Domain.Recipes;
using Bakehouse.Domain.Reminders;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;
using NodaTime;

/// <summary>
/// One intent of one person. The id is made by the client (128 random bits); a command seen before gets its first answer
/// again and changes nothing.
/// </summary>
/// <param name="Id">Made where the person tapped.</param>
/// <param name="Person">Id of the person, or "" on a book that knows nobody yet.</param>
/// <param name="Device">Name of the screen.</param>
public abstract record Command(Guid Id, string Person, string Device)
{
    /// <summary>For logs and faults: its kind and id, and nothing that was typed.</summary>
    public sealed override string ToString() => $"{GetType().Name} {Id:N}";
}

/// <summary>Set the shop up, or change it. <paramref name="Shop"/>.Version is the version that was read (0 for none).</summary>
public sealed record WriteShop(Guid Id, string Person, string Device, Shop Shop) : Command(Id, Person, Device);

/// <summary>Fill an empty book with the sample bakery; refuses a used book.</summary>
public sealed record OpenSample(Guid Id, string Person, string Device) : Command(Id, Person, Device);

/// <summary>
/// Write an order. Version 0 is a new one (its number is given by the book); else the version that was read: if the book
/// has a newer one, the answer is a clash with both. A planned stage plans it in the same transaction.
/// </summary>
/// <param name="MayMove">
/// True if other cakes may move for it, as was offered: only if it is late otherwise, and only if nobody is late then.
/// </param>
public sealed record WriteOrder(Guid Id, string Person, string Device, Order Order, bool MayMove = false) : Command(Id, Person, Device);

/// <summary>Move an order to another stage.</summary>
public sealed record MoveStage(Guid Id, string Person, string Device, Guid Order, int Version, Stage To) : Command(Id, Person, Device);

/// <summary>
/// The hours are over for which a day was kept: its places are free again, and the order stands as quoted. Entered by the program itself
/// (<paramref name="Person"/> empty), or by whoever takes orders.
/// </summary>
public sealed record LetDayGo(Guid Id, string Person, string Device, Guid Order) : Command(Id, Person, Device);

/// <summary>A step is done.</summary>
/// <param name="By">Who did it; usually the person.</param>
/// <param name="Done">When, or null for now.</param>
public sealed record TickStep(Guid Id, string Person, string Device, string Step, string By, Instant? Done = null)
    : Command(Id, Person, Device);

/// <summary>Take a tick back.</summary>
public sealed record UndoTick(Guid Id, string Person, string Device, string Step) : Command(Id, Person, Device);

/// <summary>
/// Correct a tick later: somebody else did it, or at another hour. The former tick stays in the log, with the reason.
/// </summary>
/// <param name="By">Who did it.</param>
/// <param name="Done">When.</param>
/// <param name="Reason">Why it is corrected.</param>
public sealed record CorrectTick(Guid Id, string Person, string Device, string Step, string By, Instant Done, string Reason)
    : Command(Id, Person, Device);

/// <summary>Answer a ring. The first answer wins; Done also ticks the step that it called for.</summary>
public sealed record AnswerRing(Guid Id, string Person, string Device, string Ring, RingAnswerKind Kind, string Reason)
    : Command(Id, Person, Device);

/// <summary>Keep what is typed so far. One draft a device; null text throws it away.</summary>
public sealed record KeepDraft(Guid Id, string Person, string Device, string? Text) : Command(Id, Person, Device);

/// <summary>
/// The clock of this machine is right now. What was written under a later time, while it was wrong, holds no plan back any more.
/// </summary>
public sealed record TrustClock(Guid Id, string Person, string Device) : Command(Id, Person, Device);

/// <summary>
/// Give a person's calendar a new secret address; the one before stops. Everybody may for themselves, the owner for all.
/// </summary>
/// <param name="For">Id of the person.</param>
/// <param name="Secret">SHA-256 of the secret in hexadecimal: the secret itself is never in the book.</param>
public sealed record RenewCalendar(Guid Id, string Person, string Device, string For, string Secret) : Command(Id, Person, Device);

/// <summary>Stop a person's calendar address. Everybody may for themselves, the owner for all.</summary>
public sealed record StopCalendar(Guid Id, string Person, string Device, string For) : Command(Id, Person, Device);

/// <summary>
/// Put a step there and pin it: it stays until it is unpinned, and the others make way. At the place where it stands already it is
/// only pinned. The owner may for all, a baker and a decorator for steps of their own.
/// </summary>
/// <param name="Start">When it begins.</param>
/// <param name="People">Ids of who does it; empty if it needs no hands.</param>
/// <param name="Machine">Oven or bowl, or null.</param>
/// <param name="Head">The head on which it was looked at; if the plan has moved on since, the answer is a clash.</param>
public sealed record PinStep(
    Guid Id, string Person, string Device, string Step, Instant Start, IReadOnlyList<string> People, string? Machine, int Head) : Command(Id, Person, Device);

/// <summary>Let a pinned step go. It stays where it is until something moves it.</summary>
public sealed record UnpinStep(Guid Id, string Person, string Device, string Step) : Command(Id, Person, Device);

/// <summary>Take a pin back with everything that it moved, while that can stand again.</summary>
/// <param name="Move">Id of the <see cref="PinStep"/>.</param>
public sealed record TakeBackMove(Guid Id, string Person, string Device, Guid Move) : Command(Id, Person, Device);

/// <summary>
/// Write work that is no order. Version 0 is new; else the version that was read. Dropped takes it away. The plan follows at once.
/// </summary>
public sealed record WriteChore(Guid Id, string Person, string Device, Chore Chore) : Command(Id, Person, Device);

/// <summary>
/// Something went wrong. It is a fact: written, and the plan mended around it as far as it can be. Two kinds are no facts but wishes, and
/// are refused where no plan can follow: an agreed hour moved (whoever may write orders), and a step begun before its wait is over (the owner).
/// </summary>
/// <param name="Slip">Its id, instant and person are those of the command.</param>
public sealed record TellSlip(Guid Id, string Person, string Device, Slip Slip) : Command(Id, Person, Device);

/// <summary>Somebody counted sponges of one baking in the freezer; none says that they are gone.</summary>
public sealed record CountSpares(Guid Id, string Person, string Device, SpareSponges Spares) : Command(Id, Person, Device);

/// <summary>It was no slip: it counts no more, and what it moved goes back while that can stand, else the plan is mended without it.</summary>
/// <param name="Slip">Id of the <see cref="TellSlip"/>.</param>
public sealed record TakeBackSlip(Guid Id, string Person, string Device, Guid Slip) : Command(Id, Person, Device);

/// <summary>
/// Plan the cakes whose day has come near enough for a plan to the minute, and those that found no room before. Entered by the program
/// itself (<paramref name="Person"/> empty) once a day, and after changes, or by anybody.
/// </summary>
public sealed record PlanNear(Guid Id, string Person, string Device) : Command(Id, Person, Device);

/// <summary>
/// Hang up a plan that was found beside the work. Accepted if it still fits, is better, makes no cake later, and leaves the next two hours
/// as they are.
/// </summary>
/// <param name="Plan">The plan and the instant of its minute 0.</param>
/// <param name="Head">The head on which it was looked at; if the book has moved on since, the answer is a clash.</param>
public sealed record TakePlan(Guid Id, string Person, string Device, Wall Plan, int Head) : Command(Id, Person, Device);

/// <summary>
/// Write ingredients and recipes, new ones or changed, all or none. Each with the version that was read (0 for a new one). Orders that are
/// planned keep theirs; those that it touches stop at their next making step until somebody has looked.
/// </summary>
/// <param name="Why">Why it is changed; not empty.</param>
public sealed record WriteRecipes(
    Guid Id, string Person, string Device, IReadOnlyList<Ingredient> Ingredients, IReadOnlyList<Recipe> Recipes, string Why) : Command(Id, Person, Device);

/// <summary>A new pack of an ingredient is opened. As long as nobody has read its label nothing is known about it.</summary>
/// <param name="Ingredient">Id of the ingredient.</param>
public sealed record OpenPack(Guid Id, string Person, string Device, string Ingredient, Pack Pack) : Command(Id, Person, Device);

/// <summary>Somebody has looked at what changed in the recipes of an order.</summary>
/// <param name="Order">Id of the order; <paramref name="Version"/> is the version that was read.</param>
/// <param name="Move">True to make it from the recipes as they stand now, false to keep those that it has.</param>
/// <param name="Packs">Packs that are locked for it from now on.</param>
public sealed record LookAtRecipes(Guid Id, string Person, string Device, Guid Order, int Version, bool Move, IReadOnlyList<PackLock> Packs) : Command(Id, Person, Device);

/// <summary>What must be avoided was read back to the customer. By somebody else than who wrote it, unless one works alone.</summary>
/// <param name="Version">The version that was read.</param>
public sealed record ReadBackAllergies(Guid Id, string Person, string Device, Guid Order, int Version) : Command(Id, Person, Device);

/// <summary>What the book says to a command. Kept with the command's id, so the same command hears the same answer.</summary>
/// <param name="Kind">Accepted, or why not.</param>
/// <param name="Message">One sentence for the person; empty when accepted and there is nothing to say.</param>
/// <param name="Problems">Every problem with its value, limit and fix; empty if there is none.</param>
/// <param name="Order">The order as the book has it now (new number and version, or the newer one in a clash), or null.</param>
/// <param name="Late">Orders that the plan makes late, minutes by order id.</param>
public sealed record Answer(
    AnswerKind Kind,
    string Message,
    IReadOnlyList<Problem> Problems,
    Order? Order,
    IReadOnlyDictionary<string, int> Late);

/// <summary>Kinds of answer.</summary>
public enum AnswerKind
{
    /// <summary>Written: COMMIT has returned.</summary>
    Accepted,

    /// <summary>Not written: the problems say why and what to try.</summary>
    Refused,

    /// <summary>Somebody else was first: <see cref="Answer.Order"/> is what stands now.</summary>
    Clash,

    /// <summary>This person may not do that here.</summary>
    NotAllowed,
}
