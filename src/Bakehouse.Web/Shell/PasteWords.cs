namespace Bakehouse.Web.Shell;

using Bakehouse.Domain.Cakes;

/// <summary>A sheet of sugar paste in words.</summary>
internal static class PasteWords
{
    /// <summary>"4 mm, 18 in round" or "4 mm, 18 in × 14 in".</summary>
    public static string Sheet(PasteSheet sheet, Words words) =>
        $"{words.Thickness(sheet.Thickness)}, {words.Room(sheet.Wide)} {(sheet.IsRound ? "round" : $"× {words.Room(sheet.Deep)}")}";
}
