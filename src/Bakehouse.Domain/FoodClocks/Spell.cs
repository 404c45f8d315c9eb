namespace Bakehouse.Domain.FoodClocks;

using static System.FormattableString;

/// <summary>A stretch of a cake's time, as it was or as it is planned. Elapsed time: a night in which clocks change has the hours that it has.</summary>
/// <param name="From">Included.</param>
/// <param name="To">Not included; after <paramref name="From"/>.</param>
/// <param name="Warmest">°C of the warmest part of what is perishable in it; while it stands cold, °C of that air.</param>
public sealed record Spell(Instant From, Instant To, SpellKind Kind, double Warmest)
{
    /// <summary>°C of its warmest part as it left the cold; null if nobody read it: then it was cold.</summary>
    public double? LeftAt { get; init; }

    /// <summary>True if somebody watched its temperature and wrote it down.</summary>
    public bool IsWatched { get; init; }

    /// <summary>True if it became perishable just then: fruit that was cut, a tin that was opened.</summary>
    public bool IsJustCut { get; init; }
}

/// <summary>Spells of one cake in their order.</summary>
public static class Spells
{
    /// <summary>Minutes for which a fridge stays cold with its door shut: 240 (power-cut advice of food agencies).</summary>
    public const int ShutFridge = 240;

    /// <summary>Everything wrong with them, in one list.</summary>
    public static IReadOnlyList<Problem> Problems(IReadOnlyList<Spell> spells) =>
    [
        .. spells.Where(s => s.To <= s.From).Select(s => new Problem($"{s.Kind}", Invariant($"{s.From} to {s.To}"), "It ends before it begins.", "Look at both times.")),
        .. spells.SelectMany(s => Heat.HeatPlace.Degrees($"{s.Kind}, warmest", s.Warmest, -40, 110)),
        .. spells.SelectMany(s => Heat.HeatPlace.Degrees($"{s.Kind}, left at", s.LeftAt ?? 0, -40, 110)),
        .. spells.Zip(spells.Skip(1)).Where(p => p.Second.From < p.First.To)
            .Select(p => new Problem($"{p.Second.Kind}", Invariant($"{p.Second.From}"), Invariant($"It begins before {p.First.Kind} ends."), "A cake is in one place at a time: look at the times.")),
    ];

    /// <summary>
    /// The same with a power cut: what stood cold stands warm from four hours after the beginning (door shut) to the end, unless somebody read
    /// its warmest part and it is cold still.
    /// </summary>
    /// <param name="warmest">°C as it was read; null if nobody did.</param>
    /// <param name="shutMinutes">Minutes for which this fridge stays cold.</param>
    public static IReadOnlyList<Spell> WithPowerCut(IReadOnlyList<Spell> spells, Instant from, Instant to, FoodRules rules, double? warmest = null, int shutMinutes = ShutFridge)
    {
        var warm = from + Duration.FromMinutes(shutMinutes);
        return warm >= to || warmest <= rules.ColdLine ? spells : [.. spells.SelectMany(s => s.Kind == SpellKind.Cold ? Cut(s, warm, to, warmest ?? 15) : [s])];
    }

    /// <summary>The same with the last spell going on until a later moment: a customer who is late.</summary>
    public static IReadOnlyList<Spell> Until(IReadOnlyList<Spell> spells, Instant later) =>
        spells.Count == 0 || spells[^1].To >= later ? spells : [.. spells.SkipLast(1), spells[^1] with { To = later }];

    private static IEnumerable<Spell> Cut(Spell cold, Instant from, Instant to, double warmest)
    {
        var (begin, end) = (Instant.Max(cold.From, from), Instant.Min(cold.To, to));
        if (begin >= end)
        {
            return [cold];
        }

        return
        [
            .. begin > cold.From ? [cold with { To = begin }] : Array.Empty<Spell>(),
            new Spell(begin, end, SpellKind.Outage, warmest),
            .. end < cold.To ? [cold with { From = end }] : Array.Empty<Spell>(),
        ];
    }
}
