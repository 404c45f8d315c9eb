namespace Bakehouse.Domain.Heat;

using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Orders;
using static System.FormattableString;

/// <summary>What is asked before a cake leaves the fridge.</summary>
/// <param name="Fridge">Where it stands.</param>
/// <param name="Room">Where it is cut: its air, by the season and with the humidity if somebody knows it.</param>
/// <param name="Pickup">When it is handed over.</param>
/// <param name="Cutting">When it is cut, not before that.</param>
public sealed record LeaveQuestion(IReadOnlyList<CakeTier> Tiers, CoatState Coat, HeatPlace Fridge, HeatPlace Room, Instant Pickup, Instant Cutting)
{
    /// <summary>Minutes that it may stand out of the cold at most, by the food clock; null if no part of it is on the clock.</summary>
    public int? MostOut { get; init; }

    /// <summary>True if it stands in its carton until it is cut.</summary>
    public bool IsBoxed { get; init; }

    /// <summary>The shop's own factor on how well its cakes conduct.</summary>
    public double CakeTimes { get; init; } = 1;
}

/// <summary>When a cake leaves the fridge, and what comes of it. It says nothing about whether it may be eaten.</summary>
/// <param name="Out">When it leaves the shop's fridge.</param>
/// <param name="CustomerTakesOut">When whoever took it cold takes it out of their own fridge; null if it is out already.</param>
/// <param name="GoodAfter">Minutes out of the cold until its mean is 16.5 °C; null if the room never gets it there.</param>
/// <param name="AtCutting">°C when it is cut: mean and core.</param>
/// <param name="Wetting">Null if nobody knows the humidity.</param>
/// <param name="Why">Sentences for the card.</param>
public sealed record LeaveAnswer(
    Instant Out, Instant? CustomerTakesOut, HeatRange? GoodAfter, (double Mean, double Core) AtCutting, Dew? Wetting, IReadOnlyList<string> Why, IReadOnlyList<Problem> Problems);

/// <summary>
/// When a cake leaves the fridge. It is handed over cold, and the customer is told when to take it out; earlier only if a paste coat must be dry by
/// then, or if it is cut within two hours (common practice, no source). Aim: mean 16 to 17 °C, since outer slices are eaten first; never past the
/// food clock, nor longer than a coat of butter stands in the warmth.
/// </summary>
public static class LeaveFridge
{
    /// <summary>°C of the mean at which a butter cake is good to eat.</summary>
    public const double Good = 16.5;

    /// <summary>A cake that is cut so many minutes after it was handed over, or later, leaves cold: 120.</summary>
    public const int CutSoon = 120;

    private const double Longest = 12 * 60;

    /// <summary>The answer, or the problems of the question, all at once.</summary>
    public static LeaveAnswer Of(LeaveQuestion question, CakeFigures figures)
    {
        var problems = Problems(question, figures);
        return problems.Count > 0
            ? new LeaveAnswer(question.Pickup, null, null, (question.Fridge.Celsius, question.Fridge.Celsius), null, [], problems)
            : new Leaving(question, figures).Answer();
    }

    /// <summary>Minutes that an all-butter coat stands well: all day up to 20 °C, 4 h at 24, 1 h from 28 on (common practice, no source).</summary>
    public static double CoatStands(double celsius) => celsius switch
    {
        <= 20 => 1440,
        <= 24 => 240 + ((24 - celsius) / 4 * 1200),
        <= 28 => 60 + ((28 - celsius) / 4 * 180),
        _ => 60,
    };

    private static IReadOnlyList<Problem> Problems(LeaveQuestion question, CakeFigures figures) =>
    [
        .. question.Tiers.Count > 0 ? [] : new[] { new Problem("tiers", "none", "There is no cake.", "Give its tiers.") },
        .. question.Tiers.SelectMany(t => CakeBodies.Problems(t, figures)),
        .. question.Fridge.Problems(), .. question.Room.Problems(),
        .. question.Room.Celsius > question.Fridge.Celsius ? []
            : new[] { new Problem(question.Room.Name, Invariant($"{question.Room.Celsius:0.#} °C"), "It is no warmer there than in the fridge.", "Give the room where it is cut.") },
        .. question.Cutting >= question.Pickup ? [] : new[] { new Problem("cutting", "before pickup", "It is cut before it is handed over.", "Look at both times.") },
        .. question.MostOut is { } most ? HeatChecks.Between("food clock", most, 1, 1440, " min") : [],
        .. HeatChecks.Between("cakes, factor", question.CakeTimes, 0.2, 5, " times"),
    ];

    /// <summary>One question being answered.</summary>
    private sealed class Leaving
    {
        private readonly LeaveQuestion question;
        private readonly HeatCurve curve;
        private readonly HeatRange? good;
        private readonly Dew? dew;
        private readonly List<string> why = [];

