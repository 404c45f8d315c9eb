namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Shops;

/// <summary>One way in for every command: rights first, then the entry that decides.</summary>
internal static class Entry
{
    public static Outcome Decide(Command command, Desk desk)
    {
        var shop = desk.State.Shop;
        var role = shop?.PersonOf(command.Person)?.Role;
        if (!EntryRights.May(command.GetType(), role, emptyBook: shop is null, nobody: command.Person.Length == 0))
        {
            return Outcome.NotAllowed(role is null ? "Say first who you are." : $"That is not for a {Word(role.Value)} here. Ask the owner.");
        }

        var outcome = DecideFor(command, desk);
        return ClockEntry.HoldsBack(outcome, desk) ? ClockEntry.Behind(outcome.Subject, desk) : outcome;
    }

    private static Outcome DecideFor(Command command, Desk desk) => command switch
    {
        WriteShop setUp => ShopEntry.Decide(setUp, desk),
        OpenSample sample => SampleEntry.Decide(sample, desk),
        WriteOrder write => OrderEntry.Decide(write, desk),
        MoveStage move => StageEntry.Decide(move, desk),
        LetDayGo let => StageEntry.Decide(let, desk),
        TickStep tick => TickEntry.Decide(tick, desk),
        UndoTick undo => UndoEntry.Decide(undo, desk),
        CorrectTick correct => CorrectEntry.Decide(correct, desk),
        AnswerRing answer => RingEntry.Decide(answer, desk),
        KeepDraft draft => DraftEntry.Decide(draft, desk),
        PinStep pin => PinEntry.Decide(pin, desk),
        UnpinStep unpin => PinEntry.Decide(unpin, desk),
        TakeBackMove back => TakeBackEntry.Decide(back, desk),
        WriteChore chore => ChoreEntry.Decide(chore, desk),
        WriteRecipes recipes => CookbookEntry.Decide(recipes, desk),
        OpenPack pack => CookbookEntry.Decide(pack, desk),
        LookAtRecipes looked => RecipesLookedAtEntry.Decide(looked, desk),
        ReadBackAllergies read => ReadBackEntry.Decide(read, desk),
        TellSlip told => SlipEntry.Decide(told, desk),
        CountSpares count => SparesEntry.Decide(count, desk),
        TakeBackSlip back => SlipBackEntry.Decide(back, desk),
        TakePlan take => TakePlanEntry.Decide(take, desk),
        PlanNear near => NearEntry.Decide(near, desk),
        TrustClock => ClockEntry.Trust(desk),
        RenewCalendar renew => CalendarEntry.Decide(renew, desk),
        StopCalendar stop => CalendarEntry.Decide(stop, desk),
        _ => throw new ArgumentException($"No entry decides about {command.GetType().Name}.", nameof(command)),
    };

    private static string Word(Role role) => role.ToString().ToLowerInvariant();
}
