namespace Bakehouse.Web.TakeOrder;

using Bakehouse.Domain.Orders;

/// <summary>The words about an allergy. The customer's own stand in quotation marks; nothing is ever claimed.</summary>
public static class Allergy
{
    /// <summary>"Avoid sesame, nuts."</summary>
    public static string Avoid(IReadOnlyCollection<string> what) => what.Count == 0 ? "Avoid what was told." : $"Avoid {string.Join(", ", what)}.";

    /// <summary>The same from the form.</summary>
    public static string Avoid(OrderForm form) => Avoid([.. form.Avoid]);

    /// <summary>“swells up”, or nothing.</summary>
    public static string InWords(string words) => words.Trim().Length == 0 ? "" : $"“{words.Trim()}”.";

    /// <summary>The same from the form.</summary>
    public static string InWords(OrderForm form) => InWords(form.AllergyWords);

    /// <summary>What is said about an order: told, not told, or not asked.</summary>
    public static string Say(AllergyAnswer answer) => answer.Kind switch
    {
        AllergyKind.Avoid => $"{Avoid(answer.Avoid)} {InWords(answer.Words)}".Trim(),
        AllergyKind.NoneTold => "None told when asked.",
        _ => "Nobody has asked yet.",
    };
}
