namespace Bakehouse.Domain.Freezer;

using System.Globalization;
using Bakehouse.Domain.Cakes.Packing;
using Bakehouse.Domain.Methods;

/// <summary>What may be wrong with a count.</summary>
public static class SpareChecks
{
    /// <summary>Round pans of a shop, whole inches.</summary>
    private const int Least = 4, Widest = 18;

    /// <summary>More than a small freezer holds of one baking.</summary>
    private const int Most = 200;

    private const int Days = 366;

    /// <summary>Every problem; empty if it can be written.</summary>
    /// <param name="today">The shop's day.</param>
    public static IReadOnlyList<Problem> Problems(SpareSponges spares, LocalDate today) =>
    [
        .. Methods.Sponge.Of(spares.Sponge) is null ? [new Problem("sponge", Problem.Shown(spares.Sponge), "The shop bakes no such sponge.", "Choose one of the list.")] : Array.Empty<Problem>(),
        .. IsPan(spares.Pan) ? [] : new[] { new Problem("pan", Text(spares.Pan), "No pan is so large or so small.", $"Write a round pan of {Text(Least)} to {Text(Widest)} in.") },
        .. spares.Count is >= 0 and <= Most ? [] : new[] { new Problem("count", Text(spares.Count), "That can't be counted in a freezer.", $"Write 0 to {Text(Most)}.") },
        .. spares.Frozen > today ? new[] { new Problem("frozen", Day(spares.Frozen), "That day is still to come.", "Choose the day they went in.") }
            : spares.Frozen < today.PlusDays(-Days) ? [new Problem("frozen", Day(spares.Frozen), "That is more than a year ago.", "Look at the label; throw them away if it is true.")] : [],
    ];

    private static bool IsPan(int pan) => pan is >= Least and <= Widest || (pan > 1000 && PanCode.Bare(pan) is { IsRound: false, Wide: > 0, Deep: > 0 });

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Day(LocalDate day) => day.ToString("ddd d MMM uuuu", CultureInfo.InvariantCulture);
}
