namespace Bakehouse.Domain.Cakes.Drawing;

/// <summary>The layers of a tier, cut: sponge and filling in turn, in their true thickness, from below; foam in one piece.</summary>
internal static class Layers
{
    public static IEnumerable<Rectangle> Of(StandingTier tier, double x, double width)
    {
        var filling = Stack.Mm(tier.Build.FillingHeight);
        var foot = tier.Foot;
        if (tier.Build.Tier.IsFalse)
        {
            yield return new Rectangle(Part.Foam, x, foot, width, Stack.Mm(tier.Build.Tier.Height));
        }

        foreach (var (sponge, i) in tier.Build.Layers.Select((l, i) => (Stack.Mm(l), i)))
        {
            yield return new Rectangle(Part.Sponge, x, foot, width, sponge) { Food = tier.SpongeFood };
            foot += sponge;
            if (i < tier.Build.Fillings)
            {
                yield return new Rectangle(Part.Filling, x, foot, width, filling) { Food = tier.Build.Tier.Filling };
                foot += filling;
            }
        }
    }
}
