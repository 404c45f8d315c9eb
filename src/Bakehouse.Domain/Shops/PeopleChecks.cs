namespace Bakehouse.Domain.Shops;

/// <summary>What may be wrong with the people of a shop.</summary>
internal static class PeopleChecks
{
    public static IEnumerable<Problem> Problems(IReadOnlyList<Person> people)
    {
        if (people.Count == 0)
        {
            return [new Problem("people", "", "Nobody works here.", "Add at least one person with a shift.")];
        }

        return
        [
            .. SomebodyLeads(people),
            .. ShopChecks.Twice("people", people.Select(p => p.Id)),
            .. people.SelectMany(One),
        ];
    }

    // Without an owner nobody could ever change the shop again.
    private static IEnumerable<Problem> SomebodyLeads(IReadOnlyList<Person> people)
    {
        if (!people.Any(p => p.Role == Role.Owner))
        {
            yield return new Problem("people", "", "Nobody is the owner, so nobody could change the shop later.", "Make one person the owner.");
        }
    }

    private static IEnumerable<Problem> One(Person person) =>
    [
        .. ShopChecks.Named("person", person.Name),
        .. ShopChecks.Id("person", person.Id),
        .. Unknown(person),
        .. BadTimes(person.Name, "shift", person.Shifts),
        .. BadTimes(person.Name, "overtime", person.Overtime),
    ];

    private static IEnumerable<Problem> Unknown(Person person) =>
        from skill in person.Skills
        where !Skills.All.Contains(skill)
        select new Problem(person.Name, skill, $"The skill {skill} is not known.", $"Use {string.Join(", ", Skills.All)}.");

    private static IEnumerable<Problem> BadTimes(string name, string what, IReadOnlyList<Shift> shifts)
    {
        foreach (var shift in shifts.Where(s => s.From >= s.To))
        {
            yield return new Problem(name, Told(shift), $"The {what} ends before it starts.", "Turn the two times round; a night is two rows.");
        }

        foreach (var day in shifts.Where(s => s.From < s.To).GroupBy(s => s.Day))
        {
            var sorted = day.OrderBy(s => s.From).ToList();
            foreach (var (first, second) in sorted.Zip(sorted.Skip(1)).Where(p => p.Second.From < p.First.To))
            {
                yield return new Problem(name, $"{Told(first)}, {Told(second)}", $"Two rows of the {what} overlap.", "Make one row of them.");
            }
        }
    }

    private static string Told(Shift shift) => $"{shift.Day} {ShopChecks.Clock(shift.From)} to {ShopChecks.Clock(shift.To)}";
}
