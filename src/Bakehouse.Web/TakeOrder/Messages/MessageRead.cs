namespace Bakehouse.Web.TakeOrder.Messages;

using Bakehouse.Domain.Orders;
using NodaTime;

/// <summary>What could be read out of a customer's message. Whatever it does not say, or says twice in two ways, is null or empty.</summary>
/// <param name="Text">The message, blanks at its ends taken off.</param>
/// <param name="Sizes">Diameters in the shop's unit, top first; empty if none are named.</param>
/// <param name="TierCount">"a two-tier": how many; null if not said.</param>
/// <param name="Avoid">Allergens in the words of the order page, found in sentences about allergies.</param>
/// <param name="AllergyWords">Those sentences as they were written.</param>
/// <param name="Phone">As it was written.</param>
/// <param name="LookAgain">What a person must decide: two days, a range, a "no allergies".</param>
public sealed record MessageRead(
    string Text,
    LocalDate? Day,
    LocalTime? Hour,
    int? Count,
    IReadOnlyList<int> Sizes,
    int? TierCount,
    string? Sponge,
    string? Filling,
    IReadOnlyList<string> Avoid,
    string AllergyWords,
    Way? Way,
    string Address,
    string Name,
    string Phone,
    string Inscription,
    IReadOnlyList<string> LookAgain);
