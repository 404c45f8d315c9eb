namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Allergens;

/// <content>What the cake contains as typed, and what stands against promising it.</content>
public sealed partial class OrderPage
{
    /// <summary>Names of what nobody has read yet that are said before the rest is counted.</summary>
    private const int MostNamed = 3;

    /// <summary>What the cake contains as far as it is typed; null while there are no recipes or nothing to build.</summary>
    private CakeContents? Contents { get; set; }

    /// <summary>Each thing told against what the cake contains; empty while nobody can weigh it.</summary>
    private IReadOnlyList<Weighed> Weighed => Contents is { } cake ? Weighing.Of(FormReader.Allergies(Form), cake, Shop.Allergens) : [];

    /// <summary>What stands against taking it: what must be avoided and is in the cake as typed, or may be, or nobody knows, the worst of it; else what else can hurt; else what nobody has read; or null.</summary>
    private Weighed? Against => Avoided ?? Stopped ?? (Contents is { } cake && Tiers.Count > 0 ? Unread(cake) : null);

    private IReadOnlyList<Weighed> FromTheKitchen => [.. Weighed.Where(w => w.Verdict is Verdict.Note or Verdict.WithControls && w.Told.Length > 0)];

    private Weighed? Avoided => Contents is null || Tiers.Count == 0 ? null : Weighed.Where(w => w.Verdict >= Verdict.NotKnown && w.Told.Length > 0).MaxBy(w => w.Verdict);

    /// <summary>Whatever was told: nobody may promise a cake of which nobody knows what it contains.</summary>
    private Weighed? Unread(CakeContents cake)
    {
        var unread = cake.NotKnown(Shop.Allergens).SelectMany(u => u.In).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToList();
        var more = unread.Count > MostNamed ? $" and {unread.Count - MostNamed} more" : "";
        return unread.Count == 0 ? null
            : new Weighed("", Verdict.NotKnown, $"Not everything is known of {string.Join(", ", unread.Take(MostNamed))}{more}.", "Read the pack or write the recipe, under Recipes. Until then the day can be kept.");
    }
}
