namespace Bakehouse.Domain.Reminders;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Orders;
using Bakehouse.Domain.Planning;

/// <summary>
/// When a cake that is still here passes a food limit: the use-by of a filling, or the time out of the cold while it stands ready to
/// be handed over. The limits are the shop's own figures; the rules of the place and a trained person decide.
/// </summary>
internal sealed class FoodEnds(OpenPlan plan, IReadOnlyDictionary<string, Order> orders)
{
    private readonly HashSet<string> cold = [.. plan.Week.Stores.Where(s => s.Cold).Select(s => s.Id)];
    private readonly ILookup<string, Age> ages = plan.Week.Ages.Where(a => a.Hard).ToLookup(a => a.To);
    private readonly ILookup<string, FoodClock> clocks = plan.Week.Clocks.Where(c => plan.Row(c.Steps[0]) is not null).ToLookup(c => plan.Step(c.Steps[0]).Order);
    private readonly Dictionary<string, Hold> holds = plan.Week.Holds.ToDictionary(h => h.Id);

    /// <summary>The first limit that the cake of a last step passes, as minute of the week with a sentence; null if none bears on it.</summary>
    public (int Minute, string Sentence)? Of(StepRow last) =>
        UseBys(last).Concat(OutOfTheCold(last)).OrderBy(e => e.Minute).Select(e => ((int, string)?)e).FirstOrDefault();

    private IEnumerable<(int Minute, string Sentence)> UseBys(StepRow last) =>
        from age in ages[last.Step]
        let fill = plan.Row(age.From)
        where fill is not null
        select (plan.End(fill) + age.Most, $"{Filling(age.From)} has come to its use-by.");

    /// <summary>It counts on only where the cake stands warm until it goes.</summary>
    private IEnumerable<(int Minute, string Sentence)> OutOfTheCold(StepRow last) =>
        from clock in clocks[plan.Step(last.Step).Order]
        where clock.Holds.Any(h => holds[h].To == last.Step && Warm(holds[h]) > 0)
        let left = clock.Limit - clock.Steps.Where(s => plan.Row(s) is not null).Sum(s => plan.Step(s).Minutes) - clock.Holds.Sum(h => Warm(holds[h]))
        select (last.Start + left, $"{Filling(clock.Steps[0])} has been out of the cold for {clock.Limit} min, the shop’s limit.");

    private int Warm(Hold hold) => plan.Row(hold.From) is { } from && plan.Row(hold.To) is { } to
        && !(plan.Stores.TryGetValue(hold.Id, out var store) && cold.Contains(store))
        ? Math.Max(0, to.Start - plan.End(from))
        : 0;

    private string Filling(string step)
    {
        var tier = StepWords.TiersOf(step, orders[plan.Step(step).Order])[0];
        var name = Methods.Filling.Of(tier.Filling)?.Name ?? tier.Filling;
        return char.ToUpperInvariant(name[0]) + name[1..];
    }
}
