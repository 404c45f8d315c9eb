namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain.Cakes;
using Bakehouse.Domain.Measures;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Prices;

/// <content>What the cake serves against what was asked, and builds that serve so many guests.</content>
public sealed partial class OrderPage
{
    private static readonly Length Height = Length.FromCentimetres(10);

    /// <summary>What the build as drawn serves; null as long as there is none, or no number.</summary>
    private Serves? Serves { get; set; }

    /// <summary>The same cake, larger, where it serves fewer than asked; null where nothing is missing or none can be made here.</summary>
    private IReadOnlyList<CakeTier>? Larger { get; set; }

    /// <summary>What could be cut beside it, the better one first.</summary>
    private IReadOnlyList<CuttingCake> Cutting { get; set; } = [];

    /// <summary>True if its tiers were agreed: more guests change none of them.</summary>
    private bool TiersStand => InBook is { } order && Stages.IsPlanned(order.Stage);

    /// <summary>Builds that serve the guests as typed; empty while portions are typed.</summary>
    private IReadOnlyList<GuestBuild> ForGuests { get; set; } = [];

    /// <summary>True if fewer are served than asked and the customer was not told of so many.</summary>
    private Serves? IsShort => Serves is { Missing: > 0 } serves && serves.Missing > Form.ShortTold ? serves : null;

    private int? Wanted => int.TryParse(Form.Count, NumberStyles.None, CultureInfo.InvariantCulture, out var wanted) && wanted > 0 ? wanted : null;

    private void Count()
    {
        var asked = Wanted is { } count && count <= OrderChecks.MostPortions ? new Portions(count, Form.Cut) : null;
        Serves = Sheet is null || Behind || asked is null ? null : Serves.Of(Sheet, asked, Form.ByGuests && Form.KeepsTop);
        Cutting = Serves is { Missing: > 0 and var missing } ? Builds.Beside(Draft with { Portions = asked! }, missing, Shop) : [];
        Larger = IsShort is null || TiersStand ? null
            : NextSize.For(Draft with { Portions = asked!, Guests = Form.ReadGuests }, Length.FromInches(1), CakeFigures.Of(Shop), tiers => OrderChecks.OfTiers(Draft with { Tiers = tiers }, Shop).Count == 0);
        // Who takes a cupcake takes no slice: the builds serve the rest.
        var rest = asked is null ? null : asked with { Count = asked.Count - (Sheet?.Beside.Sum(t => t.Dessert) ?? 0) };
        ForGuests = Form.ByGuests && rest is { Count: > 0 } ? [.. Reached(rest).Select(r => Build(r, rest))] : [];
    }

    private IReadOnlyList<Reached> Reached(Portions asked)
    {
        var sizes = (Shop.Settings.Inches ? Reaching.Sizes : Reaching.MetricSizes).Where(s => OrderChecks.OfTiers(Draft with { Tiers = Builds.Plain([s]) }, Shop).Count == 0).ToList();
        return Reaching.Three(asked.Count, asked.Cut, Form.KeepsTop, Height, CakeFigures.Of(Shop), sizes);
    }

    private GuestBuild Build(Reached reached, Portions asked)
    {
        var form = new OrderForm { Paste = Form.Paste, Drip = Form.Drip, Tiers = TierFields.Built(Form.Tiers, [.. reached.Diameters.Reverse().Select(d => (int)(Shop.Settings.Inches ? d.Inches : d.Centimetres))]) };
        var tiers = Reader.Drawn(form) ?? Builds.Plain(reached.Diameters);
        return new GuestBuild(form.Tiers, BuildSheet.Of(tiers, Form.Finish, CakeFigures.Of(Shop)), asked, Form.KeepsTop, CakePrice.Of(Draft with { Tiers = [.. tiers, .. Draft.Beside], Portions = asked }, Recipes(InBook ?? Draft), Shop)?.Asked);
    }

    private void TakeLarger()
    {
        (Form.Tiers, Form.Cupcakes) = (OrderForm.StackOf(Larger!, Shop.Settings.Inches), OrderForm.BatchesOf(Larger!));
        Touched();
    }
}
