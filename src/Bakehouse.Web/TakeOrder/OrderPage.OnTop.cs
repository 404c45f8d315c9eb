namespace Bakehouse.Web.TakeOrder;

using System.Globalization;
using Bakehouse.Domain;
using Bakehouse.Domain.Allergens;
using Bakehouse.Domain.Dangers;
using Bakehouse.Domain.Orders;

/// <content>What goes on top, who eats, and the owner's own limits: folded away until somebody asks, and told before any yes of the plan.</content>
public sealed partial class OrderPage
{
    private bool topAsked;
    private bool eatersAsked;

    private bool ShowsTop => topAsked || Form.OnTop.IsAsked;

    private bool ShowsEaters => eatersAsked || Form.Eaters.IsTold;

    /// <summary>What is to be asked because of who eats; null if nobody is named or there is no cake yet.</summary>
    private EaterQuestions? Questions => Tiers.Count == 0 ? null : EaterQuestions.Of(Draft, Contents, Recipes(InBook ?? Draft));

    /// <summary>What stands against the cake besides allergies, in the words of the strip: the first, or null.</summary>
    private Weighed? Stopped => Tiers.Count == 0 || Form.IsUnbuilt ? null
        : OwnLimitChecks.Cold(Draft, Shop).Select(p => Of(p, Verdict.Refuse))
            .Concat(Draft.OnTop is { } top ? OnTopChecks.Stops(top, Draft.Eaters).Select(p => Of(p, Topping.All.Any(t => t.Use == ToppingUse.Never && t.Name == p.Value) ? Verdict.Refuse : Verdict.NotKnown)) : [])
            .Concat(Draft.Eaters is { } eaters ? Questions?.Stops(eaters, IsOwner).Select(p => Of(p, Verdict.NotKnown)) ?? [] : [])
            .Concat(Year is { IsOver: true } year && YearlyCap.Against(Dated with { Stage = Stage.Booked, Price = new AgreedPrice(year.Asked) }, InBook, Book.State.Orders, Shop, IsOwner) is { } over ? [Of(over, Verdict.Refuse)] : [])
            .FirstOrDefault();

    /// <summary>What is booked for the year with this cake; null where the owner has set no cap.</summary>
    private YearlyCap? Year => YearlyCap.Of(
        Dated,
        decimal.TryParse(Form.Price.Trim().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var agreed) ? agreed : Price?.Asked ?? 0,
        Book.State.Orders,
        Shop);

    private Order Dated => Draft with { Handover = Draft.Handover with { At = When ?? Now } };

    private static Weighed Of(Problem problem, Verdict verdict) => new("", verdict, problem.Sentence, problem.Try);
}
