namespace Bakehouse.Domain.Cakes.Drawing;

/// <summary>The layers of a tier, cut: sponge and filling in turn, in their true thickness, from below.</summary>
internal static class Layers
{
    public static IEnumerable<Rectangle> Of(StandingTier tier, double x, double width)
    {
        var (sponge, filling) = (Stack.Mm(tier.Build.LayerHeight), Stack.Mm(tier.Build.FillingHeight));
        var foot = tier.Foot;
        for (var i = 0; i < tier.Build.Tier.Layers; i++)
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
