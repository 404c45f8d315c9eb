namespace Bakehouse.Book.Entries;

using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Orders;

/// <summary>
/// What must be avoided was read back. A second person does it; where one works alone, the same after ten minutes, and it stays visible
/// that it was the same.
/// </summary>
internal static class ReadBackEntry
{
    public static Outcome Decide(ReadBackAllergies command, Desk desk) => StampEntry.Decide(command, desk, command.Order, command.Version, order =>
    {
        // An order of before statements were kept: nobody knows who wrote it, so whoever reads it back is not that person.
        var said = order.Statement ?? new Statement("", desk.Now);
        return Problem(command, desk, order, said) is { } problem
            ? (order, [problem])
            : (order with { Statement = said with { ReadBackBy = command.Person, ReadBack = desk.Now } }, []);
    });

    private static Problem? Problem(ReadBackAllergies command, Desk desk, Order order, Statement said)
    {
        if (!BeforeWork.MustBeReadBack(order))
        {
            return new Problem("allergies", "", "Nothing must be avoided in this order.", "There is nothing to read back.");
        }

        if (said.ReadBack is not null)
        {
            return new Problem("allergies", desk.NameOf(said.ReadBackBy!), "It was read back already.", "There is nothing more to do.");
        }

        if (said.By != command.Person)
        {
            return null;
        }

        return desk.Shop.People.Count > 1
            ? new Problem("allergies", desk.NameOf(said.By), "Whoever wrote it down can't read it back.", "Let somebody else do it.")
            : desk.Now - said.Written < Statement.Alone
                ? new Problem("allergies", desk.Clock(said.Written), "It was written less than ten minutes ago.", $"Read it again from {desk.Clock(said.Written + Statement.Alone)} on.")
                : null;
    }
}
