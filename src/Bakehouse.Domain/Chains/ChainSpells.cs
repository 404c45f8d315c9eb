namespace Bakehouse.Domain.Chains;

using Bakehouse.Domain.FoodClocks;
using Bakehouse.Domain.Heat;
using Bakehouse.Domain.Methods;
using Bakehouse.Domain.Shops;
using Bakehouse.Domain.Slips;

/// <summary>The stays of a tier as spells of the food clock: from filling on, with the power cuts that were told.</summary>
public static class ChainSpells
{
    /// <summary>
    /// Spells from the fill on. What stands out of the cold is taken to be as warm as the air there at once: more cautious than it is. A wait in the
    /// kitchen before it is boxed is part of its making, after that of its being shown.
    /// </summary>
    public static IReadOnlyList<Spell> Of(IReadOnlyList<ChainStay> stays, IReadOnlyList<Slip> slips, FoodRules rules)
    {
        var from = stays.Select((s, i) => (Stay: s, At: i)).FirstOrDefault(x => Operation(x.Stay) == "fill" && x.Stay.Kind == StayKind.Hands);
        return from.Stay is null ? [] : [.. stays.Skip(from.At).SelectMany(s => WithCuts(s, slips, rules))];
    }

    private static IEnumerable<Spell> WithCuts(ChainStay stay, IReadOnlyList<Slip> slips, FoodRules rules)
    {
        IReadOnlyList<Spell> spells = [new Spell(stay.From, stay.To, KindOf(stay), stay.Place.Celsius)];
        return slips.Where(s => s.Kind == SlipKind.Out && stay.Store.Length > 0 && s.About.Contains(stay.Store))
            .Aggregate(spells, (known, cut) => Spells.WithPowerCut(known, cut.From ?? cut.Told, cut.Until ?? cut.Told, rules));
    }

    private static SpellKind KindOf(ChainStay stay) => stay.Kind switch
    {
        StayKind.Road => SpellKind.Transport,
        _ when stay.Place.IsCold => SpellKind.Cold,
        StayKind.Hands => Operation(stay) is "handover" ? SpellKind.Handed : SpellKind.Preparation,
        _ => Operation(stay) is "leavefridge" or "handover" or "deliver" ? SpellKind.Display : SpellKind.Preparation,
    };

    private static string Operation(ChainStay stay) => StepKey.Parse(stay.Step)?.Operation ?? "";
}
