namespace Bakehouse.Book.Entries;

using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>The plan follows a fact as far as it can; where it can't, the wall stays and the message says why.</summary>
internal sealed record Follow(Wall? Wall, IReadOnlyDictionary<string, int> Late, string Message)
{
    /// <summary>Keeps the plan and pushes later what can't stand any more.</summary>
    public static Follow Of(Desk desk, IReadOnlyList<Order> changed, IReadOnlyList<Tick> ticks) =>
        Of(desk, () => desk.Fitting.Push(desk.OrdersWith([.. changed]), ticks, desk.State.Wall));

    /// <summary>Mends the plan around what went wrong.</summary>
    public static Follow Mended(Desk desk, ByHand hand) =>
        Of(desk, () => new Fitting(desk.Planner, desk.Shop, desk.Now, hand).Mend(desk.State.Orders, desk.State.Ticks, desk.State.Wall));

    private static Follow Of(Desk desk, Func<Fitted> fit)
    {
        if (desk.ClockIsBehind)
        {
            return new Follow(desk.State.Wall, new Dictionary<string, int>(), "Written. The plan waits until the clock of this machine is right.");
        }

        var fitted = fit();
        if (fitted.IsPlan)
        {
            var said = fitted.Stuck.Select(r => $"{r.Sentence} {r.Try}").Append(new PlanWords(desk).Lost(fitted.Wall)).Where(s => s.Length > 0).ToList();
            return new Follow(fitted.Wall, fitted.Late, said.Count == 0 ? "" : $"Written. {string.Join(' ', said)}");
        }

        var why = fitted.Reasons.Select(r => $"{r.Sentence} {r.Try}").Concat(fitted.Breaches.Select(b => $"{b.Rule}: {b.Sentence}"));
        return new Follow(desk.State.Wall, fitted.Late, $"Written, but the plan can't follow: {why.First()}");
    }
}