        public Leaving(LeaveQuestion question, CakeFigures figures)
        {
            this.question = question;
            var round = question.Tiers.All(t => t.Shape is Round);
            // Tiers that do not stack on the grid: the one with most cake decides.
            var body = round ? CakeBodies.Stack(question.Tiers, question.Coat, figures)
                : CakeBodies.Tier(question.Tiers.MaxBy(t => t.Shape.Area.SquareMillimetres * (double)t.Height.Millimetres)!, question.Coat, figures);
            body = body.With(m => m.IsEaten ? m.Conducting(question.CakeTimes) : m);
            var (start, cover) = (HeatStart.Even(question.Fridge.Celsius), question.IsBoxed ? Foods.BoardMaterials.Carton : 0);
            curve = Conduction.Run(body, start, [new Stay(Longest, question.Room.Around(HeatSide.Typical, true, false, cover))]);
            good = question.Room.Celsius < Good + 2 ? null : HeatRanges.Of(body, start, question.Room, false, cover, [new HeatGoal(HeatSpot.Mean, Good)]);
            dew = question.Room.Humidity is { } h and > 0 ? Dew.Of(curve, question.Room.Celsius, h) : null;
        }

        public LeaveAnswer Answer()
        {
            var wished = question.Cutting - Minutes(Warming());
            var leaves = question.Pickup;
            if (question.Coat == CoatState.Paste)
            {
                leaves = Instant.Min(leaves, Kept(question.Pickup - Minutes(dew?.DryAfter is { } dry ? dry.High : 120)));
                why.Add(dew is { WetMinutes: null } ? "The paste stays wet in this air: dry the room, or keep it out of the fridge." : "The paste coat is dry when it is handed over.");
            }
            else if (question.Cutting - question.Pickup < Duration.FromMinutes(CutSoon) && wished < question.Pickup)
            {
                leaves = wished;
                why.Add(Invariant($"It is cut {HeatWait.Said((int)(question.Cutting - question.Pickup).TotalMinutes)} after it is handed over, so it leaves the fridge before."));
            }
            else
            {
                why.Add(wished > question.Pickup
                    ? Invariant($"It is handed over cold. Tell whoever takes it: into a fridge, and out {HeatWait.Said((int)(question.Cutting - wished).TotalMinutes)} before it is cut.")
                    : "It is handed over cold and stands out of the fridge from then on.");
            }

            var later = leaves == question.Pickup && wished > question.Pickup ? wished : (Instant?)null;
            var stood = (question.Cutting - (later ?? leaves)).TotalMinutes;
            AddWetting(later is null);
            if (question.MostOut is not null)
            {
                why.Add(FoodClocks.FoodRules.Caution);
            }

            return new LeaveAnswer(leaves, later, good, (curve.At(stood, HeatSpot.Mean), curve.At(stood, HeatSpot.Core)), dew, why, []);
        }

        /// <summary>Minutes out of the cold before it is cut: to be good, but no longer than clock and coat allow.</summary>
        private double Warming()
        {
            var wanted = good?.Typical ?? Math.Min(Longest, 240);
            why.Add(good is null
                ? Invariant($"At {question.Room.Celsius:0.#} °C its mean does not come to {Good:0.#} °C in an honest time: {Up(Math.Min(wanted, Limit))} out of the fridge, at most.")
                : Invariant($"Good to eat {Up(good.Typical)} out of the fridge at {question.Room.Celsius:0.#} °C ({Up(good.Low)} to {Up(good.High)})."));
            if (wanted > Limit)
            {
                why.Add(question.MostOut <= Limit
                    ? Invariant($"The food clock allows {HeatWait.Said(question.MostOut.Value)}: it is cut colder.")
                    : Invariant($"A coat of butter stands {HeatWait.Said((int)Limit)} in that warmth: it is cut colder."));
            }

            return Math.Min(wanted, Limit);
        }

        private double Limit => Math.Min(question.MostOut ?? double.MaxValue, question.Coat == CoatState.Paste ? double.MaxValue : CoatStands(question.Room.Celsius));

        /// <summary>A moment, but not so early that the clock runs out before it is cut.</summary>
        private Instant Kept(Instant wished)
        {
            var earliest = question.MostOut is { } most ? question.Cutting - Duration.FromMinutes(most) : Instant.MinValue;
            if (wished < earliest)
            {
                why.Add("The food clock comes first: it may still be wet.");
            }

            return Instant.Max(wished, earliest);
        }

        private void AddWetting(bool isOutHere)
        {
            if (dew is { IsWet: true, DryAfter: { } dry } && (isOutHere || question.Coat == CoatState.Paste))
            {
                why.Add(Invariant($"Dew point {dew.DewPoint:0.#} °C: it gets wet and is dry after {HeatWait.Said(dry.Low)} to {HeatWait.Said(dry.High)}. Hands off until then."));
            }
        }

        private static string Up(double minutes) => HeatWait.Said(HeatWait.Up(minutes));

        private static Duration Minutes(double minutes) => Duration.FromMinutes((long)Math.Round(minutes));
    }
}
