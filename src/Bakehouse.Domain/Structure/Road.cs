namespace Bakehouse.Domain.Structure;

using Bakehouse.Domain.Cakes;
using static System.FormattableString;

/// <summary>What a box stands on, by its friction, as a share of its weight before it slides.</summary>
/// <param name="Source">Of the friction.</param>
public sealed record Underlay(string Name, double Friction, string Source)
{
    /// <summary>Card on wood or card: 0.5 (European Best Practice Guidelines on cargo securing, static).</summary>
    public static Underlay Card { get; } = new("Bare floor, card", 0.5, "European Best Practice Guidelines on cargo securing");

    /// <summary>Anti-slip mat: 0.6 (EN 12195-1).</summary>
    public static Underlay Mat { get; } = new("Anti-slip mat", 0.6, "EN 12195-1");

    /// <summary>Film or foil on a smooth floor: 0.3 (the same guidelines).</summary>
    public static Underlay Foil { get; } = new("Foil, smooth floor", 0.3, "European Best Practice Guidelines on cargo securing");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Underlay> All { get; } = [Card, Mat, Foil];
}

/// <summary>A pull on the road, in multiples of gravity.</summary>
/// <param name="Source">Where it is published.</param>
public sealed record Pull(string Name, double Gravities, string Source);

/// <summary>What the road does to a stack: pulls, tipping and sliding.</summary>
public static class Road
{
    /// <summary>Peak of a routine stop: 0.25 g (SAE 1999-01-0098).</summary>
    public static Pull Routine { get; } = new("Routine stop", 0.25, "SAE 1999-01-0098");

    /// <summary>A stop that nine drivers of ten keep to: 3.4 m/s² (AASHTO 2004).</summary>
    public static Pull Comfortable { get; } = new("Firm stop", 3.4 / Crumb.Gravity, "AASHTO 2004");

    /// <summary>An urgent stop: 4.5 m/s², most drivers exceed it (Fambro et al. 1997).</summary>
    public static Pull Urgent { get; } = new("Urgent stop", 4.5 / Crumb.Gravity, "Fambro et al. 1997");

    /// <summary>Cargo must stand these without breaking loose: forward, rear, side (49 CFR 393.102(a)(1)).</summary>
    public static readonly (double Forward, double Rear, double Side) Breaking = (0.8, 0.5, 0.5);

    /// <summary>And these within what its fastenings work at (49 CFR 393.102(a)(2)).</summary>
    public static readonly (double Forward, double Rear, double Side) Working = (0.435, 0.5, 0.25);

    /// <summary>The pull at which a box slides: its friction. Usually it slides long before it tips.</summary>
    public static double SlidesAt(Underlay underlay) => underlay.Friction;

    /// <summary>The pull that governs, and whether it is a slide.</summary>
    public static (double Gravities, bool Slides) GivesWayAt(BuildSheet sheet, Underlay underlay) =>
        sheet.TipsAt < SlidesAt(underlay) ? (sheet.TipsAt, false) : (SlidesAt(underlay), true);

    /// <summary>What to look at before it travels in one piece.</summary>
    public static IEnumerable<Look> Looks(BuildSheet sheet, Underlay underlay)
    {
        if (SlidesAt(underlay) < Urgent.Gravities)
        {
            yield return new Look("On the road", Invariant($"{underlay.Friction:0.##} g"), Invariant($"On {underlay.Name.ToLowerInvariant()} the box slides in an urgent stop ({Urgent.Gravities:0.##} g)."), "Look: put an anti-slip mat under it.", Urgent.Source);
        }

        if (sheet.Stack.Count > 0 && sheet.TipsAt < Breaking.Forward)
        {
            yield return new Look("On the road", Invariant($"{sheet.TipsAt:0.##} g"), Invariant($"A stiff stack this narrow tips before {Breaking.Forward:0.#} g, an emergency stop."), "Look: fill the box at the sides, or travel in parts.", "49 CFR 393.102(a)(1)");
        }
    }
}
