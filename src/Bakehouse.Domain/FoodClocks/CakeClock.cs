namespace Bakehouse.Domain.FoodClocks;

using Bakehouse.Domain.Heat;
using static System.FormattableString;

/// <summary>What a rule says of a cake at a moment.</summary>
public enum ClockVerdict
{
    /// <summary>Nothing has counted yet.</summary>
    NotBegun,

    /// <summary>Within the rule.</summary>
    Within,

    /// <summary>Within the rule, but it does not go back into the cold.</summary>
    UseOnly,

    /// <summary>Past the rule: nobody eats it.</summary>
    Discard,
}

/// <summary>A cake's food clock at a moment.</summary>
/// <param name="Used">Elapsed time that counts.</param>
/// <param name="Left">Until the rule's limit; zero if it is past.</param>
/// <param name="DiscardAt">When the limit is reached if it stays where it is; null while it stands cold and nothing runs.</param>
/// <param name="Sentence">For people, with figures and with who decides.</param>
public sealed record CakeClock(Duration Used, Duration Left, Instant? DiscardAt, ClockVerdict Verdict, string Sentence)
{
    /// <summary>The clock at a moment. Spells after it count as far as they have begun.</summary>
    /// <param name="spells">In order, without problems (<see cref="Spells.Problems"/>).</param>
    /// <exception cref="ArgumentException">The spells have problems.</exception>
    public static CakeClock Of(FoodRules rules, IReadOnlyList<Spell> spells, Instant now)
    {
        if (Spells.Problems(spells) is { Count: > 0 } problems)
        {
            throw new ArgumentException(string.Join(" ", problems), nameof(spells));
        }

        var counted = spells.Where(s => s.From < now && rules.Includes(s.Kind) && s.Warmest > rules.ColdLine && s.Warmest < rules.HotLine)
            .Select(s => s with { To = Instant.Min(s.To, now) }).ToList();
        return counted.Count == 0
            ? new CakeClock(Duration.Zero, Duration.FromMinutes(rules.LimitMinutes), null, ClockVerdict.NotBegun, $"Nothing counts yet by {rules.Name}. {FoodRules.Caution}")
            : new Reckoning(rules, spells, counted, now).Clock();
    }

    /// <summary>One cake being reckoned.</summary>
    private sealed class Reckoning(FoodRules rules, IReadOnlyList<Spell> spells, IReadOnlyList<Spell> counted, Instant now)
    {
        private readonly Duration limit = Duration.FromMinutes(LimitOf(rules, counted));

        public CakeClock Clock()
        {
            var used = Used();
            var (began, discard) = (counted[0].From, Wrong() is not null || (rules.IsLimitOut ? used >= limit : used > limit));
            var verdict = discard ? ClockVerdict.Discard
                : rules.NoReturnFrom is { } most && used >= Duration.FromMinutes(most) ? ClockVerdict.UseOnly : ClockVerdict.Within;
            var left = discard ? Duration.Zero : Duration.Max(Duration.Zero, limit - used);
            return new CakeClock(used, left, DiscardAt(used, began), verdict, Sentence(used, verdict));
        }

        private static int LimitOf(FoodRules rules, IReadOnlyList<Spell> counted) =>
            rules.LongLimitMinutes is { } longer && counted.All(s => s.IsWatched && s.Warmest <= rules.LongNeverAbove) ? longer : rules.LimitMinutes;

        private Duration Used() => rules.Count switch
        {
            ClockCount.FromTheFirst => now - counted[0].From,
            // What went back although it may not go back is not cold for the rule: it counts on.
            ClockCount.AddedUp => WentBackTooLate() is { } since ? Sum(since) + (now - since) : Sum(now),
            ClockCount.OnePeriod => Periods()[0].To - counted[0].From,
            _ => throw new InvalidOperationException($"{rules.Id}: {rules.Count} is no way of counting."),
        };

        private Duration Sum(Instant until) => counted.Where(s => s.From < until).Aggregate(Duration.Zero, (sum, s) => sum + (Instant.Min(s.To, until) - s.From));

        private Instant? WentBackTooLate() => rules.NoReturnFrom is not { } most ? null
            : counted.Where(s => Sum(s.To) >= Duration.FromMinutes(most)).Select(s => (Instant?)s.To).FirstOrDefault();

        /// <summary>Counted time without cold between: what does not count but is not cold either parts nothing.</summary>
        private IReadOnlyList<(Instant From, Instant To)> Periods()
        {
            List<(Instant From, Instant To)> periods = [(counted[0].From, counted[0].To)];
            foreach (var spell in counted.Skip(1))
            {
                var isParted = spells.Any(s => IsColdSpell(s) && s.From >= periods[^1].To && s.To <= spell.From);
                if (isParted)
                {
                    periods.Add((spell.From, spell.To));
                }
                else
                {
                    periods[^1] = (periods[^1].From, spell.To);
                }
            }

            return periods;
        }

        /// <summary>Why it is past the rule whatever the time; null if it is not.</summary>
        private string? Wrong()
        {
            if (rules.Count == ClockCount.OnePeriod && Periods().Count > 1)
            {
                return "it was out once before and went back into the cold";
            }

            var first = counted[0];
            var most = first.IsJustCut && rules.JustCutAtMost is { } cut && counted.All(s => s.Warmest <= cut) ? cut : rules.StartAtMost;
            return first.Kind != SpellKind.Outage && first.LeftAt > most ? Invariant($"it left the cold at {first.LeftAt:0.#} °C, the rule asks for {most:0.#} or less") : null;
        }

        private Instant? DiscardAt(Duration used, Instant began) => Wrong() is not null ? now
            : rules.Count == ClockCount.FromTheFirst ? began + limit
            : IsCold && WentBackTooLate() is null ? null
            : rules.Count == ClockCount.OnePeriod ? began + limit
            : now + (limit - used);

        /// <summary>True if it stands cold at the end; where nobody said anything it stands where it stood.</summary>
        private bool IsCold => IsColdSpell(spells.Last(s => s.From < now));

        private bool IsColdSpell(Spell spell) => spell.Kind == SpellKind.Cold && spell.Warmest <= rules.ColdLine;

        private string Sentence(Duration used, ClockVerdict verdict)
        {
            var time = Invariant($"{HeatWait.Said((int)Math.Ceiling(used.TotalMinutes))} of {HeatWait.Said((int)limit.TotalMinutes)}");
            var said = verdict switch
            {
                ClockVerdict.Discard => Wrong() is { } why ? $"Discard it: {why}." : $"Discard it: {time} out of the cold.",
                ClockVerdict.UseOnly => $"{time} out of the cold: use it, it does not go back.",
                _ => $"{time} out of the cold.",
            };
            return $"{said} By {rules.Name}. {FoodRules.Caution}";
        }
    }
}
