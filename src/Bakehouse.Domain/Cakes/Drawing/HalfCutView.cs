namespace Bakehouse.Domain.Cakes.Drawing;

using Bakehouse.Domain.Methods;

/// <summary>Left of the centre line from outside, right of it cut through, as in a workshop drawing.</summary>
internal sealed class HalfCutView(BuildSheet sheet, bool inches)
{
    private readonly Stack stack = new(sheet, inches);
    private readonly FrontView front = new(sheet, inches);
    private readonly double dowel = Stack.Mm(sheet.Figures.DowelDiameter);

    public CakeDrawing Draw()
    {
        var frame = new Frame(stack);
        List<Drawn> lines = [.. frame.Ruler()];
        foreach (var tier in stack.Tiers)
        {
            lines.Add(FrontView.BoardOf(tier));
            lines.AddRange(FrontView.CoatOf(tier, -tier.Radius, tier.Radius, true, false));
            lines.AddRange(Drip.On(tier, 0));
            lines.AddRange(FrontView.CoatOf(tier, 0, tier.Radius, false, true));
            lines.AddRange(Cut(tier));
            lines.AddRange(Dowels(tier));
            lines.Add(Label(tier));
        }

        lines.AddRange(Rod());
        lines.AddRange(stack.Pillars(dowel));
        lines.Add(new Segment(Part.CentreLine, 0, 0, 0, stack.Top + 10));
        lines.Add(new Lettering(Part.Label, -6, frame.RulerTop, Place.Left, "outside"));
        lines.Add(new Lettering(Part.Label, 6, frame.RulerTop, Place.Right, "cut through"));
        lines.AddRange(frame.Dimension());
        return new CakeDrawing(
            $"The cake cut in half, to scale: {stack.Sizes}, top first. Left from outside, right cut through.",
            frame.Extent,
            Frame.Surround,
            lines,
            [.. Key().Distinct()]);
    }

    // The size alone; a plate in the coat's colour keeps the dashes of hidden supports from running through it.
    private Lettering Label(StandingTier tier)
    {
        var label = front.Label(tier, -tier.Radius / 2, tier.Radius) with { Second = "" };
        return label.Over == WordsOn.Ink && tier.Build.Supports is not null
            ? label with { Over = WordsOn.Plate, Swatch = tier.MainSwatch }
            : label;
    }

    // Right of the middle, wherever the cut meets cake; behind an opening its back wall is seen.
    private static IEnumerable<Drawn> Cut(StandingTier tier)
    {
        var shape = tier.Build.Shape;
        if (shape is Round or Slab)
        {
            return Layers.Of(tier, 0, tier.BareRadius);
        }

        var layers = Contour.Across(shape, 0).Where(s => s.To > 0).SelectMany(s => Layers.Of(tier, Math.Max(0, s.From), s.To - Math.Max(0, s.From)));
        var walls = Contour.Across(shape, tier.Grown).SelectMany(s => new[] { s.From, s.To }).Where(x => x > 0 && x < tier.Radius - 1)
            .Select(x => new Segment(Part.Edge, x, tier.Foot, x, tier.Top));
        return [.. layers, .. walls];
    }

    // The first support lies in the plane of the cut; of the others those on the outer half are told by dashes.
    private IEnumerable<Drawn> Dowels(StandingTier tier)
    {
        if (tier.Build.Supports is not { } supports)
        {
            yield break;
        }

        var ring = Stack.Mm(supports.RingDiameter) / 2;
        var high = Stack.Mm(supports.Length);
        yield return new Rectangle(Part.Dowel, ring - (dowel / 2), tier.Foot, dowel, high);
        foreach (var x in supports.Angles.Select(a => Math.Round(ring * Math.Cos(a * Math.PI / 180), 3)).Where(x => x < -dowel).Distinct())
        {
            yield return new Rectangle(Part.HiddenDowel, x - (dowel / 2), tier.Foot, dowel, high);
        }
    }

    // From the drum to the middle of the top tier.
    private IEnumerable<Drawn> Rod()
    {
        if (sheet.RodLength is { } length)
        {
            var wide = Stack.Mm(sheet.Figures.RodDiameter);
            yield return new Rectangle(Part.Rod, -wide / 2, stack.Bottom.Foot, wide, Stack.Mm(length));
        }
    }

    private IEnumerable<KeyEntry> Key()
    {
        foreach (var tier in Enumerable.Reverse(stack.Tiers).Where(t => !t.Build.Tier.IsFalse))
        {
            yield return new KeyEntry(Part.Sponge, tier.SpongeFood, tier.SpongeFood);
        }

        foreach (var tier in Enumerable.Reverse(stack.Tiers).Where(t => t.Build.Fillings > 0))
        {
            var id = tier.Build.Tier.Filling;
            yield return new KeyEntry(Part.Filling, id, Filling.Of(id)?.Name.ToLowerInvariant() ?? id);
        }

        if (stack.Tiers.Exists(t => t.Build.Tier.IsFalse))
        {
            yield return new KeyEntry(Part.Foam, "", "foam");
        }

        yield return new KeyEntry(Part.Coat, "", "coat");
        if (sheet.Supports > 0)
        {
            yield return new KeyEntry(Part.Dowel, "", sheet.Rods > 0 ? $"{sheet.Figures.SupportWord}, rod" : sheet.Figures.SupportWord);
        }
    }
}
