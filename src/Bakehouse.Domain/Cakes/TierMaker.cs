namespace Bakehouse.Domain.Cakes;

using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;

/// <summary>Works out one tier of a build sheet.</summary>
internal sealed class TierMaker(IReadOnlyList<CakeTier> tiers, Finish finish, CakeFigures figures)
{
    private const string Buttercream = "buttercream";

    public TierBuild Tier(CakeTier tier, int index)
    {
        var (inside, coats, trims) = (new TierInside(tier, figures), new TierCoats(tier, finish, figures), new TierTrims(tier));
        var seam = index == 0 ? Volume.Zero : Trim.Seam(tier.Shape);
        var icing = coats.Crumb + coats.Final + inside.Dam + trims.Beads;
        return new TierBuild(
            tier,
            inside.Pans,
            inside.Fillings,
            figures.FillingThickness,
            inside.Sponge,
            inside.Filling,
            coats.Crumb,
            coats.Final,
            ColourBatch.Split(coats.Seen + trims.Beads, tier.Colours, seam),
            icing + (tier.Filling == Buttercream ? inside.Filling : Volume.Zero),
            coats.Finished,
            index == 0 ? Board.Drum(tier.Shape, tiers.Count, figures) : Board.Under(tier.Shape, figures),
            Board.Working(tier.Shape, figures),
            inside.Mass + (figures.IcingDensity * icing) + (figures.DripDensity * trims.Drip) + (coats.Paste?.OnCake ?? default),
            Portions(tier, Cut.Dessert),
            Portions(tier, Cut.Coffee),
            SupportsIn(tier, index, coats.Finished.Height))
        {
            LeftOver = inside.LeftOver, Dam = inside.Dam, Beads = trims.Beads, Drip = trims.Drip, Seam = seam, Paste = coats.Paste,
        };
    }

    /// <summary>None where nothing stands on it; foam carries by itself.</summary>
    private Supports? SupportsIn(CakeTier tier, int index, Length height) => index + 1 == tiers.Count || tier.IsFalse ? null
        : Supports.For(tier, tiers[index + 1], height > figures.CutShort ? height - figures.CutShort : height);

    private int Portions(CakeTier tier, Cut cut) => tier.IsFalse ? 0 : TierPortions.Count(tier.Shape, tier.Height, cut, figures);
}

/// <summary>Beads and drip.</summary>
internal sealed class TierTrims(CakeTier tier)
{
    private readonly TierSpecial special = tier.Special ?? new TierSpecial();

    public Volume Beads => Trim.Bead(tier.Shape, special.FootBead) + Trim.Bead(tier.Shape, special.TopBead);

    public Volume Drip => Trim.Drip(tier.Shape, special.Drip);
}

/// <summary>Sponge, fillings and the rings that hold them; foam for a false tier.</summary>
internal sealed class TierInside
{
    public TierInside(CakeTier tier, CakeFigures figures)
    {
        var shape = tier.Shape;
        Fillings = tier.IsFalse ? 0 : tier.Layers - 1;
        var between = figures.FillingThickness * Fillings;
        Dam = (tier.Special?.Dam.Millimetres ?? 0) > 0 ? shape.RingInside(tier.Special!.Dam) * between : Volume.Zero;
        Filling = (shape.Area * between) - Dam;
        var body = (shape.Area * tier.Height) - (shape.Area * between);
        Sponge = tier.IsFalse ? Volume.Zero : body;
        LeftOver = tier.IsFalse ? Volume.Zero : (shape.BakedIn().Area * (tier.Height - between)) - (shape.Area * (tier.Height - between));
        Mass = tier.IsFalse ? figures.FoamDensity * body : (figures.Sponge(tier.Sponge) * Sponge) + (figures.Filling(tier.Filling) * Filling);
        Pans = tier.IsFalse ? TierPans.None
            : tier.Special is { LayerHeights: { Count: > 0 } own } ? TierPans.Each(shape, tier.Height, own, figures)
            : TierPans.Of(shape, tier.Height, tier.Layers, figures);
    }

    public int Fillings { get; }

    public Volume Dam { get; }

    public Volume Filling { get; }

    public Volume Sponge { get; }

    /// <summary>Sponge that is cut off around it; nothing but for figures and letters.</summary>
    public Volume LeftOver { get; }

    public TierPans Pans { get; }

    /// <summary>Without coats and rings.</summary>
    public Mass Mass { get; }
}

/// <summary>The coats on the outside: crumb coat, then the final one or a sheet of paste.</summary>
internal sealed class TierCoats
{
    public TierCoats(CakeTier tier, Finish finish, CakeFigures figures)
    {
        var (shape, crumb) = (tier.Shape, figures.CrumbThickness);
        var onTop = tier.Special?.Paste ?? figures.CoatFor(finish);
        Crumb = Coat.On(shape, tier.Height, crumb).All;
        Final = tier.Special?.Paste is null ? Coat.Over(shape, tier.Height, crumb, onTop).All : Volume.Zero;
        Seen = Final > Volume.Zero || tier.Special?.Paste is not null ? Final : Crumb;
        Finished = new FinishedSize(shape.Wide + ((crumb + onTop) * 2), tier.Height + crumb + onTop);
        Paste = tier.Special?.Paste is { } thickness ? Sheet(tier, crumb, thickness) : null;
    }

    public Volume Crumb { get; }

    public Volume Final { get; }

    /// <summary>The coat of icing that is coloured: none under paste, which is coloured itself.</summary>
    public Volume Seen { get; }

    public FinishedSize Finished { get; }

    public PasteSheet? Paste { get; }

    private static PasteSheet Sheet(CakeTier tier, Length crumb, Length thickness) => tier.Shape is Round round
        ? PasteSheet.For(new Round(round.Diameter + (crumb * 2)), tier.Height + crumb, thickness)
        : PasteSheet.For(tier.Shape, tier.Height + crumb, thickness);
}
