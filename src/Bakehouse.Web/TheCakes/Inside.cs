namespace Bakehouse.Web.TheCakes;

using Bakehouse.Domain.Cakes;

/// <summary>What is hidden in a cake.</summary>
internal static class Inside
{
    /// <summary>"11 dowels, 2 boards, 1 rod"; empty for a cake that hides nothing.</summary>
    public static string Counted(BuildSheet sheet) => string.Join(", ", new[]
    {
        Many(sheet.Supports, "dowel"), Many(sheet.Tiers.Count - 1, "board"), Many(sheet.Rods, "rod"),
    }.Where(w => w.Length > 0));

    private static string Many(int count, string word) => count switch { 0 => "", 1 => $"1 {word}", _ => $"{count} {word}s" };
}
