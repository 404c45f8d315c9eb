namespace Bakehouse.Domain.Slips;

using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Planning;

/// <content>A sponge that is lost.</content>
internal sealed partial class SlippedWeek
{
    private static readonly string[] Chain = ["mix", "bake", "turnout", "wrap"];

    /// <summary>
    /// What was done with the load stays done; what was still to do with it falls away, and all of it comes again under keys of its
    /// own. A spare stands where the lost layers would have stood, and thaws there.
    /// </summary>
    private void Crack(string bake, Slip slip)
    {
        if (!Has(bake) || StepKey.Parse(bake) is not { Operation: "bake" } key || Has(Slip.Again(key).ToString()))
        {
            return;
        }

        var last = Math.Max(1, Array.FindLastIndex(Chain, word => IsTicked(Key(key, word))));
        ImplyDone(Key(key, Chain[last]), slip);
        // Cupcakes have no spares: nothing of them is wrapped.
        if (slip.Spare && Has(Key(key, "wrap")))
        {
            TakeSpare(Key(key, "wrap"), slip);
            return;
        }

        BakeAgain(key, [.. Chain.Skip(last + 1).Select(word => Key(key, word)).Where(Has)]);
    }

    private void TakeSpare(string wrap, Slip slip)
    {
        ticks.RemoveAll(t => t.Step == wrap);
        ticks.Add(new Tick(wrap, slip.Told, slip.Person));
        week = week with { Holds = [.. week.Holds.Select(h => h.From == wrap ? thawing(h) : h)] };
    }

    private void BakeAgain(StepKey load, HashSet<string> dropped)
    {
        var again = Chain.ToDictionary(word => Key(load, word), word => Key(Slip.Again(load), word));
        string New(string step) => again.GetValueOrDefault(step, step);
        var inside = week.Holds.Where(h => again.ContainsKey(h.From)).ToList();
        week = week with
        {
            Steps = [.. week.Steps.Where(s => !dropped.Contains(s.Id)), .. week.Steps.Where(s => again.ContainsKey(s.Id)).Select(s => s with { Id = again[s.Id] })],
            Holds =
            [
                .. week.Holds.Where(h => !again.ContainsKey(h.From) || (again.ContainsKey(h.To) && !dropped.Contains(h.To))),
                .. inside.Select(h => h with { Id = $"{New(h.From)}>{New(h.To)}", From = New(h.From), To = New(h.To) }),
            ],
            Ages = [.. week.Ages.Select(a => again.TryGetValue(a.From, out var from) ? a with { Id = $"{from}.keeps", From = from } : a)],
        };
    }

    private static string Key(StepKey load, string word) => (load with { Operation = word }).ToString();
}
